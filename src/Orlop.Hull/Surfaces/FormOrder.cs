using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>Whether sections stand one forward of the other on every row that a surface would follow; only then can curves be laid along them.</summary>
internal static class FormOrder
{
    private const double SamePlaceM = 1e-9;

    /// <summary>Each section of a side that does not stand forward of the one before it.</summary>
    /// <param name="sections">From aft to forward.</param>
    /// <param name="rows">Their points, as <see cref="SectionRows"/> lays them.</param>
    public static IEnumerable<FormProblem> Find(ImmutableArray<HullSection> sections, Point3[][] rows)
    {
        for (var i = 1; i < sections.Length; i++)
        {
            if (Crossed(rows[i - 1], rows[i]) is { } row)
            {
                yield return new FormProblem(sections[i].Id, null,
                    FormattableString.Invariant($"lies at x {rows[i][row].XM:0.###} m at height {rows[i][row].ZM:0.###} m, not forward of {sections[i - 1].Id} at x {rows[i - 1][row].XM:0.###} m; sections run from aft to forward"));
            }
        }
    }

    // Rows may meet in a point, as at the foot of a stem; sections that meet in all of theirs are one and the same.
    private static int? Crossed(Point3[] before, Point3[] here)
    {
        var isSame = true;
        for (var row = 0; row < here.Length; row++)
        {
            var isOnIt = (here[row] - before[row]).LengthM <= SamePlaceM;
            if (here[row].XM < before[row].XM - SamePlaceM || (here[row].XM < before[row].XM + SamePlaceM && !isOnIt))
            {
                return row;
            }

            isSame &= isOnIt;
        }

        return isSame ? 0 : null;
    }
}
