namespace Orlop.Boat.Values;

/// <summary>A point in the boat: x forward from the after perpendicular, y to port, z up from the base line, in metres.</summary>
public sealed record Place(double XM, double YM, double ZM)
{
    /// <summary>Straight distance in metres.</summary>
    public double DistanceM(Place other)
    {
        double x = XM - other.XM, y = YM - other.YM, z = ZM - other.ZM;
        return Math.Sqrt((x * x) + (y * y) + (z * z));
    }
}

/// <summary>Length along x, breadth along y and height along z of a box around a thing, in metres, each at least 0.</summary>
public sealed record BoxSize(double LengthM, double BreadthM, double HeightM);
