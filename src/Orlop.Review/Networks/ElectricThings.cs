using System.Collections.Concurrent;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Networks;

/// <summary>
/// The things of a boat that its wiring and networks are made from, by what they are needed for: an edit of one thing leaves the sets that
/// do not hold it, and all that is made from those, as they were.
/// </summary>
internal sealed class ElectricThings
{
    private readonly BoatModel _boat;
    private readonly Memo _memo;
    private readonly ConcurrentDictionary<string, ThingSet> _poweredIn = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, WiringShape> _shapeIn = new(StringComparer.Ordinal);
    private readonly Lazy<string[]> _poles;

    public ElectricThings(BoatModel boat, Memo memo)
    {
        _boat = boat;
        _memo = memo;
        _poles = new Lazy<string[]>(() => [.. Poled()]);
        Wired = ThingSet.Of(memo, boat.Things.Where(IsWired));
        Supplying = ThingSet.Of(memo, boat.Things.Where(IsSupplying));
        Around = ThingSet.Of(memo, boat.Things.Where(thing => thing is Space or Way));
    }

    /// <summary>What carries current from place to place: cables, links, devices.</summary>
    public ThingSet Wired { get; }

    /// <summary>Bars, sources and converters.</summary>
    public ThingSet Supplying { get; }

    /// <summary>What surrounds cables: spaces and ways.</summary>
    public ThingSet Around { get; }

    /// <summary>Bars, sources, converters, and the loads that are on in a condition, in the owner's order.</summary>
    public ThingSet PoweredIn(string conditionId) => _poweredIn.GetOrAdd(conditionId, id => ThingSet.Of(_memo, _boat.Things.Where(
        thing => IsSupplying(thing) || (thing is ElectricLoad load && LoadElements.IsOnIn(load, id)))));

    /// <summary>
    /// What decides which way power goes in a condition: which nodes are joined, and where parts give and take. In one memo the same object for boats that
    /// differ only in numbers and names.
    /// </summary>
    public WiringShape ShapeIn(Wiring wiring, string conditionId) => _shapeIn.GetOrAdd(conditionId, id => WiringShape.Of(
        _memo, wiring.Edges.Where(edge => edge.IsClosedIn(id)).SelectMany(edge => new[] { edge.Id, edge.A, edge.B }).Concat(_poles.Value)));

    private IEnumerable<string> Poled() => _boat.All<Part>()
        .SelectMany(part => new[] { (End: "gives", Poles: Poles.Giving(part)), (End: "takes", Poles: Poles.Taking(part)) }
            .Where(side => side.Poles is not null)
            .SelectMany(side => new[] { side.End, part.GetType().Name, part.Id, side.Poles!.Plus, side.Poles.Minus }));

    private static bool IsWired(Thing thing) => thing is Cable or Link or Protection or IsolatorSwitch or PlugAndSocket or Changeover;

    private static bool IsSupplying(Thing thing) => thing is Part and not ElectricLoad && !IsWired(thing);
}
