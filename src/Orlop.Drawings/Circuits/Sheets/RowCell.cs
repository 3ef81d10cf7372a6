using Orlop.Boat.Things;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>A part of a row with its words, measured: a symbol, then words above the conductor that leads on and words below it; or words alone where none does.</summary>
internal sealed class RowCell
{
    /// <summary>Symbols are drawn larger than on a screen, so that their letters are 11 pt too.</summary>
    internal const double SymbolScale = 1.34;

    internal const double SymbolPx = 2 * CircuitSymbol.HalfWidth * SymbolScale;
    private const double HalfSymbolPx = (CircuitSymbol.HalfHeight * SymbolScale) + 1;
    private const double GapPx = 7;
    private const double LeadPx = 12;

    /// <summary>From the left of the symbol to the words.</summary>
    internal const double WordsLeftPx = SymbolPx + GapPx;

    private const double LeastTitlePx = 115;
    private const double MostTitlePx = 185;
    private const double LeastLastPx = 145;
    private const double BoldRatio = 1.1;

    private RowCell(SheetItem? item, CircuitEdge? before, string conductor, RowCell? passed, IReadOnlyList<string> above)
    {
        (Item, Before, Conductor, Above) = (item, before, conductor, above);
        double free = passed is null ? 0 : passed.WordsWidth - GapPx - TextSize.BoldWidth(passed.Rating, passed.RatingSize);
        LeadWidth = item is not null && before is null ? 0 : Math.Max(LeadPx, conductor.Length == 0 ? 0 : TextSize.BoldWidth(conductor, SheetPaper.TextPx) + (2 * GapPx) - free);
    }

    /// <summary>The part; null for where a row goes on.</summary>
    internal SheetItem? Item { get; }

    /// <summary>The conductor that leads to it.</summary>
    internal CircuitEdge? Before { get; }

    /// <summary>Lines above the conductor; for the last of a row, all its lines.</summary>
    internal IReadOnlyList<string> Above { get; }

    internal string Rating { get; private init; } = "";

    /// <summary>Size and length of the conductor that leads to it.</summary>
    internal string Conductor { get; }

    internal bool IsCritical { get; private init; }

    /// <summary>No conductor leads on, so words stand beside its symbol.</summary>
    internal bool IsLast { get; private init; } = true;

    internal double RatingSize => IsCritical ? SheetPaper.RatingPx : SheetPaper.TextPx;

    /// <summary>From its row's start or the words before it to its symbol; what is told of the conductor stands beside the rating before it, below the line.</summary>
    internal double LeadWidth { get; }

    /// <summary>Words beside the symbol.</summary>
    internal double WordsWidth => GapPx + Math.Max(
        Above.Select(line => TextSize.BoldWidth(line, SheetPaper.TextPx)).DefaultIfEmpty(0).Max(),
        IsLast ? 0 : TextSize.BoldWidth(Rating, RatingSize));

    internal double AbovePx => IsLast ? Math.Max(HalfSymbolPx, Above.Count * SheetPaper.LinePx / 2) : Math.Max(HalfSymbolPx, Above.Count * SheetPaper.LinePx);

    internal double BelowPx => IsLast ? Math.Max(HalfSymbolPx, Above.Count * SheetPaper.LinePx / 2) : Math.Max(HalfSymbolPx, IsCritical ? 21.5 : 19);

    /// <summary>A part with a conductor that leads on.</summary>
    /// <param name="passed">The part before it on its line.</param>
    /// <param name="load">Name of the load at the row's end; a device called after it is told by the rest of its name.</param>
    /// <param name="isNarrow">Its name takes as little room along the line as can be.</param>
    internal static RowCell Passed(SheetItem item, CircuitWording wording, RowCell? passed, string load, bool isNarrow) =>
        new(item, item.Before, Told(item.Before, wording), passed, [.. Wrapped(Rest(item.Node.Part.Title, load), isNarrow ? LeastTitlePx : MostTitlePx)])
        {
            Rating = wording.Rating(item.Node.Part),
            IsCritical = item.Node.Part is Protection,
            IsLast = false,
        };

    /// <summary>The last part of a row, its words as wide as there is room.</summary>
    internal static RowCell Last(SheetItem item, CircuitWording wording, RowCell? passed, double room)
    {
        string rating = wording.Rating(item.Node.Part).Replace(" · ", ", ", StringComparison.Ordinal).Replace(' ', '\u00A0');
        return Ending(item, item.Before, string.Join(" · ", new[] { item.Node.Part.Title, rating, item.Note }.Where(word => word.Length > 0)), wording, passed, room);
    }

    /// <summary>Where a row goes on: at a part drawn elsewhere.</summary>
    /// <param name="at">What stands for its sheet and zone until that is known: one word.</param>
    internal static RowCell Onward(CircuitEdge edge, string title, string at, CircuitWording wording, RowCell? passed, double room) => Ending(null, edge, $"{title}: {at}", wording, passed, room);

    internal static IEnumerable<string> Wrapped(string text, double most) => TextSize.Wrapped(text, SheetPaper.TextPx, most / BoldRatio);

    private static RowCell Ending(SheetItem? item, CircuitEdge? edge, string words, CircuitWording wording, RowCell? passed, double room)
    {
        RowCell bare = new(item, edge, Told(edge, wording), passed, []);
        return new RowCell(item, edge, bare.Conductor, passed, [.. Wrapped(words, Math.Max(room - bare.LeadWidth - WordsLeftPx, LeastLastPx))]);
    }

    private static string Told(CircuitEdge? edge, CircuitWording wording) => edge is null ? "" : wording.Conductor(edge);

    private static string Rest(string title, string load) => load.Length > 0 && title.StartsWith($"{load} ", StringComparison.Ordinal) ? title[(load.Length + 1)..] : title;
}
