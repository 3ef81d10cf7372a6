using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Orlop.Browser.Tests.Harness;

/// <summary>One run of the program in a process of its own.</summary>
internal sealed partial class OrlopProcess : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    private readonly Process _process;
    private readonly StringBuilder _said = new();

    private OrlopProcess(string folder, IEnumerable<string> arguments)
    {
        ProcessStartInfo start = Built.Run(arguments);
        start.WorkingDirectory = folder;
        start.RedirectStandardOutput = start.RedirectStandardError = true;
        // The user's own data folder is no place for tests.
        start.Environment["HOME"] = start.Environment["XDG_DATA_HOME"] = folder;
        _process = Process.Start(start)!;
    }

    /// <summary>Runs a command to its end.</summary>
    public static async Task RunAsync(string folder, params string[] arguments)
    {
        using OrlopProcess run = new(folder, arguments);
        Task<string> said = run._process.StandardOutput.ReadToEndAsync();
        string complaint = await run._process.StandardError.ReadToEndAsync();
        await run._process.WaitForExitAsync();
        Assert.True(run._process.ExitCode == 0, $"orlop {string.Join(' ', arguments)} ended with {run._process.ExitCode}: {await said}{complaint}");
    }

    /// <summary>Starts serving a boat; the address is the one it prints.</summary>
    public static async Task<(OrlopProcess Process, string Address)> ServeAsync(string folder, string boat, int port = 0)
    {
        OrlopProcess served = new(folder, ["serve", boat, "--port", port.ToString(CultureInfo.InvariantCulture), "--no-open"]);
        TaskCompletionSource<string> address = new(TaskCreationOptions.RunContinuationsAsynchronously);
        served._process.ErrorDataReceived += (_, line) => served.Note(line.Data);
        served._process.OutputDataReceived += (_, line) =>
        {
            served.Note(line.Data);
            if (line.Data is null)
            {
                address.TrySetException(new InvalidOperationException($"orlop serve stopped: {served.Said}"));
            }
            else if (Address().Match(line.Data) is { Success: true } match)
            {
                address.TrySetResult(match.Value);
            }
        };
        served._process.BeginOutputReadLine();
        served._process.BeginErrorReadLine();
        try
        {
            return (served, await address.Task.WaitAsync(Patience));
        }
        catch
        {
            served.Dispose();
            throw;
        }
    }

    /// <summary>What it has printed.</summary>
    public string Said
    {
        get
        {
            lock (_said)
            {
                return _said.ToString();
            }
        }
    }

    /// <summary>Stops it at once, without a word of warning (on Unix: signal 9).</summary>
    public void Kill()
    {
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            Kill();
        }

        _process.Dispose();
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+")]
    private static partial Regex Address();

    private void Note(string? line)
    {
        lock (_said)
        {
            _said.AppendLine(line);
        }
    }
}
