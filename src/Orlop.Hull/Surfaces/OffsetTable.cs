using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// A table of offsets as text: one line for each measured point, station by station from aft to forward, each from the keel up. Columns station, x, half_breadth and height, and where
/// wanted line (a named sharp line), sharp (1 for a station with a crease across the boat) and side (port and starboard for a boat whose sides differ), in any order. The name of a length's column ends in its unit:
/// _m, _ft, _in, or _ft_in_8 for feet-inches-eighths. What is wrong with the shape that the numbers make, <see cref="HullSurface"/> tells.
/// </summary>
public static class OffsetTable
{
    private static readonly string[] Lengths = ["x", "half_breadth", "height"];
    private static readonly string[] Words = ["station", "line", "sharp", "side"];

    /// <param name="id">What the hull is called.</param>
    /// <param name="text">The table.</param>
    /// <param name="limits">What its lengths may be where that is less than the engine's own.</param>
    public static OffsetTableResult Read(string id, string text, OffsetLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rows = CsvText.Rows(text.TrimStart('\uFEFF')).ToImmutableArray();
        if (rows.IsEmpty)
        {
            return new OffsetTableResult(null, [new OffsetProblem(1, "", "", "a first line of column names, such as station,x_m,half_breadth_m,height_m,line,sharp")]);
        }

        var (columns, problems) = Columns(rows[0].LineNumber, rows[0].Cells);
        var points = rows.Skip(1).Select(row => OffsetRow.Read(row.LineNumber, row.Cells, columns, limits ?? OffsetLimits.Widest, problems)).OfType<OffsetRow>().ToList();
        var sides = Sides(points, problems);
        return problems.Count > 0
            ? new OffsetTableResult(null, [.. problems.OrderBy(problem => problem.LineNumber)])
            : new OffsetTableResult(new HullForm { Id = id, Sections = sides.Port, StarboardSections = sides.Starboard }, []);
    }

    /// <summary>The same layout in metres with every bit kept: reading it gives the form again.</summary>
    public static string Write(HullForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        var isTwoSided = !form.StarboardSections.IsDefaultOrEmpty;
        var text = new StringBuilder($"station,{(isTwoSided ? "side," : "")}x_m,half_breadth_m,height_m,line,sharp\n");
        AddSide(form.Sections, isTwoSided ? "port," : "");
        AddSide(isTwoSided ? form.StarboardSections : [], "starboard,");
        return text.ToString();

        void AddSide(ImmutableArray<HullSection> sections, string side)
        {
            foreach (var section in sections)
            {
                foreach (var point in section.Points)
                {
                    text.Append(CultureInfo.InvariantCulture,
                        $"{CsvText.Cell(section.Id)},{side}{point.XM:R},{point.HalfBreadthM:R},{point.HeightM:R},{(point.Line is null ? "" : CsvText.Cell(point.Line))},{(section.IsSharp ? 1 : 0)}\n");
                }
            }
        }
    }

    private static (ImmutableArray<OffsetColumn> Columns, ImmutableArray<OffsetProblem>.Builder Problems) Columns(int line, ImmutableArray<string> names)
    {
        var problems = ImmutableArray.CreateBuilder<OffsetProblem>();
        var columns = ImmutableArray.CreateBuilder<OffsetColumn>();
        foreach (var name in names)
        {
            var unit = Array.Find(OffsetUnit.All, unit => name.EndsWith($"_{unit.Suffix}", StringComparison.Ordinal));
            var quantity = unit is null ? name : name[..^(unit.Suffix.Length + 1)];
            if (unit is null ? !Words.Contains(name) : !Lengths.Contains(quantity))
            {
                problems.Add(Lengths.Contains(name)
                    ? new OffsetProblem(line, name, name, $"its unit too: {string.Join(", ", OffsetUnit.All.Select(one => $"{name}_{one.Suffix}"))}")
                    : new OffsetProblem(line, name, name, "station, x, half_breadth, height (each length with its unit), line, sharp, side"));
            }
            else if (columns.Any(column => column.Quantity == quantity))
            {
                problems.Add(new OffsetProblem(line, name, name, $"one column for {quantity}"));
            }

            columns.Add(new OffsetColumn(name, quantity, unit));
        }

        foreach (var missing in Lengths.Append("station").Where(quantity => !columns.Any(column => column.Quantity == quantity)))
        {
            problems.Add(new OffsetProblem(line, missing, "", $"a column for {missing}"));
        }

        return (columns.ToImmutable(), problems);
    }

    private static (ImmutableArray<HullSection> Port, ImmutableArray<HullSection> Starboard) Sides(List<OffsetRow> points, ImmutableArray<OffsetProblem>.Builder problems)
    {
        var isTwoSided = points.Any(point => point.Side.Length > 0);
        foreach (var point in points.Where(point => isTwoSided && point.Side.Length == 0))
        {
            problems.Add(new OffsetProblem(point.LineNumber, "side", "", "port or starboard on every line, once it stands on one"));
        }

        return (Sections(points.Where(point => point.Side != "starboard"), problems), Sections(points.Where(point => point.Side == "starboard"), problems));
    }

    private static ImmutableArray<HullSection> Sections(IEnumerable<OffsetRow> points, ImmutableArray<OffsetProblem>.Builder problems)
    {
        var sections = new List<(string Station, List<OffsetRow> Rows)>();
        foreach (var point in points)
        {
            if (sections.Count > 0 && sections[^1].Station == point.Station)
            {
                sections[^1].Rows.Add(point);
                continue;
            }

            if (sections.Exists(section => section.Station == point.Station))
            {
                problems.Add(new OffsetProblem(point.LineNumber, "station", point.Station, "all points of a station one after the other"));
            }

            sections.Add((point.Station, [point]));
        }

        foreach (var (_, rows) in sections)
        {
            foreach (var row in rows.Where(row => (row.IsSharp ?? rows[0].IsSharp) != rows[0].IsSharp))
            {
                problems.Add(new OffsetProblem(row.LineNumber, "sharp", row.IsSharp == true ? "1" : "0", "the same as on the station's first line, or nothing"));
            }
        }

        return [.. sections.Select(section => new HullSection { Id = section.Station, Points = [.. section.Rows.Select(row => row.Point)], IsSharp = section.Rows[0].IsSharp == true })];
    }
}
