namespace Orlop.Hull.Surfaces;

/// <summary>The cubic through four points at given parameters (Lagrange).</summary>
internal static class CubicThrough
{
    public static Point3 At(ReadOnlySpan<double> parameters, ReadOnlySpan<Point3> points, double at)
    {
        Point3 sum = default;
        for (var i = 0; i < points.Length; i++)
        {
            var share = 1.0;
            for (var other = 0; other < points.Length; other++)
            {
                share *= other == i ? 1 : (at - parameters[other]) / (parameters[i] - parameters[other]);
            }

            sum += share * points[i];
        }

        return sum;
    }
}
