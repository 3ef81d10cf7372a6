using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

/// <summary>A working is written out when it is first read, and once.</summary>
public sealed class WorkingWhenAskedTests
{
    private static Finding Of(Func<WorkingLine> write) => new()
    {
        CheckId = "check",
        SubjectId = "thing",
        Verdict = Verdict.Holds,
        Headline = Sentence.Of($"It holds"),
        WorkingWhenAsked = () => [write()],
    };

    [Fact]
    public void Working_UntilRead_IsNotWritten()
    {
        int writtenCount = 0;
        Finding finding = Of(() => new WorkingLine($"{++writtenCount}", "", null, ""));
        Finding copy = finding with { ConditionId = "at-sea" };
        Assert.Equal(0, writtenCount);

        Assert.Equal("1", finding.Working.Single().What);
        Assert.Equal("1", copy.Working.Single().What);
        Assert.Equal(1, writtenCount);
    }

    [Fact]
    public async Task Working_ReadByManyThreads_IsTheSameForAll()
    {
        for (int round = 0; round < 50; round++)
        {
            Finding finding = Of(() => new WorkingLine(Guid.NewGuid().ToString(), "", null, ""));
            string[] read = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => finding.Working.Single().What, TestContext.Current.CancellationToken)));
            Assert.Single(read.Distinct());
        }
    }

    [Fact]
    public void Working_GivenAtOnce_ReplacesWhatWasToBeWritten() =>
        Assert.Equal("given", (Of(() => new WorkingLine("written", "", null, "")) with { Working = [new WorkingLine("given", "", null, "")] }).Working.Single().What);
}
