using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using Orlop.Hull.Floating;

namespace Orlop.Bench.Hulls;

/// <summary>What the same method in NumPy found, and how long it took.</summary>
internal sealed record NumpyResult(double EquilibriumMs, double CurveMs, double DraughtM, double TrimDeg, double[] LeversM, string Numpy);

/// <summary>Runs hull.py, on one thread, with the first python3 on the path that has NumPy.</summary>
internal static class NumpyHull
{
    private static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web);

    /// <summary>The interpreter, or null.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "python.exe" : "python3"))
        .Where(File.Exists)
        .FirstOrDefault(program => Start(program, "-c", "import importlib.util, sys; sys.exit(importlib.util.find_spec('numpy') is None)").ExitCode == 0);

    public static NumpyResult Run(FloatingInput boat, int repeatCount)
    {
        var folder = Directory.CreateTempSubdirectory("hull-numpy");
        try
        {
            var (corners, triangles) = (Path.Combine(folder.FullName, "corners"), Path.Combine(folder.FullName, "triangles"));
            File.WriteAllBytes(corners, MemoryMarshal.AsBytes(boat.Buoyancy[0].Corners.AsSpan()));
            File.WriteAllBytes(triangles, MemoryMarshal.AsBytes(boat.Buoyancy[0].Triangles.AsSpan()));
            var (exitCode, output) = Start(Program!, Path.Combine(AppContext.BaseDirectory, "hull.py"), corners, triangles, Text(boat.MassKg), Text(boat.CentreOfGravity.XM), Text(boat.CentreOfGravity.ZM),
                Text(boat.WaterKgPerM3), repeatCount.ToString(CultureInfo.InvariantCulture));
            return exitCode == 0 ? JsonSerializer.Deserialize<NumpyResult>(output, Names)! : throw new InvalidOperationException($"hull.py ended with {exitCode}.");
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
    }

    private static (int ExitCode, string Output) Start(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true };
        foreach (var library in new[] { "OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS" })
        {
            start.Environment[library] = "1";
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
