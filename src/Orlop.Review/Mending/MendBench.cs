using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Practices;

namespace Orlop.Review.Mending;

/// <summary>What the makers of choices work with: the draft, how she is joined, the catalogue, the stock, what is cut besides.</summary>
internal sealed class MendBench
{
    private readonly ImmutableArray<Chain> _chains;
    private readonly Dictionary<string, HashSet<int>> _waysOf;

    public MendBench(BoatModel draft, Catalogue catalogue, CutAllowance cut, MendAim aim)
    {
        (Draft, Catalogue, Cut, Aim, Shelf) = (draft, catalogue, cut, aim, new StockShelf(draft, catalogue));
        Wiring = Wiring.Of(draft);
        string?[] conditions = [.. draft.All<Condition>().Select(condition => condition.Id), null];
        _chains = [.. draft.All<Part>().SelectMany(part => conditions.Select(condition => Chain.Trace(draft, Wiring, part, condition))).OfType<Chain>().Where(chain => chain.Source is not null)];
        HashSet<string> batteries = [.. draft.All<BatteryBank>().Select(battery => battery.Id)];
        _waysOf = Numbered([.. _chains.Select(ThingsOf), .. ChargingWays.Of(draft, Wiring, conditions).Select(ids => ids.Where(id => !batteries.Contains(id)))]);
    }

    public BoatModel Draft { get; }

    public Wiring Wiring { get; }

    public Catalogue Catalogue { get; }

    public CutAllowance Cut { get; }

    public MendAim Aim { get; }

    public StockShelf Shelf { get; }

    /// <summary>The draft as the checks see it.</summary>
    public ElectricsView View => field ??= ViewOf(Draft);

    /// <summary>The batteries that stand side by side, and what leads to them.</summary>
    public StringWays Strings => field ??= new StringWays(this);

    /// <summary>Every way from a source to what it feeds.</summary>
    public IEnumerable<Chain> Chains => _chains;

    /// <summary>The chains that a thing is on, each way once.</summary>
    public IEnumerable<Chain> ChainsOf(string thingId) => _waysOf.TryGetValue(thingId, out HashSet<int>? of)
        ? of.Where(at => at < _chains.Length).Order().Select(at => _chains[at]).DistinctBy(chain => string.Join(' ', chain.Out.Concat(chain.Back).Select(item => item.Thing.Id)))
        : [];

    /// <summary>A change of the thing can bear on the finding: they are on one way to a load or from what charges, or the finding is about the thing, a battery, or what a change added; of warmth the air of each space and the cables in it, of strings what stands on their ways.</summary>
    public bool IsRelated(Objection objection, string thingId) => objection.IsOf(thingId)
        || Draft.Find(thingId) switch
        {
            Space => true,
            Cable cable when objection.IsOfWarmth && objection.ThingIds.Select(SpaceOf).OfType<string>().Any(space => cable.Run.Any(leg => leg.Space == space || (leg.Way is { } way && Draft.Find<Way>(way)?.Space == space))) => true,
            _ => false,
        }
        || (objection.IsOfStrings ? Strings.ThingIds.Contains(thingId) : IsOnOneWay(objection, thingId));

    private string? SpaceOf(string thingId) => Draft.Find(thingId) switch { Space space => space.Id, Part part => part.Space, _ => null };

    private bool IsOnOneWay(Objection objection, string thingId) => objection.ThingIds
        .Any(id => Draft.Find(id) is null or BatteryBank || (_waysOf.TryGetValue(id, out HashSet<int>? of) && _waysOf.TryGetValue(thingId, out HashSet<int>? mine) && of.Overlaps(mine)));

    /// <summary>A boat as the checks see it.</summary>
    public static ElectricsView ViewOf(BoatModel boat)
    {
        Memo memo = new();
        return new ElectricsView(boat, Practice.Of(boat, memo), memo, CancellationToken.None);
    }

