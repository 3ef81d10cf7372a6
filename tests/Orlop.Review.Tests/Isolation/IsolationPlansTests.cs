using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Xunit;

namespace Orlop.Review.Tests.Isolation;

public class IsolationPlansTests
{
    [Fact]
    public void Plan_PumpBehindItsBreaker_OpensTheBreakerAlone()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat(isBonded: true), "pump")!;
        Assert.Equal(IsolationStatus.CanBeMadeDead, plan.Status);
        Assert.Equal([("breaker", OpeningMeans.Breaker)], plan.Openings.Select(opening => (opening.Id, opening.Means!.Value)));
    }

    [Fact]
    public void Plan_Bar_IsCutOffFromBankAndPanels()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat(isBonded: true), "bar")!;
        Assert.Equal(["isolator", "solar-fuse"], plan.Openings.Select(opening => opening.Id).Order());
        Assert.Contains(plan.StaysLive, source => source is { SourceId: "solar", Because: "light falls on the panels" });
        Assert.Equal(OpeningCosts.Of(OpeningMeans.Isolator) + OpeningCosts.Of(OpeningMeans.PullFuse), plan.Cost);
    }

    [Fact]
    public void Plan_IsolatorItself_TakesTheLeadOffThePost()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat(isBonded: true), "isolator")!;
        Assert.Contains(plan.Openings, opening => opening.Means == OpeningMeans.LiftBatteryLead);
    }

    [Fact]
    public void Plan_BatteryPosts_CannotBeMadeDead() =>
        Assert.Contains(IsolationPlans.Plan(Boat(isBonded: true), "bank")!.CannotBeMadeDead, node => node.Node == "bank.+");

    [Fact]
    public void Plan_NothingBonded_TakesTheBatterysMinusAsReference()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat(isBonded: false), "pump")!;
        Assert.Equal(IsolationStatus.CanBeMadeDead, plan.Status);
        Assert.Single(plan.Openings);
    }

    [Fact]
    public void Plan_SwitchThatIsNoIsolator_IsNotTrusted()
    {
        BoatModel boat = Boat(isBonded: true);
        boat = boat.WithThings(boat.Things.Select(thing => thing is IsolatorSwitch isolator ? isolator with { IsIsolator = false } : thing));
        Assert.DoesNotContain(IsolationPlans.Plan(boat, "bar")!.Openings, opening => opening.Id == "isolator");
    }

    [Fact]
    public void Plan_ControllerInLight_IsCutFromTheBatteryAllTheSame()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat(isBonded: true), "solar")!;
        Assert.Equal(["isolator"], plan.Openings.Select(opening => opening.Id));
        Assert.Equal("solar", Assert.Single(plan.CannotBeMadeDead).SourceId);
        Assert.DoesNotContain(plan.StaysLive, live => live.SourceId == "bank" && live.Nodes.Contains("solar.+"));
    }

    [Fact]
    public void Plan_NodesThatStayLive_AreNeverToBeProvedDead() =>
        Assert.DoesNotContain(IsolationPlans.Plan(Boat(isBonded: true), "bank")!.Proofs, proof => proof.Node == "bank.+" || proof.OtherNode == "bank.+");

    [Theory]
    [InlineData("kite")]
    [InlineData("locker")]
    [InlineData("spare")]
    public void Plan_NotThereOrNotWired_IsUnknown(string id) => Assert.Null(IsolationPlans.Plan(Boat(isBonded: true), id));

    [Fact]
    public void Plan_BoatWithoutASource_IsUnknown() =>
        Assert.Null(IsolationPlans.Plan(new BoatModel { Things = [new Busbar { Id = "bar" }, Wire("wire", "bar.bar", "lamp.+"), Lamp("lamp")] }, "lamp"));

    private static BoatModel Boat(bool isBonded) => new()
    {
        Things =
        [
            new Space { Id = "locker", Use = SpaceUse.Dry, From = new(0, 0, 0), To = new(1, 1, 1) },
            new BatteryBank { Id = "bank", Chemistry = BatteryChemistry.Gel, NominalV = 12 },
            new IsolatorSwitch { Id = "isolator" },
            new Busbar { Id = "bar" },
            new Busbar { Id = "minus", IsBonded = isBonded },
            new Charger { Id = "solar", Drive = ChargerDrive.Sun, LimitA = 5, SetpointV = 14 },
            new Protection { Id = "solar-fuse", Means = ProtectionMeans.Fuse, RatedA = 10 },
            new Protection { Id = "breaker", Means = ProtectionMeans.Breaker, RatedA = 10 },
            Lamp("pump"),
            Lamp("spare"),
            Wire("bank-isolator", "bank.+", "isolator.in"),
            Wire("isolator-bar", "isolator.out", "bar.bar"),
            Wire("bank-minus", "bank.-", "minus.bar"),
            Wire("solar-plus", "solar.+", "solar-fuse.in"),
            Wire("fuse-bar", "solar-fuse.out", "bar.bar"),
            Wire("solar-minus", "solar.-", "minus.bar"),
            Wire("bar-breaker", "bar.bar", "breaker.in"),
            Wire("breaker-pump", "breaker.out", "pump.+"),
            Wire("pump-minus", "pump.-", "minus.bar"),
        ],
    };

    private static ElectricLoad Lamp(string id) => new() { Id = id, Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 10 };

    private static Cable Wire(string id, string from, string to) => new()
    {
        Id = id,
        AreaMm2 = 4,
        LengthM = 1,
        Cores = [new Core { Id = "one", From = Terminal.Parse(from), To = Terminal.Parse(to) }],
    };
}
