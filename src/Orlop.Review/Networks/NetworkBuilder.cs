using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>
/// Takes the boat apart into the networks that the engine solves, for one condition. A case for the greatest fault has no loads: they do
/// not feed it.
/// </summary>
public sealed class NetworkBuilder
{
    private readonly IReadOnlyCollection<Part> _parts;
    private readonly Condition _condition;
    private readonly Func<bool, ConductorSet> _conductors;

    public NetworkBuilder(BoatModel boat, Wiring wiring, Practice? practice, Condition condition)
        : this([.. boat.All<Part>()], condition, isForGreatestFault => new ConductorElements(boat, SpaceAir.Of(boat, practice), practice, condition, isForGreatestFault).Of(wiring))
    {
    }

    /// <param name="parts">Sources, converters, bars and loads, in the owner's order.</param>
    /// <param name="condition">The condition they are in.</param>
    /// <param name="conductors">What joins them, for the greatest fault or for running.</param>
    internal NetworkBuilder(IReadOnlyCollection<Part> parts, Condition condition, Func<bool, ConductorSet> conductors)
    {
        _parts = parts;
        _condition = condition;
        _conductors = conductors;
    }

    /// <summary>Builds the network of a case. A load that nothing feeds is left out and named; a value that is missing is named too.</summary>
    public BuiltNetwork Build(NetworkCase networkCase) => Build(networkCase, NetworkGrouping.Of).Built;

    /// <summary>Builds the network of a case and splits it.</summary>
    /// <param name="networkCase">The case.</param>
    /// <param name="groupingOf">Finds the grouping of a network, or remembers it.</param>
    internal GroupedNetwork Build(NetworkCase networkCase, Func<Network, NetworkGrouping> groupingOf)
    {
        bool isForGreatestFault = networkCase.Charge == ChargeCase.Full;
        ConductorSet conductors = _conductors(isForGreatestFault);
        SourceElements sources = new(_condition, networkCase.Charge);
        ImmutableArray<Load>.Builder loads = ImmutableArray.CreateBuilder<Load>();
        List<Gap> gaps = [.. conductors.Gaps];
        foreach (Part part in _parts)
        {
            sources.Add(part);
            if (isForGreatestFault)
            {
                continue;
            }

            if (part is ElectricLoad load && (LoadElements.IsOnIn(load, _condition.Id) || load.Id == networkCase.StartingLoadId))
            {
                AddLoad(load, load.Id == networkCase.StartingLoadId, loads, gaps);
            }
            else if (part is Charger { Drive: ChargerDrive.Shore, ShoreA: { } shoreA } charger && _condition.OnShore)
            {
                PolePair poles = Poles.Taking(charger)!;
                loads.Add(new Load($"{charger.Id}.shore", poles.Plus, poles.Minus, LoadKind.Current, shoreA.Value));
            }
        }

        gaps.AddRange(sources.Gaps);
        Network network = new()
        {
            Conductors = conductors.Conductors,
            Contacts = conductors.Contacts,
            Batteries = sources.Batteries.ToImmutable(),
            LimitedSources = sources.Limited.ToImmutable(),
            Converters = sources.Converters.ToImmutable(),
            Loads = loads.ToImmutable(),
            BondedNodes = [.. Bonds.Of(_parts).Select(bond => bond.ToString())],
        };
        NetworkGrouping grouping = groupingOf(network);
        BuiltNetwork built = new()
        {
            Case = networkCase,
            Network = grouping.Without(network),
            Gaps = gaps.GroupBy(gap => gap.ElementId, StringComparer.Ordinal)
                .ToFrozenDictionary(group => group.Key, group => group.Select(gap => gap.Missing).Distinct().ToImmutableArray(), StringComparer.Ordinal),
            Assumed = conductors.Assumed,
            Guessed = sources.Guessed,
            Unfed = grouping.Unfed,
        };
        return new GroupedNetwork(built, grouping, grouping.Split(network));
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
}
