using System.Collections.Immutable;
using Orlop.Boat.Topology;

namespace Orlop.Review.Findings;

/// <summary>What an alteration does to a finding. The order is that of the screen.</summary>
public enum Change
{
    /// <summary>With the alteration it fails in a condition in which it did not, whether it was tight, held, was unknown or was not there; or it is tight and was in no trouble.</summary>
    NewTrouble,

    /// <summary>It failed and fails by more, or was tight and is tighter.</summary>
    Worse,

    /// <summary>It cannot be told with the alteration, and could before or was not there.</summary>
    Unknown,

    /// <summary>It fails, cannot be told or is tight as before.</summary>
    AsBefore,

    /// <summary>It was in trouble and is less so or no more.</summary>
    Better,

    /// <summary>It holds.</summary>
    Holds,

    /// <summary>What it was about is gone.</summary>
    Gone,
}

/// <summary>The findings of one check on one thing over all conditions, the worst first.</summary>
public sealed record FindingGroup(Finding Worst, ImmutableArray<Finding> All);

/// <summary>One check on one thing, as built and as altered.</summary>
/// <param name="Before">As built; null where the thing is new.</param>
/// <param name="After">As altered; null where the thing is gone. In a review without an alteration the same as <paramref name="Before"/>.</param>
public sealed record PairedFinding(string CheckId, string SubjectId, Change Change, FindingGroup? Before, FindingGroup? After)
{
    /// <summary>The one to show: as altered, or as built where there is no other.</summary>
    public Finding Shown => (After ?? Before)!.Worst;

    /// <summary>It is about this thing, an element of it, or a pair that the thing belongs to.</summary>
    public bool IsAbout(string thingId) => ElementIds.ThingOf(SubjectId) == thingId || Shown.OtherSubjectId == thingId;
}
