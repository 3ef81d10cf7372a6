using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>A finding names a condition only where the condition makes a difference.</summary>
public sealed class SameInAllTests
{
    private static readonly BoatModel Boat = new()
    {
        Things = [new Condition { Id = "anchor", Name = "At anchor" }, new Condition { Id = "night", Name = "Under way by night" }, new Gear { Id = "chest", Name = "Chest" }],
    };

    [Fact]
    public void Row_SameInEveryCondition_NamesNone()
    {
        FindingRow row = Row(Of("anchor", "Chest cannot be told at anchor", 1.2), Of("night", "Chest cannot be told under way by night", 1.2));

        Assert.Null(row.Condition);
        Assert.Equal("Chest cannot be told", row.Headline);
    }

    [Fact]
    public void Row_AnotherUseInOne_NamesTheWorst()
    {
        FindingRow row = Row(Of("anchor", "Chest cannot be told at anchor", 1.2), Of("night", "Chest cannot be told under way by night", 1.1));

        Assert.Equal(("At anchor", "Chest cannot be told at anchor"), (row.Condition, row.Headline));
    }

    [Fact]
    public void Row_NotJudgedInOne_NamesTheWorst() => Assert.Equal("At anchor", Row(Of("anchor", "Chest is loose", 1.2)).Condition);

    private static FindingRow Row(params Finding[] findings)
    {
        FindingGroup group = new(findings[0], [.. findings]);
        return FindingRow.Of(new PairedFinding("check", "chest", Change.AsBefore, group, group), Boat, false, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"));
    }

    private static Finding Of(string condition, string headline, double use) =>
        new() { CheckId = "check", SubjectId = "chest", ConditionId = condition, Verdict = Verdict.Fails, UseFraction = use, Headline = Sentence.Of($"{headline}") };
}
