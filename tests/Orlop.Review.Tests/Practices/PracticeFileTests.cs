using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Practices;

public sealed class PracticeFileTests
{
    public static TheoryData<string> Ids { get; } = [.. PracticeFiles.ById.Keys];

    [Theory, MemberData(nameof(Ids))]
    public void Practice_GivesEveryLimitOfTheList_AndNoOther(string id) =>
        Assert.Equal(LimitIds.All.Order(StringComparer.Ordinal), PracticeFiles.ById[id].Limits.Keys.Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Ids))]
    public void Practice_EveryLimit_NamesASourceAndIsFinite(string id) => Assert.All(PracticeFiles.ById[id].Limits.Values, limit =>
    {
        Assert.False(string.IsNullOrWhiteSpace(limit.Source), limit.Id);
        Assert.True(double.IsFinite(limit.Value) && limit.Value >= 0, limit.Id);
    });

    // The reference pages found no open copy of the ISO ampacity table: whatever rests on it must say that it is from memory.
    [Fact]
    public void IsoAmpacity_NotSeenInAnOpenSource_IsMarkedFromMemory() => Assert.True(PracticeFiles.ById["iso-small-craft"].IsAmpacityFromMemory);

    [Theory, MemberData(nameof(Ids))]
    public void Practice_SourceThatSaysFromMemory_IsMarkedSo(string id) => Assert.All(
        PracticeFiles.ById[id].Limits.Values.Where(limit => limit.Source.Contains("from memory", StringComparison.Ordinal)),
        limit => Assert.True(limit.IsFromMemory, limit.Id));

    // 33 CFR 183.425 Table 5, Note 2: three 0.7, four to six 0.6, seven to twenty-four 0.5, more 0.4.
    [Theory]
    [InlineData(3, 0.7)]
    [InlineData(4, 0.6)]
    [InlineData(6, 0.6)]
    [InlineData(7, 0.5)]
    [InlineData(24, 0.5)]
    [InlineData(25, 0.4)]
    public void FederalGrouping_Table5Note2(int count, double factor) =>
        Assert.Equal(factor, PracticeFiles.ById["us-federal"].Groupings.Rows.Single(row => row.LeastCount <= count && (row.MostCount is not { } most || count <= most)).Factor);
}
