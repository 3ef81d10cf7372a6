using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Ways;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Every cable is long enough to reach from end to end.</summary>
public sealed class CableReachCheck : ICheck<ElectricsView>
{
    // A run is added up from stretches that were each rounded.
    private const double RoundingFraction = 0.02;
    private const double Deviations = 2;

    // Of a length that tells no ±; the tool's own rule, no source.
    private const double RouteToleranceM = 0.05;

    private const string Geometry = "no way is shorter than the straight one";

    public CheckDescription Description { get; } = new(
        "cable-reaches",
        "Cable reaches both its ends",
        "The straight distance between the things that a core ends at, and the stretches of its run added up, against its length one way, tails included. A terminal may sit anywhere on its thing, so the distance is that between the boxes around the two; a thing without a size counts as its centre. A length that was found along ways is held against what those ways measure from end to end now, and fails where it is shorter by more than two of its ±, or by 0.05 m where it has none (a rule of this tool); it is unknown where the figure was typed over or no way leads along them any more.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        where cable.Cores.Count > 0
        select Judge(view, cable);

    private Finding Judge(ElectricsView view, Cable cable)
    {
        if (RunBeyondLength(cable) is { } beyond)
        {
            return beyond;
        }

        if (RoutedLength.IsTold(cable) && Moved(view, cable) is { } moved)
        {
            return moved;
        }

        FindingInput[] missing = [.. cable.Cores.SelectMany(core => MissingOf(view, cable, core)).Distinct()];
        (Core Core, Part From, Part To, double LengthM, double ApartM)[] known =
        [
            .. cable.Cores.Where(core => !MissingOf(view, cable, core).Any())
                .Select(core => (core, view.Boat.Find<Part>(core.From.Part)!, view.Boat.Find<Part>(core.To.Part)!, LengthOf(cable, core)!.Value))
                .Select(of => (of.core, of.Item2, of.Item3, of.Value, PartGap.StraightM(of.Item2, of.Item3)))
                .OrderByDescending(of => of.Item5 - of.Value),
        ];
        bool fails = known.Length > 0 && Verdicts.Of(known[0].ApartM, known[0].LengthM) == Verdict.Fails;
        if (!fails && missing.Length > 0)
        {
            return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: whether it reaches both its ends cannot be told"), [.. missing]);
        }

        (Core core, Part from, Part to, double lengthM, double apartM) = known[0];
        double[] gaps = PartGap.AlongM(from, to);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            Verdict = fails ? Verdict.Fails : Verdict.Holds,
            Headline = fails
                ? Sentence.Of($"{cable.Title} does not reach: it is {M(lengthM)} long, and {from.Title} and {to.Title} are {M(apartM)} apart")
                : Sentence.Of($"{cable.Title} reaches: it is {M(lengthM)} long, and {from.Title} and {to.Title} are {M(apartM)} apart"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine($"One end, core {core.Id}", $"{from.Title}: {PartGap.Where(from)}", null, ""),
                new WorkingLine("Other end", $"{to.Title}: {PartGap.Where(to)}", null, ""),
                new WorkingLine("Straight between them", Formula.Of("√({0} × {0} + {1} × {1} + {2} × {2})", v => Math.Sqrt((v[0] * v[0]) + (v[1] * v[1]) + (v[2] * v[2])), gaps), M(apartM), Geometry),
                new WorkingLine("Length one way", "as it is given", M(lengthM), ""),
                Use(apartM, lengthM),
            ],
            Inputs = [new FindingInput(cable.Id, FieldOf(cable, core)), new FindingInput(from.Id, "place"), new FindingInput(to.Id, "place")],
        };
    }

    // The list of cuts goes by the longer of the two, the circuit by the length: where they disagree, one of them is wrong.
    private Finding? RunBeyondLength(Cable cable)
    {
        Quantity? longest = cable.Cores.Select(core => core.LengthM ?? cable.LengthM).OfType<Quantity>().MaxBy(length => length.Value);
        double runM = cable.Run.Sum(leg => leg.LengthM);
        double mostM = longest is null ? double.PositiveInfinity : (longest.Value * (1 + RoundingFraction)) + (Deviations * (longest.PlusMinus ?? 0));
        return runM <= mostM ? null : new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            Verdict = Verdict.Fails,
            Headline = Sentence.Of($"{cable.Title}: the stretches of its run add up to {M(runM)}, but its length is {M(longest!.Value)}; one of them is wrong"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Stretches of its run", string.Join(" + ", cable.Run.Select(leg => leg.LengthM.ToString("0.###", CultureInfo.InvariantCulture))), M(runM), "as typed"),
                new WorkingLine("Length one way", "as it is given", M(longest.Value), ""),
                Use(runM, longest.Value),
            ],
            Inputs = [new FindingInput(cable.Id, "lengthM"), new FindingInput(cable.Id, "run")],
        };
    }

    // What is cut is the longer of the run and the length.
    private Finding? Moved(ElectricsView view, Cable cable)
    {
        if (view.Memo.Get((view.Boat, cable, Description.Id), () => new Measured(RoutedLength.Of(view.Ways, cable))).Now is not { } now)
        {
            return null;
        }

        double lengthM = Math.Max(cable.LengthM!.Value, cable.Run.Sum(leg => leg.LengthM));
        double mostM = lengthM + (cable.LengthM.PlusMinus is { } deviation ? Deviations * deviation : RouteToleranceM);
        FindingInput[] inputs = [new(cable.Id, "lengthM"), new(cable.Id, "run"), new(now.From.Id, "place"), new(now.To.Id, "place")];
        if (now.LengthM is not { } nowM)
        {
            return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: its ends or its ways have moved since its way was found, and none leads along them now; whether {M(lengthM)} reaches cannot be told"), [.. inputs]);
        }

        if (nowM <= mostM)
        {
            return null;
        }

        return cable.LengthM.Known != Knowledge.Estimated
            ? Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: along its ways it is now {M(nowM)}, and its length is given as {M(lengthM)}; whether it reaches cannot be told"), [.. inputs])
            : new Finding
            {
                CheckId = Description.Id,
                SubjectId = cable.Id,
                Verdict = Verdict.Fails,
                Headline = Sentence.Of($"{cable.Title} does not reach: it is {M(lengthM)} long, and its ends or its ways have moved since; along its ways it is now {M(nowM)}"),
                WorkingWhenAsked = () =>
                [
                    new WorkingLine("Along its ways now", $"from {now.From.Title} to {now.To.Title}, the shortest that takes the ways of its run in their order, with slack", M(nowM), Geometry),
                    new WorkingLine("Length one way", CableRoute.Method, M(lengthM), ""),
                    Use(nowM, lengthM),
                ],
                Inputs = [.. inputs],
            };
    }

    private sealed record Measured(RoutedLength? Now);

    private static IEnumerable<FindingInput> MissingOf(ElectricsView view, Cable cable, Core core)
    {
        if (LengthOf(cable, core) is null)
        {
            yield return new FindingInput(cable.Id, "lengthM", IsMissing: true);
        }

        foreach (string end in new[] { core.From.Part, core.To.Part }.Where(end => view.Boat.Find<Part>(end)?.Place is null))
        {
            yield return new FindingInput(end, "place", IsMissing: true);
        }
    }

    private static double? LengthOf(Cable cable, Core core) =>
        core.LengthM?.Value ?? cable.LengthM?.Value ?? (cable.Run.Count == 0 ? null : cable.Run.Sum(leg => leg.LengthM));

    private static string FieldOf(Cable cable, Core core) => core.LengthM is not null ? "cores" : cable.LengthM is not null ? "lengthM" : "run";
}
