using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>What a start does to something that takes power.</summary>
/// <param name="Part">The load, converter or inverter.</param>
/// <param name="BeforeV">Voltage before; null for what starts.</param>
/// <param name="Missing">What is not given and its voltage rests on; nothing else is told then.</param>
/// <param name="Voltage">How low and for how long; null where it cannot be told.</param>
/// <param name="LeastV">The least that it works at, an inverter's cut-off; null where that is not known.</param>
public sealed record StartTaker(Part Part, double? BeforeV, ImmutableArray<FindingInput> Missing, DropOut? Voltage, double? LeastV)
{
    // What cables store magnetically is left out, so a shorter dip is milder than it is told.
    private const double LeastTellingS = 0.001;

    /// <summary>It stops working; null where that cannot be told, as of a dip of less than a millisecond.</summary>
    public bool? DropsOut => Voltage is null || LeastV is null || (Voltage.DropsOut && Voltage.BelowS < LeastTellingS) ? null : Voltage.DropsOut;
}

/// <summary>What a start sends through a fuse or breaker.</summary>
/// <param name="MostA">The greatest current.</param>
/// <param name="AboveRatingS">How long it is above the rating, in all.</param>
public sealed record StartDevice(Protection Device, double MostA, double AboveRatingS);

/// <summary>A start in time: a motor, or an inverter whose capacitors are charged, with everything on that its condition has on.</summary>
public sealed record StartInTime
{
    /// <summary>The load or inverter that starts.</summary>
    public required Part Starter { get; init; }

    public required Condition Condition { get; init; }

    public required ChargeCase Charge { get; init; }

    /// <summary>What is not given and the start rests on; there is no start then.</summary>
    public ImmutableArray<FindingInput> Missing { get; init; } = [];

    /// <summary>The start; null where something is missing, or the circuit has no working state before it.</summary>
    public StartResult? Start { get; init; }

    /// <summary>How what starts is taken, with the numbers.</summary>
    public string Taken { get; init; } = "";

    /// <summary>All that shares a stretch of its way or a source with it: first the load itself (an inverter is off until it is charged), then what is lowest against its least.</summary>
    public ImmutableArray<StartTaker> Takers { get; init; } = [];

    /// <summary>The fuses and breakers that feed it and carry something.</summary>
    public ImmutableArray<StartDevice> Devices { get; init; } = [];

    /// <summary>Why there is no start, in a sentence; null where there is one.</summary>
    public string? WhyNone { get; init; }

    // What a solved network leaves of nothing.
    private const double IdleA = 1e-6;

    /// <summary>The start of a load that is on in the condition, or of an inverter; null for what has none.</summary>
    public static StartInTime? Of(ElectricsView view, Part starter, Condition condition, ChargeCase charge)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (StarterModel.MissingOf(starter, condition) is not { } ownMissing)
        {
            return null;
        }

        StartInTime none = new() { Starter = starter, Condition = condition, Charge = charge };
        SolvedNetwork solved = view.Solve(condition, charge);
        ImmutableArray<FindingInput> missing = [.. ownMissing.Concat(MissingInputs.OfVoltage(view, solved, condition, starter.Id)).Distinct()];
        if (missing.Length > 0)
        {
            return none with { Missing = missing, WhyNone = $"{starter.Title}: its start cannot be told for what is not given" };
        }

        if (solved.GroupOf(starter.Id) is not { Result.Point: not null } group)
        {
            return none with { WhyNone = solved.GroupOf(starter.Id) is null ? $"Nothing feeds {starter.Title} in this condition." : "The circuit has no working state in this condition." };
        }

        (StartInput input, string taken) = StarterModel.Of(group.Network, solved, starter);
        StartResult start = view.StartOf(input);
        StartTaker[] takers = [.. StartReach.Of(view, group, condition, starter).Where(part => part is not Inverter || part.Id != starter.Id).Select(part => TakerOf(view, solved, condition, start, part, starter))];
        return none with
        {
            Start = start,
            Taken = taken,
            WhyNone = start.Status == SolveStatus.Converged ? null : $"{starter.Title} cannot start: the circuit cannot deliver what is asked then.",
            Takers = [.. takers.OrderBy(taker => taker.Part.Id == starter.Id ? 0 : 1).ThenBy(taker => taker.Voltage is { } at && taker.LeastV is { } least ? at.LowestV - least : double.PositiveInfinity).ThenBy(taker => taker.Part.Id, StringComparer.Ordinal)],
            Devices = [.. view.Boat.All<Protection>().Where(device => view.PathsIn(condition).TakersBehind(device.Id).Contains(starter.Id)).Select(device => DeviceOf(start, device)).OfType<StartDevice>()],
        };
    }

    /// <summary>The lowest voltage at a load that starts, in a network that is solved with it running; null where it cannot be told.</summary>
    public static double? LowestV(SolvedNetwork running, ElectricLoad load)
    {
        ArgumentNullException.ThrowIfNull(running);
        if (StarterModel.MissingOf(load, null) is not [] || running.GroupOf(load.Id) is not { Result.Point: not null } group)
        {
            return null;
        }

        // It is lowest at the beginning, before a motor turns: one short step is enough.
        StartInput input = StarterModel.Of(group.Network, running, load).Input;
        double shortS = input.HorizonS / 1000;
        return StartStudy.Run(input with { HorizonS = shortS, StepS = shortS }).VoltageOf(load.Id)?[0];
    }

    private static StartTaker TakerOf(ElectricsView view, SolvedNetwork solved, Condition condition, StartResult start, Part part, Part starter)
    {
        ImmutableArray<FindingInput> missing = MissingInputs.OfVoltage(view, solved, condition, part.Id);
        double? before = part.Id == starter.Id ? null : solved.LoadV(part.Id);
        double? least = LeastVoltageCheck.LeastOf(view, part)?.LeastV;
        double delayS = part is Inverter { CutOffDelayS: { } delay } ? delay.Value : 0;
        return new StartTaker(part, before, missing, missing.IsEmpty ? DropOut.Of(start, part.Id, least ?? 0, delayS) : null, least);
    }

    private static StartDevice? DeviceOf(StartResult start, Protection device)
    {
        if (start.CurrentOf(device.Id) is not { } currents || !(currents.Max(Math.Abs) > IdleA))
        {
            return null;
        }

        double above = 0;
        for (int k = 1; k < currents.Length; k++)
        {
            above += Math.Max(Math.Abs(currents[k - 1]), Math.Abs(currents[k])) > device.RatedA.Value ? start.Moments[k].TimeS - start.Moments[k - 1].TimeS : 0;
        }

        return new StartDevice(device, currents.Max(Math.Abs), above);
    }
}
