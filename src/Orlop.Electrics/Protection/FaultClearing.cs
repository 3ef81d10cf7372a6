using System.Collections.Immutable;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>A fault current in a conductor behind a device.</summary>
public sealed record FaultClearingInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    public required IOperatingCurve Curve { get; init; }

    /// <summary>Rating or setting of the device, above 0 to 10 000.</summary>
    public required double RatingA { get; init; }

    /// <summary>The weakest fault to be cleared, above 0 to 1e6.</summary>
    public required double FaultCurrentA { get; init; }

    /// <summary>Above 0 to 1000.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>k of the conductor and its insulation, A s^½/mm², above 0 to 500.</summary>
    public required double KFactor { get; init; }
}

/// <summary>Whether a device opens before the conductor is hurt.</summary>
public enum FaultClearingStatus
{
    /// <summary>The device says nothing about its latest opening here: it may never open.</summary>
    MayNeverOpen,

    /// <summary>It opens in time.</summary>
    ClearsInTime,

    /// <summary>Within the adiabatic formula's 5 s it may open too late.</summary>
    MayBeTooLate,

    /// <summary>It may open later than the adiabatic time, but that time is above 5 s, where heat escapes and the formula proves nothing either way.</summary>
    NotDecidedByFormula,
}

/// <summary>Whether a device opens before the conductor is hurt.</summary>
/// <param name="LatestOpeningS">Null when it may never open.</param>
/// <param name="ConductorWithstandS">Adiabatic time of the conductor.</param>
public sealed record FaultClearingResult(
    FaultClearingStatus Status, double CurrentRatio, double? LatestOpeningS, OpeningBasis Basis, double ConductorWithstandS, ImmutableArray<WorkingStep> Working);

/// <summary>Holds the latest opening time of the device against the adiabatic time of the conductor at the same current.</summary>
public static class FaultClearing
{
    public static FaultClearingResult Calculate(FaultClearingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.RatingA, 10_000, "A", input.Subject);
        Guard.Positive(input.FaultCurrentA, 1e6, "A", input.Subject);
        var ratio = input.FaultCurrentA / input.RatingA;
        var latest = input.Curve.LatestOpening(ratio);
        var withstand = AdiabaticWithstand.LongestTime(input.AreaMm2, input.KFactor, input.FaultCurrentA);
        var status = latest.TimeS switch
        {
            null => FaultClearingStatus.MayNeverOpen,
            { } time when time <= withstand.LongestS => FaultClearingStatus.ClearsInTime,
            _ when withstand.IsBeyondFormula => FaultClearingStatus.NotDecidedByFormula,
            _ => FaultClearingStatus.MayBeTooLate,
        };
        return new FaultClearingResult(status, ratio, latest.TimeS, latest.Basis, withstand.LongestS,
        [
            new WorkingStep("r", FormattableString.Invariant($"{input.FaultCurrentA:0.#}/{input.RatingA:0.#}"), ratio, "× rating", "r = I/I_rating"),
            new WorkingStep("t_latest", latest.Explanation, latest.TimeS, "s", input.Curve.Source),
            withstand.Working,
        ]);
    }
}
