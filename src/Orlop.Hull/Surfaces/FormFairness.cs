using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Points of a form that its neighbours do not bear out. Each row of the form is followed from section to section; a point is held against the cubic through the two sections
/// before and the two behind it. So the two
/// sections at either end, not counting a stem or stern profile, and those beside a sharp one, are not judged. A point is in doubt when it stands off by more than six times what is usual on this form and by more than 0.4 % of its
/// breadth, and by more than the points of the same row on the sections beside it.
/// </summary>
public static class FormFairness
{
    private const double UsualTimes = 6;
    private const double LeastShareOfBreadth = 0.004;

    /// <summary>Empty for a fair form, and for one with too few sections to say (fewer than five) or with faults that keep a surface from being laid.</summary>
    public static ImmutableArray<FormDoubt> Find(HullForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (!FormCheck.Find(form).IsEmpty || form.Sections.Length < 5)
        {
            return [];
        }

        ImmutableArray<HullSection> both = [.. form.Sections, .. form.StarboardSections];
        return form.StarboardSections.IsDefaultOrEmpty
            ? OneSide(form.Sections, both)
            : [.. OneSide(form.Sections, both), .. OneSide(form.StarboardSections, both)];
    }

    private static ImmutableArray<FormDoubt> OneSide(ImmutableArray<HullSection> sections, ImmutableArray<HullSection> both)
    {
        var rows = SectionRows.Lay(sections, LineOrder.Find(both)!.Value, 1, both);
        var count = rows[0].Length;
        var expected = new Point3?[sections.Length, count];
        var off = new double[sections.Length, count];
        var all = new List<double>();
        for (var section = 1; section < sections.Length - 1; section++)
        {
            for (var row = 0; row < count; row++)
            {
                if (Expected(sections, rows, section, row) is { } place)
                {
                    expected[section, row] = place;
                    off[section, row] = (rows[section][row] - place).LengthM;
                    all.Add(off[section, row]);
                }
            }
        }

        if (all.Count == 0)
        {
            return [];
        }

        all.Sort();
        var breadth = 2 * sections.SelectMany(section => section.Points).Max(point => point.HalfBreadthM);
        var limit = Math.Max(UsualTimes * all[all.Count / 2], LeastShareOfBreadth * breadth);
        return
        [
            .. from section in Enumerable.Range(1, sections.Length - 2)
               from row in Enumerable.Range(0, count)
               where off[section, row] > limit && off[section, row] > off[section - 1, row] && off[section, row] > off[section + 1, row]
               let place = expected[section, row]!.Value
               group new FormDoubt(sections[section].Id, Nearest(sections[section], rows[section][row]), off[section, row], Math.Max(0, place.YM), place.ZM)
                   by (section, Nearest(sections[section], rows[section][row])) into same
               select same.MaxBy(doubt => doubt.OffM),
        ];
    }

    // Lagrange through the neighbours on the same run between sharp sections, over x of the row.
    private static Point3? Expected(ImmutableArray<HullSection> sections, Point3[][] rows, int section, int row)
    {
        if (section < 2 || section > sections.Length - 3 || sections[section - 1].IsSharp || sections[section].IsSharp || sections[section + 1].IsSharp
            || IsProfile(sections[section - 2]) || IsProfile(sections[section + 2]))
        {
            return null;
        }

        int[] neighbours = [section - 2, section - 1, section + 1, section + 2];
        var at = rows[section][row].XM;
        Point3 sum = default;
        foreach (var neighbour in neighbours)
        {
            var share = neighbours.Where(other => other != neighbour).Aggregate(1.0, (product, other) =>
                product * (at - rows[other][row].XM) / (rows[neighbour][row].XM - rows[other][row].XM));
            sum += share * rows[neighbour][row];
        }

        return sum.IsFinite ? sum with { XM = at } : null;
    }

    private static bool IsProfile(HullSection section) => section.Points.All(point => point.HalfBreadthM == 0);

    private static int Nearest(HullSection section, Point3 place)
    {
        var distances = section.Points.Select(point => (new Point3(point.XM, point.HalfBreadthM, point.HeightM) - place).LengthM).ToList();
        return distances.IndexOf(distances.Min()) + 1;
    }
}
