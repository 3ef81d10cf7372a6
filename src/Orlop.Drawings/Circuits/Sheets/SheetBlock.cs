using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>Where something is: sheet, from 1, and zone.</summary>
internal sealed record SheetSpot(int Sheet, string Zone)
{
    /// <summary>Stands for a spot until it is known: one word, as wide as any.</summary>
    internal const string Unknown = "sheet\u00A0888,\u00A0W88";

    public override string ToString() => FormattableString.Invariant($"sheet\u00A0{Sheet},\u00A0{Zone}");
}

/// <summary>A section, measured: the lines of its head and its rows.</summary>
/// <param name="HeadLines">Its name with the ratings.</param>
/// <param name="FromLines">For each conductor that comes to it from elsewhere, what its words are.</param>
internal sealed record MeasuredSection(SheetSection Section, IReadOnlyList<string> HeadLines, IReadOnlyList<(CircuitEdge Edge, IReadOnlyList<string> Lines)> FromLines, IReadOnlyList<RowLayout> Rows)
{
    internal const double RowGapPx = 2;
    private const double AfterHeadPx = 6;
    private const double BareBarPx = 22;

    /// <summary>A branching part that is no bar has its symbol in the head.</summary>
    internal bool HasSymbol => Section.Head is { IsBar: false };

    internal double HeadHeight => Math.Max((HeadLines.Count + FromLines.Sum(from => from.Lines.Count)) * SheetPaper.LinePx, HasSymbol ? RowCell.SymbolPx : 0) + AfterHeadPx;

    /// <summary>A bar that nothing leaves still has its length.</summary>
    internal double BareHeight => Rows.Count == 0 && Section.Head is { IsBar: true } ? BareBarPx : 0;
}

/// <summary>Some rows of a section in one column; a section that is longer goes on in another.</summary>
/// <param name="First">The first of its rows.</param>
/// <param name="Count">How many.</param>
internal sealed record PlacedStretch(MeasuredSection Measured, int Sheet, Box Room, int First, int Count)
{
    internal const double MarkPx = SheetPaper.LinePx + 6;

    internal bool IsFirst => First == 0;

    internal bool IsLast => First + Count == Measured.Rows.Count;

    internal double HeadHeight => IsFirst ? Measured.HeadHeight : MarkPx;

    /// <summary>Top of a row on the sheet.</summary>
    internal double TopOf(int row) => Room.Y + HeadHeight + Measured.Rows.Skip(First).Take(row - First).Sum(before => before.Height + MeasuredSection.RowGapPx);
}
