using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Readings;

/// <summary>How a reading stands against what the boat should give.</summary>
public enum ReadingStanding
{
    /// <summary>It cannot be held against anything. The default: nothing agrees by being left out.</summary>
    CannotCompare,

    /// <summary>Within the accepted band.</summary>
    Within,

    /// <summary>Below the accepted band.</summary>
    Below,

    /// <summary>Above the accepted band.</summary>
    Above,

    /// <summary>Its sign is against the prediction: what that may mean stands beside it.</summary>
    Turned,
}

/// <summary>A reading beside its prediction.</summary>
/// <param name="Expected">Null when it cannot be predicted.</param>
/// <param name="WhyNot">Why it cannot be compared, or what its sign may mean; null when neither.</param>
/// <param name="Meant">A thousand times or a thousandth of what was read, where that alone is in the accepted band: one unit was perhaps taken for another. Else null.</param>
/// <param name="Missing">The input that a comparison waits for; null where it waits for none.</param>
public sealed record ComparedReading(Reading Reading, ReadingStanding Standing, Band? Expected, string? WhyNot, Amount? Meant = null, FindingInput? Missing = null)
{
    /// <summary>Why the search for a bad joint does without it; null when it is used.</summary>
    public string? WhyLeftOut => Standing is ReadingStanding.CannotCompare or ReadingStanding.Turned ? WhyNot
        : IsThousandth ? "a thousand times as much would agree: was one unit taken for another?"
        : null;

    // What is a thousand times too much stays in: across an open fuse stands the whole voltage.
    private bool IsThousandth => Meant is { } meant && (Reading.VoltageV ?? Reading.CurrentA) is { } read && Math.Abs(meant.Value) > Math.Abs(read.Value);
}
