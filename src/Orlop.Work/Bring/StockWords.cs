namespace Orlop.Work.Bring;

/// <summary>What the owner's name of a stock item or tool says it is.</summary>
internal static class StockWords
{
    /// <summary>It is one of these by its name: what stands behind "with" comes with it and is not what it is ("Heat-shrink with glue" is no glue).</summary>
    public static bool Is(string title, params ReadOnlySpan<string> words) => Says(title.ToLowerInvariant().Split(" with ")[0], words);

    /// <summary>One of its words is one of these, or the plural of one; of these, what is several words stands in it as it is.</summary>
    public static bool Says(string title, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (word.Contains(' ', StringComparison.Ordinal) && title.Contains(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        foreach (string said in title.ToLowerInvariant().Split([' ', ',', ';', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (string word in words)
            {
                if (said == word || said == $"{word}s")
                {
                    return true;
                }
            }
        }

        return false;
    }
}
