using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>
/// The water plane seen from the boat: Up is square to it, Along and Across lie in it (right-handed). With trim t and heel h, Up = (sin t, cos t sin h, cos t cos h),
/// Along = dUp/dt, and dUp/dh = cos t · Across.
/// </summary>
internal readonly struct WaterPlane
{
    private const double RadPerDeg = Math.PI / 180;

    private WaterPlane(double draught, double trim, double heel)
    {
        Draught = draught;
        var (sinTrim, cosTrim) = Math.SinCos(trim);
        var (sinHeel, cosHeel) = Math.SinCos(heel);
        SinTrim = sinTrim;
        CosTrim = cosTrim;
        Up = new Point3(sinTrim, cosTrim * sinHeel, cosTrim * cosHeel);
        Along = new Point3(cosTrim, -sinTrim * sinHeel, -sinTrim * cosHeel);
        Across = new Point3(0, cosHeel, -sinHeel);
        HeelOutward = new Point3(0, sinHeel, cosHeel);
    }

    public double Draught { get; }

    public double SinTrim { get; }

    public double CosTrim { get; }

    public Point3 Up { get; }

    public Point3 Along { get; }

    public Point3 Across { get; }

    /// <summary>-dAcross/dh: the upward direction in the boat's cross section.</summary>
    public Point3 HeelOutward { get; }

    public static WaterPlane Of(Attitude attitude) => new(attitude.DraughtM, attitude.TrimDeg * RadPerDeg, attitude.HeelDeg * RadPerDeg);

    public static WaterPlane OfRadians(double draught, double trim, double heel) => new(draught, trim, heel);

    /// <summary>The same directions with the water at another distance from the origin.</summary>
    public WaterPlane At(double draught) => new(this, draught);

    private WaterPlane(WaterPlane other, double draught)
    {
        this = other;
        Draught = draught;
    }

    public double HeightM(Point3 place) => Up.Dot(place) - Draught;

    /// <summary>Lowest and highest reach of a set of corners along Up, from the origin.</summary>
    public (double Lowest, double Highest) Reach(ReadOnlySpan<Point3> corners)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (ref readonly var corner in corners)
        {
            var height = Up.Dot(corner);
            low = Math.Min(low, height);
            high = Math.Max(high, height);
        }

        return (low, high);
    }
}
