using System.Globalization;
using Orlop.Electrics.Starts;
using Orlop.Presentation.Quantities;
using Orlop.Review.Electrics;

namespace Orlop.Drawings.Charts;

/// <summary>The voltage while something starts: at itself and at the loads that come nearest to their least, with what each works down to.</summary>
public static class StartChart
{
    // More lines than this hide each other.
    private const int MostOthers = 3;

    /// <summary>The chart as SVG; null where the start cannot be told.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    public static string? Draw(string id, StartInTime start, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(start);
        if (start is not { WhyNone: null, Start: { } result })
        {
            return null;
        }

        StartTaker[] drawn = [.. start.Takers.Where(taker => taker.Voltage is not null && taker.Part.Id == start.Starter.Id), .. Others(start)];
        return new Chart
        {
            Id = id,
            Title = $"Voltage while {start.Starter.Title} starts",
            Across = new("Time", "S"),
            Up = new("Voltage", "V"),
            Series = [.. drawn.Select((taker, k) => new ChartSeries(taker.Part.Title, Points(result, taker), IsDashed: k > 0))],
            Limits = [.. drawn.Where(taker => taker.LeastV is not null).GroupBy(taker => taker.LeastV!.Value)
                .Select(group => new ChartLimit($"least of {string.Join(", ", group.Select(taker => taker.Part.Title))}", group.Key))],
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    // Only what is of the starter's own kind of voltage: 230 V would flatten what happens at 24.
    private static IEnumerable<StartTaker> Others(StartInTime start)
    {
        double around = start.Takers.FirstOrDefault(taker => taker.Part.Id == start.Starter.Id)?.Voltage?.LowestV ?? 0;
        return start.Takers.Where(taker => taker.Part.Id != start.Starter.Id && taker is { Voltage: not null, LeastV: not null, BeforeV: { } before } && before < 4 * Math.Max(1, around)).Take(MostOthers);
    }

    private static ChartPoint[] Points(StartResult result, StartTaker taker) =>
        [.. result.Moments.Zip(result.VoltageOf(taker.Part.Id)!.Value).Select(pair => new ChartPoint(pair.First.TimeS, pair.Second))];
}
