using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Batteries whose posts stay live in a space where the work is.</summary>
internal static class LiveNearby
{
    /// <summary>Those in a space where something is fitted, moved, taken out or run; none where nothing has to be made dead.</summary>
    public static ImmutableArray<BatteryBank> Of(PackScope scope, WorkIsolation isolation)
    {
        HashSet<string> spaces = [.. scope.Changes.Where(change => change.Kind != ChangeKind.Record)
            .SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Thing>().SelectMany(SpacesOf)];
        return isolation.Nodes.IsEmpty ? [] : [.. scope.Whole.All<BatteryBank>().Where(bank => bank.Space is { } space && spaces.Contains(space))];
    }

    /// <summary>The step that covers them.</summary>
    public static WorkStep Step(PackScope scope, BatteryBank bank) => new()
    {
        Key = $"cover:{bank.Id}",
        Kind = StepKind.Isolate,
        Text = Sentence.Of($"Cover what stays live where you work: both posts of {scope.Words.Located(bank.Id)}, and every stud or fuse that is wired to them with no switch between."),
        Details =
        [
            Sentence.Of($"Insulating caps or a rubber mat, tied down; nothing of metal is laid down above them. The covers come off last, when all is measured (common practice, no source)."),
        ],
        Cautions = [Cautions.BatteryNear],
        About = [bank.Id],
    };

    private static IEnumerable<string> SpacesOf(Thing thing) => thing switch
    {
        Part { Space: { } space } => [space],
        Gear { Space: { } space } => [space],
        Cable cable => cable.Run.Select(leg => leg.Space).OfType<string>(),
        _ => [],
    };
}
