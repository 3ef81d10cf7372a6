using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>
/// Parts of ISO 12217-1 for motor craft of 2.5 to 24 m, from public worksheets and a public draft, not from the paid text: heel under an offset load, and in wind for categories C and D. The height
/// of downflooding openings is from memory. Resistance to waves and wind of categories A and B is not computed here and stays unknown.
/// </summary>
public static class SmallCraftCriteria
{
    private const double StandardGravityMPerS2 = 9.80665;
    private const string Source = "ISO 12217-1 (secondary source)";
    private const string Memory = "ISO 12217-1 (from memory)";

    public static ImmutableArray<CriterionResult> Check(SmallCraftInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.InRange(input.HullLengthM, 2.5, 24, "m", input.Subject);
        Guard.Positive(input.HullBeamM, 12, "m", input.Subject);
        return [OffsetLoad(input), DownfloodingHeight(input), .. input.Category is DesignCategory.A or DesignCategory.B ? [Waves()] : Wind(input)];
    }

    /// <summary>10° + (24 - LH)³/600, LH the length of hull from 2.5 to 24 m.</summary>
    public static double OffsetLoadLimitDeg(double hullLengthM) => 10 + (Math.Pow(24 - Guard.InRange(hullLengthM, 2.5, 24, "m", "small craft"), 3) / 600);

    /// <summary>0.3·A·(A/LWL + T)·v², v = 17 m/s for category C and 13 m/s for D; null for A and B, which ask for another calculation.</summary>
    public static double? WindMomentNm(DesignCategory category, double windAreaM2, double waterlineLengthM, double draughtM)
    {
        Guard.Positive(windAreaM2, 1000, "m²", "small craft");
        Guard.Positive(waterlineLengthM, 24, "m", "small craft");
        Guard.Positive(draughtM, 10, "m", "small craft");
        double? speed = category switch { DesignCategory.C => 17, DesignCategory.D => 13, _ => null };
        return 0.3 * windAreaM2 * ((windAreaM2 / waterlineLengthM) + draughtM) * speed * speed;
    }

    private static CriterionResult OffsetLoad(SmallCraftInput input)
    {
        var limit = OffsetLoadLimitDeg(input.HullLengthM);
        var heel = input.OffsetLoadHeelDeg is { } given ? Math.Abs(Guard.InRange(given, -90, 90, "°", input.Subject, "OffsetLoadHeelDeg")) : (double?)null;
        return CriterionResult.AtLeast("craft-offset-load", "what the heel with the crew to one side leaves of its limit", limit - heel, 0, "°", Source, heel is null ? ["the heel is not given"] : [],
            FormattableString.Invariant($"10° + (24 − {input.HullLengthM:0.###})³/600 − φ = {limit:0.###}° − φ"));
    }

    private static CriterionResult DownfloodingHeight(SmallCraftInput input)
    {
        var (low, high) = input.Category switch { DesignCategory.A => (0.5, 1.41), DesignCategory.B => (0.4, 1.41), DesignCategory.C => (0.3, 0.75), _ => (0.2, 0.4) };
        var least = Math.Clamp(input.HullLengthM / 17, low, high);
        var height = input.DownfloodingHeightM is { } given ? Guard.InRange(given, -5, 20, "m", input.Subject, "DownfloodingHeightM") : (double?)null;
        return CriterionResult.AtLeast("craft-downflooding-height", "height of the lowest downflooding opening", height, least, "m", Memory, height is null ? ["the height is not given"] : [],
            FormattableString.Invariant($"asked LH/17 = {input.HullLengthM / 17:0.###} m, within {low} and {high} m for category {input.Category}"));
    }

    private static ImmutableArray<CriterionResult> Wind(SmallCraftInput input)
    {
        if (input.WindAreaM2 is not { } area || input.WaterlineLengthM is not { } length || input.DraughtM is not { } draught || input.Curve is not { } curve)
        {
            return [Held(null, "wind area, waterline length, draught or righting levers are not given")];
        }

        // Asked only of boats with much side to the wind.
        var moment = WindMomentNm(input.Category, area, length, draught)!.Value;
        if (area / (input.HullLengthM * input.HullBeamM) < 1)
        {
            return [];
        }

        var limit = OffsetLoadLimitDeg(input.HullLengthM) / 2;
        var side = curve.Input.ToDeg < 0 ? -1 : 1;
        var lever = moment / (StandardGravityMPerS2 * curve.MassKg);
        var heel = CurveCrossing.First(curve, 0, point => (side * point.GzM) - lever);
        return heel is null && curve.Status == FloatingStatus.Floats && Math.Abs(curve.Input.ToDeg) >= limit && curve.Points.All(point => Math.Abs(point.HeelDeg) > limit || side * point.GzM < lever)
            ? [CriterionResult.FailedWithout("craft-wind", Subject, 0, "°", Source, [], FormattableString.Invariant($"the levers do not reach {lever:0.####} m by {limit:0.##}°"))]
            : [Held(limit - (heel is { } found ? Math.Abs(found) : null), heel is null ? "the curve is too short to say" : null, moment, limit)];
    }

    private const string Subject = "what the heel in wind leaves of half the offset-load limit";

    private static CriterionResult Held(double? left, string? remark, double? moment = null, double? limit = null) =>
        CriterionResult.AtLeast("craft-wind", Subject, left, 0, "°", Source, remark is null ? [] : [remark],
            FormattableString.Invariant($"{limit:0.###}° − φ, moment 0.3·A·(A/LWL + T)·v² = {moment:0.#} N m"));

    private static CriterionResult Waves() =>
        CriterionResult.AtLeast("craft-waves-and-wind", "resistance to waves and wind", null, 0, "m rad", Source, ["asked of categories A and B, and not computed here"], "A2 − A1");
}
