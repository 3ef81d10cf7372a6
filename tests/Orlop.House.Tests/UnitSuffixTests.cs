using System.Reflection;
using System.Text.RegularExpressions;
using Xunit;

namespace Orlop.House.Tests;

/// <summary>Every public number says its unit in its name; the closed list stands in docs/conventions.md.</summary>
public sealed partial class UnitSuffixTests
{
    private static readonly string[] CheckedRooms = ["Orlop.Boat", "Orlop.Electrics", "Orlop.Hull", "Orlop.Review"];

    private static readonly string[] Suffixes = SuffixesInDocs();

    [Fact]
    public void Docs_ListSuffixes() => Assert.True(Suffixes.Length > 10, "docs/conventions.md has no table of unit suffixes");

    [Fact]
    public void PublicDoubles_EndInASuffix()
    {
        var bare = CheckedRooms.SelectMany(room => House.AssemblyOf(room).GetExportedTypes())
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
                .Where(property => IsNumber(property.PropertyType) && !IsExempt(property))
                .Select(property => $"{type.FullName}.{property.Name}"))
            .Where(name => !Suffixes.Any(suffix => name.EndsWith(suffix, StringComparison.Ordinal)))
            .ToList();
        Assert.True(bare.Count == 0, "numbers without a unit in their name (see docs/conventions.md):\n" + string.Join('\n', bare));
    }

    private static bool IsNumber(Type type) => (Nullable.GetUnderlyingType(type) ?? type) == typeof(double) || type.Name == "Quantity";

    // A value whose unit stands in a field beside it.
    private static bool IsExempt(PropertyInfo property) =>
        property.GetCustomAttributes().Any(attribute => attribute.GetType().Name == "UnitByKindAttribute")
        || property.DeclaringType?.Name is "Quantity" or "Amount" or "Limit" or "OwnLimit" or "AllowedAttribute"
        || (property.Name is "PlusMinus" or "Least" or "Most" or "Value");

    private static string[] SuffixesInDocs() =>
        [.. SuffixRow().Matches(File.ReadAllText(Path.Combine(House.Root, "docs", "conventions.md"))).Select(match => match.Groups[1].Value)];

    [GeneratedRegex(@"^\| ([A-Z][A-Za-z0-9]*) \| ", RegexOptions.Multiline)]
    private static partial Regex SuffixRow();
}
