using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class HungWeightCheckTests
{
    // 500 kg at a hook 4 m up and 3 m to port: the wall-sided angle with the mass at the hook.
    [Fact]
    public void HungWeight_HeelsAsIfItLayAtItsHook()
    {
        double mass = JudgedBox.MassKg + 500, draught = mass / (1025 * 40), bm = 16 / (12 * draught);
        double kg = ((JudgedBox.MassKg * 1.2) + (500 * 4)) / mass, gm = (draught / 2) + bm - kg;
        double heel = JudgedBox.WallSidedDeg(gm, bm, 500 * 3 / mass);
        Finding finding = Hung(500).Only("hung-weight", "sampler");
        Assert.Equal(heel, finding.Amounts()[0], 1e-6);
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(gm, finding.Amounts()[4], 0.02);
        Assert.Equal(finding.Working.Single(line => line.What == "Band").Value!.Value, finding.Amounts()[1], 1e-12);
        Assert.Contains("to port", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("Nobody under the load", finding.Caution, StringComparison.Ordinal);
    }

    // A dry deck edge is no leave to lift: without a limit of the owner's nothing holds, and it says what is missing.
    [Fact]
    public void HungWeight_NoLimitOfHeelIsSet_IsUnknown()
    {
        Finding finding = JudgedBox.Of(JudgedBox.Aboard("sampler", DeadweightUse.Hung, 500, 5, 3, 4)).Only("hung-weight", "sampler");
        finding.IsUnknownFor("practice", "own/most-lifting-heel-deg");
        Assert.Null(finding.UseFraction);
        Assert.Contains("no limit of heel while lifting is set", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // The same heel, by the wall-sided formula above, is held against what the owner allows and not against the deck edge alone.
    [Fact]
    public void HungWeight_IsHeldAgainstTheOwnersLimit()
    {
        double heel = Hung(500).Only("hung-weight", "sampler").Amounts()[0];
        Assert.Equal(0.25, Hung(500, 4 * heel).Only("hung-weight", "sampler").UseFraction!.Value, 1e-6);
        Assert.Equal(Verdict.Fails, Hung(500, 0.9 * heel).Only("hung-weight", "sampler").Verdict);
        Assert.Contains("as wanted", Hung(500).Only("hung-weight", "sampler").Working.Single(line => line.What == "Allowed").Source, StringComparison.Ordinal);
    }

    [Fact]
    public void HungWeight_MoreOfIt_UsesMore()
    {
        double[] uses = [.. new[] { 200.0, 500, 1000, 1500 }.Select(mass => Hung(mass).Only("hung-weight", "sampler").UseFraction!.Value)];
        Assert.Equal(uses.Order(), uses);
    }

    // She capsizes with it: the one finding of that is whether she floats.
    [Fact]
    public void HungWeight_TooHeavy_FailsOnceAndLettingItGoSaysWhyItCannotBeTold()
    {
        Assert.Equal(Verdict.Fails, Hung(9000).Only("floats-at-rest").Verdict);
        Assert.Empty(Hung(9000).Found("hung-weight"));
        Finding free = Hung(9000).Only("hung-weight-let-go", "sampler");
        Assert.Equal(Verdict.Unknown, free.Verdict);
        Assert.Contains("with it she capsizes to port", free.Headline.ToString(), StringComparison.Ordinal);
    }

    // A hook at the keel would count as ballast: the heel by it is small, and no leave to lift.
    [Fact]
    public void HungWeight_HookUnderWater_IsUnknownNotStiff()
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(LimitIds.MostLiftingHeelDeg, 20), JudgedBox.Aboard("sampler", DeadweightUse.Hung, 500, 5, 1, 0)).Only("hung-weight", "sampler");
        Assert.Equal((Verdict.Unknown, null), (finding.Verdict, finding.UseFraction));
        Assert.Contains("under water", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void HungWeight_WithoutMass_IsUnknown() => Assert.Equal(Verdict.Unknown, JudgedBox.Of(
        new Deadweight { Id = "sampler", Use = DeadweightUse.Hung, Place = new Boat.Values.Place(5, 3, 4), Aboard = [new DeadweightCount("at-sea", 1)] }).Only("hung-weight", "sampler").Verdict);

    [Fact]
    public void HungWeight_NotInTheCondition_NoFinding() => Assert.Empty(JudgedBox.Of(JudgedBox.Aboard("sampler", DeadweightUse.Hung, 500, 5, 3, 4, count: 0)).Found("hung-weight"));

    // A boat of two like sides swings, undamped, as far to the other.
    [Fact]
    public void LetGo_SymmetricBoat_SwingsAsFarToTheOtherSide()
    {
        Finding hung = Hung(500).Only("hung-weight", "sampler"), free = Hung(500).Only("hung-weight-let-go", "sampler");
        Assert.Equal(hung.Amounts()[0], free.Amounts()[0], 1e-6);
        Assert.Equal(hung.Amounts()[0], free.Amounts()[1], 1e-3);
        Assert.Equal(Verdict.Holds, free.Verdict);
        Assert.Contains("to starboard", free.Headline.ToString(), StringComparison.Ordinal);
    }

    // Ballast that held the load up is alone when it goes.
    [Fact]
    public void LetGo_BallastedAgainstTheLoad_SwingsFurther()
    {
        BoatModel ballasted = Hung(1500).With(JudgedBox.Gear("counterweight", 1000, 5, -1.8, 0.3));
        Finding hung = ballasted.Only("hung-weight", "sampler"), free = ballasted.Only("hung-weight-let-go", "sampler");
        Assert.True(free.Amounts()[1] > hung.Amounts()[0]);
    }

    [Fact]
    public void LetGo_LowVentOnTheOtherSide_Fails() => Assert.Equal(
        Verdict.Fails, Hung(1500).With(new HullOpening { Id = "scuttle", Use = OpeningUse.Window, Place = new Boat.Values.Place(5, -2, 1.0) }).Only("hung-weight-let-go", "sampler").Verdict);

    private static BoatModel Hung(double massKg, double mostDeg = 20) => JudgedBox.Of(JudgedBox.Own(LimitIds.MostLiftingHeelDeg, mostDeg), JudgedBox.Aboard("sampler", DeadweightUse.Hung, massKg, 5, 3, 4));
}
