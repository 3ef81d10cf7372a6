using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>Takes the boat apart into the network that the engine solves, in one case.</summary>
public static class NetworkBuilder
{
    /// <summary>Builds the network of a case. A load that nothing feeds is left out and named; a value that is missing is named too.</summary>
    public static BuiltNetwork Build(BoatModel boat, Wiring wiring, Practice? practice, Condition condition, NetworkCase networkCase)
    {
        ConductorElements conductors = new(boat, practice, condition, networkCase.Charge == ChargeCase.Full);
        foreach (WiringEdge edge in wiring.Edges.Where(edge => edge.IsClosedIn(condition.Id)))
        {
            conductors.Add(edge);
        }

        SourceElements sources = new(condition, networkCase.Charge);
        ImmutableArray<Load>.Builder loads = ImmutableArray.CreateBuilder<Load>();
        List<Gap> gaps = conductors.Gaps;
        foreach (Part part in boat.All<Part>())
        {
            sources.Add(part);
            if (part is ElectricLoad load && (LoadElements.IsOnIn(load, condition.Id) || load.Id == networkCase.StartingLoadId))
            {
                AddLoad(load, load.Id == networkCase.StartingLoadId, loads, gaps);
            }
            else if (part is Charger { Drive: ChargerDrive.Shore, ShoreA: { } shoreA } charger && condition.OnShore)
            {
                PolePair poles = Poles.Taking(charger)!;
                loads.Add(new Load($"{charger.Id}.shore", poles.Plus, poles.Minus, LoadKind.Current, shoreA.Value));
            }
        }

        gaps.AddRange(sources.Gaps);
        Network network = new()
        {
            Conductors = conductors.Conductors.ToImmutable(),
            Contacts = conductors.Contacts.ToImmutable(),
            Batteries = sources.Batteries.ToImmutable(),
            LimitedSources = sources.Limited.ToImmutable(),
            Converters = sources.Converters.ToImmutable(),
            Loads = loads.ToImmutable(),
            BondedNodes = [.. boat.All<Busbar>().Where(bar => bar.IsBonded).Select(bar => bar.At(TerminalNames.Bar).ToString())],
        };
        ImmutableArray<string> unfed = [];
        (network, unfed) = WithoutUnfed(network);
        return new BuiltNetwork
        {
            Case = networkCase,
            Network = network,
            Gaps = gaps.GroupBy(gap => gap.ElementId, StringComparer.Ordinal)
                .ToFrozenDictionary(group => group.Key, group => group.Select(gap => gap.Missing).Distinct().ToImmutableArray(), StringComparer.Ordinal),
            Assumed = conductors.Assumed.ToFrozenDictionary(StringComparer.Ordinal),
            Unfed = unfed,
        };
    }

    private static void AddLoad(ElectricLoad load, bool isStarting, ImmutableArray<Load>.Builder loads, List<Gap> gaps)
    {
        if (LoadElements.RunningA(load) is null)
        {
            gaps.Add(new Gap(load.Id, new FindingInput(load.Id, "runningA", IsMissing: true)));
        }

        if (LoadElements.Element(load, isStarting) is { } element)
        {
            loads.Add(element);
        }
    }

    // What floats is taken out and named until nothing floats any more: a converter that nothing feeds leaves its own loads floating.
    private static (Network Network, ImmutableArray<string> Unfed) WithoutUnfed(Network network)
    {
        ImmutableArray<string>.Builder unfed = ImmutableArray.CreateBuilder<string>();
        while (true)
        {
            HashSet<string> floating = [.. NetworkCheck.FindFaults(network).Where(fault => fault.Kind == NetworkFaultKind.Floating).SelectMany(fault => fault.Ids)];
            HashSet<string> takers = [.. network.Loads.Select(load => load.Id).Concat(network.Converters.Select(converter => converter.Id)).Where(floating.Contains)];
            if (takers.Count == 0)
            {
                return (network, unfed.ToImmutable());
            }

            unfed.AddRange(takers.Order(StringComparer.Ordinal));
            network = network with
            {
                Loads = network.Loads.RemoveAll(load => takers.Contains(load.Id)),
                Converters = network.Converters.RemoveAll(converter => takers.Contains(converter.Id)),
            };
        }
    }
}
