using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>A voltage along a chain is shown where it is known, and not where it rests on a value that nobody gave.</summary>
public sealed class ChainVoltsTests
{
    // A new boat as the program makes her, and on her one bank, one fuse, one switch and one pump.
    private static readonly BoatModel Boat = new NewBoat("Plover").Make().With(
        new BatteryBank
        {
            Id = "bank",
            Name = "House bank",
            Chemistry = BatteryChemistry.AbsorbedGlassMat,
            NominalV = 12,
            InternalResistanceOhm = 0.01,
            OpenCircuit = [new ChargePoint(0, 11.8), new ChargePoint(1, 12.8)],
        },
        new Protection { Id = "fuse", Means = ProtectionMeans.Fuse, RatedA = 10, ResistanceOhm = 0.005 },
        new IsolatorSwitch { Id = "switch", RatedA = 20, ResistanceOhm = 0.001, OpenIn = ["at-berth"] },
        new Busbar { Id = "minus", IsBonded = true },
        new Space { Id = "cabin", Use = SpaceUse.Dry, From = new Place(0, -1, 0), To = new Place(4, 1, 2), AmbientC = 25 },
        new ElectricLoad { Id = "pump", Name = "Pump", Behaviour = LoadBehaviour.Current, NominalV = 12, RunningA = 5, StartRatio = 3, StartS = 0.3, Uses = [new LoadUse("at-anchor", 1)] },
        new ElectricLoad { Id = "lamp", Name = "Lamp", Behaviour = LoadBehaviour.Current, NominalV = 12, RunningA = 1, Uses = [new LoadUse("at-berth", 1)] },
        new Link { Id = "strap", From = Terminal.Parse("bank.+"), To = Terminal.Parse("fuse.in"), ResistanceOhm = 0.0002 },
        new Link { Id = "joint", From = Terminal.Parse("fuse.out"), To = Terminal.Parse("switch.in"), ResistanceOhm = 0.0002 },
        new Link { Id = "minus-strap", From = Terminal.Parse("bank.-"), To = Terminal.Parse("minus.bar"), ResistanceOhm = 0.0002 },
        Cable("pump-cable", "switch.out", "pump"),
        Cable("lamp-cable", "fuse.out", "lamp"));

    [Fact]
    public void EverythingGiven_ShowsEveryVoltage()
    {
        ChainView view = Of(Boat, "at-anchor");

        Assert.All(view.Items, item => Assert.True(item is { RunningV: > 10, StartingV: > 10 } && item.StartingV < item.RunningV, item.Thing.Id));
        Assert.Null(view.WhyNoVoltage);
        Assert.Empty(view.Waiting);
    }

    [Fact]
    public void NoValueOfTheBankGiven_ShowsNone() => ShowsNone(
        Boat.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null, OpenCircuit = [] }), "open-circuit curve of House bank and internal resistance of House bank are not given.");

    [Fact]
    public void OnlyItsResistanceMissing_ShowsNone() => ShowsNone(
        Boat.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null }), "internal resistance of House bank is not given.");

    [Fact]
    public void OnlyItsVoltagesMissing_ShowsNone() => ShowsNone(Boat.Change<BatteryBank>("bank", bank => bank with { OpenCircuit = [] }), "of House bank is not given.");

    [Fact]
    public void OnlyTheLowestChargeMissing_ShowsNone() => ShowsNone(
        Boat.Change<Condition>("at-anchor", condition => condition with { LowestChargeFraction = null }), "of At anchor is not given.");

    [Fact]
    public void OnlyALengthMissing_ShowsNone() => ShowsNone(Boat.Change<Cable>("pump-cable", cable => cable with { LengthM = null }), "length of pump-cable is not given.");

    [Fact]
    public void AnotherLoadsDrawMissing_ShowsNone() => ShowsNone(
        Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null, Uses = [new LoadUse("at-anchor", 1)] }), "of Lamp is not given.");

    [Fact]
    public void StartRatioMissing_ShowsNoStartingVoltageAndSaysSo()
    {
        ChainView view = Of(Boat.Change<ElectricLoad>("pump", pump => pump with { StartRatio = null }), "at-anchor");

        Assert.All(view.Items, item => Assert.True(item is { RunningV: > 10, StartingV: null }, item.Thing.Id));
        Assert.Equal("The voltages while Pump starts cannot be told: how much it draws then is not given.", view.WhyNoVoltage);
        Assert.Equal([new FindingInput("pump", "startRatio", IsMissing: true)], view.Waiting);
    }

    [Fact]
    public void LoadIsOff_VoltagesBeforeItsOpenSwitchAreShown()
    {
        ChainView view = Of(Boat, "at-berth");

        Assert.Equal(
            ["bank True", "strap True", "fuse True", "joint True", "switch False", "pump-cable False", "pump False"],
            view.Items.Select(item => $"{item.Thing.Id} {item.RunningV is > 10}"));
        Assert.All(view.Items, item => Assert.Null(item.StartingV));
        Assert.StartsWith("Pump is off in this condition", view.WhyNoVoltage, StringComparison.Ordinal);
    }

    [Fact]
    public void LoadIsOff_TheLengthOfItsOwnIdleCableMissing_ShowsWhatStandsBeforeIt() => Assert.Equal(
        4, Of(Boat.Change<Cable>("pump-cable", cable => cable with { LengthM = null }), "at-berth").Items.Count(item => item.RunningV is > 10));

    [Fact]
    public void LoadIsOff_BankNotGiven_ShowsNone() => Assert.All(
        Of(Boat.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null }), "at-berth").Items, item => Assert.Null(item.RunningV));

    private static void ShowsNone(BoatModel boat, string why)
    {
        ChainView view = Of(boat, "at-anchor");

        Assert.All(view.Items, item => Assert.True(item is { RunningV: null, StartingV: null }, item.Thing.Id));
        Assert.EndsWith(why, view.WhyNoVoltage, StringComparison.Ordinal);
        Assert.NotEmpty(view.Waiting);
        Assert.All(view.Waiting, missing => Assert.True(missing.IsMissing && boat.Find(missing.ThingId) is not null, missing.Field));
    }

    private static ChainView Of(BoatModel boat, string conditionId) =>
        ChainView.Of(Chain.Trace(boat, Wiring.Of(boat), boat.Find<Part>("pump")!)!, boat, boat, null, conditionId, new Memo());

    private static Cable Cable(string id, string from, string loadId) => new()
    {
        Id = id,
        AreaMm2 = 2.5,
        InsulationC = 90,
        LengthM = 4,
        Cores = [new Core { Id = "plus", From = Terminal.Parse(from), To = Terminal.Parse($"{loadId}.+") }, new Core { Id = "minus", From = Terminal.Parse("minus.bar"), To = Terminal.Parse($"{loadId}.-") }],
        Run = [new RunLeg { Space = "cabin", LengthM = 4 }],
    };
}
