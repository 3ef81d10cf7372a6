using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Isolation;
using Xunit;

namespace Orlop.Review.Tests.Isolation;

/// <summary>Which readings prove a part dead: live to neutral on the AC side, plus to minus on the DC side, and what was live to the hull (common practice, no source).</summary>
public sealed class ProvingPointsTests
{
    private static readonly BoatModel Boat = SmallBoat.OneLamp().With(
        new Inverter { Id = "inverter", RatedW = 1000, OutputV = 230 },
        Strap("a", "fuse.out", "inverter.in+"), Strap("b", "inverter.in-", "minus.bar"));

    [Fact]
    public void InverterWithoutAnEarthWire_FourReadings_AcFirst()
    {
        ImmutableArray<ProvingPoint> proofs = Of("inverter");
        Assert.Equal([true, true, false, false], proofs.Select(proof => proof.IsAc));
        Assert.Equal([("inverter.l", "inverter.n"), ("inverter.l", null), ("inverter.in+", "inverter.in-"), ("inverter.in+", null)], proofs.Select(proof => (proof.Node, proof.OtherNode)));
    }

    [Fact]
    public void Inverter_SaysWhatStoodThereBefore() => Assert.Equal([12, 12, 230, 230], Of("inverter").Select(proof => proof.NominalV!.Value).Order());

    // Both ends of a strap are one piece of metal: one of them is measured.
    [Fact]
    public void Strap_OneEndStandsForTheOther()
    {
        ProvingPoint proof = Assert.Single(Of("a"));
        Assert.Equal(("fuse.out", (string?)null, false, 12.0), (proof.Node, proof.OtherNode, proof.IsAc, proof.NominalV));
        Assert.Equal(["inverter.in+"], proof.StandsFor);
    }

    // Across a fuse that is in, a meter reads nothing before and after: each side is measured against the hull.
    [Fact]
    public void Fuse_ItsTwoEndsAreNotMeasuredAgainstEachOther()
    {
        ImmutableArray<ProvingPoint> proofs = Of("fuse");
        Assert.NotEmpty(proofs);
        Assert.DoesNotContain(proofs, proof => proof is { Node: "fuse.in" or "fuse.out", OtherNode: "fuse.in" or "fuse.out" });
        Assert.Contains(proofs, proof => proof is { Node: "fuse.in", OtherNode: not "fuse.out" });
    }

    // With the minus off, a meter against the hull or the minus bar reads nothing whether the plus is off or not: what proves it is the post.
    [Fact]
    public void MinusLeadsOff_EachPointIsMeasuredAgainstTheBarePost()
    {
        ImmutableArray<ProvingPoint> proofs = Of("fuse");
        Assert.Equal(["fuse.in", "fuse.out"], proofs.Where(proof => proof.OtherNode == "bank.-").Select(proof => proof.Node).Order());
        Assert.All(proofs.Where(proof => proof.OtherNode == "bank.-"), proof => Assert.Equal((false, 12.0), (proof.IsAc, proof.NominalV)));
        Assert.DoesNotContain(Of("lamp"), proof => proof.OtherNode == "bank.-");
    }

    [Fact]
    public void TryMeterAt_BatteryPost_IsAgainstItsOtherPost()
    {
        LivePoint? live = ProvingPoints.TryMeterAt(Boat, IsolationPlans.Plan(Boat, "fuse")!);
        Assert.Equal(new LivePoint("bank.+", "bank.-"), live);
    }

    private static ImmutableArray<ProvingPoint> Of(string id) => IsolationPlans.Plan(Boat, id) is { } plan ? ProvingPoints.Of(Boat, Wiring.Of(Boat), plan, MinusLeads.Of(Boat, Wiring.Of(Boat), plan)) : [];

    private static Link Strap(string id, string from, string to) => new() { Id = id, From = Terminal.Parse(from), To = Terminal.Parse(to) };
}
