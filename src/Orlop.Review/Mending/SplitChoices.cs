using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A circuit of its own for a load that shares a cable with others: a fuse at the bar that feeds the shared cable, and a longer cable of its own along the same run.</summary>
internal static class SplitChoices
{
    private const double LeastOverLoad = 1.25;
    private const int FusesPerSize = 2;
    private const int SizeCount = 6;

    /// <summary>The slot of a load; null where it shares no cable, or where its own cannot be led elsewhere.</summary>
    public static MendSlot? Slot(MendBench bench, ElectricLoad load)
    {
        if (load.IsAc || bench.ChainsOf(load.Id).FirstOrDefault(chain => chain.Taker.Id == load.Id && chain.IsComplete) is not { } chain
            || chain.Out[^1].Thing is not Cable own || own.Cores.Count != 2 || !own.Cores.All(core => core.To.Part == load.Id) || own.LengthM is null
            || Shared(bench, chain, load) is not { } shared)
        {
            return null;
        }

        double runningA = load.RunningA?.Value ?? load.RunningW?.Value / load.NominalV.Value ?? double.NaN;
        int sheathed = own.IsSheathed ? own.Cores.Count : 1, circuit = 0;
        double mostMm2 = TerminalSizes.MostMm2(bench.Draft, own);
        string id = ReadableId.Of($"{load.Id} own fuse", taken => bench.Draft.Find(taken) is not null);
        CataloguePart[] sizes = [.. bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Cable, AreaMm2: not null, PriceMoneyPerM: not null, MassKgPerM: not null } && part.CoreCount == sheathed && part.AreaMm2.Value >= own.AreaMm2.Value && part.AreaMm2.Value <= mostMm2).OrderBy(part => part.AreaMm2!.Value).Take(SizeCount)];
        CataloguePart[] fuses = [.. bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Fuse, IsTwoPole: false, PriceMoney: not null, MassKg: not null } && part.RatedA?.Value >= LeastOverLoad * runningA).GroupBy(part => part.Gates).SelectMany(kind => kind.OrderBy(part => part.RatedA!.Value).Take(FusesPerSize))];
        return bench.Slot($"split:{load.Id}", SlotKind.Split, load.Id, new MendTraits(), sizes.SelectMany(size => fuses.Where(fuse => size.AreaMm2!.Value <= Math.Max(own.AreaMm2.Value, TerminalSizes.AtRatingMm2(fuse.RatedA!.Value))).Select(fuse => Of(bench, load, own, shared, size, fuse, sheathed, id, ++circuit)))) is { } slot ? slot with { AddedIds = [id] } : null;
    }

    /// <summary>The way that others use too: where its plus and minus begin, and the cables along it.</summary>
    private sealed record SharedWay(string PlusNode, string MinusNode, ImmutableArray<Cable> Along);

    private static SharedWay? Shared(MendBench bench, Chain chain, ElectricLoad load)
    {
        bool IsShared(ChainItem item) => item.Thing is Cable && bench.ChainsOf(item.Thing.Id).Any(other => other.Taker.Id != load.Id);
        int at = chain.Out.ToList().FindIndex(IsShared);
        if (at < 0)
        {
            return null;
        }

        // Back to the bar before the fuse of the shared cable.
        while (at > 0 && bench.Draft.Find(ElementIds.ThingOf(chain.Out[at].EnteredAt)) is not (Busbar or BatteryBank))
        {
            at--;
        }

        ImmutableArray<Cable> along = [.. chain.Out.Skip(at).Where(IsShared).Select(item => (Cable)item.Thing)];
        ChainItem? back = chain.Back.FirstOrDefault(item => item.Thing is Cable cable && along.Contains(cable)) ?? chain.Back.FirstOrDefault(IsShared);
        return back is null || along.Any(cable => cable.LengthM is null) ? null : new SharedWay(chain.Out[at].EnteredAt, back.EnteredAt, along);
    }

    private static MendOption Of(MendBench bench, ElectricLoad load, Cable own, SharedWay shared, CataloguePart size, CataloguePart fuse, int sheathed, string id, int circuit)
    {
        double lengthM = own.LengthM!.Value + shared.Along.Sum(cable => cable.LengthM!.Value), cutM = bench.Cut.CutM(lengthM, own.LengthM.PlusMinus);
        double cutsM = sheathed > 1 ? cutM : own.Cores.Count * cutM, eachKg = (size.MassKgPerM?.Value ?? 0) * (own.Cores.Count / sheathed);
        return new MendOption
        {
            What = Sentence.Of($"{load.Title}: a circuit of its own from {bench.Draft.Find(ElementIds.ThingOf(shared.PlusNode))!.Title}, with {fuse.Title}{Mounting.Words(fuse)} and {new Amount(cutsM, "M")} of {size.Title} along the same run"),
            Apply = boat => With(boat, load, own, shared, size, fuse, sheathed, id, lengthM),
            Cost = new MendCost(Mounting.CostOf(fuse).PriceMoney + (cutsM * (size.PriceMoneyPerM?.Value ?? 0)), MendBench.AddedKg(Mounting.CostOf(fuse).AddedKg + (eachKg * lengthM), own.MassKgPerM?.Value * own.LengthM.Value)),
            Traits = new MendTraits { Circuit = circuit },
            Part = size,
            BesidesMoney = Mounting.CostOf(fuse).PriceMoney,
        };
    }

    private static BoatModel With(BoatModel boat, ElectricLoad load, Cable own, SharedWay shared, CataloguePart size, CataloguePart fuse, int sheathed, string id, double lengthM)
    {
        Part? feed = boat.Find<Part>(ElementIds.ThingOf(shared.PlusNode));
        int bundle = own.Cores.Count / sheathed;
        Protection device = NewFuse.Of(fuse, id, $"{load.Title}, own fuse", feed);
        Link strap = NewFuse.Strap(device, Terminal.Parse(shared.PlusNode));
        BoatModel led = MendBench.Change<Cable>(boat, own.Id, was => was with
        {
            AreaMm2 = size.AreaMm2!,
            InsulationC = size.InsulationC,
            Strands = size.Strands,
            OuterDiameterMm = size.OuterDiameterMm is { } each ? each with { Value = each.Value * bundle } : null,
            MassKgPerM = size.MassKgPerM is { } mass ? mass with { Value = mass.Value * bundle } : null,
            LengthM = new Quantity(lengthM, Knowledge.Estimated, was.LengthM?.PlusMinus, Method: "its own run and that of the shared cable"),
            Run = shared.Along.SelectMany(cable => cable.Run).Concat(was.Run).ToValueList(),
            Cores = was.Cores.Select(core => core.To.Name == TerminalNames.Plus
                ? core with { From = device.At(TerminalNames.Out), LengthM = null }
                : core with { From = Terminal.Parse(shared.MinusNode), LengthM = null }).ToValueList(),
            Note = MendBench.NoteOf(size),
        });
        return led.WithThings([.. led.Things, strap, device]);
    }
}
