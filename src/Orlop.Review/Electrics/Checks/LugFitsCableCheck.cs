using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>The barrel of each lug is made for the conductor that is crimped into it.</summary>
public sealed class LugFitsCableCheck : ICheck<ElectricsView>
{
    // 2/0 AWG, 67.4 mm², goes with 70 mm²; the next sizes are 40 % apart.
    private const double SameSizeFraction = 0.1;

    private const string SizeSource = "common practice, no source: barrel, die and conductor of one size; 2/0 AWG counts as 70 mm²";

    public CheckDescription Description { get; } = new(
        "lug-fits-cable",
        "Lug is made for its conductor",
        "The conductor that a ring's barrel is made for against the core in it, at batteries and wherever one end of the cable tells it.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        foreach (Cable cable in view.Boat.All<Cable>())
        {
            Lug[] lugs = [.. cable.Cores.SelectMany(core => new[] { new Lug(core, core.From, core.FromEnd, "fromEnd"), new Lug(core, core.To, core.ToEnd, "toEnd") }).Where(lug => lug.End is { Means: TerminationMeans.Ring or TerminationMeans.Fork })];
            Lug[] asked = [.. lugs.Where(lug => lug.End!.LugMm2 is not null || view.Boat.Find(lug.At.Part) is BatteryBank || lugs.Any(other => other.End!.LugMm2 is not null))];
            if (asked.Length > 0)
            {
                yield return Judge(view, cable, asked);
            }
        }
    }

    private sealed record Lug(Core Core, Terminal At, Termination? End, string Field);

    private Finding Judge(ElectricsView view, Cable cable, Lug[] lugs)
    {
        double areaMm2 = cable.AreaMm2.Value;
        Lug[] wrong = [.. lugs.Where(lug => lug.End!.LugMm2 is { } mm2 && !(Math.Abs(mm2 - areaMm2) <= SameSizeFraction * areaMm2))], untold = [.. lugs.Where(lug => lug.End!.LugMm2 is null)];
        ImmutableArray<FindingInput> inputs = [.. lugs.Select(lug => new FindingInput(cable.Id, $"cores/{lug.Core.Id}/{lug.Field}/lugMm2", IsMissing: lug.End!.LugMm2 is null))];
        if (wrong.Length == 0 && untold.Length > 0)
        {
            return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: what the lug at {Where(view, untold[0])} is made for is not known"), [.. inputs.Where(input => input.IsMissing)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            Verdict = wrong.Length > 0 ? Verdict.Fails : Verdict.Holds,
            Headline = wrong.Length > 0
                ? Sentence.Of($"{cable.Title}, {Mm2(areaMm2)}: the lug at {Where(view, wrong[0])} is made for {Mm2(wrong[0].End!.LugMm2!.Value)}, {(wrong[0].End!.LugMm2 > areaMm2 ? "and does not close on it" : "and strands were cut or left out")}")
                : Sentence.Of($"{cable.Title}, {Mm2(areaMm2)}: its {(lugs.Length == 1 ? "lug is" : $"{lugs.Length} lugs are")} made for it"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Conductor", "", Mm2(areaMm2), cable.AreaMm2.Method ?? "as typed"),
                .. lugs.Select(lug => new WorkingLine($"Lug at {Where(view, lug)}", lug.End!.LugMm2 is null ? "not given" : "made for", lug.End.LugMm2 is { } mm2 ? Mm2(mm2) : null, "as stamped on it")),
                new WorkingLine("May differ by", "", Fraction(SameSizeFraction), SizeSource),
            ],
            Inputs = inputs,
        };
    }

    private static string Where(ElectricsView view, Lug lug) => $"{view.Boat.Find(lug.At.Part)?.Title ?? lug.At.Part}, {lug.At.Name}";
}
