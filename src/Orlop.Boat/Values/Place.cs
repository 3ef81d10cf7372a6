using System.ComponentModel;

namespace Orlop.Boat.Values;

/// <summary>A point in the boat: x forward from the after perpendicular, y to port, z up from the base line, in metres.</summary>
public sealed record Place(
    [property: Description("Forward of the after perpendicular."), Allowed(-100, 100)] double XM,
    [property: Description("To port of the centre line."), Allowed(-100, 100)] double YM,
    [property: Description("Above the base line."), Allowed(-100, 100)] double ZM)
{
    /// <summary>Straight distance in metres.</summary>
    public double DistanceM(Place other)
    {
        double x = XM - other.XM, y = YM - other.YM, z = ZM - other.ZM;
        return Math.Sqrt((x * x) + (y * y) + (z * z));
    }
}

/// <summary>Length along x, breadth along y and height along z of a box around a thing, in metres, each at least 0.</summary>
public sealed record BoxSize(
    [property: Description("Along x."), Allowed(0, 100)] double LengthM,
    [property: Description("Along y."), Allowed(0, 100)] double BreadthM,
    [property: Description("Along z."), Allowed(0, 100)] double HeightM);
