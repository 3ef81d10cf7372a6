using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Surfaces;

/// <summary>A closed surface, or all that keeps one from being laid; never both.</summary>
public sealed record HullSurfaceResult(TriangleMesh? Surface, ImmutableArray<FormProblem> Problems);

/// <summary>
/// Lays a closed, watertight, outward-facing surface through a hull as measured: rows of points over each section, smooth curves along the rows from section to section,
/// level deck and bottom where the sections end off the centre line, flat ends where the first or last section has breadth.
/// </summary>
public static class HullSurface
{
    public static HullSurfaceResult Build(HullForm form, FormFineness? fineness = null)
    {
        ArgumentNullException.ThrowIfNull(form);
        var fine = fineness ?? new FormFineness();
        Guard.InRange(fine.StepsPerIntervalCount, 1, 100, "", form.Id);
        Guard.InRange(fine.RowsPerIntervalCount, 1, 100, "", form.Id);
        var problems = FormCheck.Find(form);
        if (!problems.IsEmpty)
        {
            return new HullSurfaceResult(null, problems);
        }

        ImmutableArray<HullSection> both = [.. form.Sections, .. form.StarboardSections];
        var lines = LineOrder.Find(both)!.Value;
        var portRows = SectionRows.Lay(form.Sections, lines, fine.RowsPerIntervalCount, both);
        var starboardRows = form.StarboardSections.IsDefaultOrEmpty
            ? portRows
            : SectionRows.Lay(form.StarboardSections, lines, fine.RowsPerIntervalCount, both);
        ImmutableArray<FormProblem> crossed = [.. FormOrder.Find(form.Sections, portRows), .. ReferenceEquals(portRows, starboardRows) ? [] : FormOrder.Find(form.StarboardSections, starboardRows)];
        if (!crossed.IsEmpty)
        {
            return new HullSurfaceResult(null, crossed);
        }

        var port = FormGrid.Along(form.Sections, portRows, fine.StepsPerIntervalCount);
        var starboard = ReferenceEquals(portRows, starboardRows) ? port : FormGrid.Along(form.StarboardSections, starboardRows, fine.StepsPerIntervalCount);
        var mesh = Skin(port, Mirrored(starboard));
        return mesh.Problems.IsEmpty
            ? new HullSurfaceResult(mesh, [])
            : new HullSurfaceResult(null, [.. mesh.Problems.Select(problem => new FormProblem(form.Id, null, $"the surface does not close: {problem.Message}"))]);
    }

    private static Point3[][] Mirrored(Point3[][] side) =>
        [.. side.Select(section => section.Select(point => point.YM == 0 ? point : point with { YM = -point.YM }).ToArray())];

    private static TriangleMesh Skin(Point3[][] port, Point3[][] starboard)
    {
        var builder = new MeshBuilder();
        var last = port.Length - 1;
        for (var step = 0; step < last; step++)
        {
            var (portHere, portNext) = (Closed(port[step], starboard[step]), Closed(port[step + 1], starboard[step + 1]));
            var (starboardHere, starboardNext) = (Closed(starboard[step], port[step]), Closed(starboard[step + 1], port[step + 1]));
            for (var row = 0; row < portHere.Length - 1; row++)
            {
                builder.AddQuad(portHere[row], portHere[row + 1], portNext[row + 1], portNext[row]);
                builder.AddQuad(starboardHere[row], starboardNext[row], starboardNext[row + 1], starboardHere[row + 1]);
            }
        }

        for (var row = 0; row < port[0].Length - 1; row++)
        {
            builder.AddQuad(port[0][row], starboard[0][row], starboard[0][row + 1], port[0][row + 1]);
            builder.AddQuad(port[last][row], port[last][row + 1], starboard[last][row + 1], starboard[last][row]);
        }

        return EndsClosed(builder, port, starboard).Build();
    }

    // Bottom and deck run level to the centre line, half way between the two sides where these differ.
    private static Point3[] Closed(Point3[] side, Point3[] other) => [Middle(side[0], other[0]), .. side, Middle(side[^1], other[^1])];

    private static Point3 Middle(Point3 a, Point3 b) => a.YM == 0 ? a : b.YM == 0 ? b : (0.5 * (a + b)) with { YM = 0 };

    private static MeshBuilder EndsClosed(MeshBuilder builder, Point3[][] port, Point3[][] starboard)
    {
        var (aftPort, aftStarboard, forePort, foreStarboard) = (port[0], starboard[0], port[^1], starboard[^1]);
        builder.AddTriangle(aftStarboard[0], aftPort[0], Middle(aftPort[0], aftStarboard[0]));
        builder.AddTriangle(aftPort[^1], aftStarboard[^1], Middle(aftPort[^1], aftStarboard[^1]));
        builder.AddTriangle(forePort[0], foreStarboard[0], Middle(forePort[0], foreStarboard[0]));
        builder.AddTriangle(foreStarboard[^1], forePort[^1], Middle(forePort[^1], foreStarboard[^1]));
        return builder;
    }
}
