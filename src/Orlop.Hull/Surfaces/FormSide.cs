using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>A line of the form from aft to forward.</summary>
/// <param name="Name">"keel", "deck edge", or the name of a sharp line.</param>
/// <param name="Points">From aft to forward; y is the half-breadth.</param>
public sealed record FormLine(string Name, ImmutableArray<Point3> Points);

/// <summary>The curves of one side of a form, as they are drawn; y is the half-breadth.</summary>
/// <param name="Sections">For each section its outline from keel to deck edge.</param>
/// <param name="Steps">Outlines between the sections too, from aft to forward.</param>
/// <param name="Lines">Keel, named lines and deck edge.</param>
public sealed record FormSide(ImmutableArray<ImmutableArray<Point3>> Sections, ImmutableArray<ImmutableArray<Point3>> Steps, ImmutableArray<FormLine> Lines)
{
    /// <summary>The stretches of the waterline at a height, from aft to forward: the outermost place where each outline crosses it.</summary>
    public ImmutableArray<ImmutableArray<Point3>> Waterline(double heightM)
    {
        var stretches = new List<ImmutableArray<Point3>>();
        var stretch = new List<Point3>();
        for (var step = 0; step < Steps.Length; step++)
        {
            var crossing = Crossing(Steps[step], heightM);
            var end = step > 0 && crossing is null != (Crossing(Steps[step - 1], heightM) is null)
                ? Crossing([Steps[step - 1][0], Steps[step][0]], heightM) ?? Crossing([Steps[step - 1][^1], Steps[step][^1]], heightM)
                : null;
            stretch.AddRange(new[] { end, crossing }.OfType<Point3>());
            if ((crossing is null || step == Steps.Length - 1) && stretch.Count > 0)
            {
                stretches.Add([.. stretch]);
                stretch.Clear();
            }
        }

        return [.. stretches.Where(points => points.Length > 1)];
    }

    private static Point3? Crossing(ImmutableArray<Point3> outline, double heightM)
    {
        Point3? outermost = null;
        for (var i = 1; i < outline.Length; i++)
        {
            var (below, above) = (outline[i - 1], outline[i]);
            if (below.ZM != above.ZM && (below.ZM - heightM) * (above.ZM - heightM) <= 0)
            {
                var share = (heightM - below.ZM) / (above.ZM - below.ZM);
                var place = ((1 - share) * below) + (share * above);
                outermost = outermost is { } other && other.YM >= place.YM ? other : place;
            }
        }

        return outermost;
    }
}
