namespace Orlop.App.CommandLine;

/// <summary>What someone may have meant who typed a name that is not there.</summary>
internal static class NearNames
{
    private const int MostCount = 5;

    /// <summary>" Did you mean winch-fuse (Fuse of the winch)?" with the nearest ids first, or nothing.</summary>
    /// <param name="typed">The name that is not there.</param>
    /// <param name="known">Ids, each with what people call it; a typed part of either counts as near.</param>
    public static string Hint(string typed, IEnumerable<(string Id, string? Name)> known)
    {
        List<string> near =
        [
            .. known.Select(thing => (thing.Id, thing.Name, Far: Math.Min(Far(typed, thing.Id), thing.Name is { } name ? Math.Min(Far(typed, name), Far(typed, BeforeComma(name))) : int.MaxValue)))
                .Where(thing => thing.Far <= Math.Max(2, typed.Length / 3))
                .OrderBy(thing => thing.Far).ThenBy(thing => thing.Id, StringComparer.Ordinal)
                .Take(MostCount)
                .Select(thing => thing.Name is { } name && name != thing.Id ? $"{thing.Id} ({name})" : thing.Id),
        ];
        return near.Count switch
        {
            0 => "",
            1 => $" Did you mean {near[0]}?",
            _ => $" Did you mean {string.Join(", ", near.SkipLast(1))} or {near[^1]}?",
        };
    }

    /// <summary>The same for plain names.</summary>
    public static string Hint(string typed, IEnumerable<string> known) => Hint(typed, known.Select(name => (name, (string?)null)));

    // "Solar controller, 2 × 200 W" is asked for by what stands before its figures.
    private static string BeforeComma(string name) => name.Split(',')[0];

    // An id's hyphens are a name's spaces.
    private static string Words(string text) => text.ToLowerInvariant().Replace('-', ' ');

    // Edits from one to the other, letters that changed places as one (optimal string alignment); a part of three letters or more is one edit away.
    private static int Far(string typed, string known)
    {
        string from = Words(typed), to = Words(known);
        if (from.Length >= 3 && to.Contains(from, StringComparison.Ordinal))
        {
            return from.Length == to.Length ? 0 : 1;
        }

        int[,] edits = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++)
        {
            edits[i, 0] = i;
        }

        for (int j = 0; j <= to.Length; j++)
        {
            edits[0, j] = j;
        }

        for (int i = 1; i <= from.Length; i++)
        {
            for (int j = 1; j <= to.Length; j++)
            {
                int change = edits[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                edits[i, j] = Math.Min(change, Math.Min(edits[i - 1, j], edits[i, j - 1]) + 1);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    edits[i, j] = Math.Min(edits[i, j], edits[i - 2, j - 2] + 1);
                }
            }
        }

        return edits[from.Length, to.Length];
    }
}
