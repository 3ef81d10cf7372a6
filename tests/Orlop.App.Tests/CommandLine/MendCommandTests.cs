using Orlop.App.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class MendCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    /// <summary>The smallest boat, with a fuse that can break next to nothing.</summary>
    internal static string WeakFuse()
    {
        BoatModel boat = BoatJson.Read(File.ReadAllText(Repository.At("examples", "one-circuit.json"))).Boat!;
        return BoatJson.Write(boat.WithThings(boat.Things.Select(thing => thing is Protection fuse ? fuse with { BreakingA = 50 } : thing)));
    }

    [Fact]
    public async Task WeakFuse_IsMendedAndSaysWhatToBuy()
    {
        CommandRun run = await CommandRun.WithInput(WeakFuse(), "mend", "-");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("to buy", run.Out, StringComparison.Ordinal);
        Assert.Contains("that is proved", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tight_IsSaidToBeAskedFor()
    {
        CommandRun whole = await CommandRun.Of("mend", Repository.At("examples", "one-circuit.json"), "--tight");
        Assert.Equal(ExitCode.Good, whole.Code);
        Assert.Contains("No electrical finding fails or is tight", whole.Out, StringComparison.Ordinal);

        CommandRun weak = await CommandRun.WithInput(WeakFuse(), "mend", "-", "--tight", "--json");
        Assert.Contains("\"isTightToo\": true", weak.Out, StringComparison.Ordinal);
        Assert.Contains("\"outcome\": \"cleared\"", weak.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NothingFails_SaysSo()
    {
        CommandRun run = await CommandRun.Of("mend", Repository.At("examples", "one-circuit.json"));

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("nothing to mend", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Apply_WritesABoatWithANewDraft_ThatTheReviewPasses()
    {
        string mended = _folder.At("mended.json"), given = _folder.At("given.json");
        await File.WriteAllTextAsync(given, WeakFuse(), TestContext.Current.CancellationToken);
        CommandRun run = await CommandRun.Of("mend", given, "--apply", "Better fuse", "-o", mended);

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal(WeakFuse(), await File.ReadAllTextAsync(given, TestContext.Current.CancellationToken));
        Assert.Equal(ExitCode.SomethingFails, (await CommandRun.Of("review", mended)).Code);
        Assert.Equal(ExitCode.Good, (await CommandRun.Of("review", mended, "-a", "better-fuse")).Code);
    }

    [Theory]
    [InlineData("--apply", "Name")]
    [InlineData("-o", "file.json")]
    [InlineData("--for", "beauty")]
    public async Task Usage_Wrong_IsBadInput(params string[] options)
    {
        CommandRun run = await CommandRun.WithInput(WeakFuse(), ["mend", "-", .. options]);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Empty(run.Out);
    }

    public void Dispose() => _folder.Dispose();
}
