using System.Collections.Immutable;
using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>Righting levers asked for in Title 46 of the US Code of Federal Regulations. Areas that the text gives in metre-degrees stay in metre-degrees; they are not the IMO's to the third digit.</summary>
public static class UsLeverCriteria
{
    private const double Whole = 30;

    /// <summary>46 CFR 170.173(b).</summary>
    public static ImmutableArray<CriterionResult> Section170173B(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "us-", "46 CFR 170.173(b)");
        var (to30, to40) = (Math.Min(30, levers.FloodingDeg), Math.Min(40, levers.FloodingDeg));
        return
        [
            levers.Gm(0.15, ""),
            levers.LeverFrom30(0.20, ""),
            levers.HeelOfGreatest(25, ""),
            levers.Area("area-to-30", "area under the levers to 30°", 0, to30, 3.15, "", isInDegrees: true),
            levers.Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 5.15, "", isInDegrees: true),
            levers.Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 1.72, "", isInDegrees: true),
        ];
    }

    /// <summary>46 CFR 170.173(c), for boats whose greatest lever comes between 15° and 30°; the coefficient of its last area is from memory.</summary>
    public static ImmutableArray<CriterionResult> Section170173C(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "us-early-", "46 CFR 170.173(c)");
        var (to30, to40) = (Math.Min(30, levers.FloodingDeg), Math.Min(40, levers.FloodingDeg));
        var greatest = Math.Min(Whole, levers.GreatestDeg ?? double.NaN);
        return
        [
            levers.Gm(0.15, ""),
            levers.HeelOfGreatest(15, ""),
            levers.Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 5.15, "", isInDegrees: true),
            levers.Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 1.72, "", isInDegrees: true),
            levers.Area("area-to-greatest-lever", "area under the levers to the greatest of them, 30° at most", 0, greatest,
                3.15 + (0.057 * (Whole - (double.IsFinite(greatest) ? greatest : Whole))), "(5), coefficient from memory", isInDegrees: true),
        ];
    }

    /// <summary>46 CFR 28.570, fishing vessels; its choice of 50° with conditions is not used.</summary>
    public static ImmutableArray<CriterionResult> Section28570(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "us-fishing-", "46 CFR 28.570");
        var (to30, to40) = (Math.Min(30, levers.FloodingDeg), Math.Min(40, levers.FloodingDeg));
        return
        [
            levers.Gm(0.35, ""),
            levers.RightingTo(60, ""),
            levers.Area("area-to-30", "area under the levers to 30°", 0, to30, 0.055, ""),
            levers.Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 0.090, ""),
            levers.Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 0.030, ""),
        ];
    }

    /// <summary>46 CFR 174.185, offshore supply vessels: for low boats with a long open deck.</summary>
    public static ImmutableArray<CriterionResult> Section174185(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "us-supply-", "46 CFR 174.185");
        var end = Math.Min(Math.Min(40, levers.FloodingDeg), levers.GreatestDeg ?? double.NaN);
        return
        [
            levers.Area("area", "area under the levers to the greatest of them, downflooding or 40°", 0, end, 0.08, ""),
            levers.DryTo(20, ""),
            levers.RightingTo(40, ""),
        ];
    }
}
