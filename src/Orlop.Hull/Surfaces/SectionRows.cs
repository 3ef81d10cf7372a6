using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Lays the same number of points over every section, so that point r of one section answers to point r of the next. Named lines are kept; a line that a section lacks is
/// placed on it at the share of the way from keel to deck that the line has on the nearest sections that carry it. The way is counted by roots of distances (centripetal
/// parameter), which keeps a curve through unevenly spaced points from bulging.
/// </summary>
internal static class SectionRows
{
    /// <summary>For each section, its points from keel to deck edge; y is the half-breadth.</summary>
    public static Point3[][] Lay(ImmutableArray<HullSection> sections, ImmutableArray<string> lines, int rowsPerInterval, ImmutableArray<HullSection> both)
    {
        SectionCurve[] curves = [.. sections.Select(section => new SectionCurve(section))];
        double[][] breaks = [.. Enumerable.Range(0, sections.Length).Select(i => Breaks(curves, i, lines))];
        var rowCounts = RowCounts(both, lines, rowsPerInterval);
        var isSameCount = SameCounts(both, lines);
        return [.. curves.Select((curve, i) => Points(curve, breaks[i], rowCounts, isSameCount))];
    }

    /// <summary>Number of the row that each named line lies on, in the order of the lines.</summary>
    public static ImmutableArray<int> RowsOf(ImmutableArray<string> lines, int rowsPerInterval, ImmutableArray<HullSection> both)
    {
        var row = 0;
        return [.. RowCounts(both, lines, rowsPerInterval)[..^1].Select(count => row += count)];
    }

    private static Point3[] Points(SectionCurve curve, double[] breaks, int[] rowCounts, bool[] isSameCount)
    {
        var points = new List<Point3> { curve.Curve.At(0) };
        for (var panel = 0; panel < rowCounts.Length; panel++)
        {
            var (from, to) = (breaks[panel], breaks[panel + 1]);
            double[] nodes = isSameCount[panel] ? [.. curve.At.Where(at => at >= from && at <= to)] : [from, to];
            for (var row = 1; row <= rowCounts[panel]; row++)
            {
                var place = (double)row / rowCounts[panel] * (nodes.Length - 1);
                var interval = Math.Min((int)place, nodes.Length - 2);
                var parameter = row == rowCounts[panel] ? to : nodes.Length < 2 ? from : nodes[interval] + ((place - interval) * (nodes[interval + 1] - nodes[interval]));
                var point = curve.Curve.At(parameter);
                points.Add(point.YM < 0 ? point with { YM = 0 } : point);
            }
        }

        return [.. points];
    }

    private static double[] Breaks(SectionCurve[] curves, int section, ImmutableArray<string> lines)
    {
        var curve = curves[section];
        var breaks = new double?[lines.Length + 2];
        (breaks[0], breaks[^1]) = (0, curve.Whole);
        for (var i = 0; i < lines.Length; i++)
        {
            breaks[i + 1] = curve.OfLine(lines[i]);
        }

        for (var i = 0; i < lines.Length; i++)
        {
            if (breaks[i + 1] is null)
            {
                var above = breaks.Skip(i + 2).First(at => at is not null)!.Value;
                breaks[i + 1] = Math.Clamp(Share(curves, section, lines[i]) * curve.Whole, breaks[i]!.Value, above);
            }
        }

        return [.. breaks.Select(at => at!.Value)];
    }

    private static double Share(SectionCurve[] curves, int section, string line)
    {
        var (aft, forward) = (Nearest(-1), Nearest(1));
        return (aft, forward) switch
        {
            ({ } a, { } f) => (((f.Distance * a.Share) + (a.Distance * f.Share)) / (a.Distance + f.Distance)),
            ({ } a, null) => a.Share,
            (null, { } f) => f.Share,
            _ => 0,
        };

        (double Share, int Distance)? Nearest(int step)
        {
            for (var i = section + step; i >= 0 && i < curves.Length; i += step)
            {
                if (curves[i].OfLine(line) is { } at)
                {
                    return (at / curves[i].Whole, Math.Abs(i - section));
                }
            }

            return null;
        }
    }

    private static int[] RowCounts(ImmutableArray<HullSection> sections, ImmutableArray<string> lines, int rowsPerInterval)
    {
        var counts = sections.Select(section => IntervalCounts(section, lines)).ToArray();
        return [.. Enumerable.Range(0, lines.Length + 1).Select(panel => rowsPerInterval * Math.Max(1, counts.Max(count => count[panel] ?? 1)))];
    }

    private static bool[] SameCounts(ImmutableArray<HullSection> sections, ImmutableArray<string> lines)
    {
        var counts = sections.Select(section => IntervalCounts(section, lines)).ToArray();
        return [.. Enumerable.Range(0, lines.Length + 1).Select(panel => counts.All(count => count[panel] is > 0 && count[panel] == counts[0][panel]))];
    }

    // Intervals between measured points in each panel; null where the section lacks a line at the panel's edge.
    private static int?[] IntervalCounts(HullSection section, ImmutableArray<string> lines)
    {
        var places = lines.Select(line => section.Points.Select((point, i) => (point, i)).Where(pair => pair.point.Line == line).Select(pair => (int?)pair.i).FirstOrDefault());
        int?[] edges = [0, .. places, section.Points.Length - 1];
        return [.. Enumerable.Range(0, edges.Length - 1).Select(panel => edges[panel + 1] - edges[panel])];
    }

    private sealed class SectionCurve
    {
        private readonly HullSection _section;

        public SectionCurve(HullSection section)
        {
            _section = section;
            Point3[] points = [.. section.Points.Select(point => new Point3(point.XM, point.HalfBreadthM, point.HeightM))];
            At = new double[points.Length];
            for (var i = 1; i < points.Length; i++)
            {
                At[i] = At[i - 1] + Math.Sqrt((points[i] - points[i - 1]).LengthM);
            }

            Curve = new SmoothCurve(points, At, [.. section.Points.Select(point => point.Line is not null)]);
        }

        public double[] At { get; }

        public double Whole => At[^1];

        public SmoothCurve Curve { get; }

        public double? OfLine(string line)
        {
            for (var i = 0; i < At.Length; i++)
            {
                if (_section.Points[i].Line == line)
                {
                    return At[i];
                }
            }

            return null;
        }
    }
}
