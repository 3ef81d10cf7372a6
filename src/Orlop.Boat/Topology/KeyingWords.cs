using System.Text.RegularExpressions;

namespace Orlop.Boat.Topology;

/// <summary>Whether two descriptions of a plug's shape or key, in the owner's words, mean the same. How they are written counts for nothing: capitals, spaces, commas, hyphens.</summary>
public static partial class KeyingWords
{
    // Two slips of the pen in a word of some length; in a shorter one, such as a colour, every letter tells, but not their order.
    private const int MostSlips = 2;
    private const int LeastLength = 5;

    /// <summary>They mean the same; never where one is not given.</summary>
    public static bool AreSame(string? one, string? other) => one is not null && other is not null && Plain(one) == Plain(other);

    /// <summary>They are so nearly the same that one may be a slip of the pen: no number and no single letter differs, and at most two letters do.</summary>
    public static bool MayBeSame(string? one, string? other)
    {
        if (one is null || other is null || AreSame(one, other) || !Codes(one).SequenceEqual(Codes(other)))
        {
            return false;
        }

        (string[] first, string[] second) = (Words(one), Words(other));
        return first.Length == second.Length
            ? first.Zip(second).All(pair => AreNear(pair.First, pair.Second)) && first.Zip(second).Sum(pair => Slips(pair.First, pair.Second)) <= MostSlips
            : AreNear(Plain(one), Plain(other));
    }

    private static bool AreNear(string one, string other) =>
        Math.Min(one.Length, other.Length) >= LeastLength ? Slips(one, other) <= MostSlips : one.Order().SequenceEqual(other.Order());

    private static string Plain(string words) => string.Concat(words.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant));

    // Numbers and single letters are what tells sizes and types apart.
    private static IEnumerable<string> Codes(string words) => Words(words).Where(piece => piece.Length == 1 || char.IsDigit(piece[0])).Order(StringComparer.Ordinal);

    private static string[] Words(string words) => [.. Pieces().Matches(words.ToLowerInvariant()).Select(piece => piece.Value)];

    // Letters left out, put in or exchanged (Levenshtein).
    private static int Slips(string from, string to)
    {
        int[] before = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int[] row = new int[to.Length + 1];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                row[j] = Math.Min(Math.Min(row[j - 1], before[j]) + 1, before[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1));
            }

            before = row;
        }

        return before[^1];
    }

    [GeneratedRegex(@"\p{L}+|\d+")]
    private static partial Regex Pieces();
}
