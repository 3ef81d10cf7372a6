using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The step in which the points that are to be proved dead are read while they are still live.</summary>
internal static class ReadBefore
{
    /// <summary>It stands where live points are measured.</summary>
    public static Caution Live { get; } = new(CautionKind.Battery, ReadBeforeWords.Caution);

    /// <summary>The step before the first opening; null where nothing is opened or nothing is to be read.</summary>
    public static WorkStep? Of(PackScope scope, WorkIsolation isolation, IsolationResult plan, ImmutableArray<PartProofs> parts)
    {
        LiveBefore points = LiveBefore.Of(scope.Whole, plan, !isolation.MinusFirst.IsEmpty, parts.SelectMany(part => part.Points));
        return points.Read.IsEmpty ? null : new WorkStep
        {
            Key = "read-before:all",
            Kind = StepKind.Isolate,
            Text = Sentence.Of($"{ReadBeforeWords.Head}: {points.Read.Length} {(points.Read.Length == 1 ? "point" : "points")}."),
            Details =
            [
                .. points.Read.Select(proof => ReadBeforeWords.Reads(PartProofs.Between(scope, isolation, proof), proof, LiveBefore.MustGive(isolation.Boat, scope.WholeWiring, proof), PartProofs.Reach(scope, isolation, proof))),
                .. points.Covered.Select(proof => ReadBeforeWords.Covered(PartProofs.Between(scope, isolation, proof))),
                .. ReadBeforeWords.Notes.Select(note => Sentence.Of($"{note}")),
            ],
            WriteDown = new WriteDown("V", ReadingCount: points.Read.Length)
            {
                Accepts = [.. points.Read.Select(proof => LiveVoltage.Before(proof, SourcesOf(scope, isolation, proof), !LiveBefore.MustGive(isolation.Boat, scope.WholeWiring, proof).IsEmpty) with { Name = PartProofs.Between(scope, isolation, proof) })],
            },
            Cautions = [Live],
            About = [scope.Alteration.Id],
        };
    }

    private static IEnumerable<Part> SourcesOf(PackScope scope, WorkIsolation isolation, ProvingPoint proof) =>
        new[] { proof.Node, proof.OtherNode }.OfType<string>().SelectMany(node => PointVoltage.At(isolation.Boat, scope.WholeWiring, node).Sources).Distinct();

    /// <summary>What a proof says of the reading before; empty where nobody knows what stood there.</summary>
    public static string Told(PackScope scope, WorkIsolation isolation, IsolationResult plan, ProvingPoint proof) =>
        ReadBeforeWords.Told(proof, LiveBefore.IsLive(plan, !isolation.MinusFirst.IsEmpty, proof), LiveBefore.IsMains(scope.Whole, proof));
}
