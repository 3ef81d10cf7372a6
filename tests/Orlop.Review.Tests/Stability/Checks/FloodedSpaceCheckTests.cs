using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class FloodedSpaceCheckTests
{
    // Lost buoyancy of a box: the draught is V/(B (L - μ l)), whether the space's box is cut by the hull or reaches beyond it.
    [Theory]
    [InlineData(2, 0, 2)]
    [InlineData(3, -1, 3)]
    public void MiddleSpace_SinksHerByTheClosedForm(double halfBreadth, double low, double high)
    {
        double draught = 32 / (4 * (10 - (0.95 * 2)));
        Finding finding = Flooded(4, 6, halfBreadth, low, high).Only("one-space-flooded", "hold");
        Assert.Equal(4 - draught, finding.Number("vent"), 1e-6);
        Assert.Equal(Verdict.Holds, finding.Verdict);
    }

    // Deck edge at 2 m, vent at 4 m: the deck edge is the lower, and is what the sentence names.
    [Fact]
    public void DeckEdgeLowerThanEveryOpening_LeadsAndIsJudged()
    {
        Finding finding = Flooded(4, 6, 2, 0, 2).Only("one-space-flooded", "hold");
        Assert.Equal(2 - (32 / (4 * (10 - (0.95 * 2)))), finding.Amounts()[^2], 1e-6);
        Assert.Contains("deck edge", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("wanted", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // Dry is not enough: nothing says by how much, until the owner does. It stood under what holds. The deck edge stays 1.01 m above water.
    [Fact]
    public void NoLimitOfFreeboardFlooded_IsUnknown_AndOneIsKeptOrNot()
    {
        BoatModel none = Flooded(4, 6, 2, 0, 2).With(new PracticeChoice { Id = "practice", Basis = "owner" });
        none.Only("one-space-flooded", "hold").IsUnknownFor("practice", "own/least-flooded-freeboard-m");
        Assert.Contains("no limit of freeboard with one space flooded is set", none.Only("one-space-flooded", "hold").Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, none.With(JudgedBox.Own(LimitIds.LeastFloodedFreeboardM, 0.5)).Only("one-space-flooded", "hold").Verdict);
        Assert.Equal(Verdict.Fails, none.With(JudgedBox.Own(LimitIds.LeastFloodedFreeboardM, 1.2)).Only("one-space-flooded", "hold").Verdict);
        // Without a limit what is under water still fails.
        Assert.Equal(Verdict.Fails, none.With(new HullOpening { Id = "hatch", Use = OpeningUse.Hatch, Place = new Place(2, 0, 0.9) }).Only("one-space-flooded", "hold").Verdict);
    }

    // Two as heavy as the one of 80 kg that is listed lie lower by the closed form: 160 kg over 1025·4·(10 - 0.95·2) for an even keel.
    [Fact]
    public void MostPeopleOfTheRules_AreJudgedWhereTheListHasFewer()
    {
        BoatModel boat = Flooded(4, 6, 2, 0, 2).With(JudgedBox.Aboard("crew", DeadweightUse.People, 80, 5, 0, 2), JudgedBox.Rules() with { PeopleCount = 2 });
        Finding finding = boat.Only("one-space-flooded", "hold");
        double draught = (JudgedBox.MassKg + 160) / (1025 * 4 * (10 - (0.95 * 2)));
        Assert.Equal(2 - draught, finding.Amounts()[^2], 1e-6);
        Assert.Contains("2 people aboard", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NobodyListed_SaysThatNobodyIsInIt() =>
        Assert.Contains(Flooded(4, 6, 2, 0, 2).Only("one-space-flooded", "hold").Working, line => line.What == "Remark" && line.Expression.StartsWith("nobody is listed aboard", StringComparison.Ordinal));

    // Under way, with rules that count people and nobody listed, nothing says where they would be.
    [Theory]
    [InlineData(true, Verdict.Unknown)]
    [InlineData(false, Verdict.Holds)]
    public void NobodyListedUnderWay_IsUnknownWhereTheRulesCountPeople(bool engineRuns, Verdict verdict)
    {
        BoatModel boat = Flooded(4, 6, 2, 0, 2).With(new Condition { Id = "at-sea", Name = "At sea", EngineRuns = engineRuns }, JudgedBox.Rules(StabilityRule.GeneralIntact) with { PeopleCount = 3 });
        Assert.Equal(verdict, boat.Only("one-space-flooded", "hold").Verdict);
        Assert.Contains(boat.Only("one-space-flooded", "hold").Working, line => line.Expression.Contains("the 3 people of the rules", StringComparison.Ordinal));
        Assert.All(boat.Found("general-intact"), finding => Assert.Equal(verdict, finding.Verdict));
        Assert.Equal(engineRuns, boat.Found("weights-given").Any(finding => finding.Headline.ToString().StartsWith("Nobody is listed aboard at sea, and the rules count 3 people", StringComparison.Ordinal)));
    }

    [Fact]
    public void OpeningOfAnotherSpaceUnder_Fails() => Assert.Equal(
        Verdict.Fails, Flooded(4, 6, 2, 0, 2).With(new HullOpening { Id = "hatch", Use = OpeningUse.Hatch, Place = new Place(2, 0, 0.9) }).Only("one-space-flooded", "hold").Verdict);

    [Fact]
    public void OpeningOfTheFloodedSpaceItself_DoesNotMatter() => Assert.Equal(
        Verdict.Holds, Flooded(4, 6, 2, 0, 2).With(new HullOpening { Id = "hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 0.9), Space = "hold" }).Only("one-space-flooded", "hold").Verdict);

    [Fact]
    public void NearlyAllOfHer_Sinks()
    {
        Finding finding = Flooded(0.5, 9.5, 2, 0, 2).Only("one-space-flooded", "hold");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("sinks", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void EndSpace_TrimsHerToThatEnd()
    {
        Finding finding = Flooded(8, 10, 2, 0, 2).Only("one-space-flooded", "hold");
        Assert.True(finding.Amounts()[1] > 0.5);
        Assert.Contains("by the bow", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // Both hold and neither has a use: less freeboard leads; each condition has its own number.
    [Fact]
    public void DeeperCondition_Leads_AndTheMilderIsToldInItsOwn()
    {
        BoatModel boat = Flooded(4, 6, 2, 0, 2).With(
            new Condition { Id = "z-laden", Name = "Laden" }, new Deadweight { Id = "stone", Use = DeadweightUse.Cargo, MassKg = 4000, Place = new Place(5, 0, 0.5), Aboard = [new DeadweightCount("z-laden", 1)] });
        PairedFinding found = Assert.Single(boat.Review().Findings, pair => pair.CheckId == "one-space-flooded");
        Assert.Equal(["z-laden", "at-sea"], found.After!.All.Select(finding => finding.ConditionId));
        Assert.Equal("at-sea", Assert.Single(FindingPairs.In("at-sea", [found])).Shown.ConditionId);
    }

    [Fact]
    public void NothingInside_IsUnknown() => Assert.Equal(Verdict.Unknown, Flooded(12, 14, 1, 0, 1).Only("one-space-flooded", "hold").Verdict);

    [Fact]
    public void PermeabilityNotGiven_NoFinding() => Assert.Empty(
        JudgedBox.Of(new Space { Id = "hold", Use = SpaceUse.Dry, From = new Place(4, -2, 0), To = new Place(6, 2, 2) }).Found("one-space-flooded"));

    [Fact]
    public void NoOpeningGiven_IsUnknown() => Flooded(4, 6, 2, 0, 2).Without("vent").Only("one-space-flooded", "hold").IsUnknownFor("opening", "place");

    private static BoatModel Flooded(double aft, double fore, double halfBreadth, double low, double high) => JudgedBox.Of(
        JudgedBox.Own(LimitIds.LeastFloodedFreeboardM, 0.01),
        new Space { Id = "hold", Use = SpaceUse.Dry, From = new Place(aft, -halfBreadth, low), To = new Place(fore, halfBreadth, high), PermeabilityFraction = 0.95 });
}
