using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>How much of the tabled current is left at another ambient temperature.</summary>
/// <param name="Factor">0 when it is too hot to carry any current; above 1 where it is cooler than the table's ambient.</param>
/// <param name="IsTooHot">The ambient alone reaches the insulation's rating.</param>
public sealed record AmbientCorrectionResult(double Factor, bool IsTooHot, WorkingStep Working);

/// <summary>
/// f = sqrt((Tins - Tamb)/(Tins - Tbase)): heat given off grows with the rise above ambient, heat made grows with current squared. Agrees with the published tables to
/// 0.006.
/// </summary>
public static class AmbientCorrection
{
    public const string Source = "√((insulation − around it) ÷ (insulation − table)), in °C; agrees with NFPA 70 310.15(B)(2)";

    /// <summary>The factor for an insulation rating (30 to 300 °C), an ambient (-40 to 300 °C) and the table's ambient (below the rating).</summary>
    public static AmbientCorrectionResult Calculate(double insulationC, double ambientC, double tableAmbientC)
    {
        Guard.InRange(insulationC, 30, 300, "°C", "ambient correction");
        Guard.InRange(ambientC, -40, 300, "°C", "ambient correction");
        Guard.InRange(tableAmbientC, -40, insulationC - 1, "°C", "ambient correction");
        var isTooHot = ambientC >= insulationC;
        var factor = isTooHot ? 0 : Math.Sqrt((insulationC - ambientC) / (insulationC - tableAmbientC));
        var expression = isTooHot
            ? FormattableString.Invariant($"{ambientC:0.#} °C around it: no cooler than the insulation's {insulationC:0.#} °C")
            : FormattableString.Invariant($"√(({insulationC:0.#########} − {ambientC:0.#########}) ÷ ({insulationC:0.#########} − {tableAmbientC:0.#########}))");
        return new AmbientCorrectionResult(factor, isTooHot, new WorkingStep("f_amb", expression, factor, "", Source));
    }
}
