using System.Globalization;

namespace Orlop.Presentation.Quantities;

/// <summary>Writes numbers of one dimension in display units.</summary>
internal sealed class QuantityFormatter(Dimension dimension, DisplayUnits units, CultureInfo culture)
{
    private const double MetrePerInch = 0.0254;
    private const double LeastWhole = 1e-9;

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

    private string Plain(double value)
    {
        UnitDisplay display = dimension.For(units);
        Unit unit = value == 0 ? display.Bare : display.UnitFor(value);
        return WithUnit(Number(unit.FromModel(value), display.SignificantCount), unit);
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

    private string Number(double value, int significantCount)
    {
        if (Math.Abs(value) < LeastWhole || Math.Abs(value) >= 1e15)
        {
            return value == 0 ? "0" : value.ToString("G3", culture);
        }

        int decimals = Math.Clamp(significantCount - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15);
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("0." + new string('#', decimals), culture);
    }
}
