using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A fuse more, where a cable that is not protected leaves what feeds it.</summary>
internal static class FuseChoices
{
    private const double LeastOverLoad = 1.25;
    private const double MostOverLeast = 2.5;
    private const int MostCount = 20;

    /// <summary>The slot of a cable; null where no fuse can be put in before it.</summary>
    public static MendSlot? Slot(MendBench bench, Cable cable)
    {
        if (bench.ChainsOf(cable.Id).Select(chain => (Chain: chain, At: IndexOf(chain, cable.Id))).FirstOrDefault(way => way.At >= 0) is not ({ } chain, var at))
        {
            return null;
        }

        double leastA = chain.Out.Skip(at).Select(item => item.Thing).OfType<Protection>().FirstOrDefault()?.RatedA.Value ?? LeastOverLoad * RunningA(chain.Taker);
        string id = ReadableId.Of($"{cable.Id} fuse", taken => bench.Draft.Find(taken) is not null);
        MendTraits none = new() { RatedA = double.PositiveInfinity, ResistanceOhm = 0 };
        return !(leastA > 0) ? null : bench.Slot($"fuse:{cable.Id}", SlotKind.Fuse, cable.Id, none, bench.Catalogue.Parts
            .Where(part => part is { Use: CatalogueUse.Fuse, IsTwoPole: false } && part.RatedA?.Value >= leastA && part.RatedA.Value <= MostOverLeast * leastA)
            .OrderBy(part => part.RatedA!.Value).Take(MostCount)
            .SelectMany(part => bench.Ways(Of(cable, chain.Taker, part, id)))) is { } slot ? slot with { AddedIds = [id] } : null;
    }

    private static int IndexOf(Chain chain, string cableId) => chain.Out.ToList().FindIndex(item => item.Thing.Id == cableId);

    private static double RunningA(Part taker) => taker is ElectricLoad load ? load.RunningA?.Value ?? load.RunningW?.Value / load.NominalV.Value ?? 0 : 0;

    private static MendOption Of(Cable cable, Part taker, CataloguePart part, string id) => new()
    {
        What = Sentence.Of($"{cable.Title}: {part.Title} more{Mounting.Words(part)}, bolted on where it leaves what feeds it"),
        Apply = boat => With(boat, cable, taker, part, id),
        Cost = Mounting.CostOf(part),
        BesidesMoney = Mounting.MoneyOf(part),
        Traits = PartChoices.Traits(part),
        Part = part,
    };

    // Traced anew, for other changes may have been put in before.
    private static BoatModel With(BoatModel boat, Cable cable, Part taker, CataloguePart part, string id)
    {
        Wiring wiring = Wiring.Of(boat);
        if (boat.Find<Part>(taker.Id) is not { } now || Chain.Trace(boat, wiring, now) is not { Source: not null } chain || IndexOf(chain, cable.Id) is not (>= 0 and var at))
        {
            return boat;
        }

        Part? feed = boat.Find<Part>(ElementIds.ThingOf(chain.Out[at].EnteredAt));
        Protection fuse = NewFuse.Of(part, id, $"{cable.Title}, fuse", feed);
        ChainEdit put = ChainEditing.Insert(boat, chain, at - 1, fuse);
        return put.Refusal is not null ? boat : BoatEdits.Apply(boat, put.Edits.Select(Bolted)).Boat;
    }

    // A strap of its length and resistance is common practice, no source.
    private static Edit Bolted(Edit edit) => edit.Becomes is Link { LengthM: null } link
        ? edit with { Becomes = link with { LengthM = new Quantity(0.05, Knowledge.Estimated), ResistanceOhm = new Quantity(0.00005, Knowledge.Estimated) } }
        : edit;
}
