using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Points held against their own section: against the cubic through the two points below and the two above on the same smooth stretch, over the length of the chords. A turn of
/// the bilge that all sections have is no slip: where the sections beside have as many points, what the same point is off there is taken away
/// (the mean of both sides; at an end the straight line through the two nearest).
/// </summary>
internal static class SectionFairness
{
    /// <summary>For each section, what is off at each of its points; null for a point that is not judged.</summary>
    public static (Point3 Off, Point3 Expected)?[][] Find(ImmutableArray<HullSection> sections)
    {
        (Point3 Off, Point3 Expected)?[][] raw = [.. sections.Select(section => Section(section))];
        return [.. raw.Select((_, section) => raw[section].Select((found, point) => found is null ? null : Beyond(raw, section, point)).ToArray())];
    }

    private static (Point3 Off, Point3 Expected)? Beyond((Point3 Off, Point3 Expected)?[][] raw, int section, int point)
    {
        var (off, expected) = raw[section][point]!.Value;
        var usual = (OffAt(-1), OffAt(1)) switch
        {
            ({ } before, { } behind) => 0.5 * (before + behind),
            ({ } before, null) => OffAt(-2) is { } farther ? (2 * before) - farther : before,
            (null, { } behind) => OffAt(2) is { } farther ? (2 * behind) - farther : behind,
            _ => default,
        };
        // A slip beside it makes no point doubtful.
        return (off - usual).LengthM < off.LengthM ? (off - usual, expected + usual) : (off, expected);

        Point3? OffAt(int step) =>
            section + step is var other && other >= 0 && other < raw.Length && raw[other].Length == raw[section].Length ? raw[other][point]?.Off : null;
    }

    private static (Point3 Off, Point3 Expected)?[] Section(HullSection section)
    {
        Point3[] points = [.. section.Points.Select(point => new Point3(point.XM, point.HalfBreadthM, point.HeightM))];
        var at = new double[points.Length];
        for (var i = 1; i < points.Length; i++)
        {
            at[i] = at[i - 1] + (points[i] - points[i - 1]).LengthM;
        }

        var found = new (Point3, Point3)?[points.Length];
        for (var i = 2; i < points.Length - 2; i++)
        {
            if (section.Points[i - 1].Line is null && section.Points[i].Line is null && section.Points[i + 1].Line is null)
            {
                var expected = CubicThrough.At([at[i - 2], at[i - 1], at[i + 1], at[i + 2]], [points[i - 2], points[i - 1], points[i + 1], points[i + 2]], at[i]);
                found[i] = (points[i] - expected, expected);
            }
        }

        return found;
    }
}
