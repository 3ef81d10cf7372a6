using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>The weather criterion: its two limits, the areas they rest on, and the roll to windward.</summary>
/// <param name="SteadyLeverM">Lever of the steady wind lw1.</param>
/// <param name="SteadyHeel">Heel under the steady wind: what is left of 16°, or of 80 % of the deck-edge angle.</param>
/// <param name="Reserve">Area b less area a.</param>
/// <param name="Areas">Angles and areas; null without a roll to windward.</param>
/// <param name="Roll">Roll to windward and period.</param>
/// <param name="Working">The steps.</param>
public sealed record WeatherCriterionResult(double SteadyLeverM, CriterionResult SteadyHeel, CriterionResult Reserve, GustAreas? Areas, RollbackResult Roll, ImmutableArray<WorkingStep> Working);

/// <summary>
/// Severe wind and rolling, Res. A.749(18) 3.2 (2008 IS Code part A 2.3): P = 504 Pa, lw1 = P·A·Z/(g·mass), gust 1.5·lw1. Made for ships of 24 m and more. The gust factor and the
/// limit on the steady heel are from memory.
/// </summary>
public static class WeatherCriterion
{
    private const double PressurePa = 504;
    private const double GravityMPerS2 = 9.81;
    private const double MostSteadyDeg = 16;
    private const double DeckEdgeShare = 0.8;
    private const string Source = "Res. A.749(18) 3.2";

    public static WeatherCriterionResult Check(WeatherInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var subject = input.Roll.Subject;
        Guard.Positive(input.WindAreaM2, 10_000, "m²", subject);
        Guard.Positive(input.WindLeverM, 100, "m", subject);
        if (input.DeckEdgeDeg is { } edge)
        {
            Guard.Positive(edge, 90, "°", subject);
        }

        var roll = Rollback.Calculate(input.Roll);
        var mass = input.Leeward.MassKg;
        var lever = PressurePa * input.WindAreaM2 * input.WindLeverM / (GravityMPerS2 * mass);
        var areas = roll.RollbackDeg is { } rollback && rollback <= 90 ? GustAreas.Calculate(input.Leeward, input.Windward, lever, rollback) : null;
        var (limit, remark) = SteadyLimit(input.DeckEdgeDeg);
        return new WeatherCriterionResult(lever,
            Held(input.Leeward, lever, "steady-wind-heel", "what the heel under steady wind leaves of its limit", limit - areas?.SteadyHeelDeg, "°", $"{Source} (limit from memory)",
                [.. roll.Warnings, .. remark], FormattableString.Invariant($"{limit:0.##}° − φ0")),
            Held(input.Leeward, GustAreas.GustFactor * lever, "gust-reserve", "area b less area a", areas?.AreaBMRad - areas?.AreaAMRad, "m rad", $"{Source} (gust factor 1.5 from memory)",
                roll.Warnings, "b − a"),
            areas, roll,
            [
                new WorkingStep("lw1", FormattableString.Invariant($"504·{input.WindAreaM2:0.##}·{input.WindLeverM:0.###}/(9.81·{mass:0.#})"), lever, "m", Source),
                new WorkingStep("φ0", "GZ = lw1", areas?.SteadyHeelDeg, "°", Source),
                new WorkingStep("a", "gust's work from φ0 − φ1 to where GZ = 1.5·lw1", areas?.AreaAMRad, "m rad", Source),
                new WorkingStep("b", "reserve from there to downflooding, 50° or the second crossing", areas?.AreaBMRad, "m rad", Source),
            ]);
    }

    private static (double LimitDeg, ImmutableArray<string> Remark) SteadyLimit(double? deckEdgeDeg) =>
        deckEdgeDeg is { } edge
            ? (Math.Min(MostSteadyDeg, DeckEdgeShare * edge), [])
            : (MostSteadyDeg, ["the deck-edge angle is not given: held against 16° alone"]);

    // Levers that never reach the wind's let her go over: failed, with no angle or area to show.
    private static CriterionResult Held(RightingCurve curve, double leverM, string id, string subject, double? value, string unit, string source, ImmutableArray<string> remarks, string expression) =>
        value is null && NeverReach(curve, leverM)
            ? CriterionResult.FailedWithout(id, subject, 0, unit, source, remarks, FormattableString.Invariant($"the levers never reach {leverM:0.###} m"))
            : CriterionResult.AtLeast(id, subject, value, 0, unit, source, remarks, expression);

    private static bool NeverReach(RightingCurve curve, double leverM) =>
        curve.Status == FloatingStatus.Floats && Math.Abs(curve.Input.ToDeg) >= 90 && curve.Points.All(point => Math.Sign(curve.Input.ToDeg) * point.GzM < leverM);
}
