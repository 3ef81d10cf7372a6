using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Batteries whose posts stay live in a space where the work is.</summary>
internal static class LiveNearby
{
    /// <summary>Those in a space where something is fitted, moved, taken out or run, and that are there already; none where nothing has to be made dead.</summary>
    public static ImmutableArray<BatteryBank> Of(PackScope scope, WorkIsolation isolation)
    {
        HashSet<string> spaces = [.. scope.Changes.Where(change => change.Kind != ChangeKind.Record)
            .SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Thing>().SelectMany(SpacesOf)];
        return isolation.Nodes.IsEmpty ? [] : [.. scope.Whole.All<BatteryBank>().Where(bank => bank.Space is { } space && spaces.Contains(space) && !scope.IsNewBattery(bank.Id))];
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

    /// <summary>The step that takes the covers off again.</summary>
    public static WorkStep Off(PackScope scope, BatteryBank bank) => new()
    {
        Key = $"uncover:{bank.Id}",
        Kind = StepKind.HandOver,
        Text = Sentence.Of($"Take off what covered the posts of {scope.Words.Located(bank.Id)} and what is wired to them, now that all is measured."),
        Details = [Sentence.Of($"One at a time, nothing of metal in the hand or above it. What covers them at all times, as their own caps or the lid of their box, goes back on at once. Count caps and mats (common practice, no source).")],
        Cautions = [Cautions.BatteryNear],
        About = [bank.Id],
    };

    /// <summary>What a step says that works on a covered post of one of these things: that its cover comes off for it and goes back; nothing where none of them is covered.</summary>
    public static ImmutableArray<Sentence> AtPosts(PackScope scope, WorkIsolation isolation, IEnumerable<string> thingIds)
    {
        HashSet<string> worked = [.. thingIds];
        return
        [
            .. Of(scope, isolation).Where(bank => worked.Contains(bank.Id))
                .Select(bank => Sentence.Of($"The cover of that one post of {PartWords.Small(bank.Title)} comes off for this and goes back on before anything else is done; the other post stays covered.")),
        ];
    }

    /// <summary>The same by points of the wiring; a minus post whose leads are off is left as it is.</summary>
    public static ImmutableArray<Sentence> AtNodes(PackScope scope, WorkIsolation isolation, IEnumerable<string> nodes) =>
        AtPosts(scope, isolation, nodes.Where(node => !isolation.IsBareMinus(node)).Select(ElementIds.ThingOf));

    private static IEnumerable<string> SpacesOf(Thing thing) => thing switch
    {
        Part { Space: { } space } => [space],
        Gear { Space: { } space } => [space],
        Cable cable => cable.Run.Select(leg => leg.Space).OfType<string>(),
        _ => [],
    };
}
