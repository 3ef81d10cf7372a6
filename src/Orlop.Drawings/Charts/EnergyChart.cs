using System.Collections.Immutable;
using System.Globalization;
using Orlop.Electrics.Energy;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>A battery's days hour by hour: its charge against the reserve, and below it what comes in and what is asked.</summary>
public static class EnergyChart
{
    private const double PowerHeightPx = 150;

    /// <summary>The charge as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="title">What the days are.</param>
    /// <param name="shown">The boat as shown.</param>
    /// <param name="asBuilt">The boat as built, with a draft open; null without one, or where it cannot be told.</param>
    /// <param name="reserveFraction">What is to stay.</param>
    public static string Charge(string id, string title, EnergyResult shown, EnergyResult? asBuilt, double reserveFraction, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(shown);
        return new Chart
        {
            Id = id,
            Title = $"Charge, {title}",
            Across = new("Time from the first midnight", "Hour"),
            Up = new("Charge of what can be drawn", "Fraction"),
            Series =
            [
                new ChartSeries(asBuilt is null ? "Charge" : "Charge with the draft", Points(shown, moment => moment.ChargeFraction)),
                .. asBuilt is null ? Array.Empty<ChartSeries>() : [new ChartSeries("As built", Points(asBuilt, moment => moment.ChargeFraction), IsDashed: true)],
            ],
            Limits = [new ChartLimit("reserve", reserveFraction)],
            StartsAtZero = true,
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    /// <summary>The power as SVG: what loads ask as a line, what each source gives that is used.</summary>
    public static string Power(string id, string title, EnergyResult shown, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(shown);
        (string Name, Func<EnergyMoment, double> Of)[] sources = [("Engine", moment => moment.EngineW), ("Shore", moment => moment.ShoreW)];
        return new Chart
        {
            Id = id,
            Title = $"Power, {title}",
            Across = new("Time from the first midnight", "Hour"),
            Up = new("Power", "W"),
            Series =
            [
                new ChartSeries("Loads", Points(shown, moment => moment.LoadW)),
                .. sources.Where(source => shown.Moments.Any(moment => source.Of(moment) > 0)).Select(source => new ChartSeries(source.Name, Points(shown, source.Of), IsDashed: true)),
            ],
            Areas = [new ChartArea("Sun", Points(shown, moment => moment.SunW), Points(shown, _ => 0))],
            StartsAtZero = true,
            FieldHeightPx = PowerHeightPx,
            WidthPx = widthPx,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    private static ImmutableArray<ChartPoint> Points(EnergyResult result, Func<EnergyMoment, double> of) => [.. result.Moments.Select(moment => new ChartPoint(moment.Hour, of(moment)))];
}
