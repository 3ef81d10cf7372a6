using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>What a source that stays live still feeds past what was opened.</summary>
public static class StillFed
{
    /// <summary>Bars and studs, converters, inverters and loads at its live nodes: bars first, then what starts by itself or must not be switched off, in the order of the boat.</summary>
    public static ImmutableArray<Part> By(BoatModel boat, StaysLive live)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(live);
        HashSet<string> ids = [.. live.Nodes.Select(ElementIds.ThingOf).Where(id => id != live.SourceId)];
        return [.. boat.All<Part>().Where(part => ids.Contains(part.Id) && Rank(part) is not null).OrderBy(part => Rank(part))];
    }

    /// <summary>Each source that stays live, with what it feeds that no source before it does and that is no such source itself.</summary>
    public static IEnumerable<(StaysLive Live, ImmutableArray<Part> Fed)> Each(BoatModel boat, IsolationResult plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        HashSet<string> named = [.. plan.StaysLive.Select(live => live.SourceId)];
        foreach (StaysLive live in plan.StaysLive)
        {
            yield return (live, [.. By(boat, live).Where(part => named.Add(part.Id))]);
        }
    }

    private static int? Rank(Part part) => part switch
    {
        Busbar => 0,
        DcConverter or Inverter or Charger => 1,
        ElectricLoad { IsVital: true } => 2,
        ElectricLoad => 3,
        _ => null,
    };
}
