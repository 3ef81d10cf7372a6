using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>
/// Takes the boat apart into the networks that the engine solves, for one condition. What the cases of a condition share (conductors,
/// and what nothing feeds) is made once.
/// </summary>
public sealed class NetworkBuilder(BoatModel boat, Wiring wiring, Practice? practice, Condition condition)
{
    private readonly Dictionary<bool, ConductorElements> _conductors = [];
    private readonly Dictionary<ChargeCase, ImmutableArray<string>> _unfed = [];

    /// <summary>Builds the network of a case. A load that nothing feeds is left out and named; a value that is missing is named too.</summary>
    public BuiltNetwork Build(NetworkCase networkCase)
    {
        ConductorElements conductors = Conductors(networkCase.Charge == ChargeCase.Full);
        SourceElements sources = new(condition, networkCase.Charge);
        ImmutableArray<Load>.Builder loads = ImmutableArray.CreateBuilder<Load>();
        List<Gap> gaps = [.. conductors.Gaps];
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
        ImmutableArray<string> unfed = Unfed(networkCase.Charge, network);
        return new BuiltNetwork
        {
            Case = networkCase,
            Network = Without(network, unfed),
            Gaps = gaps.GroupBy(gap => gap.ElementId, StringComparer.Ordinal)
                .ToFrozenDictionary(group => group.Key, group => group.Select(gap => gap.Missing).Distinct().ToImmutableArray(), StringComparer.Ordinal),
            Assumed = conductors.Assumed,
            Unfed = unfed,
        };
    }

    private ConductorElements Conductors(bool isForGreatestFault)
    {
        if (!_conductors.TryGetValue(isForGreatestFault, out ConductorElements? conductors))
        {
            _conductors[isForGreatestFault] = conductors = new(boat, practice, condition, isForGreatestFault);
            foreach (WiringEdge edge in wiring.Edges.Where(edge => edge.IsClosedIn(condition.Id)))
            {
                conductors.Add(edge);
            }
        }

        return conductors;
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
    private ImmutableArray<string> Unfed(ChargeCase charge, Network network)
    {
        if (_unfed.TryGetValue(charge, out ImmutableArray<string> known))
        {
            return known;
        }

        ImmutableArray<string>.Builder unfed = ImmutableArray.CreateBuilder<string>();
        while (true)
        {
            Network rest = Without(network, unfed);
            HashSet<string> floating = [.. NetworkCheck.FindFaults(rest).Where(fault => fault.Kind == NetworkFaultKind.Floating).SelectMany(fault => fault.Ids)];
            string[] takers = [.. rest.Loads.Select(load => load.Id).Concat(rest.Converters.Select(converter => converter.Id)).Where(floating.Contains).Order(StringComparer.Ordinal)];
            if (takers.Length == 0)
            {
                return _unfed[charge] = unfed.ToImmutable();
            }

            unfed.AddRange(takers);
        }
    }

    private static Network Without(Network network, IReadOnlyCollection<string> takers) => takers.Count == 0 ? network : network with
    {
        Loads = network.Loads.RemoveAll(load => takers.Contains(load.Id)),
        Converters = network.Converters.RemoveAll(converter => takers.Contains(converter.Id)),
    };
}
