using Orlop.Drawings.Paper;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>
/// A sheet on its side: frame, zones lettered downwards and numbered across, columns for rows, a foot. Zones about 50 mm, letters without I and O, as ISO 5457 has them (from memory).
/// </summary>
internal sealed class SheetPaper
{
    /// <summary>Letters on paper: 11 pt, the least for what is read at work.</summary>
    internal const double TextPx = 11 * PxPerPt;

    /// <summary>Ratings of fuses and breakers: 14 pt bold, as critical numbers are.</summary>
    internal const double RatingPx = 14 * PxPerPt;

    internal const double LinePx = 17.6;

    private const double PxPerPt = 96.0 / 72;
    private const double EdgeMm = 5;
    private const double FrameMm = 10;
    private const double FootMm = 12;
    private const double ColumnMm = 133;
    private const double BetweenMm = 5;
    private const double PadPx = 6;
    private const double ZoneMm = 50;
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private readonly int _across;
    private readonly int _down;

    internal SheetPaper(PaperSize size)
    {
        (double narrowMm, double longMm) = PaperSizes.Of(size);
        (Width, Height) = (Px(longMm), Px(narrowMm));
        Inner = new Box(Px(FrameMm), Px(FrameMm), Width - (2 * Px(FrameMm)), Height - (2 * Px(FrameMm)));
        _across = 2 * (int)Math.Round(Inner.Width / Px(ZoneMm) / 2);
        _down = 2 * (int)Math.Round(Inner.Height / Px(ZoneMm) / 2);
        int count = Math.Max(1, (int)Math.Round(Inner.Width / Px(ColumnMm)));
        double width = (Inner.Width - (2 * PadPx) - ((count - 1) * Px(BetweenMm))) / count;
        Columns = [.. Enumerable.Range(0, count).Select(at => new Box(Inner.X + PadPx + (at * (width + Px(BetweenMm))), Inner.Y + PadPx, width, Inner.Height - Px(FootMm) - (2 * PadPx)))];
    }

    internal double Width { get; }

    internal double Height { get; }

    /// <summary>Within the frame.</summary>
    internal Box Inner { get; }

    /// <summary>Where rows go, from left to right.</summary>
    internal IReadOnlyList<Box> Columns { get; }

    /// <summary>Zone of a spot: B4.</summary>
    internal string ZoneAt(Spot spot)
    {
        int across = Math.Clamp((int)((spot.X - Inner.X) / Inner.Width * _across), 0, _across - 1), down = Math.Clamp((int)((spot.Y - Inner.Y) / Inner.Height * _down), 0, _down - 1);
        return FormattableString.Invariant($"{Letters[down]}{across + 1}");
    }

    /// <summary>Frame, zones and foot.</summary>
    internal void Draw(SvgWriter svg, string left, string below, string right)
    {
        double edge = Px(EdgeMm), foot = Inner.Bottom - Px(FootMm);
        svg.Rect(new Box(edge, edge, Width - (2 * edge), Height - (2 * edge)), "fine").Rect(Inner, "house");
        for (int zone = 0; zone < _across; zone++)
        {
            double x = Inner.X + ((zone + 0.5) * Inner.Width / _across);
            Tick(svg, Inner.X + (zone * Inner.Width / _across), edge, isAcross: true, zone);
            foreach (double y in new[] { edge + ((Inner.Y - edge) / 2), Height - edge - ((Inner.Y - edge) / 2) })
            {
                svg.Text(x, y + (TextPx * 0.36), FormattableString.Invariant($"{zone + 1}"), "zone", "middle", TextPx);
            }
        }

        for (int zone = 0; zone < _down; zone++)
        {
            double y = Inner.Y + ((zone + 0.5) * Inner.Height / _down);
            Tick(svg, Inner.Y + (zone * Inner.Height / _down), edge, isAcross: false, zone);
            foreach (double x in new[] { edge + ((Inner.X - edge) / 2), Width - edge - ((Inner.X - edge) / 2) })
            {
                svg.Text(x, y + (TextPx * 0.36), Letters[zone].ToString(), "zone", "middle", TextPx);
            }
        }

        svg.Line(Inner.X, foot, Inner.Right, foot, "house");
        double room = Inner.Width - (2 * PadPx) - TextSize.BoldWidth(right, RatingPx) - LinePx;
        svg.Text(Inner.X + PadPx, foot + 18, TextSize.Fitted(left, TextPx, room / 1.1), "strong", size: TextPx);
        svg.Text(Inner.X + PadPx, foot + 18 + LinePx, TextSize.Fitted(below, TextPx, room), size: TextPx);
        svg.Text(Inner.Right - PadPx, foot + 29, right, "strong", "end", RatingPx);
    }

    private void Tick(SvgWriter svg, double at, double edge, bool isAcross, int zone)
    {
        if (zone == 0)
        {
            return;
        }

        if (isAcross)
        {
            svg.Line(at, edge, at, Inner.Y, "fine").Line(at, Inner.Bottom, at, Height - edge, "fine");
        }
        else
        {
            svg.Line(edge, at, Inner.X, at, "fine").Line(Inner.Right, at, Width - edge, at, "fine");
        }
    }

    private static double Px(double mm) => mm * DrawingFrame.UnitsPerMm;
}
