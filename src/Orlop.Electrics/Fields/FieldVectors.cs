namespace Orlop.Electrics.Fields;

/// <summary>A point, in metres; the axes are right-handed, z up.</summary>
public readonly record struct FieldPoint(double XM, double YM, double ZM)
{
    internal double[] To(FieldPoint other) => [other.XM - XM, other.YM - YM, other.ZM - ZM];

    internal FieldPoint Moved(ReadOnlySpan<double> by, double factor) => new(XM + (by[0] * factor), YM + (by[1] * factor), ZM + (by[2] * factor));

    /// <summary>Straight distance.</summary>
    public double DistanceM(FieldPoint other) => Vectors.Length(To(other));
}

/// <summary>A magnetic field, in microteslas.</summary>
public readonly record struct FieldVector(double XUT, double YUT, double ZUT)
{
    /// <summary>Its size.</summary>
    public double SizeUT => Vectors.Length([XUT, YUT, ZUT]);

    /// <summary>The size of its part in the plane of x and y.</summary>
    public double HorizontalUT => Math.Sqrt((XUT * XUT) + (YUT * YUT));

    public static FieldVector operator +(FieldVector one, FieldVector other) => new(one.XUT + other.XUT, one.YUT + other.YUT, one.ZUT + other.ZUT);

    public static FieldVector operator -(FieldVector one, FieldVector other) => new(one.XUT - other.XUT, one.YUT - other.YUT, one.ZUT - other.ZUT);

    public static FieldVector operator *(FieldVector one, double factor) => new(one.XUT * factor, one.YUT * factor, one.ZUT * factor);
}

/// <summary>Vectors of three numbers.</summary>
internal static class Vectors
{
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b) => (a[0] * b[0]) + (a[1] * b[1]) + (a[2] * b[2]);

    public static double Length(ReadOnlySpan<double> a) => Math.Sqrt(Dot(a, a));

    public static double[] Cross(ReadOnlySpan<double> a, ReadOnlySpan<double> b) => [(a[1] * b[2]) - (a[2] * b[1]), (a[2] * b[0]) - (a[0] * b[2]), (a[0] * b[1]) - (a[1] * b[0])];

    /// <summary>The direction of a vector across an axis of length 1: the vector less its part along; any direction across where nothing is left.</summary>
    public static double[] Across(ReadOnlySpan<double> axis, ReadOnlySpan<double> towards)
    {
        double along = Dot(axis, towards);
        double[] across = [towards[0] - (along * axis[0]), towards[1] - (along * axis[1]), towards[2] - (along * axis[2])];
        double length = Length(across);
        return length > 1e-9 ? [across[0] / length, across[1] / length, across[2] / length] : Across(axis, Math.Abs(axis[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]);
    }
}
