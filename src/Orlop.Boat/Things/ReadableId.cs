using System.Globalization;
using System.Text;

namespace Orlop.Boat.Things;

/// <summary>Makes ids that people can read.</summary>
public static class ReadableId
{
    private const int MostLetters = 40;

    /// <summary>An id made of words, with a number behind it where others use it already: <c>anchor-light</c>, <c>anchor-light-2</c>.</summary>
    /// <param name="isTaken">An id is in use.</param>
    public static string Of(string words, Func<string, bool> isTaken)
    {
        string stem = Stem(words);
        for (int number = 1; ; number++)
        {
            string id = number == 1 ? stem : string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}");
            if (!isTaken(id))
            {
                return id;
            }
        }
    }

    private static string Stem(string words)
    {
        StringBuilder stem = new();
        foreach (char letter in words.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterLower(letter) || (char.IsAsciiDigit(letter) && stem.Length > 0))
            {
                stem.Append(letter);
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark && stem.Length > 0 && stem[^1] != '-')
            {
                stem.Append('-');
            }
        }

        string cut = (stem.Length > MostLetters ? stem.ToString(0, MostLetters) : stem.ToString()).TrimEnd('-');
        return cut.Length == 0 ? "thing" : cut;
    }
}
