using Orlop.Boat.Things;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>
/// Symbols of parts, 28 wide and 20 high, the conductor entering at the left and leaving at the right, or turned to enter at the top. Shapes after the general
/// conventions of the trade (as in IEC 60617): a circle for a source, a rectangle for a fuse, an open contact for a switch.
/// </summary>
internal static class CircuitSymbol
{
    internal const double HalfWidth = 14;
    internal const double HalfHeight = 11;
    private const double LetterPx = 11;

    internal static void Draw(SvgWriter svg, Part part, Spot at, string style, bool isDownward = false)
    {
        svg.Start("g", ("transform", isDownward ? Invariant($"rotate(90 {SvgValue.Number(at.X)} {SvgValue.Number(at.Y)})") : ""));
        Shape(svg, part, at, style);
        svg.End();
        foreach ((string letter, double x, double y) in Letters(part))
        {
            Spot middle = isDownward ? new(at.X - y, at.Y + x) : new(at.X + x, at.Y + y);
            svg.Start("text", ("x", middle.X), ("y", middle.Y + 4), ("class", "strong"), ("text-anchor", "middle"), ("font-size", LetterPx), ("aria-hidden", "true")).Content(letter).End();
        }
    }

    /// <summary>Letters of the symbol, with their middles from its middle.</summary>
    private static (string Letter, double X, double Y)[] Letters(Part part) => part switch
    {
        Charger charger => [(charger.Drive switch { ChargerDrive.Engine => "G", ChargerDrive.Sun => "PV", _ => "~/=" }, 0, 0)],
        Inverter => [("=", -6, -5), ("~", 6, 5)],
        DcConverter => [("=", -6, -5), ("=", 6, 5)],
        ElectricLoad load when IsMotor(load) => [("M", 0, 0)],
        _ => [],
    };

    private static bool IsMotor(ElectricLoad load) => load.IsCrankingMotor || load.StartRatio is { Value: > 1 };

    private static void Shape(SvgWriter svg, Part part, Spot at, string style)
    {
        string kept = $"kept {style}".TrimEnd(), fine = $"fine {style}".TrimEnd();
        (double x, double y) = (at.X, at.Y);
        switch (part)
        {
            case BatteryBank:
                svg.Circle(at, HalfHeight, kept).Line(x - 3, y - 7, x - 3, y + 7, fine).Line(x + 3, y - 4, x + 3, y + 4, fine);
                Leads(svg, x, y, HalfHeight, fine);
                break;
            case Charger:
                svg.Circle(at, HalfHeight, kept);
                Leads(svg, x, y, HalfHeight, fine);
                break;
            case ShoreInlet:
                svg.Circle(at, HalfHeight, kept).Path(Wave(x, y), fine);
                Leads(svg, x, y, HalfHeight, fine);
                break;
            case Inverter or DcConverter:
                svg.Rect(Box.Around(at, 24, 22), kept).Line(x - 12, y + 11, x + 12, y - 11, fine);
                Leads(svg, x, y, 12, fine);
                break;
            case Protection { Means: ProtectionMeans.Fuse }:
                svg.Rect(Box.Around(at, 24, 9), kept).Line(x - HalfWidth, y, x + HalfWidth, y, fine);
                break;
            case Protection:
                Contact(svg, x, y, fine);
                svg.Path(Invariant($"M{x - 11} {y - 4}l8 8m0-8l-8 8"), fine);
                break;
            case IsolatorSwitch:
                Contact(svg, x, y, fine);
                svg.Circle(new(x - 7, y), 2, kept).Circle(new(x + 8, y), 2, kept);
                break;
            case Changeover:
                svg.Path(Invariant($"M{x - HalfWidth} {y}h4M{x - 10} {y}L{x + 8} {y}"), fine).Circle(new(x - 10, y), 2, kept).Circle(new(x - 10, y + 8), 2, kept).Circle(new(x + 8, y), 2, kept);
                svg.Line(x + 8, y, x + HalfWidth, y, fine);
                break;
            case PlugAndSocket:
                svg.Path(Invariant($"M{x - HalfWidth} {y}h9M{x + 3} {y - 7}a7 7 0 0 0 0 14M{x - 4} {y}h11M{x + 7} {y}h7"), fine);
                svg.Rect(Box.Around(new(x - 2, y), 8, 4), $"solid {style}".TrimEnd());
                break;
            case ElectricLoad load when IsMotor(load):
                svg.Circle(at, HalfHeight, kept).Line(x - HalfWidth, y, x - HalfHeight, y, fine);
                break;
            default:
                svg.Rect(Box.Around(at, 22, 18), kept).Path(Invariant($"M{x - 5} {y - 5}L{x + 6} {y}L{x - 5} {y + 5}"), fine);
                svg.Line(x - HalfWidth, y, x - 11, y, fine);
                break;
        }
    }

    private static void Leads(SvgWriter svg, double x, double y, double half, string style) =>
        svg.Line(x - HalfWidth, y, x - half, y, style).Line(x + half, y, x + HalfWidth, y, style);

    private static void Contact(SvgWriter svg, double x, double y, string style) =>
        svg.Path(Invariant($"M{x - HalfWidth} {y}h7l13-8M{x + 8} {y}h6"), style);

    private static string Wave(double x, double y) => Invariant($"M{x - 7} {y}q3.5-8 7 0t7 0");

    private static string Invariant(FormattableString path) => FormattableString.Invariant(path);
}
