using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>Corners of ways.</summary>
internal static class WayCorners
{
    private const double LeastDeg = 10;

    /// <summary>The way turns somewhere between its ends.</summary>
    public static bool Any(Way way) => Enumerable.Range(1, Math.Max(0, way.Points.Count - 2)).Any(k => TurnDeg(way.Points[k - 1], way.Points[k], way.Points[k + 1]) >= LeastDeg);

    /// <summary>How far a line turns at its middle point, in degrees: 0 straight on, 180 back.</summary>
    public static double TurnDeg(Place before, Place at, Place after)
    {
        double inM = before.DistanceM(at), outM = at.DistanceM(after);
        double dot = ((at.XM - before.XM) * (after.XM - at.XM)) + ((at.YM - before.YM) * (after.YM - at.YM)) + ((at.ZM - before.ZM) * (after.ZM - at.ZM));
        return inM > 0 && outM > 0 ? Math.Acos(Math.Clamp(dot / (inM * outM), -1, 1)) * 180 / Math.PI : 0;
    }
}
