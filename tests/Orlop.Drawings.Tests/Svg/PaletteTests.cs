using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Orlop.Drawings.Svg;
using Xunit;

namespace Orlop.Drawings.Tests.Svg;

public sealed partial class PaletteTests
{
    private const double LeastOfText = 4.5; // WCAG 2.2, 1.4.3
    private const double LeastOfLines = 3; // WCAG 2.2, 1.4.11

    private static readonly (string Name, double[] Colour)[] Grounds =
    [
        ("sheet", Rgb(Palette.Sheet)), ("gear", Rgb(Palette.Gear)), ("draft fill", Rgb(Palette.DraftFill)), ("band", Rgb(Palette.Band)),
        ("water", [.. Rgb(Palette.Water).Zip(Rgb(Palette.Sheet), (water, sheet) => (Palette.WaterOpacityFraction * water) + ((1 - Palette.WaterOpacityFraction) * sheet))]),
    ];

    [Theory]
    [InlineData("#000000", "#ffffff", 21)] // WCAG 2.2, definition of contrast ratio: from 1 to 21
    [InlineData("#777777", "#ffffff", 4.48)] // published by many as just short of 4.5; from memory
    public void Contrast_OfKnownPairs_IsThePublishedOne(string one, string other, double expected) =>
        Assert.Equal(expected, Contrast(Rgb(one), Rgb(other)), 0.01);

    [Theory]
    [InlineData(nameof(Palette.Ink), Palette.Ink)]
    [InlineData(nameof(Palette.Soft), Palette.Soft)]
    [InlineData(nameof(Palette.Draft), Palette.Draft)]
    [InlineData(nameof(Palette.GoneText), Palette.GoneText)]
    [InlineData(nameof(Palette.Fails), Palette.Fails)]
    public void Text_OnEveryGround_CanBeRead(string name, string colour) => AssertContrast(name, colour, LeastOfText);

    [Theory]
    [InlineData(nameof(Palette.Ink), Palette.Ink)]
    [InlineData(nameof(Palette.Soft), Palette.Soft)]
    [InlineData(nameof(Palette.Draft), Palette.Draft)]
    [InlineData(nameof(Palette.Gone), Palette.Gone)]
    [InlineData(nameof(Palette.Way), Palette.Way)]
    [InlineData(nameof(Palette.WaterLine), Palette.WaterLine)]
    [InlineData(nameof(Palette.Fails), Palette.Fails)]
    public void MeaningfulLine_OnEveryGround_CanBeSeen(string name, string colour) => AssertContrast(name, colour, LeastOfLines);

    [Fact]
    public void StyleSheetOfThePages_HasTheSameColours()
    {
        string css = File.ReadAllText(Path.Combine(SampleBoats.Root(), "src", "Orlop.App", "wwwroot", "orlop.css"));
        Dictionary<string, string> variables = Variable().Matches(css).ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);

        foreach (FieldInfo colour in typeof(Palette).GetFields(BindingFlags.Static | BindingFlags.NonPublic).Where(field => field.FieldType == typeof(string)))
        {
            string name = Capital().Replace(colour.Name, "-$1").ToLowerInvariant().TrimStart('-');
            Assert.Equal((name, (string)colour.GetRawConstantValue()!), (name, variables.GetValueOrDefault(name, "missing")));
        }
    }

    // A drawing stands within the page: a rule of the page for a name that drawings use would reach into it, and take out of sight what they mark by it.
    [Fact]
    public void StyleSheetOfThePages_HidesNothingOfADrawing()
    {
        string css = File.ReadAllText(Path.Combine(SampleBoats.Root(), "src", "Orlop.App", "wwwroot", "orlop.css"));
        string drawing = Orlop.Drawings.Boats.BoatDrawing.All(SampleBoats.Small, null, new Orlop.Drawings.Boats.BoatDrawingOptions());
        string[] names = [.. DrawnName().Matches(drawing).Select(match => match.Groups[1].Value).Distinct()];

        Assert.Contains("gone", names);
        Assert.All(names, name => Assert.DoesNotMatch($@"(^|[\s,}}])\.{name}\s*\{{[^}}]*display:\s*none", css));
    }

    private static void AssertContrast(string name, string colour, double least) => Assert.All(Grounds, ground =>
    {
        double contrast = Contrast(Rgb(colour), ground.Colour);
        Assert.True(contrast >= least, string.Create(CultureInfo.InvariantCulture, $"{name} on {ground.Name}: {contrast:0.00} : 1, at least {least} : 1."));
    });

    /// <summary>WCAG 2.2, definitions of relative luminance and contrast ratio.</summary>
    private static double Contrast(double[] one, double[] other)
    {
        (double first, double second) = (Luminance(one), Luminance(other));
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    private static double Luminance(double[] colour)
    {
        double[] linear = [.. colour.Select(part => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    private static double[] Rgb(string hex) => [.. new[] { 1, 3, 5 }.Select(at => int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)];

    [GeneratedRegex(@"\.drawing (?:\.[a-z]+ )?(?:text)?(?:\.[a-z]+)*\.([a-z-]+)[{,]")]
    private static partial Regex DrawnName();

    [GeneratedRegex("--([a-z-]+): (#[0-9a-f]{6});")]
    private static partial Regex Variable();

    [GeneratedRegex("([A-Z])")]
    private static partial Regex Capital();
}
