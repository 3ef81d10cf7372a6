using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;

namespace Orlop.Review.Mending;

/// <summary>The ways from what charges to the battery next to it, both poles: no load hangs on them, so no chain of a load leads along them.</summary>
internal static class ChargingWays
{
    /// <summary>Ids of the things along each such way, the charging one first; each way once.</summary>
    /// <param name="conditionIds">The conditions that it may be closed in; null for everything closed.</param>
    public static IEnumerable<string[]> Of(BoatModel boat, Wiring wiring, IEnumerable<string?> conditionIds)
    {
        PolePair[] batteries = [.. boat.All<BatteryBank>().Select(Poles.Giving).OfType<PolePair>()];
        return
        [
            .. conditionIds.SelectMany(condition =>
            {
                WiringTrees trees = new(wiring, condition);
                return boat.All<Part>().Where(part => part is not BatteryBank).Select(Poles.Giving).OfType<PolePair>()
                    .Select(giving => batteries.Select(battery => Way(trees, giving, battery)).OfType<WiringEdge[]>().MinBy(way => way.Length) is { } way ? ThingsOf(giving.Part, way) : null);
            }).OfType<string[]>().DistinctBy(ids => string.Join(' ', ids)),
        ];
    }

    private static WiringEdge[]? Way(WiringTrees trees, PolePair giving, PolePair battery) =>
        trees.Along(giving.Plus, battery.Plus).ToArray() is { Length: > 0 } plus ? [.. plus, .. trees.Along(giving.Minus, battery.Minus)] : null;

    private static string[] ThingsOf(Part charging, WiringEdge[] way)
    {
        HashSet<string> ids = [charging.Id, .. way.SelectMany(edge => new[] { edge.Owner.Id, ElementIds.ThingOf(edge.A), ElementIds.ThingOf(edge.B) })];
        return [.. ids];
    }
}
