using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>A part along a chain from source to load.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="AlongM">Conductor length from the source, in metres.</param>
/// <param name="RunningV">Voltage while running; null when unknown.</param>
/// <param name="StartingV">Voltage while the load starts; null when it starts softly or unknown.</param>
public sealed record ChainPoint(string Name, double AlongM, double? RunningV, double? StartingV);

/// <summary>The voltage along a chain, running and starting, against the least voltage its load works at.</summary>
public static class ChainVoltage
{
    /// <summary>The chart as SVG.</summary>
    public static string Draw(string id, string circuit, IReadOnlyList<ChainPoint> points, double? leastV, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ChartSeries running = new("Running", [.. points.Select(point => new ChartPoint(point.AlongM, point.RunningV ?? double.NaN))]);
        ChartSeries starting = new("Starting", [.. points.Select(point => new ChartPoint(point.AlongM, point.StartingV ?? double.NaN))], IsDashed: true);
        return new Chart
        {
            Id = id,
            Title = $"Voltage along {circuit}",
            Across = new("Along the run", "M"),
            Up = new("Voltage", "V"),
            Series = points.Any(point => point.StartingV is not null) ? [running, starting] : [running],
            Limits = leastV is { } least ? [new("least", least)] : [],
            Marks = [.. points.Select(point => new ChartMark(point.Name, point.AlongM))],
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }
}
