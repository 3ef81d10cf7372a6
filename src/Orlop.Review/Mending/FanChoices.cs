using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A fan for a space that has an opening for the air to come in and one for it to leave: a stronger one in place of that which is there, or a new one on a circuit of its own.</summary>
internal sealed class FanChoices
{
    // Which voltage is made for which, which cables are looked at, and how a length is guessed: common practice, no source.
    private const double SameVFraction = 0.1;
    private const double LeastMm2 = 1;
    private const int CableCount = 2;
    private const double LeastOverLoad = 1.25;
    private const double RoundaboutFactor = 1.2;
    private const double LeastVFraction = 0.85;
    private const string NoSpark = "; where petrol or battery gas may be, only one that cannot ignite it";

    private readonly MendBench _bench;
    private readonly Space _space;
    private readonly Supply? _supply;
    private readonly string _fanId;
    private readonly string _fuseId;
    private readonly string _cableId;

    /// <summary>Where a new fan is fed from: a plus and a minus bar, or the battery's posts.</summary>
    private sealed record Supply(string PlusNode, string MinusNode, double NominalV);

    private FanChoices(MendBench bench, Space space)
    {
        string NewId(string words) => ReadableId.Of($"{space.Id} {words}", taken => bench.Draft.Find(taken) is not null);
        (_bench, _space, _supply) = (bench, space, SupplyNear(bench, space));
        (_fanId, _fuseId, _cableId) = (NewId("fan"), NewId("fan fuse"), NewId("fan cable"));
    }

    /// <summary>The things that a new fan adds.</summary>
    public ImmutableArray<string> AddedIds => [_fanId, _fuseId, _cableId];

    /// <summary>The fans of a space; null where it has not two openings.</summary>
    public static FanChoices? In(MendBench bench, Space space) => space.Vents.Count < 2 ? null : new FanChoices(bench, space);

