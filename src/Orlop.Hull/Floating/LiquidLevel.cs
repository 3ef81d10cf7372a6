using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>The level at which a body holds, or displaces, a volume, for a direction of up: Newton on the volume, kept between the body's lowest and highest corner.</summary>
internal static class LiquidLevel
{
    private const int MostSteps = 80;

    /// <summary>Distance of the level from the origin along Up; the volume must lie between nothing and the whole.</summary>
    public static (WaterPlane Level, Immersion Below) Find(in WaterPlane directions, TriangleMesh shape, double volume, double wholeVolume)
    {
        var (low, high) = directions.Reach(shape.Corners.AsSpan());
        var draught = low + ((high - low) * volume / wholeVolume);
        var level = directions.At(draught);
        var below = Immersion.Below(level, shape);
        for (var step = 0; step < MostSteps; step++)
        {
            var excess = below.Volume - volume;
            if (Math.Abs(excess) <= 1e-14 * wholeVolume || high - low <= 1e-15 * (Math.Abs(high) + Math.Abs(low)))
            {
                break;
            }

            (low, high) = excess > 0 ? (low, draught) : (draught, high);
            var newton = draught - (excess / below.Area);
            var next = newton > low && newton < high ? newton : 0.5 * (low + high);
            if (next == draught)
            {
                break;
            }

            draught = next;
            level = directions.At(draught);
            below = Immersion.Below(level, shape);
        }

        return (level, below);
    }
}
