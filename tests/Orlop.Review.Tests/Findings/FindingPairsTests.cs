using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

public sealed class FindingPairsTests
{
    [Theory]
    [InlineData(null, 1.2, Change.NewTrouble)]
    [InlineData(0.5, 0.95, Change.NewTrouble)]
    [InlineData(0.95, 1.2, Change.Worse)]
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
    public void AnotherConditionFailsOnlyNow_IsWorse() => Assert.Equal(
        Change.Worse, Assert.Single(FindingPairs.Of([Of(1.2, "a"), Of(0.5, "b")], [Of(1.2, "a"), Of(1.1, "b")])).Change);

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
