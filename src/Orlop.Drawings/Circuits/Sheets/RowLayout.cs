namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>A row set in a width: one line, or more where its parts do not fit beside one another.</summary>
internal sealed class RowLayout
{
    private const double BetweenLinesPx = 12;
    private const double TurnPx = 10;

    /// <summary>Lines after the first begin farther in.</summary>
    internal const double IndentPx = 20;

    private RowLayout(IReadOnlyList<IReadOnlyList<RowCell>> lines) => Lines = lines;

    internal IReadOnlyList<IReadOnlyList<RowCell>> Lines { get; }

    internal double Height => Lines.Sum(line => Above(line) + Below(line)) + ((Lines.Count - 1) * BetweenLinesPx);

    /// <summary>Sets a row.</summary>
    /// <param name="at">What stands for a sheet and zone until that is known: one word.</param>
    internal static RowLayout Of(SheetChain row, CircuitGraph graph, CircuitWording wording, double width, string at)
    {
        List<List<RowCell>> lines = [[]];
        double left = width;
        string load = row.Onward is null ? row.Items[^1].Node.Part.Title : "";
        foreach (SheetItem item in row.Items)
        {
            bool isLast = item == row.Items[^1] && row.Onward is null;
            Put((before, room, isNarrow) => isLast ? RowCell.Last(item, wording, before, room) : RowCell.Passed(item, wording, before, load, isNarrow));
        }

        if (row.Onward is { } onward)
        {
            Put((before, room, _) => RowCell.Onward(onward, graph.Nodes[onward.To].Part.Title, at, wording, before, room));
        }

        return new RowLayout(lines);

        void Put(Func<RowCell?, double, bool, RowCell> make)
        {
            RowCell cell = make(lines[^1].LastOrDefault(), left, false);
            if (IsTooWide(cell))
            {
                cell = make(lines[^1].LastOrDefault(), left, true);
            }

            if (IsTooWide(cell) && lines[^1].Count > 0)
            {
                lines.Add([]);
                left = width - IndentPx;
                cell = make(null, left, false);
            }

            lines[^1].Add(cell);
            left -= WidthOf(cell);
        }

        bool IsTooWide(RowCell cell) => WidthOf(cell) + (cell.IsLast ? 0 : TurnPx) > left;
    }

    internal static double WidthOf(RowCell cell) => cell.LeadWidth + RowCell.SymbolPx + cell.WordsWidth;

    internal static double Above(IReadOnlyList<RowCell> line) => line.Max(cell => cell.AbovePx);

    internal static double Below(IReadOnlyList<RowCell> line) => Math.Max(line.Max(cell => cell.BelowPx), line.Any(cell => cell.Conductor.Length > 0) ? 20 : 0);

    /// <summary>Middle of a line, from the row's top.</summary>
    internal double MiddleOf(int line) => Lines.Take(line).Sum(before => Above(before) + Below(before) + BetweenLinesPx) + Above(Lines[line]);

    /// <summary>Where the conductor runs back to the start of a line after the first, from the row's top.</summary>
    internal double TurnOf(int line) => MiddleOf(line) - Above(Lines[line]) - (BetweenLinesPx / 2);
}
