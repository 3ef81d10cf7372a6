using System.Text.Json;
using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class BoatFileCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task New_HandfulOfMeasurements_MakesABoatThatCanBeReviewed()
    {
        string path = _folder.At("petrel.orlop");
        CommandRun made = await CommandRun.Of("new", path, "--name", "Petrel", "--length", "34 ft 9", "--beam", "3.1 m");
        CommandRun exported = await CommandRun.Of("export", path, "-o", "-");
        CommandRun review = await CommandRun.Of("review", path);

        Assert.Equal(ExitCode.Good, made.Code);
        Assert.Contains("Petrel", exported.Out, StringComparison.Ordinal);
        Assert.Contains("34 ft 9", exported.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, review.Code);
    }

    [Fact]
    public async Task New_FileIsThere_IsNotOverwritten()
    {
        string path = _folder.At("petrel.orlop");
        await CommandRun.Of("new", path);
        CommandRun again = await CommandRun.Of("new", path);

        Assert.Equal(ExitCode.BadInput, again.Code);
        Assert.Contains(path, again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_LengthThatIsNone_SaysWhatMayBeTyped()
    {
        CommandRun run = await CommandRun.Of("new", _folder.At("x.orlop"), "--length", "long");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("--length 'long'", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder.At("x.orlop")));
    }

    [Fact]
    public async Task ExportAndImport_AList_BringsTheChangeAsOneRevision()
    {
        string path = _folder.At("petrel.orlop"), table = _folder.At("gear.csv");
        await CommandRun.Of("new", path);
        await File.WriteAllTextAsync(table, "id,name,mass_kg\nanchor,Anchor,25\nchain,Chain,58\n", TestContext.Current.CancellationToken);
        CommandRun imported = await CommandRun.Of("import", path, table, "--list", "gear");
        CommandRun exported = await CommandRun.Of("export", path, "--list", "gear", "-o", "-");

        Assert.Equal(ExitCode.Good, imported.Code);
        Assert.Contains("2 things changed; revision 2", imported.Out, StringComparison.Ordinal);
        Assert.Contains("anchor,Anchor", exported.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ExportAndImport_ClimateMonths_ComeBackAsTheyWere()
    {
        string path = _folder.At("demo.orlop"), table = _folder.At("months.csv");
        await CommandRun.Of("new", path);
        await CommandRun.Of("import", path, Repository.At("examples", "sandgrouse.json"));
        await CommandRun.Of("export", path, "--list", "climate-months", "-o", table);
        CommandRun same = await CommandRun.Of("import", path, table, "--list", "climate-months");
        string text = await File.ReadAllTextAsync(table, TestContext.Current.CancellationToken);
        CommandRun changed = await CommandRun.WithInput(text.Replace("ytterskaren,7,17,5600", "ytterskaren,7,18,5500", StringComparison.Ordinal), "import", path, "-", "--list", "climate-months");
        CommandRun refused = await CommandRun.WithInput(text.Replace("ytterskaren,7,17,5600", "ytterskaren,7,17,15600", StringComparison.Ordinal), "import", path, "-", "--list", "climate-months");

        Assert.Contains("Nothing differs", same.Out, StringComparison.Ordinal);
        Assert.Contains("1 thing changed", changed.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.BadInput, refused.Code);
        Assert.Contains("row 8, sun_wh_per_m2", refused.Error, StringComparison.Ordinal);
        Assert.Contains("ytterskaren,7,18,5500", (await CommandRun.Of("export", path, "--list", "climate-months", "-o", "-")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_BadTable_ChangesNothingAndNamesTheCell()
    {
        string path = _folder.At("petrel.orlop");
        await CommandRun.Of("new", path);
        CommandRun imported = await CommandRun.WithInput("id,name,mass_kg\nanchor,Anchor,heavy\n", "import", path, "-", "--list", "gear");

        Assert.Equal(ExitCode.BadInput, imported.Code);
        Assert.Contains("heavy", imported.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("\"anchor\"", (await CommandRun.Of("export", path, "-o", "-")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_WholeBoat_IsTheBoatExported()
    {
        string path = _folder.At("demo.orlop");
        await CommandRun.Of("new", path);
        CommandRun imported = await CommandRun.Of("import", path, Repository.At("examples", "sandgrouse.json"));
        CommandRun exported = await CommandRun.Of("export", path, "-o", "-");
        CommandRun again = await CommandRun.WithInput(exported.Out, "import", path, "-");

        Assert.Equal(ExitCode.Good, imported.Code);
        Assert.Contains("Nothing differs", again.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_FileIsThere_IsNotOverwritten()
    {
        string output = _folder.At("out.json");
        await File.WriteAllTextAsync(output, "mine", TestContext.Current.CancellationToken);
        CommandRun run = await CommandRun.Of("export", Repository.At("examples", "one-circuit.json"), "-o", output);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Equal("mine", await File.ReadAllTextAsync(output, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Isolate_APartOfTheDemo_TellsStepsProofsAndCaution()
    {
        CommandRun run = await CommandRun.Of("isolate", Repository.At("examples", "sandgrouse.json"), "panel-plus");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("  1. ", run.Out, StringComparison.Ordinal);
        Assert.Contains("0\u00A0V between", run.Out, StringComparison.Ordinal);
        Assert.Contains("Prove it dead before you touch it", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Isolate_WherePanelsGive_CoversThemFirstUncoversLastAndNamesWhatIsStillFed()
    {
        string demo = Repository.At("examples", "sandgrouse.json");
        string text = (await CommandRun.Of("isolate", demo, "main-plus")).Out;
        Assert.InRange(text.IndexOf("First cover or disconnect the solar panels", StringComparison.Ordinal), 0, text.IndexOf("Pull the fuse", StringComparison.Ordinal));
        Assert.InRange(text.IndexOf("Last, uncover", StringComparison.Ordinal), text.IndexOf("may run again", StringComparison.Ordinal), text.Length);
        Assert.Contains("It still feeds: Always-live stud;", text, StringComparison.Ordinal);

        using JsonDocument json = JsonDocument.Parse((await CommandRun.Of("isolate", demo, "main-plus", "--json")).Out);
        Assert.Equal("solar", json.RootElement.GetProperty("cover")[0].GetString());
        Assert.StartsWith("First cover or disconnect", json.RootElement.GetProperty("steps")[1].GetString(), StringComparison.Ordinal);
        Assert.StartsWith("Last, uncover", json.RootElement.GetProperty("restore").EnumerateArray().Last().GetString(), StringComparison.Ordinal);
        Assert.Contains("live-stud", json.RootElement.GetProperty("staysLive")[0].GetProperty("feeds").EnumerateArray().Select(id => id.GetString()));
    }

    public void Dispose() => _folder.Dispose();
}
