using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Tests.Shapes;

/// <summary>Closed bodies with dents and bulges: an ellipsoid whose corners are moved in and out along their rays.</summary>
internal static class RandomBody
{
    public static TriangleMesh Create(Random random, int rings = 6)
    {
        var halves = new Point3(2 + (4 * random.NextDouble()), 1 + random.NextDouble(), 0.7 + random.NextDouble());
        var centre = new Point3(10 * random.NextDouble(), random.NextDouble() - 0.5, random.NextDouble());
        return Solids.Ellipsoid(default, halves, rings).Moved(corner => centre + ((0.7 + (0.6 * random.NextDouble())) * corner));
    }
}
