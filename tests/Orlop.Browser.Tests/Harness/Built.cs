using System.Diagnostics;
using System.Reflection;

namespace Orlop.Browser.Tests.Harness;

/// <summary>Where the build put what the tests run.</summary>
internal static class Built
{
    // Set where the program that is handed out is to be tested: it is compiled ahead, and starts and reviews in half the time.
    private const string ProgramVariable = "ORLOP_TEST_PROGRAM";

    /// <summary>A run of the program: the one that is named, else as built.</summary>
    public static ProcessStartInfo Run(IEnumerable<string> arguments) =>
        Environment.GetEnvironmentVariable(ProgramVariable) is { Length: > 0 } program ? new(program, arguments) : new("dotnet", [Named("OrlopProgram"), .. arguments]);

    /// <summary>A boat file of the examples.</summary>
    public static string Example(string file) => Path.Combine(Named("Examples"), file);

    private static string Named(string key) => typeof(Built).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == key).Value!;
}
