using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>A conductor that nothing protects fails, whatever else is not known of it; one that something protects is never told as held on a value that is missing.</summary>
public sealed class ConductorProtectionCheckTests
{
    private const string Check = "conductor-protection";
    private const string Core = "bare-cable.plus";

    // 33 CFR 183.460 wants a device within a short stretch of the battery (from memory, as the practice file says); a post gives thousands of amperes.
    private static readonly BoatModel Bare = SmallBoat.OneLamp().With(
        SmallBoat.Lamp("fan", 3) with { Name = "Fan" },
        SmallBoat.LampCable("bare-cable", "fan") with { Cores = [SmallBoat.Core("plus", "bank.+", "fan.+"), SmallBoat.Core("minus", "minus.bar", "fan.-")] })
        .Change<BatteryBank>("bank", bank => bank with { Name = "House bank" });

    [Fact]
    public void NoDeviceAnywhere_Fails() => Fails(Bare);

    [Fact]
    public void NoDeviceAnywhere_InsulationNotGiven_FailsAndNamesBothEnds()
    {
        Finding finding = Fails(WithoutInsulation(Bare));
        Assert.Contains("no fuse or breaker between House bank and Fan", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoDeviceAnywhere_NoPractice_Fails() => Fails(Bare.Without("practice"));

    [Fact]
    public void NoDeviceAnywhere_SizeOutsideTheTable_Fails() => Fails(Bare.Change<Cable>("bare-cable", cable => cable with { AreaMm2 = 500 }));

    [Fact]
    public void BatteriesAtBothEnds_InsulationNotGiven_Fails() => Fails(WithoutInsulation(Bare).With(
        SmallBoat.Battery("second"), new Link { Id = "second-strap", From = new Terminal("second", "+"), To = new Terminal("fan", "+"), LengthM = 0.1 }));

    [Fact]
    public void FuseFartherThanAnyMayStand_InsulationNotGiven_Fails()
    {
        BoatModel boat = WithFuseAtTheFan(WithoutInsulation(Bare)).Change<Cable>("bare-cable", cable => cable with { LengthM = 5 });
        Assert.Contains("before Fan fuse protects it", Fails(boat).Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FuseCloseEnough_InsulationNotGiven_IsUnknown() => WithFuseAtTheFan(WithoutInsulation(Bare))
        .Change<Cable>("bare-cable", cable => cable with { LengthM = 0.1 }).Worst(Check, Core).IsUnknownFor("bare-cable", "insulationC");

    [Fact]
    public void FuseAtAnUnknownDistance_IsUnknown() => WithFuseAtTheFan(Bare)
        .Change<Cable>("bare-cable", cable => cable with { LengthM = null }).Worst(Check, Core).IsUnknownFor("bare-cable", "lengthM");

    [Fact]
    public void KnownPartAloneIsTooLong_Fails()
    {
        BoatModel boat = WithFuseAtTheFan(Bare).Change<Cable>("bare-cable", cable => cable with { LengthM = 5 })
            .Change<Link>("fan-strap", link => link with { To = new Terminal("joint", "in") })
            .With(new IsolatorSwitch { Id = "joint", RatedA = 100, IsIsolator = true }, SmallBoat.LampCable("last", "fan") with { LengthM = null, Cores = [SmallBoat.Core("plus", "joint.out", "fan-fuse.in")] });
        Assert.Contains("at least", Fails(boat).Headline.ToString(), StringComparison.Ordinal);
    }

    private static Finding Fails(BoatModel boat)
    {
        Finding finding = boat.Worst(Check, Core);
        Assert.True(finding.Verdict == Verdict.Fails, finding.Headline.ToString());
        return finding;
    }

    private static BoatModel WithoutInsulation(BoatModel boat) => boat.Change<Cable>("bare-cable", cable => cable with { InsulationC = null });

    private static BoatModel WithFuseAtTheFan(BoatModel boat) => boat
        .Change<Cable>("bare-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "bank.+", "fan-bolt.bar"), SmallBoat.Core("minus", "minus.bar", "fan.-")] })
        .With(
            new Busbar { Id = "fan-bolt", RatedA = 100 },
            new Protection { Id = "fan-fuse", Name = "Fan fuse", Means = ProtectionMeans.Fuse, RatedA = 5, RatedV = 58, BreakingA = 2000 },
            new Link { Id = "fan-strap", From = new Terminal("fan-bolt", "bar"), To = new Terminal("fan-fuse", "in"), LengthM = 0.01 },
            new Link { Id = "fan-end", From = new Terminal("fan-fuse", "out"), To = new Terminal("fan", "+"), LengthM = 0.01 });
}
