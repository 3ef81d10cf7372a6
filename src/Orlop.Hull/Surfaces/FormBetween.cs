using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>Sections between those of a form, on the surface that is laid through it.</summary>
public static class FormBetween
{
    private const double SamePlaceM = 1e-4;

    /// <summary>The section half way from one section to the next, on either side (the starboard one is null for a symmetric boat); null where something keeps a surface from being laid.</summary>
    /// <param name="form">The form.</param>
    /// <param name="after">Number of the section behind it, from 0.</param>
    /// <param name="id">What it is called.</param>
    public static (HullSection Port, HullSection? Starboard)? HalfWay(HullForm form, int after, string id)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentOutOfRangeException.ThrowIfNegative(after);
        if (!FormCheck.Find(form).IsEmpty)
        {
            return null;
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(after, form.Sections.Length - 2);
        ImmutableArray<HullSection> both = [.. form.Sections, .. form.StarboardSections];
        return (Side(form.Sections), form.StarboardSections.IsDefaultOrEmpty ? null : Side(form.StarboardSections));

        HullSection Side(ImmutableArray<HullSection> sections)
        {
            var lines = LineOrder.Find(both)!.Value;
            var named = SectionRows.RowsOf(lines, 1, both);
            var step = FormGrid.Along(sections, SectionRows.Lay(sections, lines, 1, both), 2)[(2 * after) + 1];
            var points = ImmutableArray.CreateBuilder<SectionPoint>();
            for (var row = 0; row < step.Length; row++)
            {
                var line = named.IndexOf(row) is var at && at >= 0 ? lines[at] : null;
                if (row == 0 || line is not null || (step[row] - step[row - 1]).LengthM > SamePlaceM)
                {
                    points.Add(new SectionPoint(step[row].XM, step[row].YM, step[row].ZM, line));
                }
            }

            return new HullSection { Id = id, Points = points.ToImmutable() };
        }
    }
}