    /// <summary>The choice as bought, where its price and mass are known, and as taken from stock, where there is enough for it alone.</summary>
    public IEnumerable<MendOption> Ways(MendOption bought)
    {
        CataloguePart part = bought.Part!;
        bool isKnown = part.Use == CatalogueUse.Cable ? part.PriceMoneyPerM is not null && part.MassKgPerM is not null : part.PriceMoney is not null && part.MassKg is not null;
        if (isKnown)
        {
            yield return bought;
        }

        MendOption taken = bought with { IsFromStock = true, Cost = bought.Cost with { PriceMoney = bought.BesidesMoney } };
        if (Shelf.Of(part).Any() && Shelf.Has(part, [taken]))
        {
            yield return taken;
        }
    }

    /// <summary>The slot of these choices by rising weight, the least of them only where there are too many; null where there is none but to leave it.</summary>
    public MendSlot? Slot(string id, SlotKind kind, string thingId, MendTraits kept, IEnumerable<MendOption> options)
    {
        MendOption keep = new() { What = new([]), Apply = boat => boat, Traits = kept, IsKept = true };
        MendOption[] all = [.. options.Where(option => option.Traits != kept).OrderBy(option => MendWeight.Of(option, Aim)).Take(MendSlot.MostOptionCount - 1)];
        return all.Length == 0 ? null : new MendSlot(id, kind, thingId, [keep, .. all]);
    }

    /// <summary>The boat with a thing of hers changed.</summary>
    public static BoatModel Change<T>(BoatModel boat, string id, Func<T, Thing> change)
        where T : Thing => boat.WithThings(boat.Things.Select(thing => thing.Id == id && thing is T of ? change(of) : thing));

    private const string GenericPart = "Generic part: ";

    /// <summary>The note of a thing that a generic part stands in.</summary>
    public static string NoteOf(CataloguePart part) => $"{GenericPart}{part.Title}.";

    /// <summary>The generic part that a note begins with; null where it names none. The catalogue is looked into only where there is one.</summary>
    public static CataloguePart? PartOf(string? note, Lazy<Catalogue> catalogue) => note?.StartsWith(GenericPart, StringComparison.Ordinal) == true
        ? catalogue.Value.Parts.FirstOrDefault(part => note.StartsWith(NoteOf(part), StringComparison.Ordinal)) : null;

    /// <summary>What is heavier than before, in kg; what is not known weighs nothing.</summary>
    public static double AddedKg(double? becomesKg, double? wasKg) => Math.Max(0, (becomesKg ?? 0) - (wasKg ?? 0));

    /// <summary>How far a size is from the one that is there; nothing where that is not known.</summary>
    public static double StepFactor(double? sizeIs, double? sizeWas) => sizeIs is > 0 && sizeWas is > 0 ? Math.Abs(Math.Log(sizeIs.Value / sizeWas.Value)) : 0;

    // By each thing, which of the ways it is on: chains of loads first, as they are listed, then ways of what charges.
    private static Dictionary<string, HashSet<int>> Numbered(IEnumerable<IEnumerable<string>> ways)
    {
        Dictionary<string, HashSet<int>> waysOf = new(StringComparer.Ordinal);
        foreach ((int at, IEnumerable<string> ids) in ways.Index())
        {
            foreach (string id in ids)
            {
                (waysOf.TryGetValue(id, out HashSet<int>? of) ? of : waysOf[id] = []).Add(at);
            }
        }

        return waysOf;
    }

    // The source alone is on every chain: it joins nothing that its bars do not.
    private static IEnumerable<string> ThingsOf(Chain chain) => chain.Out.Concat(chain.Back)
        .SelectMany(item => new[] { item.Thing.Id, ElementIds.ThingOf(item.EnteredAt), ElementIds.ThingOf(item.LeftAt) })
        .Append(chain.Taker.Id).Where(id => id != chain.Source!.Id).Distinct();

    /// <summary>Mass of a part where it has a place to act at; a mass without one would only make her weight unknown.</summary>
    public static Quantity? MassAt(Part part, CataloguePart made) => part.Place is null ? part.MassKg : made.MassKg ?? part.MassKg;
}