    /// <summary>The choices.</summary>
    public IEnumerable<MendOption> Options()
    {
        IEnumerable<CataloguePart> fans = _bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Fan, FanM3PerH: not null, RunningW: not null, RatedV: not null } && part.FanM3PerH.Value > (_space.FanM3PerH?.Value ?? 0));
        if (_space.Fan is { } there && _bench.Draft.Find<ElectricLoad>(there) is { IsAc: false } load)
        {
            return fans.Where(part => IsFor(part, load.NominalV.Value)).SelectMany(part => _bench.Ways(Stronger(load, part)));
        }

        // A fan of which no load is told may be on any circuit: which, only its owner knows.
        return _space.FanM3PerH is not null || _supply is not { } supply || OnIn() is not { Count: > 0 } on ? []
            : fans.Where(part => IsFor(part, supply.NominalV)).SelectMany(fan => Circuits(fan, supply).SelectMany((circuit, at) => _bench.Ways(New(fan, circuit.Cable, circuit.Fuse, supply, on, at + 1))));
    }

    private static bool IsFor(CataloguePart fan, double nominalV) => Math.Abs(fan.RatedV!.Value - nominalV) <= SameVFraction * nominalV;

    private MendTraits Traits(CataloguePart fan, int circuit) => AirChoices.Traits(_space, _space.Vents) with { FanM3PerH = fan.FanM3PerH!.Value, Circuit = circuit };

    private MendOption Stronger(ElectricLoad load, CataloguePart fan) => new()
    {
        What = Sentence.Of($"{load.Title}: {fan.Title} in place of {new Amount(_space.FanM3PerH?.Value ?? 0, "M3PerH")}{NoSpark}"),
        Apply = boat => MendBench.Change<Space>(MendBench.Change<ElectricLoad>(boat, load.Id, was => was with
        {
            Behaviour = LoadBehaviour.Power,
            RunningW = fan.RunningW,
            RunningA = null,
            StartRatio = fan.StartRatio,
            StartS = fan.StartS,
            MassKg = MendBench.MassAt(was, fan),
            Note = MendBench.NoteOf(fan),
        }), _space.Id, was => was with { FanM3PerH = fan.FanM3PerH }),
        Cost = new MendCost(fan.PriceMoney?.Value ?? 0, MendBench.AddedKg(fan.MassKg?.Value, load.MassKg?.Value)),
        Traits = Traits(fan, -1),
        Part = fan,
        StepFactor = MendBench.StepFactor(fan.FanM3PerH?.Value, _space.FanM3PerH?.Value),
    };

    private IEnumerable<(CataloguePart Cable, CataloguePart Fuse)> Circuits(CataloguePart fan, Supply supply)
    {
        double leastA = LeastOverLoad * fan.RunningW!.Value / supply.NominalV;
        CataloguePart[] cables = [.. _bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Cable, CoreCount: 2, AreaMm2.Value: >= LeastMm2, PriceMoneyPerM: not null, MassKgPerM: not null }).OrderBy(part => part.AreaMm2!.Value).Take(CableCount)];
        CataloguePart[] fuses =
        [
            .. _bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Fuse, IsTwoPole: false, PriceMoney: not null, MassKg: not null } && part.RatedA?.Value >= leastA && part.RatedV?.Value >= supply.NominalV)
                .GroupBy(part => part.Gates).Select(family => family.MinBy(part => part.RatedA!.Value)!),
        ];
        return cables.SelectMany(cable => fuses.Select(fuse => (cable, fuse)));
    }

    private MendOption New(CataloguePart fan, CataloguePart cable, CataloguePart fuse, Supply supply, ValueList<string> on, int circuit)
    {
        double lengthM = LengthM(supply), cutM = _bench.Cut.CutM(lengthM, null), besides = Mounting.CostOf(fuse).PriceMoney + (cutM * (cable.PriceMoneyPerM?.Value ?? 0));
        string feed = _bench.Draft.Find(ElementIds.ThingOf(supply.PlusNode))!.Title;
        return new MendOption
        {
            What = Sentence.Of($"{_space.Title}: {fan.Title} at one of its openings, on a circuit of its own from {feed}, with {fuse.Title}{Mounting.Words(fuse)} and {new Amount(cutM, "M")} of {cable.Title}{NoSpark}"),
            Apply = boat => With(boat, fan, cable, fuse, supply, on, lengthM),
            Cost = new MendCost((fan.PriceMoney?.Value ?? 0) + besides, (fan.MassKg?.Value ?? 0) + Mounting.CostOf(fuse).AddedKg + ((cable.MassKgPerM?.Value ?? 0) * lengthM)),
            BesidesMoney = besides,
            Traits = Traits(fan, circuit),
            Part = fan,
        };
    }

    private BoatModel With(BoatModel boat, CataloguePart fan, CataloguePart cable, CataloguePart fuse, Supply supply, ValueList<string> on, double lengthM)
    {
        Part? feed = boat.Find<Part>(ElementIds.ThingOf(supply.PlusNode));
        Protection device = NewFuse.Of(fuse, _fuseId, $"{_space.Title}, fan fuse", feed);
        ElectricLoad load = new()
        {
            Id = _fanId,
            Name = $"{_space.Title} fan",
            Behaviour = LoadBehaviour.Power,
            NominalV = supply.NominalV,
            RunningW = fan.RunningW,
            StartRatio = fan.StartRatio,
            StartS = fan.StartS,
            LeastV = new Quantity(Math.Round(LeastVFraction * supply.NominalV, 1), Knowledge.Estimated, Method: "typical of such a fan, from memory"),
            Uses = on.Select(condition => new LoadUse(condition, 1)).ToValueList(),
            Place = AirChoices.Middle(_space, 1 - AirChoices.EdgeFraction),
            Space = _space.Id,
            MassKg = fan.MassKg,
            Note = MendBench.NoteOf(fan),
        };
        Termination Ring() => new(TerminationMeans.Ring, null, Joint());
        Termination Butt() => new(TerminationMeans.Butt, null, Joint());
        Cable led = new()
        {
            Id = _cableId,
            Name = $"{_space.Title} fan cable",
            AreaMm2 = cable.AreaMm2!,
            InsulationC = cable.InsulationC,
            Strands = cable.Strands,
            OuterDiameterMm = cable.OuterDiameterMm,
            MassKgPerM = cable.MassKgPerM,
            IsSheathed = true,
            LengthM = new Quantity(lengthM, Knowledge.Estimated, Method: "square from what feeds it, and a fifth more; measure before cutting"),
            // Taken as lying in the warm space all the way: no cooler than it will be.
            Run = [new RunLeg { Space = _space.Id, LengthM = lengthM }],
            Cores =
            [
                new Core { Id = "plus", From = device.At(TerminalNames.Out), To = load.At(TerminalNames.Plus), FromEnd = Ring(), ToEnd = Butt() },
                new Core { Id = "minus", From = Terminal.Parse(supply.MinusNode), To = load.At(TerminalNames.Minus), FromEnd = Ring(), ToEnd = Butt() },
            ],
            Note = MendBench.NoteOf(cable),
        };
        BoatModel blown = MendBench.Change<Space>(boat, _space.Id, was => was with { FanM3PerH = fan.FanM3PerH, Fan = _fanId });
        return blown.WithThings([.. blown.Things, NewFuse.Strap(device, Terminal.Parse(supply.PlusNode)), device, load, led]);
    }

    private static Quantity Joint() => new(0.0003, Knowledge.Estimated, Method: "typical of such an end, from memory");

    private double LengthM(Supply supply)
    {
        Place to = AirChoices.Middle(_space, 1 - AirChoices.EdgeFraction);
        double squareM = new[] { supply.PlusNode, supply.MinusNode }.Select(node => _bench.Draft.Find<Part>(ElementIds.ThingOf(node))?.Place ?? to)
            .Max(from => Math.Abs(to.XM - from.XM) + Math.Abs(to.YM - from.YM) + Math.Abs(to.ZM - from.ZM));
        return CutAllowance.RoundedUpM(Math.Max(1, RoundaboutFactor * squareM), 0.1);
    }

    // It runs wherever something gives heat in its space.
    private ValueList<string> OnIn() => _bench.View.Conditions.Where(condition => _bench.View.WarmthsIn(condition).Of(_space)?.HeatW > 0).Select(condition => condition.Id).ToValueList();

    // That of a circuit in the space, else of any; from a bar where its way passes one, else from the posts.
    private static Supply? SupplyNear(MendBench bench, Space space)
    {
        Chain? chain = bench.Chains.Where(each => each is { IsComplete: true, Taker: ElectricLoad { IsAc: false } }).OrderBy(each => each.Taker.Space == space.Id ? 0 : 1).FirstOrDefault();
        return chain is not null && Node(bench, chain.Out) is { } plus && Node(bench, chain.Back) is { } minus ? new Supply(plus, minus, ((ElectricLoad)chain.Taker).NominalV.Value) : null;
    }

    private static string? Node(MendBench bench, ImmutableArray<ChainItem> way) => way.SelectMany(item => new[] { item.EnteredAt, item.LeftAt })
        .Where(node => bench.Draft.Find(ElementIds.ThingOf(node)) is Busbar or BatteryBank)
        .OrderBy(node => bench.Draft.Find(ElementIds.ThingOf(node)) is Busbar ? 0 : 1).FirstOrDefault();
}
