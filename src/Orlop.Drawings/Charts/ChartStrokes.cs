using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Charts;

/// <summary>How the series and areas of a chart are stroked: curves of a kind differ in their strokes, without colour.</summary>
internal sealed class ChartStrokes(Chart chart, SvgWriter svg)
{
    private const double SignPx = 3.5;
    private const double CrossPx = 5;
    private const double ExamplePx = 28;
    private static readonly string[] AskedStyles = ["limit", "limit dots", "limit long"];
    private static readonly string[] DashedStyles = ["outline dashed", "outline dots", "outline long"];

    /// <summary>Style of a curve.</summary>
    public string Of(ChartSeries series) => series.IsAsked ? OfItsKind(series, AskedStyles, one => one.IsAsked)
        : series.IsDashed ? OfItsKind(series, DashedStyles, one => one.IsDashed)
        : series.IsFaint ? "outline dots faint" : "outline";

    /// <summary>Style of an area.</summary>
    public static string Of(ChartArea area) => area.IsDoubt ? "band" : "water";

    /// <summary>The sign of one point.</summary>
    public void Sign(ChartSeries series, Spot at)
    {
        if (series.Sign == ChartSign.Dot)
        {
            svg.Circle(at, SignPx, "solid");
            return;
        }

        svg.Line(at.X - CrossPx, at.Y - CrossPx, at.X + CrossPx, at.Y + CrossPx, "cross").Line(at.X - CrossPx, at.Y + CrossPx, at.X + CrossPx, at.Y - CrossPx, "cross");
    }

    /// <summary>A short piece of a series, beside its name; the words stand at <paramref name="y"/>.</summary>
    public void Example(ChartSeries series, double x, double y)
    {
        if (series.Sign == ChartSign.Line)
        {
            svg.Line(x, y - 4, x + ExamplePx, y - 4, Of(series));
        }
        else
        {
            Sign(series, new Spot(x + (ExamplePx / 2), y - 4));
        }
    }

    /// <summary>A small piece of an area, beside its name.</summary>
    public void Example(ChartArea area, double x, double y) => svg.Rect(new Box(x, y - 10, ExamplePx, 11), Of(area));

    private string OfItsKind(ChartSeries series, string[] styles, Func<ChartSeries, bool> isOfKind) =>
        styles[chart.Series.Where(isOfKind).TakeWhile(one => one != series).Count() % styles.Length];
}
