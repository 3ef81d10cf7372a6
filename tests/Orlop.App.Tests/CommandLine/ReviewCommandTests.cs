using System.Text.Json;
using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class ReviewCommandTests
{
    private static readonly string Demo = Repository.At("examples", "sandgrouse.json");

    [Fact]
    public async Task Review_DraftInTrouble_ExitsOneAndShowsNewTroubleFirst()
    {
        CommandRun run = await CommandRun.Of("review", Demo, "--alteration", "sampling-winch");

        Assert.Equal(ExitCode.SomethingFails, run.Code);
        Assert.StartsWith("New trouble:", run.Out, StringComparison.Ordinal);
        Assert.Contains("fails", run.Out, StringComparison.Ordinal);
        Assert.Contains("not a survey", run.Out, StringComparison.Ordinal);
    }

    // The demo lacks one length: the anchor light's cable.
    [Fact]
    public async Task Review_FindingsThatWaitForOneInput_StandTogetherUnderIt()
    {
        string[] lines = (await CommandRun.Of("review", Demo)).Out.Split('\n');
        int title = Assert.Single(Enumerable.Range(0, lines.Length), line => lines[line].Contains("is missing:", StringComparison.Ordinal) && lines[line].Contains("nchor light", StringComparison.Ordinal));
        int count = int.Parse(lines[title].Split("is missing: ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(count > 1);
        Assert.All(lines[(title + 1)..(title + 1 + count)], line => Assert.StartsWith(new string(' ', 22), line, StringComparison.Ordinal));
        Assert.False(lines[title + 1 + count].StartsWith(new string(' ', 22), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Review_EmptyBoat_SaysThatNothingCouldBeChecked()
    {
        CommandRun run = await CommandRun.WithInput("""{"formatVersion":1,"things":[]}""", "review", "-");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("Nothing could be checked yet", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Review_Json_CountsWhatFailsAndNamesTheAlteration()
    {
        CommandRun run = await CommandRun.Of("review", Demo, "--alteration", "sampling-winch", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Out);

        Assert.True(json.RootElement.GetProperty("counts").GetProperty("fails").GetInt32() > 0);
        Assert.Equal("sampling-winch", json.RootElement.GetProperty("alteration").GetString());
    }

    [Fact]
    public async Task Review_Twice_WritesTheSame()
    {
        CommandRun one = await CommandRun.Of("review", Demo, "--json"), two = await CommandRun.Of("review", Demo, "--json");

        Assert.Equal(one.Out, two.Out);
    }

    [Fact]
    public async Task Review_UnitsUs_ShowsOtherNumbers()
    {
        CommandRun metric = await CommandRun.Of("review", Demo), us = await CommandRun.Of("review", Demo, "--units", "us");

        Assert.Equal(metric.Code, us.Code);
        Assert.NotEqual(metric.Out, us.Out);
        Assert.Contains(" ft", us.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Review_UnknownAlteration_NamesThoseThereAre()
    {
        CommandRun run = await CommandRun.Of("review", Demo, "--alteration", "mast");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("sampling-winch", run.Error, StringComparison.Ordinal);
    }
}
