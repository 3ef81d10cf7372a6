using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Points of a form that its neighbours do not bear out. Each row of the form is followed from section to section; a point is held against the cubic through the two sections
/// before and the two behind it. So the two sections at either end, not counting a stem or stern profile, and those beside a sharp one, are not judged this way. A point is in doubt when it stands off by more than six times what is usual on this form and by more than 0.4 % of its
/// breadth, and by more than the points of the same row on the sections beside it. A point of a smooth stretch with two points below and two above it is also held against the cubic through
/// those: six times what is usual, and 0.8 % of the breadth, since a section bends harder than a row; a named line (chine, knuckle) breaks the stretch.
/// </summary>
public static class FormFairness
{
    private const double UsualTimes = 6;
    private const double LeastShareOfBreadth = 0.004;
    private const double RoundTimes = 2;
    private const int ReachCount = 2;

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
            : [.. OneSide(form.Sections, both), .. OneSide(form.StarboardSections, both).Select(doubt => doubt with { IsStarboard = true })];
    }

    private static ImmutableArray<FormDoubt> OneSide(ImmutableArray<HullSection> sections, ImmutableArray<HullSection> both)
    {
        var leastM = LeastShareOfBreadth * 2 * sections.SelectMany(section => section.Points).Max(point => point.HalfBreadthM);
        var along = Along(sections, both, leastM);
        ImmutableArray<FormDoubt> round = [.. Round(sections, leastM).Where(doubt => !along.Any(other => other.SectionId == doubt.SectionId && Math.Abs(other.PointNumber - doubt.PointNumber) <= ReachCount))];
        return [.. along.Where(doubt => !round.Any(other => Pulls(other, doubt))), .. round];

        // A point that is not judged along the boat pulls the cubic of those beside it.
        bool Pulls(FormDoubt cause, FormDoubt doubt) =>
            cause.PointNumber == doubt.PointNumber && Math.Abs(cause.OutwardM) > Math.Abs(doubt.OutwardM) && Math.Abs(Place(cause) - Place(doubt)) <= ReachCount;

        int Place(FormDoubt doubt) => sections.IndexOf(sections.First(section => section.Id == doubt.SectionId));
    }

    private static ImmutableArray<FormDoubt> Along(ImmutableArray<HullSection> sections, ImmutableArray<HullSection> both, double leastM)
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

        var limit = Limit(all, leastM);
        return
        [
            .. from section in Enumerable.Range(1, sections.Length - 2)
               from row in Enumerable.Range(0, count)
               where off[section, row] > limit && off[section, row] > off[section - 1, row] && off[section, row] > off[section + 1, row]
               let place = expected[section, row]!.Value
               group new FormDoubt(sections[section].Id, Nearest(sections[section], rows[section][row]), off[section, row], Math.Max(0, place.YM), place.ZM,
                       FormRun.AlongTheBoat, Outward(rows[section], row, rows[section][row] - place), rows[section][row].YM - place.YM, rows[section][row].ZM - place.ZM)
                   by (section, Nearest(sections[section], rows[section][row])) into same
               select same.MaxBy(doubt => doubt.OffM),
        ];
    }

    private static IEnumerable<FormDoubt> Round(ImmutableArray<HullSection> sections, double leastM)
    {
        var found = SectionFairness.Find(sections);
        List<double> all = [.. found.SelectMany(section => section).Where(point => point is not null).Select(point => point!.Value.Off.LengthM)];
        if (all.Count == 0)
        {
            yield break;
        }

        var limit = Limit(all, RoundTimes * leastM);
        for (var section = 0; section < sections.Length; section++)
        {
            for (var point = 0; point < found[section].Length; point++)
            {
                if (found[section][point] is { } here && here.Off.LengthM is var off && off > limit
                    && off > Off(section, point - 1) && off > Off(section, point + 1) && off > Off(section - 1, point) && off > Off(section + 1, point))
                {
                    Point3[] points = [.. sections[section].Points.Select(one => new Point3(one.XM, one.HalfBreadthM, one.HeightM))];
                    yield return new FormDoubt(sections[section].Id, point + 1, off, Math.Max(0, here.Expected.YM), here.Expected.ZM, FormRun.RoundTheSection, Outward(points, point, here.Off), here.Off.YM, here.Off.ZM);
                }
            }
        }

        double Off(int section, int point) =>
            section >= 0 && section < found.Length && point >= 0 && point < found[section].Length && found[section][point] is { } there ? there.Off.LengthM : 0;
    }

    private static double Limit(List<double> all, double leastM)
    {
        all.Sort();
        return Math.Max(UsualTimes * all[all.Count / 2], leastM);
    }

    // The section's outline runs from keel to deck; outside lies to the right of it.
    private static double Outward(Point3[] points, int at, Point3 off)
    {
        var way = points[Math.Min(at + 1, points.Length - 1)] - points[Math.Max(at - 1, 0)];
        var length = Math.Sqrt((way.YM * way.YM) + (way.ZM * way.ZM));
        return length > 0 ? ((off.YM * way.ZM) - (off.ZM * way.YM)) / length : 0;
    }

    // Through the neighbours on the same run between sharp sections, over x of the row.
    private static Point3? Expected(ImmutableArray<HullSection> sections, Point3[][] rows, int section, int row)
    {
        if (section < 2 || section > sections.Length - 3 || sections[section - 1].IsSharp || sections[section].IsSharp || sections[section + 1].IsSharp
            || IsProfile(sections[section - 2]) || IsProfile(sections[section + 2]))
        {
            return null;
        }

        Point3[] neighbours = [rows[section - 2][row], rows[section - 1][row], rows[section + 1][row], rows[section + 2][row]];
        var at = rows[section][row].XM;
        var place = CubicThrough.At([.. neighbours.Select(point => point.XM)], neighbours, at);
        return place.IsFinite ? place with { XM = at } : null;
    }

    private static bool IsProfile(HullSection section) => section.Points.All(point => point.HalfBreadthM == 0);

    private static int Nearest(HullSection section, Point3 place)
    {
        var distances = section.Points.Select(point => (new Point3(point.XM, point.HalfBreadthM, point.HeightM) - place).LengthM).ToList();
        return distances.IndexOf(distances.Min()) + 1;
    }
}
