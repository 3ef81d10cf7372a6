using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

/// <summary>A value that an option does not take is refused in a sentence, also where another option is held against it.</summary>
public sealed class BadChoiceTests
{
    [Theory]
    [InlineData("faults", "--diagram", "a5", "--paper", "sheets")]
    [InlineData("faults", "--diagram", "a5")]
    [InlineData("faults", "--units", "furlongs", "--json")]
    [InlineData("float", "--table", "no-such", "--paper", "sheets")]
    [InlineData("float", "--draws", "perhaps", "--paper", "sheets")]
    [InlineData("float", "--motions", "perhaps", "--csv")]
    [InlineData("mend", "--for", "beauty", "--json", "--output", "-")]
    [InlineData("mend", "--json", "perhaps", "--apply", "A draft")]
    [InlineData("energy", "--json", "perhaps", "--csv")]
    [InlineData("serve", "--port", "many")]
    public async Task ABadValue_IsRefusedInASentence(string command, params string[] options)
    {
        CommandRun run = await CommandRun.Of([command, Repository.At("examples", "one-circuit.json"), .. options]);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Empty(run.Out);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("Exception", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }
}
