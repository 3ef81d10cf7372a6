using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Heat;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>
/// The networks of a boat's cases, each remembered by the things it is made from: a condition in which an edited thing has no part is not
/// built again, and equal groups are solved once.
/// </summary>
internal sealed class CaseNetworks(BoatModel boat, ElectricThings things, Wiring wiring, Practice? practice, SpaceAir air, Memo memo, CancellationToken token)
{
    private readonly GroupSolver _solver = new(memo, token);

    /// <summary>A case, its groups solved when first asked.</summary>
    public SolvedNetwork Solve(NetworkCase networkCase, Condition condition)
    {
        if (networkCase.StartingLoadId is not { } startingId)
        {
            return new SolvedNetwork(networkCase, Grouped(networkCase, condition, things.PoweredIn(condition.Id)), _solver.Solve);
        }

        NetworkCase runningCase = networkCase with { StartingLoadId = null };
        SolvedNetwork running = Solve(runningCase, condition);
        ElectricLoad? load = boat.Find<ElectricLoad>(startingId);
        if (load is null || LoadElements.IsOnIn(load, condition.Id))
        {
            // The same elements as while running, so the same groups: only numbers differ.
            GroupedNetwork grouped = Grouped(runningCase, condition, things.PoweredIn(condition.Id));
            return new SolvedNetwork(networkCase, grouped, group => _solver.Solve(Starting(group, load, running)));
        }

        ThingSet powered = ThingSet.Of(memo, boat.Things.Where(thing => thing == load || things.PoweredIn(condition.Id).Things.Contains(thing)));
        return new SolvedNetwork(networkCase, Grouped(networkCase, condition, powered), group => _solver.Solve(StartTemperatures.Hold(group, running)));
    }

    private GroupedNetwork Grouped(NetworkCase networkCase, Condition condition, ThingSet powered)
    {
        bool isForGreatestFault = networkCase.Charge == ChargeCase.Full;
        ThingSet parts = isForGreatestFault ? things.Supplying : powered;
        return memo.Get((wiring, things.Around, practice, parts, condition, networkCase, AirKey(condition, isForGreatestFault)), () =>
            new NetworkBuilder([.. parts.Things.OfType<Part>()], condition, isGreatest => Conductors(condition, isGreatest)).Build(networkCase, _solver.Grouping));
    }

    private ConductorSet Conductors(Condition condition, bool isForGreatestFault) => memo.Get(
        (wiring, things.Around, practice, condition, isForGreatestFault, AirKey(condition, isForGreatestFault)),
        () => new ConductorElements(boat, air, practice, condition, isForGreatestFault).Of(wiring));

    // The greatest fault is reckoned with cold conductors, whatever surrounds them.
    private string AirKey(Condition condition, bool isForGreatestFault) => isForGreatestFault ? "" : air.KeyIn(condition);

    private sealed record StartingGroup(Network Network);

    private Network Starting(Network group, ElectricLoad? load, SolvedNetwork running) => memo.Get((group, load?.Id), () =>
    {
        int at = load is null ? -1 : group.Loads.ToList().FindIndex(item => item.Id == load.Id);
        Network asked = at >= 0 && LoadElements.Element(load!, isStarting: true) is { } element ? group with { Loads = group.Loads.SetItem(at, element) } : group;
        return new StartingGroup(StartTemperatures.Hold(asked, running));
    }).Network;
}
