namespace Orlop.Work.Bring;

/// <summary>What the owner's name of a stock item or tool says it is.</summary>
internal static class StockWords
{
    /// <summary>One of its words is one of these, or the plural of one.</summary>
    public static bool Says(string title, params ReadOnlySpan<string> words)
    {
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
