using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>What is aboard: what differs from condition to condition under each of them, and what is always aboard once at the end.</summary>
internal static class SheetLedger
{
    private const double SmallKg = 2;

    private static readonly string[] Heads = ["What", "Mass", "±", "Forward", "To port", "Up", "How it is known"];

    /// <summary>What is aboard in a condition beyond what always is, and the sums.</summary>
    public static void Differs(HtmlText html, LoadingSheet sheet, SheetCondition condition, SheetText text, PaperOptions options)
    {
        LedgerView ledger = LedgerView.Of(sheet.Shown, sheet.AsBuilt, condition.Condition, options.Units, options.Culture);
        HashSet<string> always = AlwaysAboard(sheet);
        WeightRow[] fixedRows = [.. LedgerView.RowsOf(sheet.Shown, condition.Condition).Where(row => always.Contains(row.ThingId))];
        html.Put("h3", "What is aboard");
        SheetTables.Open(html, "aboard", Heads);
        foreach (LedgerLine line in ledger.Rows.Where(line => !always.Contains(line.ThingId!)))
        {
            Line(html, line);
        }

        if (WeightTotal.Of(fixedRows.Select(WeightLedger.Item)) is { } sum)
        {
            Sum(html, $"Always aboard, {fixedRows.Length} {(fixedRows.Length == 1 ? "thing" : "things")}: see the last page", sum, text);
        }

        foreach (LedgerLine line in ledger.Sums)
        {
            Line(html, line);
        }

        SheetTables.Close(html);
        html.Put("p", LedgerView.ColumnNote, ("class", "small"));
        if (ledger.Missing.Count > 0)
        {
            html.Open("p").Put("b", "Not given, and so not in these numbers: ").Text($"{string.Join("; ", ledger.Missing.Select(field => field.Text))}.").Close();
        }
    }

    /// <summary>What is aboard in every condition alike.</summary>
    public static void Write(HtmlText html, LoadingSheet sheet, SheetText text, PaperOptions options)
    {
        if (sheet.Conditions.IsEmpty)
        {
            return;
        }

        HashSet<string> always = AlwaysAboard(sheet);
        Condition condition = sheet.Conditions[0].Condition;
        LedgerView ledger = LedgerView.Of(sheet.Shown, sheet.AsBuilt, condition, options.Units, options.Culture);
        WeightRow[] rows = [.. LedgerView.RowsOf(sheet.Shown, condition).Where(row => always.Contains(row.ThingId))];
        HashSet<string> small = [.. rows.Where(row => row.MassKg < SmallKg).Select(row => row.ThingId)];
        html.Open("section").Put("h2", "Always aboard");
        html.Put("p", LedgerView.ColumnNote, ("class", "small"));
        SheetTables.Open(html, "aboard", Heads);
        foreach (LedgerLine line in ledger.Rows.Where(line => always.Contains(line.ThingId!) && (!small.Contains(line.ThingId!) || line.Change is not null)))
        {
            Line(html, line);
        }

        if (WeightTotal.Of(rows.Where(row => small.Contains(row.ThingId)).Select(WeightLedger.Item)) is { } sum)
        {
            Sum(html, $"{small.Count} smaller things, below {text.Kg(SmallKg)} each", sum, text);
        }

        SheetTables.Close(html);
        html.Close();
    }

    private static void Line(HtmlText html, LedgerLine line) =>
        Row(html, line.Change is null ? line.Title : $"{line.Title} ({line.Change})", [line.Mass, line.PlusMinus, line.X, line.Y, line.Z, line.How]);

    private static void Sum(HtmlText html, string title, WeightTotal sum, SheetText text) =>
        Row(html, title, [text.Kg(sum.MassKg), text.BandKg(sum.MassDeviationKg), text.M(sum.Centre.XM), text.M(sum.Centre.YM), text.M(sum.Centre.ZM), "sum"]);

    private static void Row(HtmlText html, string title, ReadOnlySpan<string> cells)
    {
        html.Open("tr").Put("th", title, ("scope", "row"));
        for (int column = 0; column < cells.Length; column++)
        {
            SheetTables.Cell(html, Heads[column + 1], cells[column]);
        }

        html.Close();
    }

    // The same mass at the same place wherever she is.
    private static HashSet<string> AlwaysAboard(LoadingSheet sheet)
    {
        IReadOnlyList<WeightRow>[] all = [.. sheet.Shown.Conditions.Select(condition => LedgerView.RowsOf(sheet.Shown, condition))];
        return all.Length == 0 ? [] : [.. all.Skip(1).Aggregate(all[0].AsEnumerable(), (kept, rows) => kept.Intersect(rows)).Select(row => row.ThingId)];
    }
}
