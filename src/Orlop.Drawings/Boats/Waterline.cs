using Orlop.Hull.Hydrostatics;
using Orlop.Presentation.Views.Floating;

namespace Orlop.Drawings.Boats;

/// <summary>The plane of the water through a boat at rest, in her own axes.</summary>
/// <param name="HeightM">Height over the base line at the after perpendicular, on the centre line.</param>
/// <param name="RiseForwardRatio">How much higher it stands a metre further forward.</param>
/// <param name="RisePortRatio">How much higher it stands a metre further to port.</param>
public sealed record Waterline(double HeightM, double RiseForwardRatio, double RisePortRatio)
{
    /// <summary>Level and upright.</summary>
    public static Waterline Level(double draughtM) => new(draughtM, 0, 0);

    /// <summary>Where a boat's water stands; null without a position, or where she lies on her beam ends.</summary>
    public static Waterline? Of(FloatingFacts? facts) => facts?.Position is { Attitude: var attitude } ? Of(attitude) : null;

    /// <summary>Where the water stands at an attitude; null on her beam ends.</summary>
    public static Waterline? Of(Attitude attitude)
    {
        if (attitude.WaterHeightM(0, 0) is not { } height)
        {
            return null;
        }

        return new Waterline(height, attitude.WaterHeightM(1, 0)!.Value - height, attitude.WaterHeightM(0, 1)!.Value - height);
    }

    /// <summary>Its height over the base line at a place.</summary>
    public double AtM(double xM, double yM) => HeightM + (RiseForwardRatio * xM) + (RisePortRatio * yM);
}
