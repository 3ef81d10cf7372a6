namespace Orlop.Hull.Surfaces;

/// <summary>A place or a step in the boat's axes: x forward, y to port, z up from the base line.</summary>
public readonly record struct Point3(double XM, double YM, double ZM)
{
    /// <summary>True when no coordinate is infinite or NaN.</summary>
    public bool IsFinite => double.IsFinite(XM) && double.IsFinite(YM) && double.IsFinite(ZM);

    /// <summary>Distance from the origin, or length of a step.</summary>
    public double LengthM => Math.Sqrt(Dot(this));

    public static Point3 operator +(Point3 a, Point3 b) => new(a.XM + b.XM, a.YM + b.YM, a.ZM + b.ZM);

    public static Point3 operator -(Point3 a, Point3 b) => new(a.XM - b.XM, a.YM - b.YM, a.ZM - b.ZM);

    public static Point3 operator *(double factor, Point3 a) => new(factor * a.XM, factor * a.YM, factor * a.ZM);

    internal static Point3 Least(Point3 a, Point3 b) => new(Math.Min(a.XM, b.XM), Math.Min(a.YM, b.YM), Math.Min(a.ZM, b.ZM));

    internal static Point3 Greatest(Point3 a, Point3 b) => new(Math.Max(a.XM, b.XM), Math.Max(a.YM, b.YM), Math.Max(a.ZM, b.ZM));

    internal double Dot(Point3 b) => (XM * b.XM) + (YM * b.YM) + (ZM * b.ZM);

    internal Point3 Cross(Point3 b) =>
        new((YM * b.ZM) - (ZM * b.YM), (ZM * b.XM) - (XM * b.ZM), (XM * b.YM) - (YM * b.XM));

    public override string ToString() => FormattableString.Invariant($"({XM:0.###}, {YM:0.###}, {ZM:0.###}) m");
}
