namespace Orlop.Drawings.Charts;

/// <summary>A point of a chart, in the model's units of its axes.</summary>
public readonly record struct ChartPoint(double Across, double Up);

/// <summary>A line on a chart.</summary>
/// <param name="Name">What it shows; empty for a line that goes with the one before it.</param>
/// <param name="Points">From left to right.</param>
/// <param name="IsDashed">Drawn dashed, to differ without colour.</param>
/// <param name="Sign">What is drawn: a line, or a sign at each point.</param>
/// <param name="IsAsked">What another line is held against, drawn as a limit.</param>
/// <param name="IsNamedOnLine">Its name stands at its beginning instead of in the legend.</param>
/// <param name="IsFaint">Drawn faint: what the line before it would do, and does not count.</param>
public sealed record ChartSeries(
    string Name, IReadOnlyList<ChartPoint> Points, bool IsDashed = false, ChartSign Sign = ChartSign.Line, bool IsAsked = false, bool IsNamedOnLine = false, bool IsFaint = false);

/// <summary>How the points of a series are drawn.</summary>
public enum ChartSign
{
    /// <summary>Joined by a line.</summary>
    Line,

    /// <summary>A dot at each.</summary>
    Dot,

    /// <summary>A cross at each, for what is doubtful.</summary>
    Cross,
}

/// <summary>A level limit across the chart, in the model's unit of the upright axis.</summary>
/// <param name="Name">What it limits.</param>
/// <param name="Up">The limit.</param>
/// <param name="FromAcross">Where it begins; null at the edge.</param>
/// <param name="ToAcross">Where it ends; null at the edge.</param>
/// <param name="Told">The limit as it is written, where the side it is drawn on turns its sign; null for <paramref name="Up"/>.</param>
public sealed record ChartLimit(string Name, double Up, double? FromAcross = null, double? ToAcross = null, double? Told = null);

/// <summary>A shaded area between two lines.</summary>
/// <param name="Name">What it shows, for the legend; empty for an area that goes with the one before it.</param>
/// <param name="Upper">Its upper edge, from left to right.</param>
/// <param name="Lower">Its lower edge, from left to right.</param>
/// <param name="IsDoubt">It tells how sure a line is.</param>
public sealed record ChartArea(string Name, IReadOnlyList<ChartPoint> Upper, IReadOnlyList<ChartPoint> Lower, bool IsDoubt = false);

/// <summary>A shaded band between two heights, in the model's unit of the upright axis.</summary>
public sealed record ChartBand(string Name, double LeastUp, double MostUp);

/// <summary>A mark on the horizontal axis with a name: a part along a run.</summary>
public sealed record ChartMark(string Name, double Across);

/// <summary>An axis.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Suffix">Unit suffix of the model.</param>
/// <param name="IsOrder">Places on it stand in their order only: no unit, no numbers.</param>
/// <param name="IsByPowers">A scale by powers of ten: every value above 0.</param>
public sealed record ChartAxis(string Name, string Suffix, bool IsOrder = false, bool IsByPowers = false);
