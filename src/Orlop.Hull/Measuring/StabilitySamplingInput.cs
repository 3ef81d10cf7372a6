using System.Collections.Immutable;
using Orlop.Hull.Floating;

namespace Orlop.Hull.Measuring;

/// <summary>What is read from a curve of righting levers.</summary>
public enum SampledQuantity
{
    /// <summary>Area to 30° or downflooding, m rad.</summary>
    AreaTo30,

    /// <summary>Area to 40° or downflooding, m rad.</summary>
    AreaTo40,

    /// <summary>Area from 30° to 40° or downflooding, m rad.</summary>
    Area30To40,

    /// <summary>Greatest lever at 30° or more, m; 0 when downflooding comes before.</summary>
    LeverFrom30,

    /// <summary>Heel of the greatest lever, or of downflooding before it, degrees.</summary>
    HeelOfGreatestLever,

    /// <summary>GM upright, m.</summary>
    InitialGm,

    /// <summary>Heel at which the levers vanish, degrees.</summary>
    Vanishing,
}

/// <summary>One limit that every draw is held against.</summary>
/// <param name="Id">Name of the criterion.</param>
/// <param name="Quantity">What it asks about.</param>
/// <param name="Least">The least that is asked, in the quantity's unit.</param>
public sealed record SampledCriterion(string Id, SampledQuantity Quantity, double Least)
{
    /// <summary>IMO 2008 IS Code part A 2.2, as in GeneralCriteria.</summary>
    public static ImmutableArray<SampledCriterion> General { get; } =
    [
        new("area-to-30", SampledQuantity.AreaTo30, 0.055),
        new("area-to-40", SampledQuantity.AreaTo40, 0.090),
        new("area-30-to-40", SampledQuantity.Area30To40, 0.030),
        new("lever-at-30", SampledQuantity.LeverFrom30, 0.20),
        new("heel-of-greatest-lever", SampledQuantity.HeelOfGreatestLever, 25),
        new("initial-gm", SampledQuantity.InitialGm, 0.15),
    ];
}

/// <summary>A boat whose weight is known only so well.</summary>
public sealed record StabilitySamplingInput
{
    /// <summary>Hull, tanks and water; her mass and centre are taken from <see cref="Weight"/>, which leaves tank liquids out as they do.</summary>
    public required FloatingInput Boat { get; init; }

    public required WeightSpread Weight { get; init; }

    public ImmutableArray<Opening> Openings { get; init; } = [];

    public ImmutableArray<SampledCriterion> Criteria { get; init; } = SampledCriterion.General;

    /// <summary>Draws, 100 to 1 000 000.</summary>
    public int DrawCount { get; init; } = 10_000;

    /// <summary>Where the random numbers start: the same seed gives the same draws.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Last heel, 41 to 120; what lies beyond is unknown.</summary>
    public int ToDeg { get; init; } = 60;
}
