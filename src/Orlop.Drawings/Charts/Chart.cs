using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>What a chart shows. The one way to draw a chart: ticks at round values of the reader's units, lines, bands, limits.</summary>
public sealed record Chart
{
    /// <summary>Id of the drawing's outermost element, unique on its page.</summary>
    public required string Id { get; init; }

    /// <summary>What the chart shows, as its accessible name.</summary>
    public required string Title { get; init; }

    /// <summary>The horizontal axis.</summary>
    public required ChartAxis Across { get; init; }

    /// <summary>The upright axis.</summary>
    public required ChartAxis Up { get; init; }

    /// <summary>The lines; points that are not finite break a line.</summary>
    public IReadOnlyList<ChartSeries> Series { get; init; } = [];

    /// <summary>Shaded areas, under the lines.</summary>
    public IReadOnlyList<ChartArea> Areas { get; init; } = [];

    /// <summary>Level limits.</summary>
    public IReadOnlyList<ChartLimit> Limits { get; init; } = [];

    /// <summary>Shaded bands.</summary>
    public IReadOnlyList<ChartBand> Bands { get; init; } = [];

    /// <summary>Named places on the horizontal axis.</summary>
    public IReadOnlyList<ChartMark> Marks { get; init; } = [];

    /// <summary>The upright axis starts at zero.</summary>
    public bool StartsAtZero { get; init; }

    /// <summary>Width in drawing units of 1/96 in, from 240.</summary>
    public double WidthPx { get; init; } = 620;

    /// <summary>Height of the plotted field in drawing units.</summary>
    public double FieldHeightPx { get; init; } = 160;

    /// <summary>Units of the axes.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>The chart as SVG; a chart without a finite point says so.</summary>
    public string Draw() => new ChartPainter(this).Draw();
}
