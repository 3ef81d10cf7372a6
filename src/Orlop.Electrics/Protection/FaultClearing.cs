using System.Collections.Immutable;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>A fault current in a conductor behind a device.</summary>
public sealed record FaultClearingInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Operating times of the device.</summary>
    public required IOperatingCurve Curve { get; init; }

    /// <summary>Rating or setting of the device, above 0 to 10 000.</summary>
    public required double RatingA { get; init; }

    /// <summary>What of the fault flows through the device, above 0 to 1e6; less than in the conductor where ways share it.</summary>
    public required double DeviceCurrentA { get; init; }

    /// <summary>The conductor, with the weakest fault to be cleared as its current.</summary>
    public required HeatedWithstandInput Conductor { get; init; }

    /// <summary>What the conductor carries for ever where it lies, 0 to 1e5.</summary>
    public required double AmpacityA { get; init; }
}

/// <summary>Whether a device opens before the conductor is hurt.</summary>
public enum FaultClearingStatus
{
    /// <summary>The device says nothing about its latest opening here: it may never open, and the conductor cannot carry the fault for ever.</summary>
    MayNeverOpen,

    /// <summary>The conductor carries so small a fault for ever.</summary>
    Bears,

    /// <summary>It opens in time, with all heat kept in the copper.</summary>
    ClearsInTime,

    /// <summary>It opens in time because heat escapes meanwhile; the adiabatic formula alone does not show it.</summary>
    ClearsInTimeLosingHeat,

    /// <summary>It opens before the copper is too hot, but only after 5 s, for which the insulation's short-time temperature is not stated.</summary>
    ClearsLate,

    /// <summary>It may open too late.</summary>
    MayBeTooLate,
}

/// <summary>Whether a device opens before the conductor is hurt.</summary>
/// <param name="LatestOpeningS">Null when it may never open.</param>
/// <param name="AdiabaticS">How long the conductor bears it with all heat kept in the copper.</param>
/// <param name="BearsS">How long it bears it while it loses heat; infinite where it never gets too hot.</param>
public sealed record FaultClearingResult(
    FaultClearingStatus Status, double CurrentRatio, double? LatestOpeningS, OpeningBasis Basis, double AdiabaticS, double BearsS, ImmutableArray<WorkingStep> Working);

/// <summary>
/// Holds the latest opening time of the device against the time that the conductor bears the same current: adiabatic (IEC 60364-4-43), then with the heat that
/// it loses.
/// </summary>
public static class FaultClearing
{
    /// <summary>The device against the conductor at one fault current.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static FaultClearingResult Calculate(FaultClearingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.RatingA, 10_000, "A", input.Subject);
        Guard.Positive(input.DeviceCurrentA, 1e6, "A", input.Subject);
        Guard.InRange(input.AmpacityA, 0, 1e5, "A", input.Subject);
        var bears = HeatedWithstand.LongestTime(input.Conductor);
        var ratio = input.DeviceCurrentA / input.RatingA;
        var latest = input.Curve.LatestOpening(ratio);
        var k = AdiabaticWithstand.KFactor(input.Conductor.InitialC, input.Conductor.FinalC);
        return new FaultClearingResult(Judge(input, latest.TimeS, bears), ratio, latest.TimeS, latest.Basis, bears.AdiabaticS, bears.LongestS,
        [
            new WorkingStep("r", FormattableString.Invariant($"{input.DeviceCurrentA:0.#}/{input.RatingA:0.#}"), ratio, "× rating", "r = I/I_rating"),
            new WorkingStep("t_latest", latest.Explanation, latest.TimeS, "s", input.Curve.Source),
            AdiabaticWithstand.LongestTime(input.Conductor.AreaMm2, k, input.Conductor.CurrentA).Working,
            bears.Working,
        ]);
    }

    private static FaultClearingStatus Judge(FaultClearingInput input, double? latestS, HeatedWithstandResult bears) => latestS switch
    {
        _ when input.Conductor.CurrentA <= input.AmpacityA => FaultClearingStatus.Bears,
        null => FaultClearingStatus.MayNeverOpen,
        <= AdiabaticWithstand.LongestValidS when latestS <= bears.AdiabaticS => FaultClearingStatus.ClearsInTime,
        <= AdiabaticWithstand.LongestValidS when latestS <= bears.LongestS => FaultClearingStatus.ClearsInTimeLosingHeat,
        _ when latestS <= bears.LongestS => FaultClearingStatus.ClearsLate,
        _ => FaultClearingStatus.MayBeTooLate,
    };
}
