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
        LiveBefore points = LiveBefore.Of(scope.Before, scope.WiringBefore, plan, !isolation.MinusFirst.IsEmpty, parts.SelectMany(part => part.Points));
        return points.Read.IsEmpty ? null : new WorkStep
        {
            Key = "read-before:all",
            Kind = StepKind.Isolate,
            Text = Sentence.Of($"{ReadBeforeWords.Head}: {points.Read.Length} {(points.Read.Length == 1 ? "point" : "points")}{ReadBeforeWords.With(scope.Words, points.PutOn)}."),
            Details =
            [
                .. points.Read.Select(proof => ReadBeforeWords.Reads(PartProofs.Between(scope, isolation, proof), proof, LiveBefore.MustGive(scope.Before, scope.WiringBefore, proof), LiveBefore.OnFor(scope.Before, scope.WiringBefore, proof).Select(scope.Words.Title), PartProofs.Reach(scope, isolation, proof))),
                .. points.Covered.Select(proof => ReadBeforeWords.Covered(PartProofs.Between(scope, isolation, proof))),
                .. ReadBeforeWords.HowPutOn(points.PutOn).Select(how => Sentence.Of($"{how}")),
                .. ReadBeforeWords.Notes.Select(note => Sentence.Of($"{note}")),
            ],
            WriteDown = new WriteDown("V", ReadingCount: points.Read.Length)
            {
                Accepts = [.. points.Read.Select(proof => LiveVoltage.Before(proof, SourcesOf(scope, proof), !LiveBefore.MustGive(scope.Before, scope.WiringBefore, proof).IsEmpty) with { Name = PartProofs.Between(scope, isolation, proof), At = PartProofs.At(isolation, proof) })],
            },
            PutOn = points.PutOn,
            Cautions = [Live],
            About = [scope.Alteration.Id],
        };
    }

    private static IEnumerable<Part> SourcesOf(PackScope scope, ProvingPoint proof) =>
        new[] { proof.Node, proof.OtherNode }.OfType<string>().SelectMany(node => PointVoltage.At(scope.Before, scope.WiringBefore, node).Sources).Distinct();

    /// <summary>What a proof says of the reading before; empty where nobody knows what stood there.</summary>
    public static string Told(PackScope scope, WorkIsolation isolation, IsolationResult plan, ProvingPoint proof) =>
        ReadBeforeWords.Told(proof, LiveBefore.IsFed(scope.Before, scope.WiringBefore, proof), LiveBefore.IsLive(scope.Before, scope.WiringBefore, plan, !isolation.MinusFirst.IsEmpty, proof), LiveBefore.IsMains(scope.Before, proof));
}
