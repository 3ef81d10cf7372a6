using System.Collections.Immutable;
using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>
/// IMO 2008 IS Code, part A, 2.2 (the same in Res. A.749(18) 3.1): areas under the righting levers, the lever at 30° or more, the heel of the greatest lever, and the initial GM.
/// The curve is read to one side; hold both sides of a boat that is not symmetric or not upright. Downflooding before 30° ends the areas there, which is more cautious than the text.
/// </summary>
public static class GeneralCriteria
{
    public static ImmutableArray<CriterionResult> Check(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "", "2008 IS Code part A");
        var (to30, to40) = (Math.Min(30, levers.FloodingDeg), Math.Min(40, levers.FloodingDeg));
        return
        [
            levers.Area("area-to-30", "area under the levers to 30°", 0, to30, 0.055, "2.2.1"),
            levers.Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 0.090, "2.2.1"),
            levers.Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 0.030, "2.2.1"),
            levers.LeverFrom30(0.20, "2.2.2"),
            levers.HeelOfGreatest(25, "2.2.3"),
            levers.Gm(0.15, "2.2.4"),
        ];
    }
}
