using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class PeopleToOneSideCheckTests
{
    // Length 10 m: 10 + 14³/600 = 14.573°, as in the stability reference's table of the ISO limit.
    [Fact]
    public void SmallCraft_TwentyPeople_HeelIsTheWallSidedAngle()
    {
        double mass = JudgedBox.MassKg + 1600, draught = mass / (1025 * 40), bm = 16 / (12 * draught);
        double kg = ((JudgedBox.MassKg * 1.2) + (1600 * 2.5)) / mass, gm = (draught / 2) + bm - kg;
        Finding finding = Manned(20, StabilityRule.SmallCraft).Only("people-to-one-side", "stability-basis.small-craft");
        Assert.Equal(JudgedBox.WallSidedDeg(gm, bm, 1600 * 1.8 / mass), finding.Amounts()[1], 1e-6);
        Assert.Equal(14.573, finding.Amounts()[2], 1e-3);
        Assert.Equal(Verdict.Holds, finding.Verdict);
    }

    [Fact]
    public void OpenBoat_FreeboardKept_TenDegrees() => Assert.Equal(
        10, Manned(20, StabilityRule.OpenBoat).Only("people-to-one-side", "stability-basis.open-boat").Amounts()[2]);

    // What is entered counts where it is more than the 75 kg of the rules.
    [Theory]
    [InlineData(60, 75)]
    [InlineData(80, 80)]
    public void EachPerson_IsTheHeavierOfTheRulesAndOfThoseListed(double listedKg, double countedKg)
    {
        Finding finding = Manned(20, StabilityRule.SmallCraft, listedKg).Only("people-to-one-side", "stability-basis.small-craft");
        Assert.Equal((countedKg, 20 * countedKg), (finding.Amounts()[0], finding.Number("People")));
    }

    // A sill 0.9 m up on one side is under the water when she heels to it: 7°, and wet. She heels as far to the other, where nothing is.
    [Theory]
    [InlineData(2)]
    [InlineData(-2)]
    public void OpenBoat_SillUnderWater_Fails(double y) => Assert.Equal(
        Verdict.Fails,
        Manned(20, StabilityRule.OpenBoat).With(new HullOpening { Id = "sill", Use = OpeningUse.Door, Place = new Boat.Values.Place(5, y, 0.9) }).Only("people-to-one-side", "stability-basis.open-boat").Verdict);

    [Fact]
    public void MorePeople_UseMore()
    {
        double[] uses = [.. new[] { 5, 20, 40, 60 }.Select(count => Manned(count, StabilityRule.SmallCraft).Only("people-to-one-side", "stability-basis.small-craft").UseFraction!.Value)];
        Assert.Equal(uses.Order(), uses);
    }

    [Fact]
    public void PeopleCountNotGiven_IsUnknown() => JudgedBox.Of(JudgedBox.Rules(StabilityRule.OpenBoat)).Only("people-to-one-side", "stability-basis.open-boat").IsUnknownFor("stability-basis", "peopleCount");

    [Fact]
    public void NobodyListed_IsUnknown() => Assert.Equal(
        Verdict.Unknown, JudgedBox.Of(JudgedBox.Rules(StabilityRule.OpenBoat) with { PeopleCount = 6 }).Only("people-to-one-side", "stability-basis.open-boat").Verdict);

    [Fact]
    public void LengthNotGiven_IsUnknown() =>
        Manned(20, StabilityRule.SmallCraft).With(new Particulars { Id = "particulars" }).Only("people-to-one-side", "stability-basis.small-craft").IsUnknownFor("particulars", "lengthOverAllM");

    [Fact]
    public void NotChosen_NoFinding() => Assert.Empty(JudgedBox.Of(JudgedBox.Rules(StabilityRule.Weather)).Found("people-to-one-side"));

    // 300 of 80 kg at the side: 43 t m of heeling moment on 56.8 t. One finding, with the limits of both rules, whichever are chosen.
    [Fact]
    public void Capsize_IsOneFindingWithSideAndTheLimitsOfBothRules()
    {
        BoatModel boat = Manned(300, StabilityRule.SmallCraft).With(JudgedBox.Rules(StabilityRule.SmallCraft, StabilityRule.OpenBoat) with { PeopleCount = 300 }, JudgedBox.Aboard("crew", DeadweightUse.People, 80, 5, 0, 1, count: 2));
        Finding finding = Assert.Single(boat.Found("people-to-one-side"));

        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.StartsWith("With 300 people of 80 Kg to port at sea she capsizes to port", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(["ISO 12217-1, secondary source", "MGN 280 11.4"], finding.Working.Where(line => line.What == "Allowed").Select(line => line.Source));
        Assert.Equal(Verdict.Holds, boat.Only("floats-at-rest").Verdict);
    }

    private static BoatModel Manned(int count, StabilityRule rule, double listedKg = 80) =>
        JudgedBox.Of(JudgedBox.Rules(rule) with { PeopleCount = count }, JudgedBox.Aboard("crew", DeadweightUse.People, listedKg, 5, 0, 2.5, count: 2));
}
