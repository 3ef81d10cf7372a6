using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>Each kind of remedy, where the catalogue has no other.</summary>
public sealed class RemedyTests
{
    private static readonly CataloguePart SoftStart = new() { Id = "soft", Name = "Soft starter", Use = CatalogueUse.SoftStart, RatedA = 20, StartRatio = 1.5, StartS = 2, MassKg = 0.5, PriceMoney = 90 };

    [Fact]
    public void LoadThatOpensItsFuse_GetsASoftStarter_WhichIsCarried()
    {
        BoatModel boat = Lamp().Change<ElectricLoad>("lamp", lamp => lamp with { StartRatio = 8, StartS = 2 });
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("start-opens-device", "fuse")]);
        MendResult result = Mend(boat, [SoftStart]);
        Assert.Equal((MendOutcome.Cleared, 90.0, 0.5), (result.Outcome, result.Set!.Cost.PriceMoney, result.Set.Cost.AddedKg));
        Assert.Equal(1.5, result.Set.Boat.Find<ElectricLoad>("lamp")!.StartRatio!.Value);
        Assert.Equal(0.5, Assert.Single(result.Set.Boat.All<Gear>()).MassKg!.Value);
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    [Fact]
    public void CableWithoutAFuse_GetsOneAtTheBattery()
    {
        // The lamp straight on the post: 2 m of cable with no fuse.
        BoatModel boat = Lamp().Without("fuse").Without("strap").Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "bank.+", "lamp.+"), SmallBoat.Core("minus", "minus.bar", "lamp.-")] })
            .Change<BatteryBank>("bank", bank => bank with { Place = new Place(1, 0, 1), Size = new BoxSize(0.3, 0.2, 0.2) });
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("conductor-protection", "lamp-cable.plus")]);
        MendResult result = Mend(boat, [Fuse(7.5, 4), Fuse(10, 3)]);
        Protection fuse = Assert.Single(result.Set!.Boat.All<Protection>());
        Assert.Equal((10, 3), (fuse.RatedA.Value, result.Set.Cost.PriceMoney));
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    [Fact]
    public void LoadAtTheEndOfASharedThinCable_GetsACircuitOfItsOwn()
    {
        BoatModel boat = Shared();
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("voltage-drop", "lamp")]);
        // No cable of the shared one's kind is to be had: only the lamp's own can be made anew.
        MendResult result = Mend(boat, [Twin(4, 2), Fuse(15, 3)]);
        Assert.Equal(MendOutcome.Cleared, result.Outcome);
        Assert.Contains(result.Set!.Changes, change => change.What.ToString().Contains("circuit of its own", StringComparison.Ordinal));
        Cable own = result.Set.Boat.Find<Cable>("lamp-cable")!;
        Assert.Equal("bank", result.Set.Boat.All<Link>().First(link => link.To.Part == own.Cores[0].From.Part).From.Part, StringComparer.Ordinal);
        Assert.Equal(2 + 4, own.LengthM!.Value, 9);
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    [Fact]
    public void PlugThatFitsAnother_GetsAnotherKey()
    {
        PlugAndSocket Plug(string id, double x) => new() { Id = id, RatedA = 15, RatedV = 48, ContactOhm = 0.001, Keying = "round", Arrangement = id, LooseLeadM = 3, Place = new Place(x, 0, 1) };
        BoatModel boat = Lamp().With(Plug("one", 1), Plug("two", 2));
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("plugs-that-mate", "one")]);
        MendResult result = Mend(boat, [new CataloguePart { Id = "square", Use = CatalogueUse.Plug, RatedA = 15, RatedV = 48, ResistanceOhm = 0.001, Keying = "square", Arrangement = "flat", MassKg = 0.1, PriceMoney = 7 }]);
        Assert.Equal((MendOutcome.Cleared, 7.0, 1), (result.Outcome, result.Set!.Cost.PriceMoney, result.Set.Changes.Length));
    }

    [Fact]
    public void CableThroughTheEngineSpace_IsLedRoundByTheWays()
    {
        Space Box(string id, SpaceUse use, double from, double to) => new() { Id = id, Use = use, From = new Place(from, -1, 0), To = new Place(to, 1, 2), AmbientC = use == SpaceUse.Engine ? 95 : 25 };
        BoatModel boat = Lamp().With(
            Box("cabin", SpaceUse.Dry, 0, 1.5), Box("engine", SpaceUse.Engine, 1.5, 3), Box("fore", SpaceUse.Dry, 3, 5),
            new Space { Id = "deck", Use = SpaceUse.OpenDeck, From = new Place(0, -1, 2), To = new Place(5, 1, 3), AmbientC = 30 },
            new Way { Id = "over", Means = WayKind.Deckhead, Points = [new Place(1, 0, 2), new Place(4, 0, 2)], Space = "deck" })
            .Change<ElectricLoad>("lamp", lamp => lamp with { Place = new Place(4, 0, 1.5) })
            .Change<Cable>("lamp-cable", cable => cable with { LengthM = 6, OuterDiameterMm = 8, Run = [new RunLeg { Space = "cabin", LengthM = 1 }, new RunLeg { Space = "engine", LengthM = 5 }] });
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("conductor-ampacity", "lamp-cable")]);
        Cable led = Mend(boat, []).Set!.Boat.Find<Cable>("lamp-cable")!;
        // From the fuse at (1, 0, 1) up to the way, 1 m; along it, 3 m; down to the lamp at (4, 0, 1.5), 0.5 m.
        Assert.Equal(4.5, led.LengthM!.Value, 9);
        Assert.Equal(["cabin", "over", "fore"], led.Run.Select(leg => leg.Way ?? leg.Space));
    }

    [Fact]
    public void PutInto_AnAlteration_GivesTheProposedBoatAndLeavesTheBoatAsBuilt()
    {
        BoatModel asBuilt = Lamp();
        Alteration draft = AlteredBoat.WithEdit(asBuilt, new Alteration { Id = "longer" }, "lamp-cable", asBuilt.Find<Cable>("lamp-cable")! with { LengthM = 14, Run = [new RunLeg { Space = "cabin", LengthM = 14 }] });
        BoatModel altered = AlteredBoat.Of(asBuilt, draft).Boat;
        MendSet set = Mend(altered, [Twin(4, 2), Twin(6, 3), Twin(10, 6)]).Set!;
        Alteration mended = set.PutInto(asBuilt, MendDraft.Of(draft, "mended", "Mended"));
        EditOutcome outcome = AlteredBoat.Of(asBuilt, mended);
        Assert.Empty(outcome.Clashes);
        Assert.Equal(set.Boat, outcome.Boat);
        Assert.Equal((AlterationStatus.Draft, "mended"), (mended.Status, mended.Id));
        Assert.Equal(Lamp(), asBuilt);
    }

    // Bank, a thin cable to a panel bar, and the lamp 2 m on beside a heater; the shared cable is single-core, for which the catalogue has nothing.
    private static BoatModel Shared() => Lamp(areaMm2: 4, lengthM: 2).With(
        new Busbar { Id = "panel", RatedA = 100, Place = new Place(1.5, 0, 1) },
        new Busbar { Id = "panel-minus", RatedA = 100, Place = new Place(1.5, 0.1, 1) },
        Feed("feed-plus", "fuse.out", "panel.bar"), Feed("feed-minus", "minus.bar", "panel-minus.bar"),
        SmallBoat.Lamp("heater", 2), SmallBoat.LampCable("heater-cable", "heater") with { Cores = [SmallBoat.Core("plus", "panel.bar", "heater.+"), SmallBoat.Core("minus", "panel-minus.bar", "heater.-")] })
        .Change<BatteryBank>("bank", bank => bank with { Place = new Place(0.9, 0, 1) })
        .Change<ElectricLoad>("lamp", lamp => lamp with { Drop = DropClass.Critical })
        .Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "panel.bar", "lamp.+"), SmallBoat.Core("minus", "panel-minus.bar", "lamp.-")] });

    private static Cable Feed(string id, string from, string to) => new()
    {
        Id = id,
        AreaMm2 = 2.5,
        InsulationC = 90,
        LengthM = 4,
        IsSheathed = true,
        Cores = [SmallBoat.Core("only", from, to)],
        Run = [new RunLeg { Space = "cabin", LengthM = 4 }],
    };
}
