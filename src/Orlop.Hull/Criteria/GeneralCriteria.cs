using System.Collections.Immutable;
using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>
/// IMO 2008 IS Code, part A, 2.2 (the same in Res. A.749(18) 3.1): areas under the righting levers, the lever at 30° or more, the heel of the greatest lever, and the initial GM.
/// The curve is read to one side; hold both sides of a boat that is not symmetric or not upright. Downflooding before 30° ends the areas there, which is more cautious than the text.
/// </summary>
public static class GeneralCriteria
{
    private const string Source = "2008 IS Code part A";

    public static ImmutableArray<CriterionResult> Check(RightingCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var features = RightingReading.Read(curve);
        var flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity);
        var side = curve.Input.ToDeg < 0 ? -1 : 1;
        var (to30, to40) = (Math.Min(30, flooding), Math.Min(40, flooding));
        ImmutableArray<string> remarks = curve.Status == FloatingStatus.Floats ? [] : [curve.Message];
        ImmutableArray<string> early = flooding < 30 ? [.. remarks, FormattableString.Invariant($"{features.DownfloodingOpening} goes under at {flooding:0.0}°, before 30°")] : remarks;
        return
        [
            Area("area-to-30", "area under the levers to 30°", 0, to30, 0.055, "2.2.1"),
            Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 0.090, "2.2.1"),
            Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 0.030, "2.2.1"),
            CriterionResult.AtLeast("lever-at-30", "greatest lever at 30° or more", LeverFrom30(curve, features, side, flooding), 0.20, "m", $"{Source} 2.2.2", early, "greatest GZ from 30° on"),
            CriterionResult.AtLeast("heel-of-greatest-lever", "heel of the greatest lever", HeelOfGreatest(curve, features, flooding), 25, "°", $"{Source} 2.2.3", early, "heel of the greatest GZ"),
            CriterionResult.AtLeast("initial-gm", "initial GM, free surfaces taken off", curve.InitialGmM, 0.15, "m", $"{Source} 2.2.4", remarks, "slope of GZ upright"),
        ];

        CriterionResult Area(string id, string subject, double fromDeg, double toDeg, double least, string clause) =>
            CriterionResult.AtLeast(id, subject, curve.AreaMRad(side * fromDeg, side * toDeg), least, "m rad", $"{Source} {clause}", early,
                FormattableString.Invariant($"∫GZ dφ from {fromDeg:0.##}° to {toDeg:0.##}°"));
    }

    private static double? LeverFrom30(RightingCurve curve, RightingFeatures features, int side, double flooding)
    {
        if (flooding < 30 && !curve.Points.IsEmpty)
        {
            return 0;
        }

        if (curve.At(side * 30) is not { } first)
        {
            return null;
        }

        var peak = features.GreatestGzDeg is { } heel && Math.Abs(heel) >= 30 && Math.Abs(heel) <= flooding ? features.GreatestGzM!.Value : double.NegativeInfinity;
        return curve.Points.Where(point => Math.Abs(point.HeelDeg) >= 30 && Math.Abs(point.HeelDeg) <= flooding)
            .Select(point => side * point.GzM).Append(side * first.GzM).Append(peak).Max();
    }

    // A boat that never rights herself has no greatest lever: 0°. A peak at the very end of the curve may not be one.
    private static double? HeelOfGreatest(RightingCurve curve, RightingFeatures features, double flooding)
    {
        if (curve.Points.IsEmpty || curve.Status != FloatingStatus.Floats)
        {
            return null;
        }

        var heel = features.GreatestGzDeg is { } peak ? Math.Min(Math.Abs(peak), flooding) : 0;
        return heel < 25 || heel < Math.Abs(curve.Input.ToDeg) || features.VanishingDeg is not null ? heel : null;
    }
}
