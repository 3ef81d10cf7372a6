using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>GM read from a timed roll, with the band that the scatter of the coefficient leaves.</summary>
public sealed record RollGm(double GmM, double LeastGmM, double MostGmM, WorkingStep Working);

/// <summary>Natural roll period and GM. T = 2π·k/√(g·GM) with k the radius of gyration, the water's share in it; T = f·B/√GM, f by experience.</summary>
public static class RollPeriod
{
    private const double GravityMPerS2 = 9.81;

    /// <summary>Observed scatter of f, Res. A.749(18) annex 3, 3.4.</summary>
    private const double Scatter = 0.05;

    /// <summary>T = 2π·k/√(g·GM); null without a positive GM.</summary>
    /// <param name="gyrationM">k, above 0 to 50; 0.35 to 0.40 of the beam, added mass included, is common practice.</param>
    /// <param name="gmM">-50 to 50.</param>
    public static double? FromGyrationS(double gyrationM, double gmM)
    {
        Guard.Positive(gyrationM, 50, "m", "roll period");
        Guard.InRange(gmM, -50, 50, "m", "roll period");
        return gmM > 0 ? Math.Tau * gyrationM / Math.Sqrt(GravityMPerS2 * gmM) : null;
    }

    /// <summary>T = f·B/√GM in metres and seconds; null without a positive GM.</summary>
    public static double? FromBeamS(double rollingCoefficient, double beamM, double gmM)
    {
        Guard.InRange(rollingCoefficient, 0.3, 1.5, "", "roll period");
        Guard.Positive(beamM, 50, "m", "roll period");
        Guard.InRange(gmM, -50, 50, "m", "roll period");
        return gmM > 0 ? rollingCoefficient * beamM / Math.Sqrt(gmM) : null;
    }

    /// <summary>GM = (f·B/T)², Res. A.749(18) annex 3, 3.4, with f ± 0.05. Take f from the boat's own inclining test where there is one.</summary>
    public static RollGm Gm(double rollingCoefficient, double beamM, double periodS)
    {
        Guard.InRange(rollingCoefficient, 0.3, 1.5, "", "rolling test");
        Guard.Positive(beamM, 50, "m", "rolling test");
        Guard.Positive(periodS, 60, "s", "rolling test");
        var gm = At(rollingCoefficient);
        return new RollGm(gm, At(rollingCoefficient - Scatter), At(rollingCoefficient + Scatter),
            new WorkingStep("GM", FormattableString.Invariant($"({rollingCoefficient:0.###}·{beamM:0.###}/{periodS:0.##})²"), gm, "m", "Res. A.749(18) annex 3, 3.4"));

        double At(double coefficient) => Math.Pow(coefficient * beamM / periodS, 2);
    }
}
