namespace Orlop.Review.Findings;

/// <summary>How a minus is written in a working: − (U+2212) before a negative number, between two operands and in a power of ten; a hyphen stays a hyphen. The only place that does it for numbers.</summary>
internal static class MinusSign
{
    private const char Hyphen = '-';
    private const char Minus = '−';

    /// <summary>The text with its minus signs; a name, a range of clauses or a day keeps its hyphens.</summary>
    public static string In(string text)
    {
        int first = text.IndexOf(Hyphen, StringComparison.Ordinal);
        return first < 0 ? text : string.Create(text.Length, text, (signs, from) =>
        {
            from.CopyTo(signs);
            for (int i = first; i < signs.Length; i++)
            {
                signs[i] = from[i] == Hyphen && IsMinus(from, i) ? Minus : from[i];
            }
        });
    }

    private static bool IsMinus(string text, int at)
    {
        char before = SignAt(text, at - 1), after = SignAt(text, at + 1);
        return IsOfNumber(after)
            ? !(char.IsLetterOrDigit(before) || before is Hyphen or '.') || (before == 'E' && char.IsAsciiDigit(SignAt(text, at - 2)))
            : before == ' ' && after == ' ' && EndsOperand(SignAt(text, at - 2)) && BeginsOperand(SignAt(text, at + 2));
    }

    private static bool IsOfNumber(char sign) => char.IsAsciiDigit(sign) || sign == '.';

    private static bool EndsOperand(char sign) => char.IsAsciiDigit(sign) || sign is ')' or '|' or '°' or '²' or '³' or '%';

    private static bool BeginsOperand(char sign) => IsOfNumber(sign) || sign is '(' or '|' or '√' or Hyphen;

    private static char SignAt(string text, int at) => at >= 0 && at < text.Length ? text[at] : '\0';
}
