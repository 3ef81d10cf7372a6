using System.Globalization;
using CsCheck;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Presentation.Tests.Quantities;

public sealed class QuantityTextFormatTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");
    private static readonly string[] Suffixes = [.. Units.BySuffix.Keys.Order(StringComparer.Ordinal)];
    private static readonly string[] LengthUnits = ["m", "cm", "in", "ft", "mm"];
    private static readonly Gen<string> Suffix = Gen.Int[0, Suffixes.Length - 1].Select(index => Suffixes[index]);
    private static readonly Gen<string> LengthUnit = Gen.Int[0, LengthUnits.Length - 1].Select(index => LengthUnits[index]);

    [Theory]
    [InlineData(0.06594, "M", DisplayUnits.Metric, "0.066\u00A0m")]
    [InlineData(-0.08568, "M", DisplayUnits.Metric, "-0.086\u00A0m")]
    [InlineData(1.2345, "M", DisplayUnits.Metric, "1.23\u00A0m")]
    [InlineData(0.00042, "M", DisplayUnits.Metric, "0.0004\u00A0m")]
    [InlineData(0, "M", DisplayUnits.Metric, "0\u00A0m")]
    [InlineData(0.06594, "M", DisplayUnits.Us, "2.6\u00A0in")]
    [InlineData(1.4499, "Deg", DisplayUnits.Metric, "1.4°")]
    [InlineData(0.031, "Deg", DisplayUnits.Metric, "0.03°")]
    [InlineData(0.06594, "V", DisplayUnits.Metric, "0.0659\u00A0V")]
    [InlineData(double.NaN, "M", DisplayUnits.Metric, "unknown")]
    [InlineData(double.PositiveInfinity, "Deg", DisplayUnits.Metric, "unknown")]
    public void Result_HasNoMoreDigitsThanItMeans(double value, string suffix, DisplayUnits units, string shown) =>
        Assert.Equal(shown, QuantityText.Result(value, suffix, units, English));

    [Theory]
    [InlineData(1.0668, "M", DisplayUnits.Metric, "1.067 m")]
    [InlineData(1.0668, "M", DisplayUnits.Us, "3 ft 6 in")]
    [InlineData(-1.0668, "M", DisplayUnits.Us, "-3 ft 6 in")]
    [InlineData(0.9143, "M", DisplayUnits.Us, "3 ft")] // 2 ft 11.996 in carries
    [InlineData(0.1, "M", DisplayUnits.Us, "3.94 in")]
    [InlineData(0, "M", DisplayUnits.Us, "0 in")]
    [InlineData(5.2612, "Mm2", DisplayUnits.Us, "10 AWG (5.26 mm²)")]
    [InlineData(5.2612, "Mm2", DisplayUnits.Metric, "5.26 mm²")]
    [InlineData(16, "Mm2", DisplayUnits.Us, "16 mm²")]
    [InlineData(53.4751, "Mm2", DisplayUnits.Us, "1/0 AWG (53.5 mm²)")]
    [InlineData(0.003, "Ohm", DisplayUnits.Metric, "3 mΩ")]
    [InlineData(0.00032, "Ohm", DisplayUnits.Metric, "320 µΩ")]
    [InlineData(0, "Ohm", DisplayUnits.Metric, "0 Ω")]
    [InlineData(1500, "W", DisplayUnits.Metric, "1500 W")]
    [InlineData(15_000, "W", DisplayUnits.Metric, "15 kW")]
    [InlineData(12_345, "Kg", DisplayUnits.Metric, "12345 kg")]
    [InlineData(36.2873896, "Kg", DisplayUnits.Us, "80 lb")]
    [InlineData(90, "C", DisplayUnits.Us, "194 °F")]
    [InlineData(0.3, "Fraction", DisplayUnits.Metric, "30 %")]
    [InlineData(1.00333, "Fraction", DisplayUnits.Metric, "100.3 %")]
    [InlineData(0.99996, "Fraction", DisplayUnits.Metric, "99.996 %")]
    [InlineData(1, "Fraction", DisplayUnits.Metric, "100 %")]
    [InlineData(5.2, "Ratio", DisplayUnits.Metric, "5.2")]
    [InlineData(12, "Deg", DisplayUnits.Metric, "12°")]
    [InlineData(-0.00000001, "V", DisplayUnits.Metric, "-0.00000001 V")]
    [InlineData(double.NaN, "V", DisplayUnits.Metric, "unknown")]
    [InlineData(double.PositiveInfinity, "V", DisplayUnits.Metric, "unknown")]
    public void Format_Value_IsInTheReadersUnits(double value, string suffix, DisplayUnits units, string expected) =>
        Assert.Equal(expected, QuantityText.Format(value, suffix, units, English));

    [Fact]
    public void Format_CommaDecimalCulture_UsesTheComma()
    {
        Assert.Equal("1,067 m", QuantityText.Format(1.0668, "M", DisplayUnits.Metric, German));
        Assert.Equal("12,3 ± 0,2 m", QuantityText.Format(new Quantity(12.3, Knowledge.Measured, 0.2), "M", DisplayUnits.Metric, German));
    }

    [Fact]
    public void Format_TypedText_IsShownBack()
    {
        Quantity typed = QuantityText.Parse("3 ft 6", "M", DisplayUnits.Metric, English).Quantity!;

        Assert.Equal("3 ft 6", QuantityText.Format(typed, "M", DisplayUnits.Metric, English));
    }

    [Fact]
    public void Format_TypedTextThatTheReaderWouldMisread_IsFormattedAnew()
    {
        Quantity typed = QuantityText.Parse("1,500 m", "M", DisplayUnits.Metric, German).Quantity!;

        Assert.Equal("1,500 m", QuantityText.Format(typed, "M", DisplayUnits.Metric, German));
        Assert.Equal("1.5 m", QuantityText.Format(typed, "M", DisplayUnits.Metric, English));
    }

    [Fact]
    public void Format_TypedTextThatNoLongerFitsTheValue_IsNotShown() =>
        Assert.Equal("2 m", QuantityText.Format(new Quantity(2, Typed: "1 m"), "M", DisplayUnits.Metric, English));

    [Fact]
    public void Format_Missing_IsUnknown() => Assert.Equal("unknown", QuantityText.Format(null, "M", DisplayUnits.Metric, English));

    [Fact]
    public void BySuffix_EverySuffixOfTheFiles_IsInTheTable() =>
        Assert.Empty(Orlop.Boat.Format.UnitSuffix.All.Select(unit => unit.Suffix).Except([.. Units.BySuffix.Keys, "Year"])); // a year has no unit to choose

    [Fact]
    public void ParseOfFormat_AnyFiniteValue_ComesBackWithinTheDigitsShown() =>
        Gen.Select(Suffix, Gen.Double[-50_000, 50_000], Gen.Enum<DisplayUnits>(), Gen.Bool)
            .Sample((suffix, value, units, isGerman) =>
            {
                value = Math.Abs(value) < 1e-6 ? 0 : suffix is "Mm2" ? Math.Abs(value) : value;
                CultureInfo culture = isGerman ? German : English;
                string text = QuantityText.Format(value, suffix, units, culture);
                QuantityReading reading = QuantityText.Parse(text, suffix, units, culture);
                double allowed = Math.Max(Math.Abs(value) * 0.0051, suffix == "C" ? 0.3 : suffix == "M" ? 0.0013 : 0);
                return reading.Quantity is { } read && Math.Abs(read.Value - value) <= allowed;
            }, iter: 20_000);

    [Fact]
    public void FormatOfParse_TypedDecimal_IsShownBackAndReadAgainTheSame() =>
        Gen.Select(Gen.Int[0, 99_999], Gen.Int[0, 3], LengthUnit).Sample((digits, decimals, unit) =>
        {
            string text = $"{(digits / (decimal)Math.Pow(10, decimals)).ToString(German)} {unit}";
            Quantity quantity = QuantityText.Parse(text, "M", DisplayUnits.Us, German).Quantity!;
            return QuantityText.Format(quantity, "M", DisplayUnits.Us, German) == text
                && QuantityText.Parse(text, "M", DisplayUnits.Metric, German).Quantity == quantity;
        });

    [Fact]
    public void Parse_AnyText_EndsInAFiniteQuantityOrARefusal() =>
        Gen.Select(Gen.String[Gen.Char["0123456789.,/'\"±~?()% -+eEmMftinkgAWΩ²°CF"], 0, 24], Suffix)
            .Sample((text, suffix) =>
            {
                QuantityReading reading = QuantityText.Parse(text, suffix, DisplayUnits.Us, English);
                return reading.Quantity is { } quantity ? double.IsFinite(quantity.Value) && reading.Refusal is null : reading.Refusal is { Length: > 0 };
            }, iter: 50_000);

    [Theory]
    [InlineData("V", "12,8 V", "12.8 V", "12,8 V")]
    [InlineData("V", "26.8 ± 0.03 V", "26.8 ± 0.03 V", "26,8 ± 0,03 V")]
    [InlineData("V", "about 12,8 V", "about 12.8 V", "about 12,8 V")]
    [InlineData("Mm2", "16 mm2", "16 mm²", "16 mm²")]
    [InlineData("Mm2", "2,5 mm^2", "2.5 mm²", "2,5 mm²")]
    [InlineData("A2S", "12000 A2s", "12000 A²s", "12000 A²s")]
    [InlineData("M", "3 ft 6", "3 ft 6", "3 ft 6")]
    [InlineData("Mm2", "2/0 AWG", "2/0 AWG", "2/0 AWG")]
    public void Typed_IsShownWithOneDecimalMark(string suffix, string typed, string inEnglish, string inGerman)
    {
        Assert.Equal(inEnglish, QuantityText.Format(QuantityText.Parse(typed, suffix, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")).Quantity, suffix, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")));
        Assert.Equal(inGerman, QuantityText.Format(QuantityText.Parse(typed, suffix, DisplayUnits.Metric, German).Quantity, suffix, DisplayUnits.Metric, German));
    }

    [Fact]
    public void Remark_OfABareNumber_HasTheSameMark() =>
        Assert.Equal("Taken as 150.5 A.", QuantityText.Parse("150,5", "A", DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")).Remark);
}
