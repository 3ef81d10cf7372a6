using System.CommandLine;
using Orlop.Store;

namespace Orlop.App.CommandLine;

/// <summary>The command line <c>orlop</c>.</summary>
public static class OrlopCommand
{
    // What a command may take to tell what it has, once it is stopped.
    private static readonly TimeSpan StoppingTime = TimeSpan.FromSeconds(10);

    /// <summary>Runs one command; the result is an <see cref="ExitCode"/>.</summary>
    public static async Task<int> RunAsync(string[] args, CommandStreams streams, CancellationToken token = default)
    {
        ParseResult parsed = Root(streams).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            UsageText.Write(parsed, streams.Error);
            return ExitCode.BadInput;
        }

        if (parsed.Tokens.Any(token => string.IsNullOrWhiteSpace(token.Value)))
        {
            await streams.Error.WriteLineAsync("A name on the command line is blank. Was a variable of the shell empty?");
            return ExitCode.BadInput;
        }

        try
        {
            InvocationConfiguration console = new() { Output = streams.Out, Error = streams.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = StoppingTime };
            return await parsed.InvokeAsync(console, token);
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Stopped;
        }
        catch (Exception failure) when (failure is CommandException or StoreException or IOException or UnauthorizedAccessException)
        {
            await streams.Error.WriteLineAsync(failure.Message);
            return ExitCode.BadInput;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            await streams.Error.WriteLineAsync($"This is a fault of the program, not yours; nothing was lost. Please report it with the command: {fault.GetType().Name}: {fault.Message} ({fault.TargetSite?.DeclaringType?.Name}.{fault.TargetSite?.Name})");
            return ExitCode.OwnFault;
        }
    }

    private static RootCommand Root(CommandStreams streams) =>
        new("Draft a change to a boat, see what it does to the whole boat, take a work pack along, bring back what was built.")
        {
            ServeCommand.Make(streams),
            ReviewCommand.Make(streams),
            MendCommand.Make(streams),
            PackCommand.Make(streams),
            IsolateCommand.Make(streams),
            FloatCommand.Make(streams),
            WeightsCommand.Make(streams),
            FaultsCommand.Make(streams),
            StartCommand.Make(streams),
            EnergyCommand.Make(streams),
            HeatCommand.Make(streams),
            RouteCommand.Make(streams),
            ExportCommand.Make(streams),
            ImportCommand.Make(streams),
            NewCommand.Make(streams),
        };
}
