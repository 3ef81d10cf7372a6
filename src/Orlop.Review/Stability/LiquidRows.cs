using Orlop.Boat;
using Orlop.Boat.Values;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using EngineTank = Orlop.Hull.Floating.Tank;

namespace Orlop.Review.Stability;

/// <summary>What stands in the tanks, as rows of the ledger, with the boat level and upright.</summary>
public static class LiquidRows
{
    // Of a full tank, read by a gauge or a stick (common practice, no source).
    private const double FillDeviationFraction = 0.05;
    private const int HalvingCount = 50;

    /// <summary>One row for each tank with something in it.</summary>
    public static IEnumerable<WeightRow> Of(BoatModel boat, IEnumerable<EngineTank> tanks)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(tanks);
        foreach (EngineTank tank in tanks)
        {
            double whole = Below(tank.Shape, tank.Shape.Highest.ZM + 1).VolumeM3;
            Point3 centre = CentreOf(tank, whole);
            yield return new WeightRow(
                tank.Id, boat.Find(tank.Id)?.Title ?? tank.Id, WeightKind.Liquid, tank.FillFraction * whole * tank.LiquidKgPerM3, FillDeviationFraction * whole * tank.LiquidKgPerM3,
                new Place(centre.XM, centre.YM, centre.ZM), WeightKnowledge.PlaceDeviationM, FormattableString.Invariant($"{tank.FillFraction * 100:0.#} % full"));
        }
    }

    private static Point3 CentreOf(EngineTank tank, double wholeM3)
    {
        (double low, double high) = (tank.Shape.Lowest.ZM, tank.Shape.Highest.ZM);
        for (int i = 0; i < HalvingCount; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Below(tank.Shape, middle).VolumeM3 < tank.FillFraction * wholeM3 ? (middle, high) : (low, middle);
        }

        return Below(tank.Shape, high).CentreOfBuoyancy ?? tank.Shape.Lowest;
    }

    private static ImmersedPart Below(TriangleMesh shape, double levelM) => Submersion.Calculate(shape, Attitude.Upright(levelM));
}
