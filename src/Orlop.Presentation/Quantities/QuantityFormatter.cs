using System.Globalization;

namespace Orlop.Presentation.Quantities;

/// <summary>Writes numbers of one dimension in display units.</summary>
internal sealed class QuantityFormatter(Dimension dimension, DisplayUnits units, CultureInfo culture)
{
    private const double MetrePerInch = 0.0254;
    private const double LeastWhole = 1e-9;

    // A number of more digits was worked out and not typed.
    private const int MostTypedCount = 7;
    private const double SameFraction = 1e-9;

    internal string Format(double value)
    {
        if (!double.IsFinite(value))
        {
            return QuantityText.Unknown;
        }

        if (dimension.ShowsFeetAndInches(units))
        {
            return FeetAndInches(value);
        }

        if (dimension.TakesWireGauge && units == DisplayUnits.Us && WireGauge.NumberOf(value) is { } number)
        {
            return $"{WireGauge.Name(number)} {WireGauge.Symbol} ({Plain(value)})";
        }

        return Plain(value);
    }

    internal string Format(double value, double plusMinus)
    {
        if (!double.IsFinite(value) || !double.IsFinite(plusMinus))
        {
            return QuantityText.Unknown;
        }

        UnitDisplay display = dimension.For(units);
        Unit unit = value == 0 ? display.Bare : display.UnitFor(value);
        return WithUnit($"{Number(unit.FromModel(value), display.SignificantCount)} ± {Number(unit.DifferenceFromModel(plusMinus), 2)}", unit);
    }

    /// <summary>With as many digits as it has, where these are no more than someone types; else rounded as usual.</summary>
    internal string Exact(double value, double? plusMinus)
    {
        if (!double.IsFinite(value) || (plusMinus is { } deviation && !double.IsFinite(deviation)))
        {
            return QuantityText.Unknown;
        }

        UnitDisplay display = dimension.For(units);
        Unit unit = value == 0 ? display.Bare : display.UnitFor(value);
        double shown = unit.FromModel(value);
        bool isRounded = dimension.ShowsFeetAndInches(units) || (dimension.TakesWireGauge && units == DisplayUnits.Us && WireGauge.NumberOf(value) is not null);
        int? digits = isRounded ? null : Enumerable.Range(display.SignificantCount, MostTypedCount - display.SignificantCount + 1)
            .Select(count => (int?)count).FirstOrDefault(count => Math.Abs(Rounded(shown, count!.Value) - shown) <= SameFraction * Math.Abs(shown));
        return digits is not { } count ? plusMinus is { } spread ? Format(value, spread) : Format(value)
            : WithUnit(plusMinus is { } about ? $"{Number(shown, count)} ± {Number(unit.DifferenceFromModel(about), 2)}" : Number(shown, count), unit);
    }

    private string Plain(double value)
    {
        UnitDisplay display = dimension.For(units);
        Unit unit = value == 0 ? display.Bare : display.UnitFor(value);
        return WithUnit(Number(unit.FromModel(value), display.SignificantCount, dimension.IsShare), unit);
    }

    private static string WithUnit(string number, Unit unit) =>
        unit.Symbol.Length == 0 ? number : unit.Symbol == "°" ? number + unit.Symbol : $"{number} {unit.Symbol}";

    private string FeetAndInches(double metres)
    {
        double inches = Math.Round(Math.Abs(metres) / MetrePerInch, 1, MidpointRounding.AwayFromZero);
        double feet = Math.Floor(inches / 12);
        if (feet == 0)
        {
            return $"{Number(metres / MetrePerInch, 3)} in";
        }

        string sign = metres < 0 ? culture.NumberFormat.NegativeSign : "";
        double rest = Math.Round(inches - (feet * 12), 1, MidpointRounding.AwayFromZero);
        return rest == 0 ? $"{sign}{Number(feet, 1)} ft" : $"{sign}{Number(feet, 1)} ft {Number(rest, 3)} in";
    }

    private static int DecimalsOf(double value, int significantCount) => Math.Clamp(significantCount - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15);

    private static double Rounded(double value, int significantCount) => value == 0 ? 0 : Math.Round(value, DecimalsOf(value, significantCount), MidpointRounding.AwayFromZero);

    private string Number(double value, int significantCount, bool isPercent = false)
    {
        if (Math.Abs(value) < LeastWhole || Math.Abs(value) >= 1e15)
        {
            return value == 0 ? "0" : value.ToString("G3", culture);
        }

        int decimals = DecimalsOf(value, significantCount);
        decimals = isPercent ? NearWhole.Decimals(value, decimals) : decimals;
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("0." + new string('#', decimals), culture);
    }
}
