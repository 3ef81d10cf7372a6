using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>
/// An adjustable inverse-time curve: t = M · (k/(r^α - 1) + c), r = current over setting (IEC 60255, IEEE C37.112). At or below the setting it never opens.
/// The standards' timing tolerance is left out: earliest and latest are the same curve.
/// </summary>
/// <param name="KS">k, s.</param>
/// <param name="AlphaCoefficient">α, above 0.</param>
/// <param name="AddedS">c, s; 0 for the IEC curves.</param>
/// <param name="TimeMultiplierFactor">M, the time setting; above 0 to 100.</param>
public sealed record InverseTimeCurve(string Id, double KS, double AlphaCoefficient, double AddedS, double TimeMultiplierFactor, string Source) : IOperatingCurve
{
    private const string Iec = "IEC 60255 inverse-time curve";

    private const string Ieee = "IEEE C37.112 inverse-time curve";

    /// <summary>The seven standard curves at time multiplier 1.</summary>
    public static ImmutableArray<InverseTimeCurve> Standard { get; } =
    [
        new("iec-standard-inverse", 0.14, 0.02, 0, 1, Iec),
        new("iec-very-inverse", 13.5, 1, 0, 1, Iec),
        new("iec-extremely-inverse", 80, 2, 0, 1, Iec),
        new("iec-long-inverse", 120, 1, 0, 1, Iec),
        new("ieee-moderately-inverse", 0.0515, 0.02, 0.114, 1, Ieee),
        new("ieee-very-inverse", 19.61, 2, 0.491, 1, Ieee),
        new("ieee-extremely-inverse", 28.2, 2, 0.1217, 1, Ieee),
    ];

    public bool IsFromMemory => false;

    /// <summary>The setting, at and below which it never opens.</summary>
    public ImmutableArray<double> BreakRatios => [1];

    public OpeningTime EarliestOpening(double currentRatio) => Opening(currentRatio);

    public OpeningTime LatestOpening(double currentRatio) => Opening(currentRatio);

    private OpeningTime Opening(double currentRatio)
    {
        Guard.Positive(currentRatio, 10_000, "× setting", Id);
        Guard.Positive(KS, 1e4, "s", Id);
        Guard.Positive(AlphaCoefficient, 10, "", Id);
        Guard.InRange(AddedS, 0, 1e3, "s", Id);
        Guard.Positive(TimeMultiplierFactor, 100, "", Id);
        if (currentRatio <= 1)
        {
            return new OpeningTime(null, null, OpeningBasis.NeverOpens, $"{Id} at {currentRatio:0.###} × setting: at or below the setting it never opens.");
        }

        var time = TimeMultiplierFactor * ((KS / (Math.Pow(currentRatio, AlphaCoefficient) - 1)) + AddedS);
        return new OpeningTime(time, time, OpeningBasis.Exact, $"{Id}: {TimeMultiplierFactor:0.###} × ({KS}/({currentRatio:0.###}^{AlphaCoefficient} − 1) + {AddedS}).");
    }
}
