using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>What the marks of an alteration mean, each beside a sample of it.</summary>
internal static class ChangeLegend
{
    private const double SampleWidth = 24;
    private const double SampleHeight = 11;
    private const double Gap = 6;
    private const double BetweenPx = 18;
    private const double RowPx = 19;

    /// <summary>Draws it in as many rows as the width asks for; returns the next free line.</summary>
    internal static double Draw(SvgWriter svg, Spot corner, double right)
    {
        (double x, double y) = (corner.X, corner.Y);
        svg.Start("g", ("class", "view legend"));
        foreach ((string words, Action<SvgWriter, Box> sample) in Entries)
        {
            double width = SampleWidth + Gap + TextSize.Width(words, TextSize.Small);
            if (x > corner.X && x + width > right)
            {
                (x, y) = (corner.X, y + RowPx);
            }

            sample(svg, new Box(x, y - SampleHeight + 1, SampleWidth, SampleHeight));
            svg.Text(x + SampleWidth + Gap, y, words, "soft", size: TextSize.Small);
            x += width + BetweenPx;
        }

        svg.End();
        return y + RowPx;
    }

    private static readonly (string Words, Action<SvgWriter, Box> Sample)[] Entries =
    [
        ("added or changed", (svg, box) => svg.Rect(box, "kept added")),
        ("cable added or changed", (svg, box) => svg.Line(box.X, box.Centre.Y, box.Right, box.Centre.Y, "run added")),
        ("taken out", (svg, box) => svg.Rect(box, "kept gone")),
        ("moved", Arrow),
    ];

    private static void Arrow(SvgWriter svg, Box box)
    {
        const double Head = 7;
        svg.Line(box.X, box.Centre.Y, box.Right - Head, box.Centre.Y, "added");
        svg.Polyline([new(box.Right, box.Centre.Y), new(box.Right - Head, box.Centre.Y - (Head / 2)), new(box.Right - Head, box.Centre.Y + (Head / 2))], "arrow", isClosed: true);
    }
}
