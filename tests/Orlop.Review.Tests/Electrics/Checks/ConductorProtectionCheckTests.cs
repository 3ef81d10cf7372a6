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

    // 2.5 mm² at 90 °C carries less than 40 A in any table here: each 20 A fuse alone would do, both side by side pass 40 A (a wire carries the sum of what meets in it).
    [Fact]
    public void TwoFusesSideBySide_FailByTheirSumAndAreNamed()
    {
        BoatModel boat = SmallBoat.OneLamp(fuseA: 20).With(
            SecondFuse("second", 20),
            new Link { Id = "second-in", From = new Terminal("bank", "+"), To = new Terminal("second", "in"), LengthM = 0.05 },
            new Link { Id = "second-out", From = new Terminal("second", "out"), To = new Terminal("fuse", "out"), LengthM = 0.05 });
        Assert.Equal(Verdict.Holds, SmallBoat.OneLamp(fuseA: 20).Worst(Check, "lamp-cable.plus").Verdict);
        Finding finding = boat.Worst(Check, "lamp-cable.plus");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("fuse and Second fuse together", finding.Headline.ToString(), StringComparison.Ordinal);
        WorkingLine feed = finding.Working.Single(line => line.What == "Worst feed");
        Assert.Equal(40, feed.Value!.Value);
        Assert.Contains("20 A + Second fuse 20 A", feed.Expression, StringComparison.Ordinal);
    }

    // A fault on the cable takes 20 A from each end, and no place of it carries both.
    [Fact]
    public void FusesAtBothEnds_AreNotSummed()
    {
        BoatModel boat = SmallBoat.OneLamp(fuseA: 20).With(
            SmallBoat.Battery("second-bank"),
            SecondFuse("second", 20),
            new Link { Id = "second-in", From = new Terminal("second-bank", "+"), To = new Terminal("second", "in"), LengthM = 0.05 },
            new Link { Id = "second-out", From = new Terminal("second", "out"), To = new Terminal("lamp", "+"), LengthM = 0.05 },
            new Link { Id = "second-minus", From = new Terminal("second-bank", "-"), To = new Terminal("minus", "bar"), LengthM = 0.05 });
        Finding finding = boat.Worst(Check, "lamp-cable.plus");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(20, finding.Working.Single(line => line.What == "Worst feed").Value!.Value);
    }

    // Two 20 A fuses at the far end of a battery lead let 40 A through it, which neither sees.
    [Fact]
    public void FusesAtTheFarEnd_CountTogether()
    {
        BoatModel boat = WithFuseAtTheFan(Bare).Change<Cable>("bare-cable", cable => cable with { LengthM = 0.1 })
            .Change<Protection>("fan-fuse", fuse => fuse with { RatedA = 20 });
        Assert.Equal(Verdict.Holds, boat.Worst(Check, Core).Verdict);
        Finding finding = boat.With(
            SecondFuse("second", 20),
            new Link { Id = "second-in", From = new Terminal("fan-bolt", "bar"), To = new Terminal("second", "in"), LengthM = 0.05 },
            new Link { Id = "second-out", From = new Terminal("second", "out"), To = new Terminal("lamp", "+"), LengthM = 0.05 }).Worst(Check, Core);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("Second fuse 20 A, Fan fuse 20 A may draw 40 A", finding.Headline.ToString(), StringComparison.Ordinal);
        // The use is of what can feed it, which is said first; a device at the far end serves a short tap only.
        Assert.Contains("nothing limits what can feed it; it allows", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("A device at its far end may protect a short tap", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // A first circuit as many draw it: fuse in the plus, minus straight back to the battery, no bar.
    [Fact]
    public void MinusThatIsNotBonded_SaysSoAndWhatToDo()
    {
        BoatModel unbonded = MinusAtThePost(isBonded: false);
        Finding finding = unbonded.Worst(Check, "lamp-cable.minus");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("counts as ungrounded, since nothing it is wired to is marked as bonded to the hull", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("or protect both poles", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains(finding.Working, line => line.What == "Minus" && line.Expression.Contains("not bonded", StringComparison.Ordinal));
        Assert.Equal(Verdict.Holds, unbonded.Worst(Check, "lamp-cable.plus").Verdict);
        Assert.DoesNotContain("bonded", Fails(Bare).Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("answer “Minus bonded” of House bank with yes", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void MinusThatNothingSaysOf_IsUnknownAndAsksTheBattery()
    {
        Finding finding = MinusAtThePost(isBonded: null).Worst(Check, "lamp-cable.minus");
        finding.IsUnknownFor("bank", "isMinusBonded");
        Assert.Null(finding.UseFraction);
        Assert.Contains("“Minus bonded” of House bank", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // 33 CFR 183.455 asks overcurrent protection of each ungrounded conductor (from memory): a grounded one is not among them.
    [Fact]
    public void MinusAtABondedPost_NeedsNoDevice() =>
        Assert.DoesNotContain(MinusAtThePost(isBonded: true).Findings(), finding => finding.CheckId == Check && finding.SubjectId == "lamp-cable.minus");

    [Fact]
    public void MinusAtABarThatIsNotBonded_FailsAndNamesTheBarsField()
    {
        Finding finding = SmallBoat.OneLamp().Change<Busbar>("minus", bar => bar with { Name = "Minus bar", IsBonded = false }).Worst(Check, "lamp-cable.minus");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("tick “Bonded” of Minus bar", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    private static BoatModel MinusAtThePost(bool? isBonded) => SmallBoat.OneLamp().Without("minus").Without("minus-strap")
        .Change<BatteryBank>("bank", bank => bank with { Name = "House bank", IsMinusBonded = isBonded })
        .Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "fuse.out", "lamp.+"), SmallBoat.Core("minus", "bank.-", "lamp.-")] });

    // No file can leave a rating out; a number that is none must still not pass.
    [Fact]
    public void RatingThatIsNoNumber_IsUnknown() => SmallBoat.OneLamp(fuseA: double.NaN).Worst(Check, "lamp-cable.plus").IsUnknownFor("fuse", "ratedA");

    private static Protection SecondFuse(string id, double ratedA) =>
        new() { Id = id, Name = "Second fuse", Means = ProtectionMeans.Fuse, RatedA = ratedA, RatedV = 58, BreakingA = 2000 };

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
