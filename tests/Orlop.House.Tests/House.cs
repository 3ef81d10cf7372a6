using System.Reflection;
using System.Xml.Linq;

namespace Orlop.House.Tests;

/// <summary>The repository as files and assemblies.</summary>
internal static class House
{
    public static string Root { get; } = FindRoot();

    public static IReadOnlyList<string> Rooms { get; } =
        ["Orlop.Numerics", "Orlop.Boat", "Orlop.Electrics", "Orlop.Hull", "Orlop.Store", "Orlop.Review", "Orlop.Presentation", "Orlop.Drawings", "Orlop.Work", "Orlop.App"];

    public static Assembly AssemblyOf(string room) => Assembly.Load(room == "Orlop.App" ? "orlop" : room);

    /// <summary>The rooms a room's project file refers to.</summary>
    public static IReadOnlyList<string> ReferencesOf(string room) =>
        [.. XDocument.Load(Path.Combine(Root, "src", room, $"{room}.csproj")).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/')))];

    /// <summary>Source files below a folder, without what is generated.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
            .Where(file => endings.Any(ending => file.EndsWith(ending, StringComparison.Ordinal)))
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "artifacts" or "node_modules"));

    public static string Relative(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/');

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Orlop.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("Orlop.slnx was not found above the test's folder.");
    }
}
