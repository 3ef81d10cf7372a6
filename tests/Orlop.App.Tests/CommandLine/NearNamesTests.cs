using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class NearNamesTests
{
    private static readonly string Demo = Repository.At("examples", "sandgrouse.json");

    [Theory]
    [InlineData("revew", "review")]
    [InlineData("ioslate", "isolate")]
    [InlineData("exprot", "export")]
    public async Task Command_Unknown_IsSaidFirstWithTheNearOneAndShortHelp(string typed, string meant)
    {
        CommandRun run = await CommandRun.Of(typed, "boat.json");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Equal($"There is no command '{typed}'. Did you mean {meant}?", run.Error.Split(Environment.NewLine)[0]);
        Assert.All(["serve", "review", "pack", "isolate", "export", "import", "new"], command => Assert.Contains($"orlop {command}", run.Error, StringComparison.Ordinal));
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("pnale-plus", "Did you mean panel-plus (Panel plus bar)?")]
    [InlineData("solar-controler", "Did you mean solar (Solar controller, 2 × 200 W)?")]
    [InlineData("winch-fuse", "sampling-winch")]
    [InlineData("winch-fuze", "Did you mean winch-fuse (")]
    [InlineData("engine-space", "no part, cable or link")]
    public async Task Isolate_IdThatIsNotThere_SaysWhatIsNearOrWhereItIs(string id, string said)
    {
        CommandRun run = await CommandRun.Of("isolate", Demo, id);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("Panel plus bar")]
    [InlineData("panel plus BAR")]
    public async Task Isolate_NameOfOnePart_IsFound(string name) =>
        Assert.Equal((await CommandRun.Of("isolate", Demo, "panel-plus")).Out, (await CommandRun.Of("isolate", Demo, name)).Out);

    [Fact]
    public async Task Isolate_NameOfSeveralParts_AsksForAnId()
    {
        CommandRun run = await CommandRun.WithInput(
            """{"formatVersion":1,"things":[{"kind":"busbar","id":"one","name":"Bar"},{"kind":"busbar","id":"two","name":"Bar"}]}""", "isolate", "-", "bar");
        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("2 things are named 'bar'. Give the id of one: one, two.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Isolate_PartOfADraft_IsFoundWithTheAlteration()
    {
        CommandRun run = await CommandRun.Of("isolate", Demo, "winch-fuse", "--alteration", "sampling-winch");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("Prove it dead", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Alteration_MistypedName_SaysTheNearOne()
    {
        CommandRun run = await CommandRun.Of("review", Demo, "-a", "sampling-wich");

        Assert.StartsWith("There is no alteration 'sampling-wich'. Did you mean sampling-winch (", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Alteration_TwoOfOneName_AsksForTheId()
    {
        const string boat = """{"formatVersion":1,"things":[{"kind":"alteration","id":"a","name":"Winch","status":"draft"},{"kind":"alteration","id":"b","name":"Winch","status":"draft"}]}""";
        CommandRun run = await CommandRun.WithInput(boat, "review", "-", "-a", "winch");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("2 alterations are named 'winch'. Give the id of one: a, b.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_Mistyped_SaysTheNearOne()
    {
        CommandRun run = await CommandRun.Of("export", Demo, "--list", "gaer", "-o", "-");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.StartsWith("There is no list 'gaer'. Did you mean gear?", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("winch", "winch", "winch")]
    [InlineData("winch", "wnich", "wnich")]
    [InlineData("fuse", "panel-fuse", "panel-fuse")]
    [InlineData("winch", "bilge-pump", null)]
    public void Hint_GivesWhatIsNearOnly(string typed, string known, string? near) =>
        Assert.Equal(near is null ? "" : $" Did you mean {near}?", NearNames.Hint(typed, [known]));
}
