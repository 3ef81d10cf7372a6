using Orlop.Boat.Things;

namespace Orlop.Work.Readings;

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
}

/// <summary>A reading beside its prediction.</summary>
/// <param name="Expected">Null when it cannot be predicted.</param>
/// <param name="WhyNot">Why it cannot be compared; null when it was.</param>
public sealed record ComparedReading(Reading Reading, ReadingStanding Standing, Band? Expected, string? WhyNot);
