using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// What each point that is to be proved dead reads while it is still live: a dead reading is worth something only where the same probes on the same metal showed a voltage before (common
/// practice, no source).
/// </summary>
internal static class ReadBefore
{
    /// <summary>It stands where live points are measured.</summary>
    public static Caution Live { get; } = new(CautionKind.Battery,
        "These points are live, and what feeds them can weld a probe to them. Meter on DC volts, leads in its volts sockets, never in its current socket; guards on the probes, one point at a time, one hand where you can; rings and watch off. No cover comes off anything that carries mains voltage (common practice, no source).");

    /// <summary>The step before the first opening; null where nothing is opened or nothing is to be read.</summary>
    public static WorkStep? Of(PackScope scope, WorkIsolation isolation, IsolationResult plan, ImmutableArray<PartProofs> parts)
    {
        ImmutableArray<ProvingPoint> points = [.. parts.SelectMany(part => part.Points).Where(proof => IsLiveBefore(isolation, plan, proof)).DistinctBy(proof => (proof.Node, proof.OtherNode))];
        ImmutableArray<ProvingPoint> read = [.. points.Where(proof => !IsMains(scope, proof))], covered = [.. points.Where(proof => IsMains(scope, proof))];
        return read.IsEmpty ? null : new WorkStep
        {
            Key = "read-before:all",
            Kind = StepKind.Isolate,
            Text = Sentence.Of($"Before anything is opened, read with the meter at each point that is to be proved dead, and note it: {read.Length} {(read.Length == 1 ? "point" : "points")}."),
            Details =
            [
                .. read.Select(proof => Sentence.Of($"{PartProofs.Between(scope, isolation, proof)}, on {ProvingWords.Setting(proof.IsAc)}: about {new Amount(proof.NominalV!.Value, "V")}{Running(scope, isolation, proof)}.{PartProofs.Reach(scope, isolation, proof)}")),
                .. covered.Select(proof => Sentence.Of($"{PartProofs.Between(scope, isolation, proof)}: mains voltage behind a cover that stays on while it is live. It is not read now; a licensed person may.")),
                Sentence.Of($"A point that cannot be reached before something is opened or taken off: write “covered”. What proves it then is only the meter, tried on a live point before and after."),
                Sentence.Of($"The battery's voltage of the day is what counts: all its points read alike. One that reads nothing is behind an open switch or a pulled fuse, or the probes do not touch bright metal: find out which. One that reads far otherwise: stop, the drawing is wrong."),
            ],
            WriteDown = new WriteDown("V", ReadingCount: read.Length),
            Cautions = [Live],
            About = [scope.Alteration.Id],
        };
    }

    /// <summary>What a proof says of the reading before; empty where nobody knows what stood there.</summary>
    public static string Told(PackScope scope, WorkIsolation isolation, IsolationResult plan, ProvingPoint proof) => ProvingWords.Before(proof.NominalV) switch
    {
        "" => "",
        string told when !IsLiveBefore(isolation, plan, proof) => told,
        string told when IsMains(scope, proof) => $"{told}, not read then: covered",
        string told => $"{told}: compare with what you noted before anything was opened",
    };

    private static bool IsLiveBefore(WorkIsolation isolation, IsolationResult plan, ProvingPoint proof) =>
        proof.NominalV > 0 && (!plan.Openings.IsEmpty || !isolation.MinusFirst.IsEmpty);

    private static bool IsMains(PackScope scope, ProvingPoint proof) => proof.IsAc != false || proof.NominalV >= Cautions.LicensedFromV
        || new[] { proof.Node, proof.OtherNode }.OfType<string>().Any(node => scope.Whole.Find<Part>(Boat.Topology.ElementIds.ThingOf(node)) is { } part && Cautions.IsMains(part) && part is not Inverter);

    // With everything off only a battery gives.
    private static string Running(PackScope scope, WorkIsolation isolation, ProvingPoint proof)
    {
        Part[] sources = [.. new[] { proof.Node, proof.OtherNode }.OfType<string>().SelectMany(node => PointVoltage.At(isolation.Boat, scope.WholeWiring, node).Sources).Distinct()];
        return sources.Length == 0 || sources.Any(source => source is BatteryBank) ? "" : $" while {SentenceText.Listed(sources.Select(source => source.Title))} gives, else nothing";
    }
}
