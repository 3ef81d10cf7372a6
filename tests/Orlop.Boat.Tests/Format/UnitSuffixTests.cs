using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class UnitSuffixTests
{
    [Theory]
    [InlineData("LengthM", "m")]
    [InlineData("AreaMm2", "mm2")]
    [InlineData("StudMm", "mm")]
    [InlineData("WaterDensityKgPerM3", "kg/m3")]
    [InlineData("MassKgPerM", "kg/m")]
    [InlineData("OhmicLossPerW", "1/W")]
    [InlineData("InternalResistanceOhm", "ohm")]
    [InlineData("XM", "m")]
    public void Of_ANumbersName_IsItsUnit(string name, string unit) => Assert.Equal(unit, UnitSuffix.Of(name)!.Text);

    [Theory]
    [InlineData("M")]
    [InlineData("Value")]
    public void Of_ANameWithoutUnit_IsNull(string name) => Assert.Null(UnitSuffix.Of(name));

    [Fact]
    public void All_StandsInTheConventions()
    {
        string[] rows = [.. File.ReadLines(Path.Combine(Repository.Root, "docs", "conventions.md"))
            .SkipWhile(line => !line.StartsWith("| suffix", StringComparison.Ordinal)).Skip(2).TakeWhile(line => line.StartsWith('|'))];

        Assert.Equal(
            UnitSuffix.All.OrderBy(unit => unit.Suffix, StringComparer.Ordinal).Select(unit => $"| {unit.Suffix} | {(unit.Text.Length > 0 ? unit.Text : "none")} | {unit.Words} |"),
            rows);
    }
}
