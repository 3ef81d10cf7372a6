using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>A protective conductor and the hardest that a fault on one stretch of its circuit can do to it.</summary>
/// <param name="Stretch">Where the fault is.</param>
/// <param name="Cable">The cable with the protective conductor.</param>
/// <param name="LeastA">Current of a fault at the stretch's far end.</param>
/// <param name="GreatestA">Current of a fault at its near end.</param>
/// <param name="Energy">The greatest energy of any fault between.</param>
/// <param name="KFactor">k of the conductor, A s^½/mm².</param>
/// <param name="AmpacityA">What it carries for ever; null where that cannot be told.</param>
internal sealed record EarthFaultHeat(EarthFaultStretch Stretch, Cable Cable, double LeastA, double GreatestA, LetThroughEnergy Energy, double KFactor, double? AmpacityA)
{
    /// <summary>The section that bears the energy; infinite where nothing is sure to end the fault.</summary>
    public double AskedMm2 => Math.Sqrt(Energy.A2S) / KFactor;

    /// <summary>It carries the greatest current for ever, and no time matters.</summary>
    public bool IsBorneForEver => GreatestA <= AmpacityA;

    /// <summary>Section asked over section, or current over ampacity where that is less: what is borne for ever needs no end.</summary>
    public double UseFraction => IsBorneForEver ? Math.Min(AskedMm2 / Cable.AreaMm2.Value, GreatestA / AmpacityA!.Value) : AskedMm2 / Cable.AreaMm2.Value;

    /// <summary>Every protective conductor of a circuit with the faults of every stretch; empty where no cable carries its earth.</summary>
    /// <param name="fault">A fault whose input is whole and that drives a current.</param>
    /// <param name="stretches">Its stretches, with no current above <see cref="MostA"/>.</param>
    public static ImmutableArray<EarthFaultHeat> Of(ElectricsView view, EarthFault fault, ImmutableArray<EarthFaultStretch> stretches) =>
    [
        .. from stretch in stretches
           let leastA = EarthFaultStretch.CurrentA(fault.Input!, stretch.MostOhm)
           let greatestA = EarthFaultStretch.CurrentA(fault.Input!, stretch.LeastOhm)
           let energy = LetThrough.Greatest(new LetThroughInput
           {
               LeastA = leastA,
               GreatestA = Math.Max(leastA, greatestA),
               Devices = [.. stretch.Devices.Select(Device)],
               ShutsDownS = fault.Input!.LimitA is null ? null : fault.Input.ShutsDownS,
           })
           from cable in stretch.Returns
           select new EarthFaultHeat(stretch, cable, leastA, Math.Max(leastA, greatestA), energy, AdiabaticWithstand.KFactor(cable.InsulationC!.Value, FaultedConductor.FinalC), ForEverA(view, cable, fault.Circuit.Condition)),
    ];

    /// <summary>The greatest current that is reckoned with.</summary>
    public const double MostA = 1e6;

    private static double? ForEverA(ElectricsView view, Cable cable, Condition condition) =>
        view.AmpacityOf(cable, condition) is { Missing.IsEmpty: true, Result: { IsTooHot: false, CurrentA: { } most } } ? most : null;

    private static LetThroughDevice Device(Protection device) => new()
    {
        Subject = device.Title,
        RatingA = device.RatedA.Value,
        Gates = DeviceGates.Of(device),
        IsFuse = device.Means == ProtectionMeans.Fuse,
        ClearingA2S = device.ClearingA2S?.Value,
        ResidualA = device.ResidualA?.Value,
        ResidualOpensS = device.ResidualOpensS?.Value,
    };
}
