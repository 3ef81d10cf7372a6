using System.Collections.Immutable;
using System.Globalization;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Charts;

/// <summary>A year on one sheet: a row for each month, a column for each hour of the day, the darker the larger the share; each month's largest stands beside it.</summary>
public static class YearMap
{
    private const int Months = 12;
    private const int Hours = 24;
    private const double LeftPx = 40;
    private const double RightPx = 52;
    private const double TopPx = 24;
    private const double RowPx = 17;
    private const double LeastWidthPx = 240;

    /// <summary>The map as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="share">Twelve times twenty-four shares, 0 to 1; no number where there is none.</param>
    public static string Draw(string id, string title, ImmutableArray<double> share, double widthPx, CultureInfo culture)
    {
        if (share.IsDefault || share.Length != Months * Hours || !(widthPx >= LeastWidthPx))
        {
            throw new ArgumentOutOfRangeException(nameof(share), "Year map: twelve times twenty-four shares, width from 240 drawing units.");
        }

        SvgWriter svg = new();
        double column = (widthPx - LeftPx - RightPx) / Hours;
        string[] largest = [.. Enumerable.Range(0, Months).Select(month => Largest(share, month, culture))];
        string[] names = [.. Enumerable.Range(1, Months).Select(culture.DateTimeFormat.GetAbbreviatedMonthName)];
        string told = string.Join(' ', names.Zip(largest, (name, most) => $"{name}: at most {most}."));
        DrawingFrame.Start(svg, new Frame(id, title, told, widthPx, TopPx + (Months * RowPx) + 44));
        svg.Text(widthPx - 4, 15, "at most", "soft", "end", TextSize.Small);
        for (int month = 0; month < Months; month++)
        {
            double y = TopPx + (month * RowPx);
            svg.Text(LeftPx - 6, y + RowPx - 5, names[month], "soft", "end", TextSize.Small);
            svg.Text(widthPx - 4, y + RowPx - 5, largest[month], "", "end", TextSize.Small);
            for (int hour = 0; hour < Hours; hour++)
            {
                if (share[(month * Hours) + hour] is var part && part > 0)
                {
                    svg.Leaf("rect", ("x", LeftPx + (hour * column)), ("y", y), ("width", column), ("height", RowPx - 1), ("class", "solid"), ("opacity", 0.1 + (0.8 * Math.Min(1, part))));
                }
            }

            svg.Line(LeftPx, y + RowPx - 0.5, widthPx - RightPx, y + RowPx - 0.5, "grid");
        }

        for (int hour = 0; hour <= Hours; hour += 6)
        {
            svg.Text(LeftPx + (hour * column), TopPx + (Months * RowPx) + 14, hour.ToString(culture), "soft", "middle", TextSize.Small);
        }

        svg.Text(LeftPx + (Hours * column / 2), TopPx + (Months * RowPx) + 32, "Hour of the day", "soft", "middle", TextSize.Small);
        return svg.End().ToString();
    }

    private static string Largest(ImmutableArray<double> share, int month, CultureInfo culture)
    {
        double[] row = [.. share.AsSpan(month * Hours, Hours).ToArray().Where(double.IsFinite)];
        return row.Length == 0 ? "?" : row.Max().ToString("0 %", culture);
    }
}
