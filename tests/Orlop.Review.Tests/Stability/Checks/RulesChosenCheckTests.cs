using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>A boat of which nobody chose what she is held against.</summary>
public sealed class RulesChosenCheckTests
{
    [Fact]
    public void NoRules_AreUnknown_WithAndWithoutTheThing()
    {
        JudgedBox.Of().Only("stability-rules-chosen").IsUnknownFor("stability-basis", "rules");
        Finding empty = JudgedBox.Of(JudgedBox.Rules()).Only("stability-rules-chosen", "stability-basis");

        Assert.Equal(Verdict.Unknown, empty.Verdict);
        Assert.StartsWith("No stability rules are chosen", empty.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ChosenRules_LeaveNothingToSay() => Assert.Empty(JudgedBox.Of(JudgedBox.Rules(StabilityRule.OpenBoat)).Found("stability-rules-chosen"));
}
