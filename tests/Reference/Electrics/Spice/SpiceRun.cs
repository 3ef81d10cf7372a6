using System.Diagnostics;
using System.Globalization;

namespace Orlop.Reference.Tests.Electrics.Spice;

/// <summary>What ngspice found: voltages by node number, and the times it took.</summary>
/// <param name="AnalysisS">Its own figure for the analyses alone, all repeats together.</param>
/// <param name="ProcessS">The whole process, from start to exit.</param>
internal sealed record SpiceResult(IReadOnlyDictionary<int, double> NodeV, double AnalysisS, double ProcessS);

/// <summary>Runs decks through ngspice in a directory of their own.</summary>
internal static class SpiceRun
{
    /// <summary>Where ngspice is installed, or null.</summary>
    public static string? Program => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "ngspice.exe" : "ngspice"))
        .FirstOrDefault(File.Exists);

    public static SpiceResult Run(SpiceDeck deck)
    {
        var watch = Stopwatch.StartNew();
        return Run(deck, (file, output) => new SpiceResult(Voltages(file), AnalysisS(output), watch.Elapsed.TotalSeconds));
    }

    /// <summary>A start: times, and the voltages of the deck's nodes at each, in the order it writes them.</summary>
    public static IReadOnlyList<double[]> RunStart(SpiceDeck deck) => Run(deck, (file, _) => File.ReadAllLines(file)
        .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())
        .ToList());

    private static T Run<T>(SpiceDeck deck, Func<string, string, T> read)
    {
        var folder = Directory.CreateTempSubdirectory("network-deck");
        try
        {
            var written = Path.Combine(folder.FullName, "out.raw");
            var input = Path.Combine(folder.FullName, "in.cir");
            File.WriteAllText(input, deck.Text.Replace("$0", written, StringComparison.Ordinal));
            var start = new ProcessStartInfo(Program ?? throw new InvalidOperationException("ngspice is not installed."), ["-b", input]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return File.Exists(written) ? read(written, output)
                : File.Exists(written + ".data") ? read(written + ".data", output)
                : throw new InvalidOperationException($"ngspice found no answer: {errors.Result}\n{output}");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static double AnalysisS(string output)
    {
        const string Label = "Total analysis time (seconds) =";
        var line = output.Split('\n').Last(l => l.StartsWith(Label, StringComparison.Ordinal));
        return double.Parse(line[Label.Length..], CultureInfo.InvariantCulture);
    }

    /// <summary>Reads the last point of an ASCII raw file: a list of variables, then their values, one a line.</summary>
    private static Dictionary<int, double> Voltages(string file)
    {
        var lines = File.ReadAllLines(file);
        var variables = Array.FindLastIndex(lines, l => l.StartsWith("Variables:", StringComparison.Ordinal));
        var values = Array.FindLastIndex(lines, l => l.StartsWith("Values:", StringComparison.Ordinal));
        var voltages = new Dictionary<int, double> { [0] = 0 };
        for (var k = 0; variables + 1 + k < values; k++)
        {
            var name = lines[variables + 1 + k].Split('\t', StringSplitOptions.RemoveEmptyEntries)[1];
            var number = name.StartsWith("v(", StringComparison.Ordinal) ? name[2..^1] : name;
            if (int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var node))
            {
                voltages[node] = double.Parse(lines[values + 1 + k].Split('\t')[^1], CultureInfo.InvariantCulture);
            }
        }

        return voltages;
    }
}
