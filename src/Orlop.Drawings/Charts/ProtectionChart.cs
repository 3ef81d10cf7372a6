using System.Collections.Immutable;
using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Review.Electrics;

namespace Orlop.Drawings.Charts;

/// <summary>What protects a circuit over current and time, both by powers of ten: each device between its earliest and its latest opening, what the conductor bears, the start, the faults.</summary>
public static class ProtectionChart
{
    private const double FieldHeightPx = 300;

    /// <summary>The chart as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="circuit">What the circuit feeds.</param>
    public static string Draw(string id, string circuit, ProtectionCurves curves, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(curves);
        return new Chart
        {
            Id = id,
            Title = $"Protection of {circuit}: time to open over current",
            Across = new("Current", "A", IsByPowers: true),
            Up = new("Time", "S", IsByPowers: true),
            Series =
            [
                .. curves.Devices.SelectMany(Lines),
                .. Line(curves.Conductor, name => $"{name} bears it", isDashed: true),
                .. Line(curves.Start, name => name, isDashed: true),
                .. Line(curves.Overload, name => name, isDashed: true),
            ],
            Areas = [.. curves.Devices.Select(device => new ChartArea("", Both(device.Latest, device.Earliest), Both(device.Earliest, device.Latest), IsDoubt: true))],
            Marks = [.. Marks(curves, units, culture)],
            WidthPx = widthPx,
            FieldHeightPx = FieldHeightPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    private static IEnumerable<ChartSeries> Lines(DeviceCurves device)
    {
        yield return new ChartSeries($"{device.Title}{(device.IsFromMemory ? ", from memory" : "")}", Points(device.Latest), IsNamedOnLine: true);
        yield return new ChartSeries("", Points(device.Earliest));
    }

    private static IEnumerable<ChartSeries> Line(NamedCurve? curve, Func<string, string> name, bool isDashed) =>
        curve is null || !curve.Points.Any(point => double.IsFinite(point.TimeS)) ? [] : [new ChartSeries(name(curve.Title), Points(curve.Points), isDashed, IsNamedOnLine: true)];

    private static ImmutableArray<ChartPoint> Points(ImmutableArray<CurvePoint> points) => [.. points.Select(point => new ChartPoint(point.CurrentA, point.TimeS))];

    // The part of one edge where the other is known as well: the same currents in both.
    private static ImmutableArray<ChartPoint> Both(ImmutableArray<CurvePoint> edge, ImmutableArray<CurvePoint> other) =>
        [.. edge.Zip(other).Where(pair => double.IsFinite(pair.First.TimeS) && double.IsFinite(pair.Second.TimeS)).Select(pair => new ChartPoint(pair.First.CurrentA, pair.First.TimeS))];

    private static IEnumerable<ChartMark> Marks(ProtectionCurves curves, DisplayUnits units, CultureInfo culture)
    {
        (string Name, double? CurrentA)[] marks = [("runs at", curves.RunningA), ("weakest fault", curves.WeakestFaultA), ("greatest fault", curves.GreatestFaultA)];
        return marks.Where(mark => mark.CurrentA is > 0).Select(mark => new ChartMark($"{mark.Name} {QuantityText.Format(mark.CurrentA!.Value, "A", units, culture)}", mark.CurrentA!.Value));
    }
}
