using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class OrlopCommandTests
{
    [Fact]
    public async Task Help_NamesEveryCommand()
    {
        CommandRun run = await CommandRun.Of("--help");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.All(["serve", "review", "mend", "pack", "isolate", "export", "import", "new"], command => Assert.Contains(command, run.Out, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("sail")]
    [InlineData("review")]
    [InlineData("review", "a.json", "--units", "fathoms")]
    [InlineData("serve", "--port", "70000")]
    [InlineData("export", "a.json", "--list", "unicorn", "-o", "-")]
    public async Task Usage_Wrong_IsBadInputAndPointsToHelp(params string[] args)
    {
        CommandRun run = await CommandRun.Of(args);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("--help", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("review", "nothing.json", "nothing.json")]
    [InlineData("review", "nothing.orlop", "nothing.orlop")]
    [InlineData("isolate", "nothing.json", "nothing.json")]
    public async Task Boat_NotThere_SaysWhichAndWhatToDo(string command, string boat, string said)
    {
        CommandRun run = await CommandRun.Of(command == "isolate" ? [command, boat, "x"] : [command, boat]);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public async Task Boat_WithSeveralProblems_TellsAllAtOnce()
    {
        CommandRun run = await CommandRun.WithInput("""{"formatVersion":1,"things":[{"kind":"gear","id":"Bad Id"},{"kind":"sail","id":"x"}]}""", "review", "-");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("standard input", run.Error, StringComparison.Ordinal);
        Assert.Contains("Bad Id", run.Error, StringComparison.Ordinal);
        Assert.Contains("sail", run.Error, StringComparison.Ordinal);
    }
}
