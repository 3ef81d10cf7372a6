using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Ways;

public sealed class WayCheckTests
{
    private static readonly BoatModel Boat = WayBoat.Make().RunAlong("high");

    // 9 mm in 12.4 mm is 53 % of the inside, all that one cable may take.
    [Theory]
    [InlineData(12.3, Verdict.Fails)]
    [InlineData(12.5, Verdict.Tight)]
    [InlineData(14, Verdict.Holds)]
    public void ConduitFill_OneCable_AgainstWhatOneMayTake(double innerMm, Verdict verdict) =>
        Assert.Equal(verdict, Conduit(innerMm).WayFinding("conduit-fill", "high").Verdict);

    [Fact]
    public void ConduitFill_ShortConduit_MayBeFuller() =>
        Assert.Equal(Verdict.Holds, Conduit(12.3).Change<Way>("high", way => way with { Points = [new Place(1, 0, 1), new Place(1.6, 0, 1)] }).WayFinding("conduit-fill", "high").Verdict);

    [Fact]
    public void ConduitFill_ThreeThatMayJam_IsTightAtBest()
    {
        Cable other = Boat.Find<Cable>("lamp-cable")!;
        BoatModel three = Conduit(27).With(other with { Id = "b" }, other with { Id = "c" });
        Finding finding = three.WayFinding("conduit-fill", "high");
        Assert.Equal(Verdict.Tight, finding.Verdict);
        Assert.True(finding.UseFraction < 0.9);
    }

    [Fact]
    public void ConduitFill_MissingDiameter_IsUnknown()
    {
        Conduit(20).Change<Way>("high", way => way with { InnerDiameterMm = null }).WayFinding("conduit-fill", "high").IsUnknownFor("high", "innerDiameterMm");
        Conduit(20).Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = null }).WayFinding("conduit-fill", "high").IsUnknownFor("lamp-cable", "outerDiameterMm");
    }

    // Ten times 9 mm.
    [Theory]
    [InlineData(89, Verdict.Fails)]
    [InlineData(95, Verdict.Tight)]
    [InlineData(120, Verdict.Holds)]
    public void BendRadius_AgainstTheTightestBend(double bendMm, Verdict verdict) => Assert.Equal(verdict, Bent(bendMm).WayFinding("bend-radius", "lamp-cable").Verdict);

    [Fact]
    public void BendRadius_OwnLeastRadius_StandsBeforeThePractice() =>
        Assert.Equal(Verdict.Holds, Bent(60).Change<Cable>("lamp-cable", cable => cable with { LeastBendMm = 40, OuterDiameterMm = null }).WayFinding("bend-radius", "lamp-cable").Verdict);

    [Fact]
    public void BendRadius_MissingRadiusOrDiameter_IsUnknown_AndAStraightWayIsNotJudged()
    {
        Bent(null).WayFinding("bend-radius", "lamp-cable").IsUnknownFor("high", "bendMm");
        Bent(120).Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = null }).WayFinding("bend-radius", "lamp-cable").IsUnknownFor("lamp-cable", "outerDiameterMm");
        Assert.DoesNotContain(Boat.WayFindings(), finding => finding.CheckId == "bend-radius");
    }

    [Theory]
    [InlineData(0.45, Verdict.Holds)]
    [InlineData(0.46, Verdict.Fails)]
    public void Supports_AgainstThePractice(double everyM, Verdict verdict) =>
        Assert.Equal(verdict, Boat.Change<Way>("high", way => way with { SupportM = everyM }).WayFinding("supports", "high").Verdict);

    [Fact]
    public void Supports_NobodySaid_IsUnknown_AndAConduitNeedsNone()
    {
        Boat.WayFinding("supports", "high").IsUnknownFor("high", "supportM");
        Assert.DoesNotContain(Conduit(20).WayFindings(), finding => finding.CheckId == "supports");
    }

    [Theory]
    [InlineData(EdgeGuard.Bare, Verdict.Fails)]
    [InlineData(EdgeGuard.Grommet, Verdict.Holds)]
    [InlineData(null, Verdict.Unknown)]
    public void EdgesGuarded_ByWhatGuardsTheHole(EdgeGuard? guard, Verdict verdict)
    {
        BoatModel boat = Boat.Change<Way>("high", way => way with { Holes = [new WayHole { Where = "bulkhead", Guard = EdgeGuard.Sealed }, new WayHole { Where = "frame", Guard = guard }] });
        Assert.Equal(verdict, boat.WayFinding("edges-guarded", "high").Verdict);
    }

    [Theory]
    [InlineData(null, Verdict.Unknown)]
    [InlineData(WayShare.Any, Verdict.Fails)]
    [InlineData(WayShare.DcOnly, Verdict.Fails)]
    [InlineData(WayShare.AcOnly, Verdict.Fails)]
    [InlineData(WayShare.Divided, Verdict.Holds)]
    public void ApartFromAc_BothInOneWay_ByWhatMayShareIt(WayShare? share, Verdict verdict)
    {
        BoatModel boat = Boat.With(
            new ShoreInlet { Id = "shore", SupplyV = 230, RatedA = 16 },
            new ElectricLoad { Id = "kettle", Behaviour = LoadBehaviour.Resistance, NominalV = 230, IsAc = true },
            new Cable { Id = "kettle-cable", AreaMm2 = 1.5, Cores = [SmallBoat.Core("live", "shore.l", "kettle.l"), SmallBoat.Core("neutral", "shore.n", "kettle.n")], Run = [new RunLeg { Way = "high", LengthM = 2 }] })
            .Change<Way>("high", way => way with { Share = share });
        Finding finding = boat.WayFinding("apart-from-ac", "high");
        Assert.Equal(verdict, finding.Verdict);
        Assert.NotNull(finding.Caution);
        if (share is null)
        {
            finding.IsUnknownFor("high", "share");
        }
    }

    [Fact]
    public void ApartFromAc_DirectCurrentAlone_IsNotJudged() => Assert.DoesNotContain(Boat.WayFindings(), finding => finding.CheckId == "apart-from-ac");

    private static BoatModel Conduit(double innerMm) => Boat.Change<Way>("high", way => way with { Means = WayKind.Conduit, InnerDiameterMm = innerMm });

    private static BoatModel Bent(double? bendMm) =>
        Boat.Change<Way>("high", way => way with { Points = [new Place(1, 0.8, 1), new Place(4, 0.8, 1), new Place(4, 0.8, 1.8)], BendMm = bendMm is { } radius ? radius : (Quantity?)null });
}
