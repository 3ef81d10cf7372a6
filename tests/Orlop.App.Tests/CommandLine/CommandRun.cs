using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

/// <summary>One run of the program in this process.</summary>
internal sealed record CommandRun(int Code, string Out, string Error)
{
    public static Task<CommandRun> Of(params string[] args) => WithInput("", args);

    public static async Task<CommandRun> WithInput(string input, params string[] args)
    {
        StringWriter output = new(), error = new();
        int code = await OrlopCommand.RunAsync(args, new CommandStreams(new StringReader(input), output, error), TestContext.Current.CancellationToken);
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
