using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>A part along a chain from source to load.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="AlongM">Conductor length from the source, in metres; null when a length on the way is not known.</param>
/// <param name="RunningV">Voltage while running; null when unknown.</param>
/// <param name="StartingV">Voltage while the load starts; null when it starts softly or unknown.</param>
public sealed record ChainPoint(string Name, double? AlongM, double? RunningV, double? StartingV);

/// <summary>The voltage along a chain, running and starting, against the least voltage its load works at.</summary>
public static class ChainVoltage
{
    /// <summary>The chart as SVG.</summary>
    public static string Draw(string id, string circuit, IReadOnlyList<ChainPoint> points, double? leastV, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        bool areLengthsKnown = points.All(point => point.AlongM is { } along && double.IsFinite(along)) && points.Any(point => point.AlongM > 0);
        double[] across = [.. points.Select((point, index) => areLengthsKnown ? point.AlongM!.Value : index)];
        ChartSeries running = new("Running", [.. points.Select((point, index) => new ChartPoint(across[index], point.RunningV ?? double.NaN))]);
        ChartSeries starting = new("Starting", [.. points.Select((point, index) => new ChartPoint(across[index], point.StartingV ?? double.NaN))], IsDashed: true);
        return new Chart
        {
            Id = id,
            Title = $"Voltage along {circuit}",
            Across = areLengthsKnown ? new("Along the run", "M") : new("Parts in order; lengths not known", "M", IsOrder: true),
            Up = new("Voltage", "V"),
            Series = points.Any(point => point.StartingV is not null) ? [running, starting] : [running],
            Limits = leastV is { } least ? [new("least", least)] : [],
            Marks = [.. points.Select((point, index) => new ChartMark(point.Name, across[index]))],
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }
}
