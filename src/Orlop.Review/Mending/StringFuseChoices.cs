using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Strings;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A fuse at the plus post of each string that nothing parts from those beside it; everything bolted to the post moves behind the fuse.</summary>
internal static class StringFuseChoices
{
    /// <summary>The slot of a group; null where each string has a fuse or breaker already, or nothing is bolted to a post.</summary>
    public static MendSlot? Slot(MendBench bench, StringGroup group)
    {
        Place[] bare =
        [
            .. group.Strings.Where(each => each.IsProtected == false).Select(each => (Battery: bench.Draft.Find<BatteryBank>(each.Members[0].Id)!, Post: bench.Strings.Post(each, true)))
                .Select(each => new Place(each.Battery, each.Post, ReadableId.Of($"{each.Battery.Id} string fuse", taken => bench.Draft.Find(taken) is not null))),
        ];
        string[] leads = [.. bare.SelectMany(place => bench.Wiring.At(place.Post)).Select(edge => edge.Owner).Where(owner => owner is Cable or Link).Select(owner => owner.Id).Distinct()];
        if (leads.Length == 0 || bare.Any(place => !bench.Wiring.At(place.Post).Any(edge => edge.Owner is Cable or Link)))
        {
            return null;
        }

        double leastV = group.Strings.Max(each => each.NominalV);
        MendTraits none = new() { RatedA = double.PositiveInfinity, ResistanceOhm = 0 };
        return bench.Slot($"string-fuses:{bare[0].Battery.Id}", SlotKind.Fuse, leads[0], none, bench.Catalogue.Parts
            .Where(part => part is { Use: CatalogueUse.Fuse, IsTwoPole: false, RatedA: not null } && part.RatedV?.Value >= leastV)
            .SelectMany(part => bench.Ways(Of(bare, part)))) is { } slot ? slot with { AlsoIds = [.. leads.Skip(1)], AddedIds = [.. bare.Select(place => place.FuseId)] } : null;
    }

    private sealed record Place(BatteryBank Battery, string Post, string FuseId);

    private static MendOption Of(Place[] bare, CataloguePart part) => new()
    {
        What = Sentence.Of($"{string.Join(", ", bare.Select(place => place.Battery.Title))}: {(bare.Length == 1 ? "" : $"{bare.Length} × ")}{part.Title}{Mounting.Words(part)}, one on each plus post, before everything else that is bolted there"),
        Apply = boat => bare.Aggregate(boat, (becomes, place) => With(becomes, place, part)),
        Cost = new MendCost(bare.Length * Mounting.CostOf(part).PriceMoney, bare.Length * Mounting.CostOf(part).AddedKg),
        BesidesMoney = bare.Length * Mounting.MoneyOf(part),
        Traits = PartChoices.Traits(part),
        Part = part,
        PieceCount = bare.Length,
    };

    private static BoatModel With(BoatModel boat, Place place, CataloguePart part)
    {
        Protection fuse = NewFuse.Of(part, place.FuseId, $"{place.Battery.Title}, string fuse", place.Battery);
        Terminal Moved(Terminal at) => at.ToString() == place.Post ? fuse.At(TerminalNames.Out) : at;
        BoatModel moved = boat.WithThings(boat.Things.Select(thing => thing switch
        {
            Cable cable when cable.Cores.Any(core => core.From.ToString() == place.Post || core.To.ToString() == place.Post) =>
                cable with { Cores = cable.Cores.Select(core => core with { From = Moved(core.From), To = Moved(core.To) }).ToValueList() },
            Link link => link with { From = Moved(link.From), To = Moved(link.To) },
            _ => thing,
        }));
        return moved.WithThings([.. moved.Things, NewFuse.Strap(fuse, Terminal.Parse(place.Post)), fuse]);
    }
}
