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

    /// <summary>Its sign is against the prediction: the leads or the clamp are the other way round, or current flows the other way.</summary>
    Turned,
}

/// <summary>A reading beside its prediction.</summary>
/// <param name="Expected">Null when it cannot be predicted.</param>
/// <param name="WhyNot">Why it cannot be compared; null when it was.</param>
public sealed record ComparedReading(Reading Reading, ReadingStanding Standing, Band? Expected, string? WhyNot)
{
    /// <summary>What is said of a reading that is <see cref="ReadingStanding.Turned"/>.</summary>
    public const string TurnedWords = "the sign is against the prediction: leads swapped, or current flows the other way";
}
