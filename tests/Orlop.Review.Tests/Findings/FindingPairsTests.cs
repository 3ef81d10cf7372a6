using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

public sealed class FindingPairsTests
{
    [Theory]
    [InlineData(null, 1.2, Change.NewTrouble)]
    [InlineData(0.5, 0.95, Change.NewTrouble)]
    [InlineData(0.5, 1.2, Change.NewTrouble)]
    [InlineData(0.95, 1.2, Change.NewTrouble)]
    [InlineData(0.95, 1.0000001, Change.NewTrouble)]
    [InlineData(0.92, 0.95, Change.Worse)]
    [InlineData(1.1, 1.2, Change.Worse)]
    [InlineData(1.2, 1.1, Change.Better)]
    [InlineData(1.2, 0.5, Change.Better)]
    [InlineData(1.2, 1.2, Change.AsBefore)]
    [InlineData(0.5, double.NaN, Change.Unknown)]
    [InlineData(1.2, double.NaN, Change.Unknown)]
    [InlineData(double.NaN, 1.2, Change.NewTrouble)]
    [InlineData(double.NaN, 0.5, Change.Better)]
    [InlineData(0.5, 0.6, Change.Holds)]
    [InlineData(double.NaN, double.NaN, Change.AsBefore)]
    [InlineData(1.2, null, Change.Gone)]
    public void OneFinding_BeforeAndAfter_IsPaired(double? before, double? after, Change change) =>
        Assert.Equal(change, Assert.Single(FindingPairs.Of(Of(before), Of(after))).Change);

    [Fact]
    public void AnotherConditionFailsOnlyNow_IsNewTrouble() => Assert.Equal(
        Change.NewTrouble, Assert.Single(FindingPairs.Of([Of(1.2, "a"), Of(0.5, "b")], [Of(1.2, "a"), Of(1.1, "b")])).Change);

    // 15 A of 7 A allowed, and 5 A of nothing allowed: the second has no ratio, and is the worse.
    [Fact]
    public void SomethingOfNothing_IsWorseThanAnyUse()
    {
        Finding nothing = Asked("lifting", 5, 0), much = Asked("at-anchor", 15, 7), beyond = Asked("under-way", 900, 7);
        PairedFinding found = Assert.Single(FindingPairs.Of([], [much, beyond, nothing]));

        Assert.Equal(["lifting", "under-way", "at-anchor"], found.After!.All.Select(finding => finding.ConditionId));
        Assert.Equal("lifting", found.Shown.ConditionId);
    }

    [Fact]
    public void AllowedFallsToNothing_IsWorse_AndRisesFromIt_IsBetter()
    {
        Finding nothing = Asked("a", 5, 0), much = Asked("a", 15, 7);

        Assert.Equal(Change.Worse, Assert.Single(FindingPairs.Of([much], [nothing])).Change);
        Assert.Equal(Change.Better, Assert.Single(FindingPairs.Of([nothing], [much])).Change);
        Assert.Equal(Change.AsBefore, Assert.Single(FindingPairs.Of([nothing], [nothing])).Change);
    }

    // The door goes under while she heels less: worse, whatever the heel; and the way back is better.
    [Fact]
    public void OpeningThatGoesUnder_OutranksTheNumber()
    {
        Finding heeled = Of(1.6, "a"), flooding = Of(1.2, "a") with { IsFlooding = true };

        Assert.Equal(Change.Worse, Assert.Single(FindingPairs.Of([heeled], [flooding])).Change);
        Assert.Equal(Change.Better, Assert.Single(FindingPairs.Of([flooding], [heeled])).Change);
        Assert.Equal("b", Assert.Single(FindingPairs.Of([], [heeled, flooding with { ConditionId = "b" }])).Shown.ConditionId);
    }

    // All hold and none has a use: the gravest by its number leads, and a milder one does not once the graver is gone.
    [Fact]
    public void WithoutAUse_TheGravestNumberLeads()
    {
        Finding Held(string condition, double gravity) => Of(0, condition) with { Verdict = Verdict.Holds, UseFraction = null, GravityRatio = gravity };
        PairedFinding found = Assert.Single(FindingPairs.Of([], [Held("anchor", -0.499), Held("work", -0.388), Held("berth", -0.6)]));

        Assert.Equal(["work", "anchor", "berth"], found.After!.All.Select(finding => finding.ConditionId));
        Assert.Equal("berth", Assert.Single(FindingPairs.In("berth", [found])).Shown.ConditionId);
        Assert.Empty(FindingPairs.In("elsewhere", [found]));
    }

    [Fact]
    public void SomethingOfNothing_StandsBeforeAnyUse() => Assert.Equal(
        ["none", "much"],
        FindingPairs.Of([], [Asked("a", 15, 7) with { SubjectId = "much" }, Asked("a", 5, 0) with { SubjectId = "none" }]).Select(pair => pair.SubjectId));

    private static Finding Asked(string condition, double asked, double allowed) => Of(0, condition) with
    {
        Verdict = Verdicts.Of(asked, allowed),
        UseFraction = Verdicts.UseOf(asked, allowed),
    };

    private static Finding[] Of(double? use) => use is { } value ? [Of(value, "a")] : [];

    private static Finding Of(double use, string condition) => new()
    {
        CheckId = "check",
        SubjectId = "thing",
        ConditionId = condition,
        Verdict = Verdicts.OfUse(use),
        UseFraction = double.IsFinite(use) ? use : null,
        Headline = Sentence.Of($"a"),
    };
}
