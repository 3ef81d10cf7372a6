using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

/// <summary>Files that are missing, empty, something else, or may not be written: one clear line, exit status 2, nothing half done.</summary>
public sealed class OddFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("boat.json", "", "empty")]
    [InlineData("boat.json", "hello", "line 1, column 1")]
    [InlineData("boat.json", """{"formatVersion":2,"things":[]}""", "version 2")]
    [InlineData("boat.orlop", "", "not a boat's file")]
    [InlineData("boat.orlop", "hello", "not a boat's file")]
    public async Task Boat_ThatIsNone_IsRefusedByEveryCommandThatReadsOne(string name, string text, string said)
    {
        string path = _folder.At(name);
        await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        foreach (string[] command in (string[][])[["review", path, "--json"], ["isolate", path, "x", "--json"], ["pack", path, "-a", "x", "-o", _folder.At("pack")], ["export", path, "-o", "-"], ["serve", path, "--no-open"]])
        {
            CommandRun run = await CommandRun.Of(command);

            Assert.Equal(ExitCode.BadInput, run.Code);
            Assert.Contains(said, run.Error, StringComparison.Ordinal);
            Assert.Contains(path, run.Error, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
            Assert.Empty(run.Out);
        }

        Assert.Equal([path], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Theory]
    [InlineData("folder.json")]
    [InlineData("folder.orlop")]
    public async Task Boat_ThatIsAFolder_IsToldSo(string name)
    {
        Directory.CreateDirectory(_folder.At(name));
        CommandRun run = await CommandRun.Of("review", _folder.At(name));

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("is a folder", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere/x.json", "folder is not there")]
    [InlineData("", "is a folder")]
    public async Task Export_WhereItCannot_SaysWhyAndLeavesNothing(string output, string said)
    {
        CommandRun run = await CommandRun.Of("export", Repository.At("examples", "one-circuit.json"), "-o", _folder.At(output));

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder.Path));
    }

    [Theory]
    [InlineData("nowhere/x.orlop", "folder is not there")]
    [InlineData("", "is a folder")]
    [InlineData("boat.json", "named with .orlop")]
    public async Task New_WhereItCannot_SaysWhyAndLeavesNothing(string path, string said)
    {
        CommandRun run = await CommandRun.Of("new", _folder.At(path));

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public async Task Pack_IntoAFile_IsRefused()
    {
        string file = _folder.At("pack");
        await File.WriteAllTextAsync(file, "mine", TestContext.Current.CancellationToken);
        CommandRun run = await CommandRun.Of("pack", Repository.At("examples", "sandgrouse.json"), "-a", "sampling-winch", "-o", file);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("is a file", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("review", "")]
    [InlineData("export", "x.orlop", "-o", " ")]
    public async Task Name_Blank_IsRefused(params string[] args)
    {
        CommandRun run = await CommandRun.Of(args);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("blank", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Path_WithSpacesAndLettersOfManyLands_Works()
    {
        string path = _folder.At("bôat ÷ é 船.orlop");
        CommandRun made = await CommandRun.Of("new", path);
        CommandRun review = await CommandRun.Of("review", path);

        Assert.Contains($"orlop serve \"{path}\"", made.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, review.Code);
    }

    public void Dispose() => _folder.Dispose();
}
