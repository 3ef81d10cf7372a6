using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>A straight scale from an axis's model unit to the drawing, with ticks at round values of the display unit.</summary>
internal sealed class ChartScale
{
    // A smaller range is widened: the numbers at its ticks, of six decimals, could not be told apart.
    private const double LeastRangeRatio = 1e-4;

    private readonly AxisUnit _unit;
    private readonly double _least;
    private readonly double _most;
    private readonly double _from;
    private readonly double _to;

    internal ChartScale(AxisUnit unit, IEnumerable<double> values, double from, double to, double leastTickPx, bool isRounded)
    {
        double[] shown = [.. values.Where(double.IsFinite).Select(unit.FromModel)];
        (double least, double most) = shown.Length == 0 ? (0, 1) : (shown.Min(), shown.Max());
        if (most - least < LeastRangeRatio * Math.Max(1, Math.Abs(most)))
        {
            (least, most) = (least - Math.Max(0.5, Math.Abs(least) * 0.05), most + Math.Max(0.5, Math.Abs(most) * 0.05));
        }

        Step = RoundSteps.AtLeast((most - least) * leastTickPx / Math.Abs(to - from));
        _unit = unit;
        _least = isRounded ? Math.Floor((least / Step) + 1e-9) * Step : least;
        _most = isRounded ? Math.Ceiling((most / Step) - 1e-9) * Step : most;
        (_from, _to) = (from, to);
    }

    /// <summary>Between ticks, in the display unit.</summary>
    internal double Step { get; }

    internal double At(double modelValue) => OfDisplayed(_unit.FromModel(modelValue));

    internal IEnumerable<(double Number, double At)> Ticks() => RoundSteps.Between(_least, _most, Step).Select(number => (number, OfDisplayed(number)));

    private double OfDisplayed(double number) => _from + ((number - _least) / (_most - _least) * (_to - _from));
}
