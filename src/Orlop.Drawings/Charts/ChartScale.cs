using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>A scale from an axis's model unit to the drawing, straight or by powers of ten, with ticks at round values of the display unit.</summary>
internal sealed class ChartScale
{
    // A smaller range is widened: the numbers at its ticks, of six decimals, could not be told apart.
    private const double LeastRangeRatio = 1e-4;
    private const double FewDecades = 2.5;

    private readonly AxisUnit _unit;
    private readonly bool _isByPowers;
    private readonly double _least;
    private readonly double _most;
    private readonly double _from;
    private readonly double _to;

    /// <param name="values">What it has to hold, in the model's unit; on a scale by powers of ten those above 0.</param>
    /// <param name="from">Where the least stands on the drawing.</param>
    /// <param name="to">Where the most stands.</param>
    /// <param name="leastTickPx">Room between ticks.</param>
    /// <param name="isRounded">The ends are widened to round values.</param>
    /// <param name="isByPowers">Equal steps are equal ratios.</param>
    internal ChartScale(AxisUnit unit, IEnumerable<double> values, double from, double to, double leastTickPx, bool isRounded, bool isByPowers = false)
    {
        (_unit, _isByPowers, _from, _to) = (unit, isByPowers, from, to);
        double[] shown = [.. values.Where(double.IsFinite).Select(unit.FromModel).Where(value => !isByPowers || value > 0)];
        (double least, double most) = shown.Length == 0 ? (isByPowers ? 1 : 0, 1) : (shown.Min(), shown.Max());
        if (isByPowers)
        {
            (_least, _most) = most > least ? (least, most) : (least / 2, most * 2);
            return;
        }

        if (most - least < LeastRangeRatio * Math.Max(1, Math.Abs(most)))
        {
            (least, most) = (least - Math.Max(0.5, Math.Abs(least) * 0.05), most + Math.Max(0.5, Math.Abs(most) * 0.05));
        }

        Step = RoundSteps.AtLeast((most - least) * leastTickPx / Math.Abs(to - from));
        _least = isRounded ? Math.Floor((least / Step) + 1e-9) * Step : least;
        _most = isRounded ? Math.Ceiling((most / Step) - 1e-9) * Step : most;
    }

    /// <summary>Between ticks, in the display unit; 0 on a scale by powers of ten.</summary>
    internal double Step { get; }

    internal double At(double modelValue) => OfDisplayed(_unit.FromModel(modelValue));

    internal IEnumerable<(double Number, double At)> Ticks() =>
        (_isByPowers ? PowerTicks() : RoundSteps.Between(_least, _most, Step)).Select(number => (number, OfDisplayed(number)));

    // Every power of ten; where they are few, twice and five times each as well.
    private IEnumerable<double> PowerTicks()
    {
        double[] factors = Math.Log10(_most / _least) <= FewDecades ? [1, 2, 5] : [1];
        return
            from exponent in Enumerable.Range((int)Math.Floor(Math.Log10(_least)), (int)Math.Ceiling(Math.Log10(_most / _least)) + 2)
            from factor in factors
            let number = Math.Round(factor * Math.Pow(10, exponent), 10)
            where number >= _least * (1 - 1e-9) && number <= _most * (1 + 1e-9)
            select number;
    }

    private double OfDisplayed(double number) => _from + (Share(number) * (_to - _from));

    private double Share(double number) => _isByPowers ? Math.Log(number / _least) / Math.Log(_most / _least) : (number - _least) / (_most - _least);
}
