using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>What a load asks, running and starting.</summary>
public static class LoadElements
{
    /// <summary>Running current at nominal voltage; for AC the apparent current. Null when neither current nor power is given.</summary>
    public static double? RunningA(ElectricLoad load) => load.RunningA?.Value
        ?? (load.RunningW is { } power ? power.Value / load.NominalV.Value / (load.IsAc ? load.PowerFactor?.Value ?? 1 : 1) : null);

    /// <summary>Starting current at nominal voltage; null when the running current is not known.</summary>
    public static double? StartingA(ElectricLoad load) => RunningA(load) * (load.StartRatio?.Value ?? 1);

    /// <summary>The load draws more at its start than when it runs.</summary>
    public static bool HasStart(ElectricLoad load) => load.StartRatio is { Value: > 1 };

    /// <summary>The load is on in the condition.</summary>
    public static bool IsOnIn(ElectricLoad load, string conditionId) =>
        load.Uses.Any(use => use.Condition == conditionId && use.DutyFraction > 0);

    /// <summary>The load as the engine sees it; null when it draws nothing or its draw is not known.</summary>
    internal static Load? Element(ElectricLoad load, bool isStarting)
    {
        PolePair poles = Poles.Taking(load)!;
        double? current = isStarting ? StartingA(load) : RunningA(load);
        if (current is not > 0)
        {
            return null;
        }

        double volts = load.NominalV.Value, leastV = load.LeastV?.Value ?? 0;
        LoadBehaviour behaviour = isStarting ? LoadBehaviour.Current : load.Behaviour;
        return behaviour switch
        {
            LoadBehaviour.Power => new Load(load.Id, poles.Plus, poles.Minus, LoadKind.Power, current.Value * volts, leastV),
            LoadBehaviour.Current => new Load(load.Id, poles.Plus, poles.Minus, LoadKind.Current, current.Value, leastV),
            _ => new Load(load.Id, poles.Plus, poles.Minus, LoadKind.Resistance, volts / current.Value, leastV),
        };
    }
}
