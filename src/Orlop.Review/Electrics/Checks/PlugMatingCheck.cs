using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No two plugs within reach of each other mate that never should.</summary>
public sealed class PlugMatingCheck : ICheck<ElectricsView>
{
    // Voltages closer than this share are the same system.
    private const double SameVoltageFraction = 0.15;

    public CheckDescription Description { get; } = new(
        "plugs-that-mate",
        "No plug fits where it must not",
        "For any two plugs that are pulled apart in use, have the same keying, and whose loose lead reaches the other's socket: their poles must be arranged alike, their voltages must be the same, and the device ahead of a socket must not be bigger than the other plug may carry.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        List<PlugAndSocket> plugs = [.. view.Boat.All<PlugAndSocket>().Where(plug => plug.PartsInUse)];
        foreach (PlugAndSocket plug in plugs)
        {
            if (plugs.Count > 1 && plugs.Where(other => other.Keying is null && (plug.Keying is null || other.Id != plug.Id)).FirstOrDefault() is { } unkeyed)
            {
                PlugAndSocket unknown = plug.Keying is null ? plug : unkeyed;
                yield return Unknown(Description, plug.Id, null, Sentence.Of($"{plug.Title}: whether it mates with another is not known, for {unknown.Title} does not say what it mates with"), [new FindingInput(unknown.Id, "keying", IsMissing: true)]);
                if (plug.Keying is null)
                {
                    continue;
                }
            }

            PlugAndSocket[] twins = [.. plugs.Where(other => other.Id != plug.Id && KeyingWords.AreSame(plug.Keying, other.Keying))];
            foreach (PlugAndSocket other in twins.Where(other => string.CompareOrdinal(plug.Id, other.Id) < 0))
            {
                yield return OfPair(view, plug, other);
            }

            if (plugs.FirstOrDefault(other => other.Id != plug.Id && KeyingWords.MayBeSame(plug.Keying, other.Keying)) is { } near)
            {
                yield return Unknown(Description, plug.Id, null, Sentence.Of($"{plug.Title}: whether it mates with {near.Title} is not known, for “{plug.Keying}” and “{near.Keying}” are nearly the same words"), [new FindingInput(plug.Id, "keying", IsMissing: true)]);
            }
            else if (twins.Length == 0)
            {
                yield return Fits(plug, Sentence.Of($"{plug.Title} fits no other socket on board"),
                    [new WorkingLine("Sockets of the same keying", $"none among {plugs.Count - 1} other {(plugs.Count == 2 ? "plug" : "plugs")}", null, "")]);
            }
        }
    }

    // Either lead may be the one that reaches; the pair is as bad as the worse of the two.
    private Finding OfPair(ElectricsView view, PlugAndSocket first, PlugAndSocket second) =>
        new[] { Judge(view, first, second), Judge(view, second, first) }.MaxBy(finding => Verdicts.Weight(finding.Verdict))!
            with
        { SubjectId = first.Id, OtherSubjectId = second.Id };

