using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
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
        Assert.Equal(2 - (32 / (4 * (10 - (0.95 * 2)))), finding.Amounts()[^1], 1e-6);
        Assert.Contains("deck edge", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("no limit", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // Twice 75 kg in place of one of 80 kg at the rail lie lower by the closed form: 70 kg over 1025·4·(10 - 0.95·2) for an even keel.
    [Fact]
    public void MostPeopleOfTheRules_AreJudgedWhereTheListHasFewer()
    {
        BoatModel boat = Flooded(4, 6, 2, 0, 2).With(JudgedBox.Aboard("crew", DeadweightUse.People, 80, 5, 0, 2), JudgedBox.Rules() with { PeopleCount = 2 });
        Finding finding = boat.Only("one-space-flooded", "hold");
        double draught = (JudgedBox.MassKg + 150) / (1025 * 4 * (10 - (0.95 * 2)));
        Assert.Equal(2 - draught, finding.Amounts()[^1], 1e-6);
        Assert.Contains("2 people aboard", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NobodyListed_SaysThatNobodyIsInIt() =>
        Assert.Contains(Flooded(4, 6, 2, 0, 2).Only("one-space-flooded", "hold").Working, line => line.What == "Remark" && line.Expression.StartsWith("nobody is listed aboard", StringComparison.Ordinal));

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
    public void EndSpace_TrimsHerToThatEnd() => Assert.True(Flooded(8, 10, 2, 0, 2).Only("one-space-flooded", "hold").Amounts()[1] < -0.5);

    [Fact]
    public void NothingInside_IsUnknown() => Assert.Equal(Verdict.Unknown, Flooded(12, 14, 1, 0, 1).Only("one-space-flooded", "hold").Verdict);

    [Fact]
    public void PermeabilityNotGiven_NoFinding() => Assert.Empty(
        JudgedBox.Of(new Space { Id = "hold", Use = SpaceUse.Dry, From = new Place(4, -2, 0), To = new Place(6, 2, 2) }).Found("one-space-flooded"));

    [Fact]
    public void NoOpeningGiven_IsUnknown() => Flooded(4, 6, 2, 0, 2).Without("vent").Only("one-space-flooded", "hold").IsUnknownFor("opening", "place");

    private static BoatModel Flooded(double aft, double fore, double halfBreadth, double low, double high) => JudgedBox.Of(
        new Space { Id = "hold", Use = SpaceUse.Dry, From = new Place(aft, -halfBreadth, low), To = new Place(fore, halfBreadth, high), PermeabilityFraction = 0.95 });
}
