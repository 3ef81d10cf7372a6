using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;

namespace Orlop.Reference.Tests.Hull;

/// <summary>The two box barges of stability.md 1.1: 10 × 4 × 2 m, KG 1.2 m, draught 0.8 (A) and 1.3 m (B), salt water.</summary>
internal static class Barges
{
    public static RightingCurve Curve(string name, double toDeg, bool isTrimFree = true) => RightingCurve.Calculate(new RightingInput
    {
        Boat = new FloatingInput
        {
            Subject = $"barge {name}",
            Buoyancy = [Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2))],
            MassKg = 1025 * 10 * 4 * (name == "A" ? 0.8 : 1.3),
            CentreOfGravity = new Point3(5, 0, 1.2),
            WaterKgPerM3 = 1025,
        },
        ToDeg = toDeg,
        IsTrimFree = isTrimFree,
    });
}
