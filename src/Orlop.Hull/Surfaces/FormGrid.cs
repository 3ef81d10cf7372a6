using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>The points that a surface is laid through on one side: grid [step][row], each row a smooth curve through the sections, its parameter the mean distance from section to section.</summary>
internal static class FormGrid
{
    private const double SamePlaceM = 1e-9;

    public static Point3[][] Along(ImmutableArray<HullSection> sections, Point3[][] rows, int stepsPerInterval)
    {
        var at = new double[sections.Length];
        for (var i = 1; i < sections.Length; i++)
        {
            at[i] = at[i - 1] + rows[i].Select((point, row) => Math.Max(0, point.XM - rows[i - 1][row].XM)).Average();
        }

        bool[] isSharp = [.. sections.Select(section => section.IsSharp)];
        SmoothCurve[] curves = [.. Enumerable.Range(0, rows[0].Length).Select(row => new SmoothCurve([.. rows.Select(section => section[row])], at, isSharp))];
        var grid = new Point3[((sections.Length - 1) * stepsPerInterval) + 1][];
        for (var step = 0; step < grid.Length; step++)
        {
            var interval = Math.Min(step / stepsPerInterval, sections.Length - 2);
            var within = step - (interval * stepsPerInterval);
            var parameter = within == stepsPerInterval ? at[interval + 1] : at[interval] + ((double)within / stepsPerInterval * (at[interval + 1] - at[interval]));
            grid[step] = [.. curves.Select(curve => curve.At(parameter)).Select(point => point.YM < SamePlaceM ? point with { YM = 0 } : point)];
        }

        return grid;
    }
}
