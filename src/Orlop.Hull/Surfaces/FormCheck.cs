using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>What is wrong with a hull as measured, before any surface is laid through it.</summary>
internal static class FormCheck
{
    private const double FarthestM = 200;
    private const double SamePlaceM = 1e-6;

    public static ImmutableArray<FormProblem> Find(HullForm form)
    {
        if (form.Sections.IsDefault || form.Sections.Length < 2)
        {
            return [new(form.Id, null, $"{(form.Sections.IsDefault ? 0 : form.Sections.Length)} sections; at least 2 are needed, and 5 or more for a curved hull")];
        }

        ImmutableArray<HullSection> all = [.. form.Sections, .. form.StarboardSections];
        ImmutableArray<FormProblem> problems = [.. all.SelectMany(PointProblems)];
        if (!problems.IsEmpty)
        {
            return problems;
        }

        var noBreadth = all.All(section => section.Points.All(point => point.HalfBreadthM == 0))
            ? [new FormProblem(form.Id, null, "no point has any breadth")]
            : ImmutableArray<FormProblem>.Empty;
        return [.. noBreadth, .. all.SelectMany(ShapeProblems), .. LineProblems(form.Id, all), .. SideProblems(form)];
    }

    private static IEnumerable<FormProblem> PointProblems(HullSection section)
    {
        if (section.Points.IsDefault || section.Points.Length < 2)
        {
            yield return new FormProblem(section.Id, null, $"{(section.Points.IsDefault ? 0 : section.Points.Length)} points; at least 2 are needed, keel and deck edge");
            yield break;
        }

        for (var i = 0; i < section.Points.Length; i++)
        {
            var point = section.Points[i];
            if (!(Math.Abs(point.XM) <= FarthestM) || !(Math.Abs(point.HeightM) <= FarthestM))
            {
                yield return new FormProblem(section.Id, i + 1, FormattableString.Invariant($"x {point.XM} m, height {point.HeightM} m; allowed -{FarthestM} to {FarthestM} m"));
            }

            if (!(point.HalfBreadthM >= 0 && point.HalfBreadthM <= FarthestM))
            {
                yield return new FormProblem(section.Id, i + 1, FormattableString.Invariant($"half-breadth {point.HalfBreadthM} m; allowed 0 to {FarthestM} m"));
            }
        }
    }

    private static IEnumerable<FormProblem> ShapeProblems(HullSection section)
    {
        var points = section.Points;
        for (var i = 1; i < points.Length; i++)
        {
            if (Step(points[i - 1], points[i]).LengthM < SamePlaceM)
            {
                yield return new FormProblem(section.Id, i + 1, "lies on the point before it");
            }
        }

        if (points.Max(point => point.HeightM) <= points[0].HeightM)
        {
            yield return new FormProblem(section.Id, 1, "is the highest point; a section is listed from the keel up to the deck edge");
        }

        for (var i = 0; i < points.Length - 1; i++)
        {
            for (var j = i + 2; j < points.Length - 1; j++)
            {
                if (Cross(points[i], points[i + 1], points[j], points[j + 1]))
                {
                    yield return new FormProblem(section.Id, j + 1, $"the line to the next point crosses the one between points {i + 1} and {i + 2}");
                }
            }
        }
    }

    private static IEnumerable<FormProblem> LineProblems(string formId, ImmutableArray<HullSection> all)
    {
        foreach (var section in all)
        {
            foreach (var twice in section.Points.Where(point => point.Line is not null).GroupBy(point => point.Line).Where(group => group.Count() > 1))
            {
                yield return new FormProblem(section.Id, null, $"line {twice.Key} passes it twice");
            }
        }

        if (LineOrder.Find(all) is null)
        {
            yield return new FormProblem(formId, null, "the named lines do not keep one order from keel to deck through all sections");
        }
    }

    private static IEnumerable<FormProblem> SideProblems(HullForm form)
    {
        if (form.StarboardSections.IsDefaultOrEmpty)
        {
            yield break;
        }

        if (form.StarboardSections.Length != form.Sections.Length)
        {
            yield return new FormProblem(form.Id, null, $"{form.Sections.Length} sections to port, {form.StarboardSections.Length} to starboard; each needs its other half");
            yield break;
        }

        foreach (var (port, starboard) in form.Sections.Zip(form.StarboardSections))
        {
            if (!Meet(port.Points[0], starboard.Points[0]))
            {
                yield return new FormProblem(starboard.Id, 1, "does not meet the port side on the centre line");
            }

            if (!Meet(port.Points[^1], starboard.Points[^1]))
            {
                yield return new FormProblem(starboard.Id, starboard.Points.Length, "does not meet the port side on the centre line");
            }
        }

        static bool Meet(SectionPoint port, SectionPoint starboard) =>
            port.HalfBreadthM > 0 || starboard.HalfBreadthM > 0 || Step(port, starboard).LengthM < SamePlaceM;
    }

    private static Point3 Step(SectionPoint from, SectionPoint to) =>
        new(to.XM - from.XM, to.HalfBreadthM - from.HalfBreadthM, to.HeightM - from.HeightM);

    // Proper crossing as seen from ahead; stretches that only touch, as along a fin on the centre line, do not cross.
    private static bool Cross(SectionPoint a, SectionPoint b, SectionPoint c, SectionPoint d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side(SectionPoint a, SectionPoint b, SectionPoint c) =>
        Math.Sign(((b.HalfBreadthM - a.HalfBreadthM) * (c.HeightM - a.HeightM)) - ((b.HeightM - a.HeightM) * (c.HalfBreadthM - a.HalfBreadthM)));
}
