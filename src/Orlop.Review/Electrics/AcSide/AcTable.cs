using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>An AC circuit fed by one source: how a fault to earth ends.</summary>
/// <param name="Taker">What takes power.</param>
/// <param name="Source">What feeds it.</param>
/// <param name="Condition">The first condition in which it does.</param>
/// <param name="BondPlaces">Where the neutral is joined to earth meanwhile, in words; empty where nowhere, null where that is not known.</param>
/// <param name="HasEarth">The earth of the taker leads back to the source.</param>
/// <param name="LoopOhm">Source, live and protective conductor, hot; null where it cannot be told.</param>
/// <param name="ColdLoopOhm">The same with conductors at 20 °C, as a loop tester reads it; null where it cannot be told, and for an inverter, whose loop nothing but its limit tells.</param>
/// <param name="EarthColdOhm">The protective conductor from the taker to the source at 20 °C; null where it cannot be told.</param>
/// <param name="GreatestLoopOhm">The greatest loop with which a device on the way still ends the fault in time; null where none does or it cannot be told.</param>
/// <param name="FaultA">Current of the fault; 0 where the source floats; null where it cannot be told.</param>
/// <param name="IsLimited">The source gives no more than that.</param>
/// <param name="TouchV">On the touched metal while the fault stands.</param>
/// <param name="EndsS">The longest it lasts; null where it may never end or cannot be told.</param>
/// <param name="EndedBy">What ends it: a device, or the source itself.</param>
/// <param name="PermittedS">The longest allowed.</param>
public sealed record AcRow(
    Part Taker, Part Source, Condition Condition, ImmutableArray<string>? BondPlaces, bool HasEarth, double? LoopOhm, double? ColdLoopOhm, double? EarthColdOhm, double? GreatestLoopOhm,
    double? FaultA, bool IsLimited, double? TouchV, double? EndsS, Part? EndedBy, double? PermittedS)
{
    /// <summary>The device with a residual release nearest to the taker; null where there is none.</summary>
    public Protection? Residual { get; init; }

    /// <summary>Ids of the cables, links and devices on the live side and on the way of the earth.</summary>
    public required ImmutableArray<string> ThingIds { get; init; }

    /// <summary>Id of the last conductor on the way, <c>cable.core</c>; the taker where it hangs on its device.</summary>
    public required string ConductorId { get; init; }
}

/// <summary>The AC side, mode by mode.</summary>
public static class AcTable
{
    /// <summary>A row for each AC circuit and each source that feeds it, in the boat's order of what takes power.</summary>
    public static ImmutableArray<AcRow> Of(ElectricsView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return [.. view.EarthFaults.Select(Row)];
    }

    private static AcRow Row(EarthFault fault)
    {
        AcCircuit circuit = fault.Circuit;
        EarthFaultResult? result = fault.Result is { Status: not EarthFaultStatus.DrivesNothing } driven ? driven : null;
        return new AcRow(
            circuit.Taker, circuit.Source, circuit.Condition, fault.Bonds.Missing.IsEmpty ? fault.Bonds.Places : null, fault.Earth is not null,
            result?.LoopOhm, result is null ? null : fault.ColdOhm, fault.Earth is null ? null : fault.EarthColdOhm, Greatest(fault, result),
            fault.Result?.FaultA, result?.IsLimited ?? false, result?.TouchV, result?.EndsS, fault.EndedBy, result?.PermittedS)
        {
            Residual = circuit.Devices.LastOrDefault(device => device.ResidualA is not null),
            ThingIds = [.. circuit.Live.Concat(fault.Earth ?? []).Select(edge => edge.Owner.Id).Distinct(StringComparer.Ordinal)],
            ConductorId = circuit.LastCore?.Id ?? circuit.Taker.Id,
        };
    }

    private static double? Greatest(EarthFault fault, EarthFaultResult? result) => result?.PermittedS is { } permitted && !result.IsLimited
        ? fault.Input!.Devices.Select(device => EarthFaultLoop.GreatestLoopOhm(device, fault.Input.NominalV, permitted)).Max()
        : null;
}
