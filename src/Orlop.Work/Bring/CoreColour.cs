using Orlop.Boat.Things;

namespace Orlop.Work.Bring;

/// <summary>Which insulation goes with which core: red for plus, black or yellow for minus (common practice, no source).</summary>
internal static class CoreColour
{
    private static readonly string[] Known = ["red", "black", "yellow", "blue", "brown", "white", "grey", "green", "orange"];

    /// <summary>The colour that the owner's name of a reel says, as one word of it; null where it says none or several.</summary>
    public static string? Of(StockItem reel)
    {
        string[] words = reel.Title.ToLowerInvariant().Split([' ', ',', ';', '-', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
        string[] said = [.. Known.Intersect(words, StringComparer.Ordinal)];
        return said.Length == 1 ? said[0] : null;
    }

    /// <summary>How well a reel's colour goes with a core: 0 well or no matter, 1 not known, 2 badly.</summary>
    public static int Misfit(string? coreId, string? colour) => (coreId, colour) switch
    {
        ("plus" or "minus", null) => 1,
        ("plus", not "red") or ("minus", not ("black" or "yellow")) => 2,
        _ => 0,
    };

    /// <summary>The colour that both ends are marked with; null where the reel's own will do or is not known.</summary>
    public static string? MarkFor(string? coreId, string? colour) => Misfit(coreId, colour) < 2 ? null : coreId == "plus" ? "red" : "black";
}