    private Finding Judge(ElectricsView view, PlugAndSocket plug, PlugAndSocket other)
    {
        if (plug.Place is null || other.Place is null || plug.LooseLeadM is not { } lead)
        {
            FindingInput missing = plug.LooseLeadM is null ? new(plug.Id, "looseLeadM", IsMissing: true) : new(plug.Place is null ? plug.Id : other.Id, "place", IsMissing: true);
            return Unknown(Description, plug.Id, null, Sentence.Of($"{plug.Title} mates with {other.Title}; whether it reaches there is not known"), [missing]);
        }

        double distance = plug.Place.DistanceM(other.Place);
        if (distance > lead.Value)
        {
            return Fits(plug, Sentence.Of($"{plug.Title} would mate with {other.Title}, but its lead of {M(lead.Value)} does not reach the {M(distance)} to it"),
                [new WorkingLine("Distance between the sockets", "straight", M(distance), ""), new WorkingLine("Loose lead", "", M(lead.Value), "as typed")]);
        }

        double? here = VoltageAt(view, plug), there = VoltageAt(view, other);
        bool isOtherArrangement = plug.Arrangement is not null && other.Arrangement is not null && !KeyingWords.AreSame(plug.Arrangement, other.Arrangement);
        bool isOtherVoltage = here is { } plugV && there is { } otherV && Math.Abs(plugV - otherV) > SameVoltageFraction * Math.Max(plugV, otherV);
        FeedLimit feed = view.Conditions.Select(condition => view.ReachIn(condition).FeedOf(view.Wiring.Find(other.Id)!)).DefaultIfEmpty(FeedLimit.None).MaxBy(each => each.MostA)!;
        bool isTooStrong = plug.RatedA is { } rated && feed.MostA > rated.Value;
        WorkingLine[] working =
        [
            new("Keying and arrangement", isOtherArrangement ? $"{plug.Keying}; {plug.Arrangement} here, {other.Arrangement} there" : $"{plug.Keying}; {plug.Arrangement}: the same on both", null, ""),
            new("Distance between the sockets", "straight", M(distance), ""),
            new("Loose lead", "", M(lead.Value), "as typed"),
            VoltageLine(plug, here),
            VoltageLine(other, there),
            FeedWords.Line(view, feed) with { What = $"Device ahead of {other.Title}" },
        ];
        FindingInput[] untold =
        [
            .. new[] { plug, other }.Where(each => each.Arrangement is null).Select(each => new FindingInput(each.Id, "arrangement", IsMissing: true)),
            .. plug.RatedA is null ? new[] { new FindingInput(plug.Id, "ratedA", IsMissing: true) } : [],
            .. new[] { (Plug: plug, Volts: here), (Plug: other, Volts: there) }.Where(each => each.Volts is null).Select(each => new FindingInput(each.Plug.Id, "id")),
        ];
        if (!isOtherArrangement && !isOtherVoltage && !isTooStrong && (untold.Length > 0 || view.Conditions.IsEmpty))
        {
            return Unknown(Description, plug.Id, null, Sentence.Of($"{plug.Title} also mates with {other.Title}; whether it bears that is not known"), [.. untold]) with { Working = [.. working] };
        }

        if (!isOtherArrangement && !isOtherVoltage && !isTooStrong)
        {
            return Fits(plug, Sentence.Of($"{plug.Title} also fits {other.Title}, which has the same voltage and no bigger a fuse than it bears"), working);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = plug.Id,
            Verdict = Verdict.Fails,
            Headline = isOtherArrangement
                ? Sentence.Of($"{plug.Title} also fits {other.Title}, {M(distance)} away, whose poles are arranged otherwise: {other.Arrangement}")
                : isOtherVoltage
                ? Sentence.Of($"{plug.Title} ({V(here!.Value)}) also fits {other.Title} ({V(there!.Value)}), {M(distance)} away")
                : Sentence.Of($"{plug.Title} also fits {other.Title}, {M(distance)} away, where the fuse is bigger than it bears"),
            Working = [.. working],
            Inputs = [new FindingInput(plug.Id, "keying"), new FindingInput(other.Id, "keying"), new FindingInput(plug.Id, "looseLeadM")],
        };
    }

    // Sources in series add: no nominal voltage of one of them tells what is there.
    private static double? VoltageAt(ElectricsView view, PlugAndSocket plug) =>
        SystemVoltage.InSeries(view, view.SourcesReaching(plug)) is null ? SystemVoltage.Of(view, plug) : null;

    private static WorkingLine VoltageLine(PlugAndSocket plug, double? volts) => volts is { } known
        ? new WorkingLine($"Voltage of {plug.Title}", "", V(known), "nominal of what feeds it")
        : new WorkingLine($"Voltage of {plug.Title}", "not known: nothing feeds it, or sources in series do", null, "the wiring as drawn");

    private Finding Fits(PlugAndSocket plug, Sentence headline, WorkingLine[] working) => new()
    {
        CheckId = Description.Id,
        SubjectId = plug.Id,
        Verdict = Verdict.Holds,
        Headline = headline,
        Working = [.. working],
        Inputs = [new FindingInput(plug.Id, "keying")],
    };
}
