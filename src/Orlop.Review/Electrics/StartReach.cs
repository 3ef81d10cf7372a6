using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>What a start can pull down: all that shares a stretch of its way or a source with it.</summary>
internal static class StartReach
{
    public static IEnumerable<Part> Of(ElectricsView view, SolvedGroup group, Condition condition, Part starter)
    {
        SupplyPaths paths = view.PathsIn(condition);
        HashSet<string> way = Reached(paths, starter.Id);
        return TakersIn(view, group).Where(part => part is ElectricLoad or DcConverter or Inverter && (part.Id == starter.Id || paths.ElementsTo(part.Id).Overlaps(way)));
    }

    // The way to a load, on through the converters that feed it.
    private static HashSet<string> Reached(SupplyPaths paths, string takerId)
    {
        HashSet<string> way = [];
        Queue<string> queue = new([takerId]);
        while (queue.TryDequeue(out string? id))
        {
            foreach (string element in paths.ElementsTo(id).Where(way.Add))
            {
                queue.Enqueue(element);
            }
        }

        return way;
    }

    private static IEnumerable<Part> TakersIn(ElectricsView view, SolvedGroup group) => group.Network.Loads.Select(item => item.Id)
        .Concat(group.Network.Converters.Select(item => item.Id))
        .Select(id => view.Boat.Find<Part>(ElementIds.ThingOf(id)))
        .OfType<Part>();
}
