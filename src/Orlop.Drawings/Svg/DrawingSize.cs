using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Drawings.Svg;

/// <summary>How large a finished drawing is.</summary>
public static partial class DrawingSize
{
    /// <summary>A drawing's own width in drawing units of 1/96 in, before any scaling; null where the text is no drawing.</summary>
    public static double? WidthPx(string svg) =>
        ViewBox().Match(svg) is { Success: true } found ? double.Parse(found.Groups[1].ValueSpan, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex("""viewBox="0 0 ([0-9.]+) """)]
    private static partial Regex ViewBox();
}
