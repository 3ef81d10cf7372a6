using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Drawings.Changes;

/// <summary>What becomes of a thing on a drawing.</summary>
internal enum ChangeKind { Kept, Added, Gone, Altered }

/// <summary>A thing as it was and as it becomes; one of the two is null where it is added or taken out.</summary>
internal sealed record ThingChange(Thing? Was, Thing? Becomes)
{
    /// <summary>The thing to show: as it becomes, or as it was where it is taken out.</summary>
    internal Thing Shown => Becomes ?? Was!;

    internal string Id => Shown.Id;

    internal ChangeKind Kind => Was is null ? ChangeKind.Added
        : Becomes is null ? ChangeKind.Gone
        : Was.Equals(Becomes) ? ChangeKind.Kept
        : ChangeKind.Altered;

    /// <summary>CSS class: added and altered solid blue, taken out dashed grey.</summary>
    internal string Style => StyleOf(Kind);

    internal static string StyleOf(ChangeKind kind) => kind switch
    {
        ChangeKind.Added or ChangeKind.Altered => "added",
        ChangeKind.Gone => "gone",
        _ => "",
    };

    /// <summary>Words that end the accessible name.</summary>
    internal string Remark => Kind switch
    {
        ChangeKind.Added => ", added",
        ChangeKind.Altered => ", changed",
        ChangeKind.Gone => ", taken out",
        _ => "",
    };

    /// <summary>Every thing of both boats, in the order of the boat as built, then what is added. Alterations are not things to draw.</summary>
    internal static IReadOnlyList<ThingChange> Between(BoatModel asBuilt, BoatModel? altered)
    {
        if (altered is null)
        {
            return [.. asBuilt.Things.Where(IsDrawn).Select(thing => new ThingChange(thing, thing))];
        }

        return
        [
            .. asBuilt.Things.Where(IsDrawn).Select(thing => new ThingChange(thing, altered.Find(thing.Id))),
            .. altered.Things.Where(thing => IsDrawn(thing) && asBuilt.Find(thing.Id) is null).Select(thing => new ThingChange(null, thing)),
        ];
    }

    private static bool IsDrawn(Thing thing) => thing is Part or Cable or Link or Gear or Space or Way or Compass or Tank or Deadweight or HullOpening;
}
