using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>How a device before a far end clears the weakest fault there.</summary>
internal sealed record FarEndClearing(Protection Device, FaultClearingResult Result)
{
    /// <summary>Each device whose times are known, the one that clears it best before the others.</summary>
    public static ImmutableArray<FarEndClearing> Each(ElectricsView view, FarEnd end, (HeatedWithstandInput Conductor, double AmpacityA) conductor) =>
    [
        .. from device in end.Before
           let gates = view.GatesOnDc(device)
           where gates is not null
           let result = FaultClearing.Calculate(new FaultClearingInput
           {
               Subject = device.Id,
               Curve = gates,
               RatingA = device.RatedA.Value,
               DeviceCurrentA = end.ThroughA(device.Id),
               AmpacityA = conductor.AmpacityA,
               Conductor = conductor.Conductor,
           })
           orderby VerdictOf(result.Status) descending, result.LatestOpeningS ?? double.PositiveInfinity
           select new FarEndClearing(device, result),
    ];

    /// <summary>What a clearing means for the conductor.</summary>
    public static Verdict VerdictOf(FaultClearingStatus status) => status switch
    {
        FaultClearingStatus.Bears or FaultClearingStatus.ClearsInTime or FaultClearingStatus.ClearsInTimeLosingHeat => Verdict.Holds,
        FaultClearingStatus.ClearsLate => Verdict.Tight,
        _ => Verdict.Fails,
    };
}
