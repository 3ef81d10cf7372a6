using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Ends;
using Orlop.Work.Loading;
using Orlop.Work.Scope;
using Orlop.Work.Steps;

namespace Orlop.Work.Bring;

/// <summary>What the steps weigh, read, mark and pull with (common practice, no source), held against stock and tools by what their names say.</summary>
internal static class MeasuringLines
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends, WeighingPlan weights)
    {
        ImmutableArray<WorkChange> open = [.. scope.Changes.Where(change => !change.IsBuilt)];
        if (!weights.Weigh.IsEmpty && !open.IsEmpty)
        {
            double? mostKg = weights.Weigh.Max(line => line.MassKg);
            yield return SafetyLines.Line(scope, "scale", mostKg is { } most ? Sentence.Of($"Hanging scale or bathroom scales, for {new Amount(most, "Kg")} and more") : Sentence.Of($"Hanging scale or bathroom scales"), null, "scale");
        }

        if (weights.IsFelt && scope.Alteration.Ticks.All(tick => tick.Step != "freeboards:after"))
        {
            yield return SafetyLines.Line(scope, "hydrometer", Sentence.Of($"Hydrometer, for the density of the water at the freeboards"), null, "hydrometer");
            yield return SafetyLines.Line(scope, "lifejackets", Sentence.Of($"Lifejackets, one for each who reads freeboards from dinghy or pontoon"), null, "lifejacket");
        }

        if (weights.Incline is { } incline && scope.Alteration.Ticks.All(tick => tick.Step != "incline:after"))
        {
            yield return SafetyLines.Line(scope, "pendulums", Sentence.Of($"Two pendulums to incline her by: plumb lines of 1.5 m or more, a bucket of water for each to hang in, battens with millimetres"), null, "pendulum", "plumb");
            yield return SafetyLines.Line(scope, "inclining-weights", incline.MomentKgM is { } moment
                ? Sentence.Of($"Weights to incline her by, in pieces that one can hold and that cannot roll, weighed: {new Amount(Math.Round(moment), "KgM")} of mass times the distance each is moved")
                : Sentence.Of($"Weights to incline her by, in pieces that one can hold and that cannot roll, weighed"), null, "inclining weight");
        }

        if (HeavyLine(scope, open, weights) is { } gear)
        {
            yield return gear;
        }

        if (TrialLifts.Of(scope).Any(change => !change.IsBuilt))
        {
            yield return SafetyLines.Line(scope, "trial-weights", TrialLifts.MostKg(scope) is { } most
                ? Sentence.Of($"Weights for the trial lift, weighed, in pieces: {new Amount(Math.Round(most, 1), "Kg")} together, and a net or sling marked for them")
                : Sentence.Of($"Weights for the trial lift, weighed, in pieces, and a net or sling marked for them: how much is not told"), null, "trial weight", "sling");
        }

        if (open.Any(change => change.Thing is Part or Cable or Link && change.Kind != ChangeKind.Record))
        {
            BringItem lead = SafetyLines.Line(scope, "long-lead", Sentence.Of($"Long meter lead: the two points of a reading may be in two spaces"), null, "probe");
            yield return lead.Takes.IsEmpty ? lead : lead with { Remarks = [Sentence.Of($"Check its length against the steps that ask for it.")] };
        }

        foreach (string colour in cuts.Select(cut => cut.MarkAs).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            yield return SafetyLines.Line(scope, $"mark-{colour}", Sentence.Of($"{colour[..1].ToUpperInvariant()}{colour[1..]} sleeve or tape, to mark both ends of each core of another colour"), null, "tape", "sleeve", "sleeving");
        }

        if (ends.Max(end => end.Pull?.ForceN) is { } forceN)
        {
            yield return SafetyLines.Line(scope, "test-pull", Sentence.Of($"For the test crimps: a vice and a spring balance or hanging scale, to {new Amount(forceN, "N")}; eye protection, and stand aside of the pull"), null, "balance", "scale", "dynamometer");
        }
    }

    // What no number of people lifts by hand: the heaviest tells what the gear must be marked for.
    private static BringItem? HeavyLine(PackScope scope, ImmutableArray<WorkChange> open, WeighingPlan weights)
    {
        (string Title, double MassKg)[] heavy =
        [
            .. open.Where(change => change.Kind is ChangeKind.Remove or ChangeKind.Fit or ChangeKind.Move or ChangeKind.Exchange).Select(change => (change.Thing.Id, change.Thing.Title, MassKg: Lifts.MassOf(change.Thing)?.Value))
                .Concat(open.IsEmpty ? [] : weights.Weigh.Select(line => (Id: line.ThingId, line.Title, line.MassKg)))
                .Where(thing => Lifts.NeedsGear(thing.MassKg)).DistinctBy(thing => thing.Id).Select(thing => (thing.Title, thing.MassKg!.Value)),
        ];
        if (heavy.Length == 0)
        {
            return null;
        }

        BringItem line = SafetyLines.Line(scope, "lifting-gear", Sentence.Of($"Lifting gear marked for {new Amount(heavy.Max(thing => thing.MassKg), "Kg")} and more, with sling and shackles: {string.Join(", ", heavy.Select(thing => thing.Title))}; nobody lifts {(heavy.Length == 1 ? "it" : "them")} by hand, however many they are"), null, "tackle", "hoist", "lever block", "chain block");
        return line.Takes.IsEmpty ? line : line with { Remarks = [Sentence.Of($"See that it is marked for the load, and that what it hangs from is.")] };
    }
}
