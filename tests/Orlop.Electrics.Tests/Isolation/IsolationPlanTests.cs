using Orlop.Electrics.Isolation;
using Xunit;

namespace Orlop.Electrics.Tests.Isolation;

public sealed class IsolationPlanTests
{
    /// <summary>
    /// Insulated two-wire 24 V: a battery behind a two-pole isolator, a winch behind a fuse, panels through a controller behind a breaker, a shore-fed charger on the bus.
    /// </summary>
    private static IsolationInput Boat() => new()
    {
        Edges =
        [
            new("lead+", "bat+", "iso.in+", new("lead at the plus post", OpeningMeans.LiftBatteryLead, 50)),
            new("lead-", "bat-", "iso.in-", new("lead at the minus post", OpeningMeans.LiftBatteryLead, 50)),
            new("iso+", "iso.in+", "bus+", new("main isolator", OpeningMeans.Isolator, 1)),
            new("iso-", "iso.in-", "bus-", new("main isolator", OpeningMeans.Isolator, 1)),
            new("winch fuse", "bus+", "winch.f", new("winch fuse", OpeningMeans.PullFuse, 5)),
            new("winch wire+", "winch.f", "winch+"),
            new("winch wire-", "bus-", "winch-"),
            new("winch", "winch+", "winch-"),
            new("panel breaker", "panel+", "controller.in+", new("panel breaker", OpeningMeans.Breaker, 2)),
            new("panel wire-", "panel-", "bus-"),
            new("controller wire", "controller.out+", "bus+"),
            new("charger wire+", "charger.out+", "bus+"),
            new("charger wire-", "charger.out-", "bus-"),
            new("shore lead", "shore L", "charger L", new("shore lead", OpeningMeans.Unplug, 1)),
            new("cross link", "other+", "bus+", new("parallel switch", OpeningMeans.Isolator, 1), IsClosed: false),
        ],
        Feeds = [new("controller", "controller.in+", "controller.out+"), new("charger+", "charger L", "charger.out+"), new("charger-", "charger L", "charger.out-")],
        Sources =
        [
            new("house battery", SourceKind.Battery, ["bat+", "bat-"], null, "a battery is always live"),
            new("panels", SourceKind.Charging, ["panel+"], null, "light falls on the panels"),
            new("shore", SourceKind.AlternatingCurrent, ["shore L"], null, "the quay is live"),
            new("start battery", SourceKind.Battery, ["other+"], null, "a battery is always live"),
        ],
        TargetNodes = ["winch+", "winch-"],
    };

    [Fact]
    public void Find_WholeBus_OpensShoreThenPanelsThenIsolator()
    {
        var plan = IsolationPlan.Find(Boat());
        Assert.Equal(IsolationStatus.CanBeMadeDead, plan.Status);
        Assert.Equal(["shore lead", "panel breaker", "main isolator"], plan.Openings.Select(opening => opening.Id));
        Assert.Equal(["iso+", "iso-"], plan.Openings[2].EdgeIds);
        Assert.Equal(4, plan.Cost);
        Assert.Equal(["parallel switch"], plan.KeepOpen);
        Assert.Equal([new DeadProof("winch+", "winch-"), new("winch+", null), new("winch-", null)], plan.Proofs);
        Assert.Equal("iso.in-", plan.TryMeterAtNode);
        var panels = plan.StaysLive.Single(stays => stays.SourceId == "panels");
        Assert.Equal(("light falls on the panels", "panel+"), (panels.Because, panels.Nodes.Single()));
        var battery = plan.StaysLive.Single(stays => stays.SourceId == "house battery");
        Assert.Equal(["bat+", "bat-", "iso.in+", "iso.in-"], battery.Nodes);
        Assert.Equal(["lead-"], battery.PathIds);
    }

    [Fact]
    public void Find_MinusBondedToHull_NeedsOnlyTheFuse()
    {
        var plan = IsolationPlan.Find(Boat() with { GroundedNodes = ["bus-", "winch-", "iso.in-", "bat-", "panel-", "charger.out-"] });
        Assert.Equal(["shore lead", "panel breaker", "main isolator"], plan.Openings.Select(opening => opening.Id));
        var cheapFuse = Boat() with
        {
            GroundedNodes = ["bus-", "winch-", "iso.in-", "bat-", "panel-", "charger.out-"],
            Edges = [.. Boat().Edges.Select(edge => edge.Id == "winch fuse" ? edge with { Opening = edge.Opening! with { Cost = 3 } } : edge)],
        };
        Assert.Equal(["winch fuse"], IsolationPlan.Find(cheapFuse).Openings.Select(opening => opening.Id));
    }

    [Fact]
    public void Find_BatteryLeadIsTheOnlyWay_ComesLast()
    {
        var plan = IsolationPlan.Find(Boat() with { TargetNodes = ["iso.in+"] });
        Assert.Equal(IsolationStatus.CanBeMadeDead, plan.Status);
        Assert.Equal("lead at the plus post", plan.Openings[^1].Id);
        Assert.True(plan.Openings.Length > 1);
    }

