using System.Reflection;

namespace Orlop.Browser.Tests.Harness;

/// <summary>Where the build put what the tests run.</summary>
internal static class Built
{
    /// <summary>The program, as built.</summary>
    public static string Program => Named("OrlopProgram");

    /// <summary>A boat file of the examples.</summary>
    public static string Example(string file) => Path.Combine(Named("Examples"), file);

    private static string Named(string key) => typeof(Built).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == key).Value!;
}
