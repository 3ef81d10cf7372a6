using System.Collections.Immutable;

namespace Orlop.Review.Stability;

/// <summary>What heels a boat in the rules that she is held against.</summary>
public enum HeelingCause
{
    /// <summary>The steady wind of the weather criterion.</summary>
    SteadyWind,

    /// <summary>Its gust.</summary>
    Gust,

    /// <summary>Everyone at one side.</summary>
    People,

    /// <summary>A weight on the hook. Its curve is that of the righting levers once it is let go; with it she lies where her own levers are 0.</summary>
    HungWeight,
}

/// <summary>A lever at a heel, both counted positive to the side that is looked at.</summary>
/// <param name="HeelDeg">Heel, 0 to 90.</param>
/// <param name="LeverM">The lever.</param>
public readonly record struct HeelingPoint(double HeelDeg, double LeverM);

/// <summary>A curve that the righting levers are held against.</summary>
/// <param name="Cause">What heels her.</param>
/// <param name="Subject">How many people, or what hangs; empty for wind.</param>
/// <param name="Points">From upright on.</param>
/// <param name="MeetsDeg">Heel at which she comes to rest under it, 0 to 90; null where there is none on this side.</param>
/// <param name="Source">Where the lever is from.</param>
public sealed record HeelingLever(HeelingCause Cause, string Subject, ImmutableArray<HeelingPoint> Points, double? MeetsDeg, string Source);
