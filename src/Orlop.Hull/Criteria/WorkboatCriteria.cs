using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>A small workboat with all persons to one side. What is not known is null and leaves its criterion unknown.</summary>
/// <param name="Subject">What it is, for messages.</param>
/// <param name="LengthM">Load line length, above 0 to 24.</param>
/// <param name="HeelDeg">Heel with all persons to one side, -90 to 90.</param>
/// <param name="FreeboardM">Least freeboard then, -5 to 10.</param>
/// <param name="GmM">GM with free surfaces taken off.</param>
/// <param name="IsDisplacementKnown">True when the displacement was found by weighing or from draughts, and not estimated.</param>
public sealed record WorkboatInput(string Subject, double LengthM, double? HeelDeg, double? FreeboardM, double? GmM, bool IsDisplacementKnown);

/// <summary>
/// UK small workboats, MGN 280: 11.3.6 for boats with a stability booklet, 11.4 for others, decked. Five limits of 11.3.6 are from memory and say so. Boats of area category 0 or 1, with 16 persons or
/// more, over 1000 kg of cargo, lifting gear, or that tow more than twice their displacement need the booklet (Workboat Code edition 2, 11.1).
/// </summary>
public static class WorkboatCriteria
{
    private const string Source = "MGN 280";

    /// <summary>Righting levers, 11.3.6.</summary>
    public static ImmutableArray<CriterionResult> Levers(RightingCurve curve)
    {
        var levers = new LeverCheck(curve, "workboat-", Source);
        var (to30, to40) = (Math.Min(30, levers.FloodingDeg), Math.Min(40, levers.FloodingDeg));
        return
        [
            levers.Area("area-to-30", "area under the levers to 30°", 0, to30, 0.055, "11.3.6"),
            levers.Area("area-to-40", "area under the levers to 40° or downflooding", 0, to40, 0.090, "11.3.6"),
            levers.Area("area-30-to-40", "area under the levers from 30° to 40° or downflooding", to30, to40, 0.030, "11.3.6 (from memory)"),
            levers.LeverFrom30(0.20, "11.3.6 (from memory)"),
            levers.HeelOfGreatest(25, "11.3.6 (from memory)"),
            levers.Gm(0.35, "11.3.6 (from memory)"),
        ];
    }

    /// <summary>All persons to one side, 11.4: heel 7°, or 10° while the freeboard keeps 75 mm; freeboard 75 mm; over 15 m a GM of 0.5 m, or 0.35 m with a known displacement.</summary>
    public static ImmutableArray<CriterionResult> PersonsToOneSide(WorkboatInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.LengthM, 24, "m", input.Subject);
        var heel = input.HeelDeg is { } found ? Math.Abs(Guard.InRange(found, -90, 90, "°", input.Subject, "HeelDeg")) : (double?)null;
        var freeboard = input.FreeboardM is { } left ? Guard.InRange(left, -5, 10, "m", input.Subject, "FreeboardM") : (double?)null;
        var limit = freeboard >= 0.075 ? 10 : 7;
        ImmutableArray<CriterionResult> results =
        [
            CriterionResult.AtLeast("workboat-persons-heel", "what the heel with all persons to one side leaves of its limit", limit - heel, 0, "°", $"{Source} 11.4.1",
                heel is null ? ["the heel is not given"] : [], FormattableString.Invariant($"{limit}° − φ; 10° while the freeboard keeps 0.075 m, else 7°")),
            CriterionResult.AtLeast("workboat-persons-freeboard", "least freeboard with all persons to one side", freeboard, 0.075, "m", $"{Source} 11.4.1", freeboard is null ? ["the freeboard is not given"] : [], "deck edge over the water"),
        ];
        return input.LengthM <= 15
            ? results
            :
            [
                .. results,
                CriterionResult.AtLeast("workboat-gm", "initial GM of a boat over 15 m", input.GmM, input.IsDisplacementKnown ? 0.35 : 0.5, "m", $"{Source} 11.4.2",
                    input.GmM is null ? ["GM is not given"] : [], input.IsDisplacementKnown ? "displacement known" : "displacement estimated"),
            ];
    }
}
