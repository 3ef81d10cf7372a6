using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>
/// A stretch of an AC circuit's live way behind a device, up to the next or to what takes power: a fault to earth anywhere on it, and the protective conductors that it returns by.
/// </summary>
/// <param name="Devices">The devices that such a fault passes, from the source on; none for the stretch between an inverter and its first device.</param>
/// <param name="NearOhm">Source, live and protective conductor at its near end, cold: the least loop.</param>
/// <param name="FarOhm">The same at its far end, hot: the greatest loop.</param>
/// <param name="Returns">The cables with the cores by which it returns.</param>
internal sealed record EarthFaultStretch(ImmutableArray<Protection> Devices, (double Source, double Live, double Earth) NearOhm, (double Source, double Live, double Earth) FarOhm, ImmutableArray<Cable> Returns)
{
    /// <summary>The least loop.</summary>
    public double LeastOhm => NearOhm.Source + NearOhm.Live + NearOhm.Earth;

    /// <summary>The greatest loop.</summary>
    public double MostOhm => FarOhm.Source + FarOhm.Live + FarOhm.Earth;

    /// <summary>The stretches of a fault whose input is whole; what lies between a shore inlet and its first device is left out, for what ends a fault there is ashore.</summary>
    public static ImmutableArray<EarthFaultStretch> Of(EarthFault fault)
    {
        ImmutableArray<WiringEdge> live = fault.Circuit.Live;
        int[] poles = [.. Enumerable.Range(0, live.Length).Where(at => live[at] is { Kind: WiringEdgeKind.ProtectionPole, Owner: Protection { RatedA.Value: > 0 } })];
        ImmutableArray<EarthFaultStretch>.Builder stretches = ImmutableArray.CreateBuilder<EarthFaultStretch>();
        for (int count = 0; count <= poles.Length; count++)
        {
            int from = count == 0 ? 0 : poles[count - 1] + 1, to = count < poles.Length ? poles[count] : live.Length;
            if (count > 0 || (fault.Circuit.Source is Inverter && to > 0))
            {
                stretches.Add(Of(fault, [.. poles.Take(count).Select(at => (Protection)live[at].Owner)], from, to));
            }
        }

        return stretches.ToImmutable();
    }

    /// <summary>The current through a loop: no more than the source gives.</summary>
    public static double CurrentA(EarthFaultInput input, double loopOhm) => Math.Min(input.NominalV / loopOhm, input.LimitA ?? double.PositiveInfinity);

    private static EarthFaultStretch Of(EarthFault fault, ImmutableArray<Protection> devices, int from, int to)
    {
        ImmutableArray<WiringEdge> live = fault.Circuit.Live, earth = fault.Earth!.Value;
        Cable[] beside = CablesOf(live[from..to]), later = CablesOf(live[to..]);
        // Where its first cable has no core of the earth, a fault may return by any way, and none is counted to limit it.
        int near = beside.Length > 0 ? Array.FindLastIndex([.. earth], edge => edge.Kind == WiringEdgeKind.Core && edge.Owner == beside[0]) : -1;
        // A core beside a later stretch carries the faults of that one.
        int far = Array.FindIndex([.. earth], edge => edge.Kind == WiringEdgeKind.Core && (near < 0 ? !later.Contains(edge.Owner) : beside.Contains(edge.Owner)));
        ImmutableArray<WiringEdge> back = far < 0 ? [] : earth[far..];
        double source = fault.Input!.SourceOhm;
        return new EarthFaultStretch(
            devices,
            (source, WayResistance.Cold(live[..from]).Ohm!.Value, near < 0 ? 0 : WayResistance.Cold(earth[(near + 1)..]).Ohm!.Value),
            (source, WayResistance.Hot(live[..to]).Ohm!.Value, WayResistance.Hot(back).Ohm!.Value),
            [.. CablesOf(back).Except(later)]);
    }

    private static Cable[] CablesOf(ImmutableArray<WiringEdge> edges) => [.. edges.Where(edge => edge.Kind == WiringEdgeKind.Core).Select(edge => (Cable)edge.Owner).Distinct()];
}
