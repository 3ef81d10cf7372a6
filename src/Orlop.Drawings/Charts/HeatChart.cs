using System.Collections.Immutable;
using System.Globalization;
using Orlop.Electrics.Heat;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>How something warms from the air around it towards its rest.</summary>
public static class HeatChart
{
    private const double HeightPx = 150;
    private const double SPerHour = 3600;

    /// <summary>The curve as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="title">What warms.</param>
    /// <param name="shown">The boat as shown; node 0 is what is drawn.</param>
    /// <param name="asBuilt">The boat as built, with a draft open; null without one, or where it cannot be told.</param>
    /// <param name="limitC">What it may be; null where nothing says.</param>
    /// <param name="limitName">What that limit is.</param>
    public static string Draw(string id, string title, ThermalResponseResult shown, ThermalResponseResult? asBuilt, double? limitC, string limitName, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(shown);
        return new Chart
        {
            Id = id,
            Title = $"Temperature, {title}",
            Across = new("Time with everything on", "Hour"),
            Up = new("Temperature", "C"),
            Series =
            [
                new ChartSeries(asBuilt is null ? "Temperature" : "With the draft", Points(shown)),
                .. asBuilt is null ? Array.Empty<ChartSeries>() : [new ChartSeries("As built", Points(asBuilt), IsDashed: true)],
            ],
            Limits = limitC is { } limit ? [new ChartLimit(limitName, limit)] : [],
            FieldHeightPx = HeightPx,
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    private static ImmutableArray<ChartPoint> Points(ThermalResponseResult response) => [.. response.Moments.Select(moment => new ChartPoint(moment.TimeS / SPerHour, moment.NodeC[0]))];
}
