using System.Globalization;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Drawings.Charts;

/// <summary>The moments of an inclining test against the tangent of heel, with the fitted line, its band of 95 % and the readings that are far off it.</summary>
public static class InclinationChart
{
    /// <summary>The chart as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="title">What the test is called.</param>
    public static string Draw(string id, string title, InclinationFound found, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(found);
        InclinationResult fit = found.Fit;
        ChartPoint At(InclinationReading reading) => new(reading.HeelTangentRatio, reading.MomentKgM);
        InclinationReading[] far = [.. found.Input.Readings.Where(reading => fit.Outliers.Contains(reading.Id))];
        ChartSeries line = new("Fitted line", [.. fit.Band.Select(point => new ChartPoint(point.HeelTangentRatio, point.MomentKgM))]);
        ChartSeries read = new("Readings", [.. found.Input.Readings.Where(reading => !fit.Outliers.Contains(reading.Id)).Select(At)], Sign: ChartSign.Dot);
        return new Chart
        {
            Id = id,
            Title = $"{title}: moment against tangent of heel, with the fitted line",
            Across = new("Tangent of heel, to starboard above 0", "Ratio"),
            Up = new("Moment, to starboard above 0", "KgM"),
            Series = far.Length == 0 ? [line, read] : [line, read, new("Too far off for chance", [.. far.Select(At)], Sign: ChartSign.Cross)],
            Areas =
            [
                new ChartArea("95 % band of the line", [.. fit.Band.Select(point => new ChartPoint(point.HeelTangentRatio, point.MomentKgM + point.HalfBandKgM))],
                    [.. fit.Band.Select(point => new ChartPoint(point.HeelTangentRatio, point.MomentKgM - point.HalfBandKgM))], IsDoubt: true),
            ],
            Marks = [.. far.Select(reading => new ChartMark(reading.Id, reading.HeelTangentRatio))],
            WidthPx = widthPx,
            FieldHeightPx = 220,
            Units = units,
            Culture = culture,
        }.Draw();
    }
}
