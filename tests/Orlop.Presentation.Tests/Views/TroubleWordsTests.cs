using Orlop.Presentation.Views;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>What is asked about before a draft is accepted, counted by hand from uses before and after.</summary>
public sealed class TroubleWordsTests
{
    [Theory]
    [InlineData(0.5, 0.6, null)]
    [InlineData(1.2, 1.2, null)]
    [InlineData(1.2, 1.1, null)]
    [InlineData(1.2, 1.5, "1 that fails by more than before")]
    [InlineData(0.92, 0.95, null)]
    [InlineData(0.92, 1.1, "1 new trouble, which fails")]
    [InlineData(0.5, 0.95, "1 new trouble")]
    public void OneFinding_IsCountedWhereItFailsByMoreOrIsNewTrouble(double before, double after, string? words) =>
        Assert.Equal(words, TroubleWords.Of(FindingPairs.Of([Used("a", before)], [Used("a", after)])));

    [Fact]
    public void AllOfThem_AreCountedInOneSentence() => Assert.Equal(
        "2 new troubles, 1 of which fails, 2 that fail by more than before, and 1 that cannot be told",
        TroubleWords.Of(FindingPairs.Of(
            [Used("a", 0.5), Used("b", 0.5), Used("c", 1.2), Used("d", 2), Used("e", 0.5), Used("f", 1.3)],
            [Used("a", 1.5), Used("b", 0.95), Used("c", 1.3), Used("d", 3), Used("e", 0.5) with { Verdict = Verdict.Unknown, UseFraction = null }, Used("f", 1.3)])));

    private static Finding Used(string subject, double use) => new()
    {
        CheckId = "conductor-ampacity",
        SubjectId = subject,
        Verdict = Verdicts.OfUse(use),
        UseFraction = use,
        Headline = Sentence.Of($"It carries {new Amount(use * 100, "A")}"),
    };
}