    [Fact]
    public void Find_BatteryPost_CannotBeMadeDeadAndSaysWhy()
    {
        var plan = IsolationPlan.Find(Boat() with { TargetNodes = ["bat+"] });
        Assert.Equal(IsolationStatus.CannotBeMadeDead, plan.Status);
        Assert.Equal(("bat+", "house battery"), (plan.CannotBeMadeDead.Single().Node, plan.CannotBeMadeDead.Single().SourceId));
        Assert.Empty(plan.Openings);
    }

    [Fact]
    public void Find_OnePartCanAndOneCannot_IsPartlyDead()
    {
        var plan = IsolationPlan.Find(Boat() with { TargetNodes = ["bat+", "winch+"] });
        Assert.Equal(IsolationStatus.PartlyDead, plan.Status);
        Assert.Equal(["shore lead", "panel breaker", "main isolator"], plan.Openings.Select(opening => opening.Id));
    }

    [Fact]
    public void Find_TwoPoleIsolator_CountsOnceAgainstTwoFuses()
    {
        var plan = IsolationPlan.Find(new IsolationInput
        {
            Edges =
            [
                new("iso+", "bat+", "bus+", new("isolator", OpeningMeans.Isolator, 3)), new("iso-", "bat-", "bus-", new("isolator", OpeningMeans.Isolator, 3)),
                new("fuse+", "bus+", "lamp+", new("plus fuse", OpeningMeans.PullFuse, 2)), new("fuse-", "bus-", "lamp-", new("minus fuse", OpeningMeans.PullFuse, 2)),
            ],
            Sources = [new("battery", SourceKind.Battery, ["bat+", "bat-"], null, "a battery is always live")],
            TargetNodes = ["lamp+", "lamp-"],
        });
        Assert.Equal((3, "isolator"), (plan.Cost, plan.Openings.Single().Id));
    }

    [Fact]
    public void Find_TwoFeedsOfOneKind_OpensTheNearerFirst()
    {
        var plan = IsolationPlan.Find(new IsolationInput
        {
            Edges =
            [
                new("near", "bat 1", "part", new("z near", OpeningMeans.PullFuse, 1)),
                new("far", "bat 2", "joint", new("a far", OpeningMeans.PullFuse, 1)), new("wire", "joint", "part"),
            ],
            Sources =
            [
                new("battery 1", SourceKind.Battery, ["bat 1"], null, "a battery is always live"), new("battery 2", SourceKind.Battery, ["bat 2"], null, "a battery is always live"),
            ],
            TargetNodes = ["part"],
        });
        Assert.Equal(["z near", "a far"], plan.Openings.Select(opening => opening.Id));
        Assert.Equal("bat 1", plan.TryMeterAtNode);
    }

    [Fact]
    public void Find_SourceThatCanBeStopped_IsStoppedWhenThatIsCheaper()
    {
        var plan = IsolationPlan.Find(new IsolationInput
        {
            Edges = [new("wire", "gen", "load", new("breaker", OpeningMeans.Breaker, 5))],
            Sources = [new("generator", SourceKind.AlternatingCurrent, ["gen"], new SourceStop("stop the engine and take the key", 2), "the engine runs")],
            TargetNodes = ["load"],
        });
        Assert.Equal(("generator", "stop the engine and take the key"), (plan.Openings.Single().Id, plan.Openings.Single().StopHow));
        Assert.Empty(plan.StaysLive);
        Assert.Null(plan.TryMeterAtNode);
    }

    [Fact]
    public void Find_FeedBackwards_PassesNothing()
    {
        var plan = IsolationPlan.Find(Boat() with { TargetNodes = ["charger L"] });
        Assert.Equal(["shore lead"], plan.Openings.Select(opening => opening.Id));
    }

    [Fact]
    public void Find_NothingReachesIt_IsAlreadyDeadButStillProved()
    {
        var boat = Boat();
        var plan = IsolationPlan.Find(boat with { Edges = [.. boat.Edges.Select(edge => edge.Opening is null ? edge : edge with { IsClosed = false })] });
        Assert.Equal(IsolationStatus.AlreadyDead, plan.Status);
        Assert.Empty(plan.Openings);
        Assert.NotEmpty(plan.Proofs);
        Assert.Contains("shore lead", plan.KeepOpen);
    }

    [Fact]
    public void Find_FaultyInput_IsRefusedByName()
    {
        Refused(Boat() with { Sources = [] }, "no source");
        Refused(Boat() with { TargetNodes = [] }, "no target");
        Refused(Boat() with { TargetNodes = ["nowhere"] }, "nowhere");
        Refused(Boat() with { GroundedNodes = ["nowhere"] }, "nowhere");
        Refused(Boat() with { Feeds = [new("winch", "bat+", "bus+")] }, "winch");
        Refused(Boat() with { Sources = [new("x", SourceKind.Battery, [], null, "")] }, "'x'");
        Refused(Boat() with { Edges = Boat().Edges.Add(new("e", "bus+", "bus-", new("e", OpeningMeans.Breaker, 0))) }, "e: ");
        Refused(Boat() with { Edges = Boat().Edges.Add(new("e", "bus+", "bus-", new("main isolator", OpeningMeans.Breaker, 1))) }, "main isolator");

        static void Refused(IsolationInput input, string name) =>
            Assert.Contains(name, Assert.ThrowsAny<ArgumentException>(() => IsolationPlan.Find(input)).Message, StringComparison.Ordinal);
    }
}
