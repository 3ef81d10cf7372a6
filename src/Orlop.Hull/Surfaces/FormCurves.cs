using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>The curves of a form, for drawing: the same that its surface is laid through; straight from point to point where something keeps a surface from being laid.</summary>
/// <param name="Port">Both sides, or the port side where they differ.</param>
/// <param name="Starboard">The starboard side; the same where they do not differ.</param>
/// <param name="IsSmooth">The curves are those of the surface.</param>
public sealed record FormCurves(FormSide Port, FormSide Starboard, bool IsSmooth)
{
    private const int StepsPerInterval = 6;
    private const int RowsPerInterval = 6;

    /// <summary>Curves of a form whose numbers are finite.</summary>
    public static FormCurves Of(HullForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        ImmutableArray<HullSection> both = [.. form.Sections, .. form.StarboardSections];
        var lines = FormCheck.Find(form).IsEmpty ? LineOrder.Find(both) : null;
        var port = lines is { } named ? Smooth(form.Sections, both, named) : null;
        var starboard = lines is { } same && !form.StarboardSections.IsDefaultOrEmpty ? Smooth(form.StarboardSections, both, same) : port;
        if (port is not null && starboard is not null)
        {
            return new FormCurves(port, starboard, true);
        }

        port = Straight(form.Sections);
        return new FormCurves(port, form.StarboardSections.IsDefaultOrEmpty ? port : Straight(form.StarboardSections), false);
    }

    // Null where sections do not stand one forward of the other: no curve runs along them.
    private static FormSide? Smooth(ImmutableArray<HullSection> sections, ImmutableArray<HullSection> both, ImmutableArray<string> lines)
    {
        var rows = SectionRows.Lay(sections, lines, RowsPerInterval, both);
        if (FormOrder.Find(sections, rows).Any())
        {
            return null;
        }

        var grid = FormGrid.Along(sections, rows, StepsPerInterval);
        var named = SectionRows.RowsOf(lines, RowsPerInterval, both);
        return new FormSide(
            [.. rows.Select(row => row.ToImmutableArray())],
            [.. grid.Select(step => step.ToImmutableArray())],
            [Line("keel", 0), .. lines.Select((name, i) => Line(name, named[i])), Line("deck edge", grid[0].Length - 1)]);

        FormLine Line(string name, int row) => new(name, [.. grid.Select(step => step[row])]);
    }

    private static FormSide Straight(ImmutableArray<HullSection> sections)
    {
        ImmutableArray<ImmutableArray<Point3>> outlines =
        [
            .. sections.Select(section => section.Points.Select(point => new Point3(point.XM, point.HalfBreadthM, point.HeightM)).Where(point => point.IsFinite).ToImmutableArray())
                .Where(points => !points.IsEmpty),
        ];
        return new FormSide(outlines, outlines, [new FormLine("keel", [.. outlines.Select(outline => outline[0])]), new FormLine("deck edge", [.. outlines.Select(outline => outline[^1])])]);
    }
}
