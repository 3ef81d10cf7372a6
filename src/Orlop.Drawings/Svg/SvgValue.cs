using System.Globalization;

namespace Orlop.Drawings.Svg;

/// <summary>The value of an attribute: text, or a number written with two decimals and a point in every culture.</summary>
internal readonly struct SvgValue
{
    private SvgValue(string text) => Text = text;

    internal string Text { get; }

    public static implicit operator SvgValue(string text) => new(text);

    public static implicit operator SvgValue(double number) => new(Number(number));

    /// <summary>The number as SVG writes it; a drawing never holds a number that is not finite.</summary>
    internal static string Number(double number) => double.IsFinite(number)
        ? (Math.Round(number, 2, MidpointRounding.AwayFromZero) + 0.0).ToString("0.##", CultureInfo.InvariantCulture)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "A drawing has only finite numbers.");
}
