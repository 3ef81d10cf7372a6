using System.Diagnostics;

namespace Orlop.Bench;

/// <summary>The first python3 on the path that has NumPy, run on one thread.</summary>
internal static class Python
{
    /// <summary>The interpreter, or null.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "python.exe" : "python3"))
        .Where(File.Exists)
        .FirstOrDefault(program => Start(program, "-c", "import importlib.util, sys; sys.exit(importlib.util.find_spec('numpy') is None)").ExitCode == 0);

    /// <summary>Runs a script that lies beside the program and gives what it wrote; throws when it fails.</summary>
    public static string Run(string script, params string[] arguments)
    {
        (int exitCode, string output) = Start(Program!, [Path.Combine(AppContext.BaseDirectory, script), .. arguments]);
        return exitCode == 0 ? output : throw new InvalidOperationException($"{script} ended with {exitCode}.");
    }

    private static (int ExitCode, string Output) Start(string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true };
        foreach (string library in new[] { "OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS" })
        {
            start.Environment[library] = "1";
        }

        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
