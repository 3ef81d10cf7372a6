using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>How long a conductor bears a current with all heat kept in the copper.</summary>
/// <param name="LongestS">k² S² / I².</param>
/// <param name="IsBeyondFormula">Longer than 5 s: the formula leaves out the heat that escapes, so the true time is longer than this.</param>
public sealed record AdiabaticResult(double LongestS, bool IsBeyondFormula, WorkingStep Working);

/// <summary>Adiabatic withstand of copper: I² t ≤ k² S² for t ≤ 5 s (IEC 60364-4-43 434.5.2, BS 7671).</summary>
public static class AdiabaticWithstand
{
    /// <summary>The formula leaves out heat that escapes; the standard uses it to this time.</summary>
    public const double LongestValidS = 5;

    public const string Source = "I² t ≤ k² S² (IEC 60364-4-43, copper)";

    // Volumetric heat capacity of copper, J/(K mm³), IEC 60364-5-54 annex A (from memory; reproduces the eight published k to 0.7).
    internal const double CopperHeatJPerKMm3 = 3.45e-3;

    private const double CopperResistivityAt20OhmMm = AnnealedCopper.ResistivityAt20OhmMm2PerM / 1000;

    /// <summary>k of copper (A s^½ / mm²) from the temperature before the fault and the highest its insulation bears at the end of it.</summary>
    public static double KFactor(double initialC, double finalC)
    {
        Guard.InRange(initialC, -40, 300, "°C", "adiabatic k");
        Guard.InRange(finalC, initialC, 1000, "°C", "adiabatic k");
        return Math.Sqrt(CopperHeatJPerKMm3 * (AnnealedCopper.ZeroResistanceOffsetK + 20) / CopperResistivityAt20OhmMm
            * Math.Log((AnnealedCopper.ZeroResistanceOffsetK + finalC) / (AnnealedCopper.ZeroResistanceOffsetK + initialC)));
    }

    /// <summary>The longest a current may flow in a conductor.</summary>
    public static AdiabaticResult LongestTime(double areaMm2, double kFactor, double currentA)
    {
        Check(areaMm2, kFactor);
        Guard.Positive(currentA, 1e6, "A", "adiabatic withstand");
        var longest = kFactor * kFactor * areaMm2 * areaMm2 / (currentA * currentA);
        return new AdiabaticResult(longest, longest > LongestValidS,
            new WorkingStep("t_adiabatic", FormattableString.Invariant($"({kFactor:0.#} × {areaMm2:0.##}/{currentA:0.#})²"), longest, "s", Source));
    }

    /// <summary>The smallest area that bears a current for a time, 0 to 5 s.</summary>
    public static double SmallestAreaMm2(double kFactor, double currentA, double timeS)
    {
        Guard.Positive(kFactor, 500, "A s^½/mm²", "adiabatic withstand");
        Guard.Positive(currentA, 1e6, "A", "adiabatic withstand");
        Guard.InRange(timeS, 0, LongestValidS, "s", "adiabatic withstand");
        return currentA * Math.Sqrt(timeS) / kFactor;
    }

    /// <summary>k² S²: the let-through that the conductor bears, A² s.</summary>
    public static double LetThroughA2S(double areaMm2, double kFactor)
    {
        Check(areaMm2, kFactor);
        return kFactor * kFactor * areaMm2 * areaMm2;
    }

    private static void Check(double areaMm2, double kFactor)
    {
        Guard.Positive(areaMm2, 1000, "mm²", "adiabatic withstand");
        Guard.Positive(kFactor, 500, "A s^½/mm²", "adiabatic withstand");
    }
}
