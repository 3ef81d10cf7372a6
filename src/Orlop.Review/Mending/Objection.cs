using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A finding for whose sake a set of changes is not good enough.</summary>
/// <param name="Finding">The finding with the changes.</param>
internal sealed record Objection(Finding Finding)
{
    // What a little more or less current makes no difference to; the time of a fuse goes with a high power of its current.
    private const double ClearUseFraction = 1.15;
    private const double ClearStartFraction = 1.5;

    /// <summary>The check on the temperature of cables that lie together.</summary>
    public const string BundleCheck = "bundle-temperature";

    /// <summary>Checks that read how warm a space gets.</summary>
    private static readonly FrozenSet<string> WarmthChecks = FrozenSet.Create(StringComparer.Ordinal,
        "space-temperature", "charger-output", "charge-temperature", "battery-gas", "conductor-ampacity", BundleCheck, "conductor-protection", "device-carries-load", "part-carries-current", "converter-carries-load",
        "fault-clears", "let-through");

    /// <summary>It may hang on how warm a space gets.</summary>
    public bool IsOfWarmth => WarmthChecks.Contains(Finding.CheckId);

    /// <summary>It is of batteries side by side or in series: only their own leads and fuses bear on it.</summary>
    public bool IsOfStrings => Finding.CheckId.StartsWith("strings-", StringComparison.Ordinal);

    /// <summary>Check and subject.</summary>
    public (string CheckId, string SubjectId) Key => (Finding.CheckId, Finding.SubjectId);

    /// <summary>Ids of the things it is about.</summary>
    public ImmutableArray<string> ThingIds { get; } =
    [
        ElementIds.ThingOf(Finding.SubjectId),
        .. Finding.OtherSubjectId is { } other ? new[] { ElementIds.ThingOf(other) } : [],
        // What lies together in a way is named among what the finding rests on.
        .. Finding.CheckId == BundleCheck ? Finding.Inputs.Select(input => input.ThingId).Distinct() : [],
    ];

    /// <summary>It is about this thing.</summary>
    public bool IsOf(string thingId) => ThingIds.Contains(thingId);

    /// <summary>It is so far beyond its limit that the small change of current which a conductor elsewhere makes does not matter.</summary>
    public bool IsClear => Finding.Verdict == Verdict.Unknown
        || Finding.UseFraction is not { } use || use >= (Finding.CheckId == "start-opens-device" ? ClearStartFraction : ClearUseFraction);
}
