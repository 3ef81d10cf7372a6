using Orlop.Hull.Floating;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>Levers and angles of a boat that rolls to windward and is struck by a gust. Angles are taken positive to leeward. What does not exist is null.</summary>
/// <param name="SteadyHeelDeg">Heel φ0 under the steady wind.</param>
/// <param name="GustHeelDeg">First heel at which the levers equal the gust's.</param>
/// <param name="EndDeg">Where area b ends: downflooding, 50°, or the second heel at which the levers equal the gust's.</param>
/// <param name="AreaAMRad">Work of the gust from the roll to windward to <paramref name="GustHeelDeg"/>.</param>
/// <param name="AreaBMRad">Reserve from there to <paramref name="EndDeg"/>.</param>
public sealed record GustAreas(double? SteadyHeelDeg, double? GustHeelDeg, double? EndDeg, double? AreaAMRad, double? AreaBMRad)
{
    private const double RadPerDeg = Math.PI / 180;
    private const double LastDeg = 50;

    /// <summary>Lever of the gust over that of the steady wind; from memory.</summary>
    public const double GustFactor = 1.5;

    /// <summary>Wind levers constant with heel, gust 1.5 times the steady wind (factor from memory).</summary>
    /// <param name="leeward">Levers to the lee side.</param>
    /// <param name="windward">Levers to the other side.</param>
    /// <param name="steadyLeverM">lw1, above 0 to 10.</param>
    /// <param name="rollbackDeg">Roll to windward φ1 from the steady heel, 0 to 90.</param>
    public static GustAreas Calculate(RightingCurve leeward, RightingCurve windward, double steadyLeverM, double rollbackDeg)
    {
        ArgumentNullException.ThrowIfNull(leeward);
        ArgumentNullException.ThrowIfNull(windward);
        var subject = leeward.Input.Boat.Subject;
        Guard.Positive(steadyLeverM, 10, "m", subject);
        Guard.InRange(rollbackDeg, 0, 90, "°", subject);
        if (leeward.Input.ToDeg * windward.Input.ToDeg >= 0)
        {
            throw new ArgumentException($"{subject}: the two curves run to {leeward.Input.ToDeg}° and {windward.Input.ToDeg}°; one to each side is needed.", nameof(windward));
        }

        var side = Math.Sign(leeward.Input.ToDeg);
        var gustLeverM = GustFactor * steadyLeverM;
        if (FirstReach(leeward, side, steadyLeverM) is not { } steady)
        {
            return new GustAreas(null, null, null, null, null);
        }

        if (FirstReach(leeward, side, gustLeverM) is not { } gust)
        {
            return new GustAreas(steady, null, null, null, null);
        }

        var flooding = leeward.Features.DownfloodingDeg;
        var second = NextFall(leeward, side, gustLeverM, gust);
        var end = Math.Min(LastDeg, Math.Min(second ?? double.PositiveInfinity, flooding is { } heel ? Math.Abs(heel) : double.PositiveInfinity));
        var start = steady - rollbackDeg;
        var work = Area(leeward, windward, side, start, gust) is { } under ? (gustLeverM * (gust - start) * RadPerDeg) - under : (double?)null;
        // Flooding before the gust's own heel leaves no reserve.
        var reserve = end <= gust ? 0 : Area(leeward, windward, side, gust, end) is { } above ? above - (gustLeverM * (end - gust) * RadPerDeg) : (double?)null;
        return new GustAreas(steady, gust, end, work, reserve);
    }

    // ∫GZ dφ between two heels, negative ones to windward.
    private static double? Area(RightingCurve leeward, RightingCurve windward, int side, double fromDeg, double toDeg) =>
        FromUpright(leeward, windward, side, toDeg) - FromUpright(leeward, windward, side, fromDeg);

    private static double? FromUpright(RightingCurve leeward, RightingCurve windward, int side, double toDeg) =>
        (toDeg < 0 ? windward : leeward).AreaMRad(0, side * toDeg);

    private static double? FirstReach(RightingCurve curve, int side, double leverM) =>
        CurveCrossing.First(curve, 0, point => (side * point.GzM) - leverM) is { } heel ? Math.Abs(heel) : null;

    private static double? NextFall(RightingCurve curve, int side, double leverM, double afterDeg) =>
        CurveCrossing.First(curve, side * (afterDeg + 1e-6), point => leverM - (side * point.GzM)) is { } heel ? Math.Abs(heel) : null;
}
