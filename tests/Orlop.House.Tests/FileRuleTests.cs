using System.Text.RegularExpressions;
using Xunit;

namespace Orlop.House.Tests;

/// <summary>Rules a reader of the code relies on, read from the files themselves.</summary>
public sealed partial class FileRuleTests
{
    private const int MostLines = 400;

    [Fact]
    public void Files_AreShort()
    {
        var tooLong = House.Files("src", ".cs", ".razor").Concat(House.Files("tests", ".cs"))
            .Select(file => (File: House.Relative(file), Lines: File.ReadLines(file).Count()))
            .Where(file => file.Lines > MostLines)
            .ToList();
        Assert.True(tooLong.Count == 0, $"over {MostLines} lines, split them: {string.Join(", ", tooLong)}");
    }

    [Fact]
    public void Types_HaveNoEmptyNames()
    {
        var empty = House.Rooms.SelectMany(room => House.AssemblyOf(room).GetTypes())
            .Where(type => EmptyName().IsMatch(type.Name) && type.Namespace?.StartsWith("Orlop", StringComparison.Ordinal) == true)
            .Select(type => type.FullName);
        Assert.Empty(empty);
    }

    [Fact]
    public void Source_HasNoUnfinishedMarksOrRegions()
    {
        var marks = House.Files("src", ".cs", ".razor", ".js", ".css")
            .Where(file => Unfinished().IsMatch(File.ReadAllText(file)))
            .Select(House.Relative);
        Assert.Empty(marks);
    }

    [Fact]
    public void Source_AsksNoLocalClock()
    {
        var clocks = House.Files("src", ".cs", ".razor")
            .Where(file => LocalClock().IsMatch(File.ReadAllText(file)))
            .Select(House.Relative);
        Assert.True(!clocks.Any(), $"use TimeProvider instead of the clock in: {string.Join(", ", clocks)}");
    }

    [Fact]
    public void Pages_AskNothingFromOutside()
    {
        var outside = House.Files("src/Orlop.App", ".razor", ".css", ".js")
            .Where(file => OutsideAddress().IsMatch(File.ReadAllText(file)))
            .Select(House.Relative);
        Assert.Empty(outside);
    }

    [Fact]
    public void Texts_NeverCallAnythingSafe()
    {
        var promises = House.Files("src", ".cs", ".razor", ".json")
            .SelectMany(file => File.ReadLines(file).Select(line => (File: House.Relative(file), Line: line)))
            .Where(line => Promise().IsMatch(line.Line) && !line.Line.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .ToList();
        Assert.True(promises.Count == 0, $"the tool never says safe: {string.Join("; ", promises)}");
    }

    [Fact]
    public void EnginePages_Exist()
    {
        foreach (string page in new[] { "network", "conductors", "protection", "isolation", "diagnosis", "heat", "hull", "review" })
        {
            Assert.True(File.Exists(Path.Combine(House.Root, "docs", "engines", $"{page}.md")), $"docs/engines/{page}.md is missing");
        }
    }

    [Fact]
    public void Docs_LinkOnlyToWhatExists()
    {
        var broken = House.Files("docs", ".md").Append(Path.Combine(House.Root, "README.md")).Append(Path.Combine(House.Root, "CONTRIBUTING.md"))
            .SelectMany(file => Link().Matches(File.ReadAllText(file)).Select(match => (File: file, Target: match.Groups[1].Value)))
            .Where(link => !File.Exists(Resolve(link)) && !Directory.Exists(Resolve(link)))
            .Select(link => $"{House.Relative(link.File)} -> {link.Target}");
        Assert.Empty(broken);
    }

    private static string Resolve((string File, string Target) link) => Path.Combine(Path.GetDirectoryName(link.File)!, link.Target.Split('#')[0]);

    [GeneratedRegex("(Manager|Helper|Helpers|Util|Utils|Utilities)$")]
    private static partial Regex EmptyName();

    [GeneratedRegex(@"NotImplementedException|(//|/\*|@\*) *(TODO|FIXME|HACK)|#region")]
    private static partial Regex Unfinished();

    [GeneratedRegex(@"DateTime(Offset)?\.(Now|UtcNow|Today)|new Random\(\)")]
    private static partial Regex LocalClock();

    [GeneratedRegex(@"(src|href|url|import)\s*[=(]\s*[""']?https?://(?!www\.w3\.org)", RegexOptions.IgnoreCase)]
    private static partial Regex OutsideAddress();

    [GeneratedRegex(@"\b(is|are|be|now) safe\b|\bsafely\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex(@"\]\((?!https?:|#|mailto:)([^)\s]+)\)")]
    private static partial Regex Link();
}
