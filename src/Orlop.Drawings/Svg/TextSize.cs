namespace Orlop.Drawings.Svg;

/// <summary>How wide a text may become: widths of a broad sans-serif, so that a narrower font fits too.</summary>
internal static class TextSize
{
    internal const double Body = 13;
    internal const double Small = 12;
    private const double LineRatio = 1.2;
    private const double BoldRatio = 1.1;

    internal static double Height(double size) => size * LineRatio;

    internal static double Width(string text, double size) => text.Sum(WidthRatio) * size;

    internal static double BoldWidth(string text, double size) => BoldRatio * Width(text, size);

    /// <summary>The text, cut with an ellipsis where it is wider than allowed.</summary>
    internal static string Fitted(string text, double size, double mostWidth)
    {
        if (Width(text, size) <= mostWidth)
        {
            return text;
        }

        int length = text.Length;
        while (length > 1 && Width(text[..length] + "…", size) > mostWidth)
        {
            length--;
        }

        return (char.IsHighSurrogate(text[length - 1]) ? text[..(length - 1)] : text[..length]).TrimEnd() + "…";
    }

    /// <summary>The text in lines no wider than allowed, broken between words; a single longer word is cut.</summary>
    internal static IEnumerable<string> Wrapped(string text, double size, double mostWidth)
    {
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer, size) > mostWidth)
            {
                yield return Fitted(line, size, mostWidth);
                longer = word;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            yield return Fitted(line, size, mostWidth);
        }
    }

    private static double WidthRatio(char letter) => letter switch
    {
        'i' or 'l' or 'j' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or ' ' or '(' or ')' or 'I' or '·' => 0.36,
        't' or 'f' or 'r' or '/' or '-' => 0.44,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or '±' or '…' => 0.98,
        > '\u2E80' => 1.05,
        _ when char.IsUpper(letter) => 0.74,
        _ => 0.63,
    };
}
