using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>
/// How the engine takes what starts: a load of direct current as a motor, its back-EMF behind the resistance that its starting current gives; one of alternating current, or of resistance, as a current
/// that stays the same for the declared time; an inverter as the capacitors across its input, off until they are charged.
/// </summary>
internal static class StarterModel
{
    // The time looked at, over the declared time of a start.
    private const double MotorHorizonRatio = 3;
    private const double CurrentHorizonRatio = 1.5;

    // Time constants of a charge that are looked at.
    private const double ChargeHorizonRatio = 10;

    // Stands for no resistance of a capacitor's own: what limits the inrush is the wiring, and the dip is the deepest.
    private const double NoOhm = 1e-6;

    /// <summary>What the start needs of the part itself and is not given; null where it has no start to tell, or is off in the condition.</summary>
    public static ImmutableArray<FindingInput>? MissingOf(Part starter, Condition? condition) => starter switch
    {
        Inverter => starter is Inverter { InputF.Value: > 0 } ? [] : [new FindingInput(starter.Id, "inputF", IsMissing: true)],
        ElectricLoad load when Starts.HasOne(load) && (condition is null || LoadElements.IsOnIn(load, condition.Id)) =>
        [
            .. LoadElements.RunningA(load) is > 0 ? [] : new[] { new FindingInput(load.Id, "runningA", IsMissing: true) },
            .. load.StartRatio is not null ? [] : new[] { new FindingInput(load.Id, "startRatio", IsMissing: true) },
            .. load.StartS is { Value: > 0 } ? [] : new[] { new FindingInput(load.Id, "startS", IsMissing: true) },
        ],
        _ => null,
    };

    /// <summary>The start in a network that was solved with everything running, and how it is taken.</summary>
    public static (StartInput Input, string Taken) Of(Network group, SolvedNetwork running, Part starter)
    {
        Network held = StartTemperatures.Hold(group, running);
        return starter is Inverter inverter ? Charging(held, inverter) : IsMotor((ElectricLoad)starter) ? Turning(held, (ElectricLoad)starter) : Drawing(held, (ElectricLoad)starter);
    }

    /// <summary>A load that is taken as a motor of direct current.</summary>
    public static bool IsMotor(ElectricLoad load) => !load.IsAc && (load.Behaviour != LoadBehaviour.Resistance || load.IsCrankingMotor);

    private static (StartInput Input, string Taken) Turning(Network held, ElectricLoad load)
    {
        PolePair poles = Poles.Taking(load)!;
        StartingStore motor = StartingStore.Motor(load.Id, poles.Plus, poles.Minus, load.NominalV.Value, LoadElements.RunningA(load)!.Value, load.StartRatio!.Value, load.StartS!.Value);
        return (
            new StartInput { Network = held with { Loads = held.Loads.RemoveAll(item => item.Id == load.Id) }, Stores = [motor], HorizonS = MotorHorizonRatio * load.StartS.Value },
            string.Create(CultureInfo.InvariantCulture, $"a motor of direct current: back-EMF behind {motor.SeriesOhm:G4} ohm, time constant {motor.SeriesOhm * motor.CapacitanceF:G3} s, against {motor.SinkA:G4} A of load"));
    }

    private static (StartInput Input, string Taken) Drawing(Network held, ElectricLoad load)
    {
        PolePair poles = Poles.Taking(load)!;
        double running = LoadElements.RunningA(load)!.Value, more = (LoadElements.StartingA(load) ?? running) - running, lastsS = load.StartS!.Value;
        return (
            new StartInput { Network = held, Currents = [new StartingCurrent($"{load.Id}.start", poles.Plus, poles.Minus, more, lastsS)], HorizonS = CurrentHorizonRatio * lastsS },
            string.Create(CultureInfo.InvariantCulture, $"{more:G4} A besides what it draws when running, for {lastsS:G3} s"));
    }

    private static (StartInput Input, string Taken) Charging(Network held, Inverter inverter)
    {
        PolePair poles = Poles.Taking(inverter)!;
        Network off = held with { Converters = held.Converters.RemoveAll(item => item.Id == inverter.Id) };
        off = NetworkGrouping.Of(off).Without(off);
        double sourceOhm = PreparedFaults.OfSound(off with { Loads = [] }, FaultConditions.Least)?.Between(poles.Plus, poles.Minus)?.SourceOhm ?? 1;
        double farads = inverter.InputF!.Value;
        StartingStore capacitor = StartingStore.Capacitor(inverter.Id, poles.Plus, poles.Minus, farads, NoOhm);
        return (
            new StartInput { Network = off, Stores = [capacitor], HorizonS = Math.Clamp(ChargeHorizonRatio * sourceOhm * farads, 1e-6, 3600) },
            string.Create(CultureInfo.InvariantCulture, $"{farads:G3} F, empty, without a resistance of its own, while it is off; what cables store magnetically is left out"));
    }
}
