using System.Diagnostics;
using System.Globalization;

namespace Orlop.Store.Tests;

/// <summary>Another process that commits to a boat's file and says what was acknowledged.</summary>
internal sealed class WriterProcess : IDisposable
{
    private readonly Process _process;
    private readonly List<(long Number, double MassKg)> _acknowledged = [];
    private readonly ManualResetEventSlim _hasBegun = new();

    public WriterProcess(string path, int count)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "Orlop.Store.Tests.Writer.dll");
        _process = new Process
        {
            StartInfo = new ProcessStartInfo("dotnet", [program, path, count.ToString(CultureInfo.InvariantCulture)])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            },
        };
        _process.OutputDataReceived += (_, line) => Take(line.Data);
        _process.ErrorDataReceived += (_, line) => Errors += line.Data;
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    public string Errors { get; private set; } = "";

    /// <summary>Waits until the first commit was acknowledged.</summary>
    public void WaitForFirst() => Assert.True(_hasBegun.Wait(TimeSpan.FromMinutes(1)), $"The writer acknowledged nothing. {Errors}");

    /// <summary>Kills the process at once (SIGKILL on Unix) and gives what it had acknowledged.</summary>
    public IReadOnlyList<(long Number, double MassKg)> Kill()
    {
        Assert.False(_process.HasExited, $"The writer ended by itself. {Errors}");
        _process.Kill();
        _process.WaitForExit();
        return _acknowledged;
    }

    /// <summary>Waits for the end and gives what was acknowledged.</summary>
    public IReadOnlyList<(long Number, double MassKg)> Finish()
    {
        _process.WaitForExit();
        Assert.True(_process.ExitCode == 0, Errors);
        return _acknowledged;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
        _hasBegun.Dispose();
    }

    private void Take(string? line)
    {
        string[] words = line?.Split(' ') ?? [];
        if (words.Length == 2)
        {
            _acknowledged.Add((long.Parse(words[0], CultureInfo.InvariantCulture), double.Parse(words[1], CultureInfo.InvariantCulture)));
            _hasBegun.Set();
        }
    }
}
