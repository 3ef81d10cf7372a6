using System.Globalization;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Presentation.Tests.Quantities;

/// <summary>Factors: SI Brochure, 9th edition, and NIST SP 811 (2008), appendix B. Wire gauge: NBS Handbook 100.</summary>
public sealed class QuantityTextParseTests
{
    // 7 ft 10 in and four eighths are 94.5 in of 25.4 mm; a stopwatch's 1:02.5 is 62.5 s.
    [Theory]
    [InlineData("7-10-4", "M", 94.5 * 0.0254)]
    [InlineData("-0-3-0+", "M", -3.0625 * 0.0254)]
    [InlineData("0:16.2", "S", 16.2)]
    [InlineData("1:02,5", "S", 62.5)]
    public void Parse_TradeNotation_IsALengthOrATime(string typed, string suffix, double expected) =>
        Assert.Equal(expected, QuantityText.Parse(typed, suffix, DisplayUnits.Metric, CultureInfo.InvariantCulture).Quantity!.Value, 1e-12);

    [Theory]
    [InlineData("7-12-4", "M")]
    [InlineData("0:76", "S")]
    [InlineData("0:16.2", "M")]
    [InlineData("7-10-4", "Kg")]
    public void Parse_TradeNotationOfSomethingElse_IsRefused(string typed, string suffix) =>
        Assert.Null(QuantityText.Parse(typed, suffix, DisplayUnits.Metric, CultureInfo.InvariantCulture).Quantity);

    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    [Theory]
    [InlineData("1.2 m", "M", 1.2)]
    [InlineData("120cm", "M", 1.2)]
    [InlineData("1200 mm", "M", 1.2)]
    [InlineData("3 ft 6", "M", 1.0668)]
    [InlineData("3 ft 6 in", "M", 1.0668)]
    [InlineData("3'6\"", "M", 1.0668)]
    [InlineData("3′ 6″", "M", 1.0668)]
    [InlineData("3’6”", "M", 1.0668)]
    [InlineData("3ft2in", "M", 0.9652)]
    [InlineData("42 in", "M", 1.0668)]
    [InlineData("42 Inches", "M", 1.0668)]
    [InlineData("-3 ft 6 in", "M", -1.0668)]
    [InlineData("-0.4 m", "M", -0.4)]
    [InlineData("5/8 in", "Mm", 15.875)]
    [InlineData("1 1/2 in", "Mm", 38.1)]
    [InlineData("43-3/8 in", "Mm", 1101.725)]
    [InlineData("16", "Mm", 16)]
    [InlineData("80 lb", "Kg", 36.2873896)]
    [InlineData("36 kg", "Kg", 36)]
    [InlineData("5 lb 4 oz", "Kg", 2.3813599425)]
    [InlineData("1.2 t", "Kg", 1200)]
    [InlineData("6 in2", "Cm2", 38.7096)]
    [InlineData("20 m3/h", "M3PerH", 20)]
    [InlineData("12 cfm", "M3PerH", 20.38812954624)]
    [InlineData("5.5 W/m2K", "WPerM2K", 5.5)]
    [InlineData("90 C", "C", 90)]
    [InlineData("90 °C", "C", 90)]
    [InlineData("90 deg C", "C", 90)]
    [InlineData("194 F", "C", 90)]
    [InlineData("-40 F", "C", -40)]
    [InlineData("363.15 K", "C", 90)]
    [InlineData("18 °F", "K", 10)]
    [InlineData("3 mΩ", "Ohm", 0.003)]
    [InlineData("3 m\u2126", "Ohm", 0.003)]
    [InlineData("3 mohm", "Ohm", 0.003)]
    [InlineData("5 mOhm", "Ohm", 0.005)]
    [InlineData("5mOhm", "Ohm", 0.005)]
    [InlineData("5 m\u2126", "Ohm", 0.005)]
    [InlineData("5 milliohm", "Ohm", 0.005)]
    [InlineData("200 µOhm", "Ohm", 0.0002)]
    [InlineData("0.003 ohm", "Ohm", 0.003)]
    [InlineData("3e-3 ohm", "Ohm", 0.003)]
    [InlineData("250 µohm", "Ohm", 0.00025)]
    [InlineData("1.5 kW", "W", 1500)]
    [InlineData("1,500,000 W", "W", 1500000)]
    [InlineData("1,234.5 W", "W", 1234.5)]
    [InlineData("1,5 m", "M", 1.5)]
    [InlineData("0,125 m", "M", 0.125)]
    [InlineData("26,85", "V", 26.85)]
    [InlineData("1 500 W", "W", 1500)]
    [InlineData("2 hp", "W", 1492)]
    [InlineData("30 %", "Fraction", 0.3)]
    [InlineData("30", "Fraction", 0.3)]
    [InlineData("0", "Fraction", 0)]
    [InlineData("520 %", "Ratio", 5.2)]
    [InlineData("5.2x", "Ratio", 5.2)]
    [InlineData("16 mm2", "Mm2", 16)]
    [InlineData("16 mm²", "Mm2", 16)]
    [InlineData("16mm^2", "Mm2", 16)]
    [InlineData("16", "Mm2", 16)]
    [InlineData("1025 kg/m3", "KgPerM3", 1025)]
    [InlineData("0.00002 1/W", "PerW", 0.00002)]
    [InlineData("6 ft-lb", "Nm", 8.1349076897)]
    [InlineData("2 h 30 min", "S", 9000)]
    [InlineData("12000 A2s", "A2S", 12000)]
    [InlineData("10000 uF", "F", 0.01)]
    public void Parse_UnitsAsPeopleWriteThem_GivesTheModelsUnit(string text, string suffix, double expected)
    {
        QuantityReading reading = QuantityText.Parse(text, suffix, DisplayUnits.Metric, English);

        Assert.Null(reading.Refusal);
        Assert.Equal(expected, reading.Quantity!.Value, Math.Abs(expected) * 1e-10);
        Assert.Equal(Knowledge.Exact, reading.Quantity.Known);
        Assert.StartsWith(text, reading.Quantity.Typed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.2 m", "M", 1.2)]
    [InlineData("42 in", "M", 1.0668)]
    [InlineData("3 mΩ", "Ohm", 0.003)]
    [InlineData("80 lb", "Kg", 36.2873896)]
    [InlineData("194 F", "C", 90)]
    public void Parse_ExactFactor_GivesTheNearestDouble(string text, string suffix, double expected) =>
        Assert.Equal(expected, QuantityText.Parse(text, suffix, DisplayUnits.Metric, English).Quantity!.Value);

    [Theory]
    [InlineData("1,5 m", 1.5)]
    [InlineData("1.5 m", 1.5)]
    [InlineData("1,500 m", 1.5)]
    [InlineData("1.234,5 m", 1234.5)]
    [InlineData(",5 m", 0.5)]
    public void Parse_CommaDecimals_AreRead(string text, double expected) =>
        Assert.Equal(expected, QuantityText.Parse(text, "M", DisplayUnits.Metric, German).Quantity!.Value);

    [Theory]
    [InlineData("1.500 m", "de-DE", "'1.500' may mean 1500 or 1,500")]
    [InlineData("1,234 m", "en-US", "'1,234' may mean 1234 or 1.234; write one of them")]
    [InlineData("1,2,3 m", "en-US", "as in 1.5 or 1234.5")]
    [InlineData("1.234,5 m", "en-US", "nothing between the thousands")]
    [InlineData("1,5.2 m", "en-US", "one point or one comma for the decimals")]
    [InlineData("1.2.3 m", "en-US", "one point or one comma for the decimals")]
    [InlineData("1,2,3 m", "de-DE", "as in 1,5 or 1234,5")]
    public void Parse_SeparatorThatCouldMeanTwoThings_IsRefused(string text, string culture, string expected)
    {
        QuantityReading reading = QuantityText.Parse(text, "M", DisplayUnits.Metric, CultureInfo.GetCultureInfo(culture));

        Assert.Null(reading.Quantity);
        Assert.Contains(expected, reading.Refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("about 12 m", Knowledge.Estimated, null)]
    [InlineData("~12 m", Knowledge.Estimated, null)]
    [InlineData("ca. 12 m", Knowledge.Estimated, null)]
    [InlineData("12 m?", Knowledge.Guessed, null)]
    [InlineData("12 m ?", Knowledge.Guessed, null)]
    [InlineData("about 12?", Knowledge.Guessed, null)]
    [InlineData("12 ± 0.2 m", Knowledge.Measured, 0.2)]
    [InlineData("12 m ± 20 cm", Knowledge.Measured, 0.2)]
    [InlineData("12 m +/- 20 cm", Knowledge.Measured, 0.2)]
    [InlineData("12 ± 0.2", Knowledge.Measured, 0.2)]
    [InlineData("12 m ± 5 %", Knowledge.Measured, 0.6)]
    [InlineData("about 12 m ± 1", Knowledge.Estimated, 1.0)]
    public void Parse_Marks_SayHowWellItIsKnown(string text, Knowledge known, double? plusMinus)
    {
        Quantity quantity = QuantityText.Parse(text, "M", DisplayUnits.Metric, English).Quantity!;

        Assert.Equal(12, quantity.Value);
        Assert.Equal(known, quantity.Known);
        Assert.Equal(plusMinus, quantity.PlusMinus);
    }

    [Fact]
    public void Parse_PlusMinusOfATemperature_IsADifference()
    {
        Quantity quantity = QuantityText.Parse("194 ± 9 F", "C", DisplayUnits.Us, English).Quantity!;

        Assert.Equal(90, quantity.Value);
        Assert.Equal(5, quantity.PlusMinus);
    }

    [Theory]
    [InlineData("12", "M", DisplayUnits.Metric, 12, "12 m")]
    [InlineData("12", "M", DisplayUnits.Us, 3.6576, "12 ft")]
    [InlineData("12?", "M", DisplayUnits.Us, 3.6576, "12 ft?")]
    [InlineData("80", "Kg", DisplayUnits.Us, 36.2873896, "80 lb")]
    [InlineData("10", "Mm2", DisplayUnits.Metric, 10, "10 mm²")]
    [InlineData("10", "Mm2", DisplayUnits.Us, 5.2612, "10 AWG")]
    public void Parse_NumberWithoutUnit_IsInTheDisplayUnitAndSaysSo(string text, string suffix, DisplayUnits units, double expected, string typed)
    {
        QuantityReading reading = QuantityText.Parse(text, suffix, units, English);

        Assert.Equal(expected, reading.Quantity!.Value, 1e-4);
        Assert.Equal(typed, reading.Quantity.Typed);
        Assert.Equal($"Taken as {typed}.", reading.Remark);
    }

    [Theory]
    [InlineData("80 lb", "M", "'80 lb' is a mass; this is a length: write for example 1.2 m")]
    [InlineData("10 AWG", "M", "is a conductor's cross-section")]
    [InlineData("16 mm", "Mm2", "'16 mm' is a length")]
    [InlineData("3 Mohm", "Ohm", "'Mohm' is no unit")]
    [InlineData("3 MΩ", "Ohm", "'MΩ' is no unit")]
    [InlineData("3ft2", "M", "is an area")]
    [InlineData("6 in 3 ft", "M", "ft cannot follow in")]
    [InlineData("3 m 6", "M", "'6' has no unit")]
    [InlineData("1/0 m", "M", "divides by zero")]
    [InlineData("10.5 AWG", "Mm2", "is a conductor's cross-section")]
    [InlineData("60 AWG", "Mm2", "AWG")]
    [InlineData("10 AWG ± 1", "Mm2", "takes no ±")]
    [InlineData("0.3", "Fraction", "'0.3' may mean 0.3 % or 30 %")]
    [InlineData("1e-40 m", "M", "too small")]
    [InlineData("1e40 m", "M", "too large")]
    [InlineData("", "M", "Nothing was typed")]
    [InlineData("   ", "M", "Nothing was typed")]
    [InlineData("NaN", "M", "'NaN' is not understood")]
    [InlineData("infinity m", "M", "is not understood")]
    [InlineData("m", "M", "is not understood")]
    [InlineData("12 m 3 bananas", "M", "'bananas' is no unit")]
    [InlineData("10 mm² (16 mm²)", "Mm2", "two different values")]
    public void Parse_WhatItCannotRead_IsRefusedWithWhatIsAllowed(string text, string suffix, string expected)
    {
        QuantityReading reading = QuantityText.Parse(text, suffix, DisplayUnits.Metric, English);

        Assert.Null(reading.Quantity);
        Assert.Contains(expected, reading.Refusal, StringComparison.Ordinal);
        Assert.Contains(Units.ForSuffix(suffix).Examples, reading.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Examples_OfEverySuffix_CanBeTyped()
    {
        foreach (Dimension dimension in Units.BySuffix.Values)
        {
            foreach (string example in dimension.Examples.Split([", ", " or "], StringSplitOptions.None))
            {
                Assert.True(QuantityText.Parse(example, dimension.Suffix, DisplayUnits.Metric, English).Quantity is not null, $"{dimension.Suffix}: {example}");
            }
        }
    }

    [Fact]
    public void Parse_EveryUnit_IsReadBySymbolInItsOwnDimension()
    {
        foreach (Dimension dimension in Units.BySuffix.Values)
        {
            foreach (Unit unit in dimension.Units.Where(unit => unit.Symbol != "short ton"))
            {
                Quantity? quantity = QuantityText.Parse($"7 {unit.Symbol}", dimension.Suffix, DisplayUnits.Metric, English).Quantity;
                Assert.True(quantity is not null && quantity.Value == (double)unit.ToModel(7), $"{dimension.Suffix}: 7 {unit.Symbol}");
            }
        }
    }

    [Theory]
    [InlineData("16 mm2", "16 mm²")]
    [InlineData("12000 A2s", "12000 A²s")]
    [InlineData("1.78e2 V", "1.78e2 V")]
    [InlineData("1.78E3", "1.78E3")]
    public void AsTyped_SquaresAreRaised_PowersOfTenAreLeft(string typed, string shown) => Assert.Equal(shown, QuantityText.AsTyped(typed, CultureInfo.InvariantCulture));
}
