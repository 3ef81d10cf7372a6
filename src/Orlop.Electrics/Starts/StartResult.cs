using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Starts;

/// <summary>A store at a moment.</summary>
/// <param name="TerminalV">Voltage between its terminals.</param>
/// <param name="CurrentA">Current into it.</param>
/// <param name="HeldV">Back-EMF of a motor, voltage of a capacitor.</param>
public sealed record StoreState(string Id, double TerminalV, double CurrentA, double HeldV);

/// <summary>A moment of a start. Where a current ends there are two at the same time.</summary>
/// <param name="TimeS">From the beginning.</param>
/// <param name="Point">Voltages and currents of the network then; stores stand among its sources.</param>
/// <param name="Stores">In the order of the input.</param>
public sealed record StartMoment(double TimeS, OperatingPoint Point, ImmutableArray<StoreState> Stores);

/// <summary>Where the energy of a start went, over all of it.</summary>
/// <param name="SourceWh">Out of batteries and sources.</param>
/// <param name="LoadWh">Into loads.</param>
/// <param name="LossWh">Heat in conductors, joints, internal resistances, converters and the series resistance of stores.</param>
/// <param name="StoredWh">More in stores at the end than at the beginning.</param>
/// <param name="SinkWh">Work that motors did against their load.</param>
public sealed record StartEnergy(double SourceWh, double LoadWh, double LossWh, double StoredWh, double SinkWh)
{
    /// <summary>What does not add up, as a share of what the sources gave: the error of the steps.</summary>
    public double ResidualFraction => SourceWh == 0 ? 0 : Math.Abs(SourceWh - LoadWh - LossWh - StoredWh - SinkWh) / Math.Abs(SourceWh);
}

/// <summary>A start in time, or how far it came.</summary>
public sealed record StartResult
{
    /// <summary>Converged where all the time was gone through; otherwise why it ended at <see cref="EndedS"/>.</summary>
    public required SolveStatus Status { get; init; }

    /// <summary>The network before the start; null where it has no operating point.</summary>
    public OperatingPoint? Before { get; init; }

    /// <summary>From the beginning on; those before the end where it ended early.</summary>
    public ImmutableArray<StartMoment> Moments { get; init; } = [];

    /// <summary>When it ended: the horizon, or where no operating point is left.</summary>
    public double EndedS { get; init; }

    /// <summary>What cannot be served, where there is no operating point.</summary>
    public Shortfall? Shortfall { get; init; }

    /// <summary>What is wrong with the network.</summary>
    public ImmutableArray<NetworkFault> Faults { get; init; } = [];

    /// <summary>Where the energy went; null where it ended early.</summary>
    public StartEnergy? Energy { get; init; }

    /// <summary>Voltage across a load, a converter's input or a store at each moment; null where there is none of that id.</summary>
    public ImmutableArray<double>? VoltageOf(string id) => Series(moment =>
        moment.Point.LoadV.TryGetValue(id, out var volts) ? volts : moment.Stores.FirstOrDefault(store => store.Id == id)?.TerminalV);

    /// <summary>Current of a conductor or contact, into a load or a store, at each moment; null where there is none of that id.</summary>
    public ImmutableArray<double>? CurrentOf(string id) => Series(moment =>
        moment.Point.BranchA.TryGetValue(id, out var branchA) ? branchA
        : moment.Point.LoadA.TryGetValue(id, out var loadA) ? loadA
        : moment.Stores.FirstOrDefault(store => store.Id == id)?.CurrentA);

    private ImmutableArray<double>? Series(Func<StartMoment, double?> value)
    {
        var all = Moments.Select(value).ToList();
        return all.Count == 0 || all.Any(each => each is null) ? null : [.. all.Select(each => each!.Value)];
    }
}
