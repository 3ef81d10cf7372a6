using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>The free surface of a liquid in a closed body.</summary>
public static class FreeSurface
{
    /// <summary>Transverse second moment of the surface about its own centroid, level and upright, in m4: what it takes from GM is density times this over displacement (i/V).</summary>
    /// <param name="shape">Closed inner surface.</param>
    /// <param name="fillFraction">Liquid over what it holds, 0 to 1; nothing at either end.</param>
    public static double TransverseM4(TriangleMesh shape, double fillFraction)
    {
        ArgumentNullException.ThrowIfNull(shape);
        Guard.InRange(fillFraction, 0, 1, "", "free surface");
        if (fillFraction is <= 0 or >= 1)
        {
            return 0;
        }

        var whole = shape.SignedVolumeM3;
        var (level, below) = LiquidLevel.Find(WaterPlane.Of(Attitude.Upright(shape.Highest.ZM)), shape, fillFraction * whole, whole);
        return below.CutSurface(level).Centroidal().SecondAcross;
    }
}
