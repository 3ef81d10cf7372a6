using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Paper;

/// <summary>Cable labels in true size: cut along the lines, wrap the printed half around the cable, cover with the clear tail.</summary>
public static class LabelSheet
{
    /// <summary>Least height of a letter's em on a label, in mm; capital letters are about 0.7 of it.</summary>
    public const double LeastTextMm = 3.6;

    private const double LabelWidthMm = 88;
    private const double LabelHeightMm = 24;
    private const double GapMm = 3;
    private const double EdgeMm = 12;
    private const double HeadMm = 30;
    private const double RulerMm = 100;

    /// <summary>One SVG a page.</summary>
    public static IReadOnlyList<string> Draw(string boat, IReadOnlyList<CableLabel> labels, PaperSize paper)
    {
        (double widthMm, double heightMm) = PaperSizes.Of(paper);
        int across = (int)((widthMm - (2 * EdgeMm) + GapMm) / (LabelWidthMm + GapMm));
        int down = (int)((heightMm - HeadMm - EdgeMm + GapMm) / (LabelHeightMm + GapMm));
        CableLabel[][] pages = labels.Count == 0 ? [[]] : [.. labels.Chunk(across * down)];
        return [.. pages.Select((page, index) => Page(boat, page, across, widthMm, heightMm, index + 1, pages.Length))];
    }

    private static string Page(string boat, CableLabel[] labels, int across, double widthMm, double heightMm, int number, int count)
    {
        SvgWriter svg = new();
        string title = FormattableString.Invariant($"{boat}: cable labels, page {number} of {count}");
        DrawingFrame.Start(svg, new Frame(FormattableString.Invariant($"labels-{number}"), title, FormattableString.Invariant($"{labels.Length} labels in true size."),
            Units(widthMm), Units(heightMm), IsTrueSize: true));
        svg.Text(Units(EdgeMm), Units(10), title, "strong");
        svg.Text(Units(EdgeMm), Units(15), "Print at 100 %, without fitting to the page. The bar must measure 100 mm.", "soft", size: TextSize.Small);
        Ruler(svg);
        for (int index = 0; index < labels.Length; index++)
        {
            double x = EdgeMm + (index % across * (LabelWidthMm + GapMm)), y = HeadMm + (index / across * (LabelHeightMm + GapMm));
            Label(svg, labels[index], x, y);
        }

        return svg.End().ToString();
    }

    private static void Ruler(SvgWriter svg)
    {
        svg.Start("g", ("class", "ruler"), ("data-mm", RulerMm));
        svg.Line(Units(EdgeMm), Units(20), Units(EdgeMm + RulerMm), Units(20), "fine");
        for (int mm = 0; mm <= RulerMm; mm += 10)
        {
            svg.Line(Units(EdgeMm + mm), Units(mm % 50 == 0 ? 17.5 : 18.5), Units(EdgeMm + mm), Units(20), "fine");
        }

        svg.Text(Units(EdgeMm + RulerMm + 2), Units(20), "100 mm", "soft", size: TextSize.Small).End();
    }

    private static void Label(SvgWriter svg, CableLabel label, double xMm, double yMm)
    {
        const double PadMm = 2;
        double most = Units(LabelWidthMm - (2 * PadMm));
        svg.Start("g", ("class", "cable-label"), ("data-id", label.Id)).Title($"{label.Id}: {label.From} to {label.To}");
        svg.Rect(new Box(Units(xMm), Units(yMm), Units(LabelWidthMm), Units(LabelHeightMm)), "fine");
        (string Text, double SizeMm, string Style)[] lines =
        [
            (label.Id, 5, "strong"),
            (label.To.Length == 0 ? label.From : $"from {label.From}", LeastTextMm, ""),
            (label.To.Length == 0 ? "" : $"to {label.To}", LeastTextMm, ""),
            (label.Fuse.Length == 0 ? label.Size : $"{label.Size}, {label.Fuse}", LeastTextMm, ""),
        ];
        double y = yMm + PadMm;
        foreach ((string text, double sizeMm, string style) in lines)
        {
            y += sizeMm + 0.6;
            double fitted = Math.Clamp(Units(sizeMm) * most / TextSize.BoldWidth(text + " ", Units(sizeMm)), Units(LeastTextMm), Units(sizeMm));
            svg.Text(Units(xMm + PadMm), Units(y), TextSize.Fitted(text, fitted, most), style, size: fitted);
        }

        svg.End();
    }

    private static double Units(double mm) => mm * DrawingFrame.UnitsPerMm;
}
