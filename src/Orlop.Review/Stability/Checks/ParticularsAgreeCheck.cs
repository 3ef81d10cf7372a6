using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Length, beam and depth of the particulars are those of the hull that she is floated by.</summary>
public sealed class ParticularsAgreeCheck : ICheck<StabilityView>
{
    private const double MostOffFraction = 0.02;
    private const double Deviations = 2;

    private sealed record Compared(string Name, string Field, Quantity Typed, double HullM, string Used)
    {
        public double OffM => Math.Abs(Typed.Value - HullM);

        public double AllowedM => Math.Max(MostOffFraction * HullM, Deviations * (Typed.PlusMinus ?? 0));
    }

    public CheckDescription Description { get; } = new(
        "particulars-agree",
        "Particulars agree with the hull",
        "Fails where length over all, greatest breadth or depth amidships as typed in the particulars and that of the hull's lines are more than 2 % apart, and more than twice the typed value's ± (our rule, no source): the two are used for different things, and one of them is wrong. Nothing where they agree, or where only one is given.",
        []);

    public IEnumerable<Finding> Run(StabilityView view)
    {
        if (view.Boat.Particulars is not { } particulars || HullSize.OfLines(view.Boat) is not { } hull)
        {
            yield break;
        }

        Compared[] off =
        [
            .. new[]
            {
                Of("Length over all", "lengthOverAllM", particulars.LengthOverAllM, hull.LengthM, "the typed one by rules that ask for her length, by the drift since a test and by drawings"),
                Of("Greatest breadth", "beamM", particulars.BeamM, hull.BreadthM, "the typed one by roll periods and the motions that rest on them"),
                Of("Depth amidships", "depthM", particulars.DepthM, hull.DepthM, "the typed one only to begin a hull or a space from"),
            }.OfType<Compared>().Where(one => !(one.OffM <= one.AllowedM)),
        ];
        if (off.Length == 0)
        {
            yield break;
        }

        Compared worst = off.MaxBy(one => one.OffM / one.AllowedM)!;
        yield return new Finding
        {
            CheckId = Description.Id,
            SubjectId = particulars.Id,
            Verdict = Verdict.Fails,
            UseFraction = Verdicts.UseOf(worst.OffM, worst.AllowedM),
            Headline = Sentence.Of($"{worst.Name} is {M(worst.Typed.Value)} in the particulars and {M(worst.HullM)} by the hull's lines: one of them is wrong{More(off.Length - 1)}"),
            Working =
            [
                .. off.SelectMany(Lines),
                new WorkingLine("What floats her", "displacement, draughts, trim, heel, GM and levers go by the lines alone", null, ""),
                FindingLines.Use(worst.OffM, worst.AllowedM),
            ],
            Inputs = [.. off.Select(one => new FindingInput(particulars.Id, one.Field)), new FindingInput(view.Boat.All<HullLines>().First().Id, "stations")],
            Caution = Caution,
        };
    }

    private static Compared? Of(string name, string field, Quantity? typed, double hullM, string used) => typed is null ? null : new Compared(name, field, typed, hullM, used);

    private static WorkingLine[] Lines(Compared one) =>
    [
        new($"{one.Name}, particulars", "as typed", M(one.Typed.Value), one.Typed.Method ?? ""),
        new($"{one.Name}, hull", "from the points of its lines", M(one.HullM), ""),
        new("Apart", Formula.Of("{0} − {1}", v => v[0] - v[1], Math.Max(one.Typed.Value, one.HullM), Math.Min(one.Typed.Value, one.HullM)), M(one.OffM), ""),
        new("May be apart", "2 % of the hull's, or twice the ± of what is typed where that is more", M(one.AllowedM), "our rule, no source"),
        new("Used", one.Used, null, ""),
    ];

    private static string More(int others) => others switch { 0 => "", 1 => "; another is apart too", _ => FormattableString.Invariant($"; {others} others are apart too") };
}
