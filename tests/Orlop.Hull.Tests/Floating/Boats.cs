using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;

namespace Orlop.Hull.Tests.Floating;

/// <summary>Boats for the tests of floating and righting.</summary>
internal static class Boats
{
    public static readonly TriangleMesh Hull = HullSurface.Build(StartingForm.Create("demo", StartingShape.SingleChine, 12, 4, 2)).Surface!;

    /// <summary>A box of length 10 (x from 0), centred across, base at 0, at a draught in salt water.</summary>
    public static FloatingInput Barge(double beamM, double depthM, double draughtM, double kgM) => new()
    {
        Subject = "barge",
        Buoyancy = [Solids.Box(new Point3(0, -beamM / 2, 0), new Point3(10, beamM / 2, depthM))],
        MassKg = 1025 * 10 * beamM * draughtM,
        CentreOfGravity = new Point3(5, 0, kgM),
        WaterKgPerM3 = 1025,
    };

    /// <summary>A chine working boat of 12 t.</summary>
    public static FloatingInput Working => new()
    {
        Subject = "working boat",
        Buoyancy = [Hull],
        MassKg = 12_000,
        CentreOfGravity = new Point3(5.2, 0, 1.3),
        WaterKgPerM3 = 1025,
    };

    /// <summary>A dented body with a load that it can carry.</summary>
    public static FloatingInput RandomLoad(Random random)
    {
        var body = RandomBody.Create(random);
        return new FloatingInput
        {
            Subject = "random",
            Buoyancy = [body],
            MassKg = 1000 * body.SignedVolumeM3 * (0.1 + (0.8 * random.NextDouble())),
            CentreOfGravity = 0.5 * (body.Lowest + body.Highest) + new Point3(0.2 * (random.NextDouble() - 0.5), 0.4 * (random.NextDouble() - 0.5), (0.5 * random.NextDouble()) - 0.7),
            WaterKgPerM3 = 1000,
        };
    }
}
