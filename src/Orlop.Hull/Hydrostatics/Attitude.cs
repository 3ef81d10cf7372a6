using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Hydrostatics;

/// <summary>How a boat lies in the water. Holds at any angle: upright, on her side, bottom up.</summary>
/// <param name="DraughtM">Distance of the water plane from the origin of the boat's axes, measured square to the water; positive when the origin is under water.</param>
/// <param name="TrimDeg">Angle of the base line to the water, positive by the stern; -90 to 90.</param>
/// <param name="HeelDeg">Turn about the boat's own fore-and-aft axis, positive to starboard; -180 to 180.</param>
public readonly record struct Attitude(double DraughtM, double TrimDeg, double HeelDeg)
{
    /// <summary>Upright and level at a draught above the base line.</summary>
    public static Attitude Upright(double draughtM) => new(draughtM, 0, 0);

    /// <summary>Height of a place of the boat above the water, negative below it.</summary>
    public double HeightAboveWaterM(Point3 place) => WaterPlane.Of(this).HeightM(place);

    /// <summary>
    /// Height in the boat's own axes at which the water stands at a place x, y of the boat: the draught there, over the base line. Null where the boat's vertical runs along the water.
    /// </summary>
    public double? WaterHeightM(double xM, double yM)
    {
        var up = WaterPlane.Of(this).Up;
        return Math.Abs(up.ZM) > 1e-9 ? (DraughtM - (up.XM * xM) - (up.YM * yM)) / up.ZM : null;
    }

    internal Attitude Checked(string where)
    {
        Guard.InRange(DraughtM, -1000, 1000, "m", where);
        Guard.InRange(TrimDeg, -90, 90, "°", where);
        Guard.InRange(HeelDeg, -180, 180, "°", where);
        return this;
    }
}
