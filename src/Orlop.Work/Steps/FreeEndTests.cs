using System.Collections.Immutable;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Ends;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The tests that want both ends of a cable free: they stand before anything is connected, and name what must be lifted first.</summary>
internal static class FreeEndTests
{
    /// <summary>Least insulation resistance between poles and to the hull, nothing connected (common practice, no source).</summary>
    public const double LeastInsulationOhm = 100_000;

    /// <summary>A core counts as joined from end to end below this on a meter's ohm range, leads subtracted (common practice, no source). It says nothing of a crimp, whose fault is far below it.</summary>
    public const double JoinedBelowOhm = 0.5;

    private static AcceptedReading IsJoined { get; } = new("Ohm", "Ω")
    {
        Least = -JoinedBelowOhm,
        Most = JoinedBelowOhm,
        WhenBelow = "a core without voltage reads no less than nothing. Stop: prove it dead again, then look at the meter's leads.",
        WhenAbove = "the core is not joined from end to end: broken, not home in its terminal, another core at the far end, or a probe off its metal. Connect nothing before it is found.",
    };

    private static AcceptedReading IsInsulated { get; } = new("Ohm", "kΩ")
    {
        Least = LeastInsulationOhm,
        WhenBelow = "something still joins them: an end that touches or is not lifted, strands across, a crushed or wet cable, a screw through it. Connect nothing before it is found.",
    };

    /// <summary>Of the cables that are run or changed: an end that is made anew for a device leaves the other end of its cable where it is.</summary>
    public static IEnumerable<WorkStep> Of(PackScope scope, ImmutableArray<CableEnd> all)
    {
        ImmutableArray<CableEnd> ends = [.. all.Where(end => end.ForDevice is null)];
        if (ends.IsEmpty)
        {
            yield break;
        }

        ImmutableArray<string> cables = [.. ends.Select(end => end.CableId).Distinct(StringComparer.Ordinal)];
        ImmutableArray<Sentence> joined = [.. Joined(scope, ends)];
        yield return new WorkStep
        {
            Key = "test:continuity",
            Kind = StepKind.TestFree,
            Text = Sentence.Of($"Joined or not, with no end connected: each core from end to end; joined below {new Amount(JoinedBelowOhm, "Ohm")} with the meter's leads subtracted."),
            Details =
            [
                .. joined,
                Sentence.Of($"With a long lead, or two cores clipped together at the far end; take the clip off again."),
                Sentence.Of($"This shows only that the conductor is joined. It says nothing of the crimps: a ruined one passes too. The millivolt readings under load, at the end, judge those."),
                Sentence.Of($"{string.Join("; ", cables.Select(scope.Words.Title))}."),
            ],
            WriteDown = new WriteDown("Ω", "The highest") { Accepts = [IsJoined] },
            About = cables,
        };
        yield return new WorkStep
        {
            Key = "test:insulation",
            Kind = StepKind.TestFree,
            Text = Sentence.Of($"Insulation, with no end connected: between the cores, and from each core to the hull, at least {(int)(LeastInsulationOhm / 1000)} kΩ."),
            Details =
            [
                .. joined.IsEmpty ? [] : new[] { Sentence.Of($"The ends lifted for the last step are still off: a minus that is bonded to the hull cannot pass this.") },
                Sentence.Of($"With a meter's ohm range. Never an insulation tester with electronics connected."),
            ],
            WriteDown = new WriteDown("kΩ", "The lowest") { Accepts = [IsInsulated] },
            Cautions = Cautions.TouchesMains(scope) ? [Cautions.Mains] : [],
            About = cables,
        };
    }

    // What is on its terminals at this step: ends of an old cable that stay as they are, and cables that are recorded as built.
    private static IEnumerable<Sentence> Joined(PackScope scope, ImmutableArray<CableEnd> ends)
    {
        foreach (CableEnd end in ends.Where(end => end.IsKept && end.BuiltOn is null))
        {
            yield return Sentence.Of($"Lift first, and put back when it is connected: {scope.Words.Title(end.CableId)}, {PartWords.CoreName(end.CoreId)}, off {end.Where}.");
        }

        ImmutableArray<string> built = [.. ends.Where(end => end.BuiltOn is not null).Select(end => end.CableId).Distinct(StringComparer.Ordinal)];
        if (!built.IsEmpty)
        {
            yield return Sentence.Of($"Recorded as built, so connected: {string.Join("; ", built.Select(scope.Words.Title))}. Lift both ends first, or leave it out and say so.");
        }
    }
}
