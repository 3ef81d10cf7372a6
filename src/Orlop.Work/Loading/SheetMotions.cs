using Orlop.Hull.Motions;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>What the heaviest things aboard feel when she moves as her owner states for the condition; nothing where no motion is stated.</summary>
internal static class SheetMotions
{
    // The heaviest, and the one that stands highest: there she throws hardest.
    private const int MostHeavyCount = 8;

    public static void Write(HtmlText html, LoadingSheet sheet, SheetCondition condition, SheetText text)
    {
        if (condition.Condition.Motion is not { } stated)
        {
            return;
        }

        (WeightRow Row, MotionAt Motion)[] told = [.. Chosen(sheet.Shown.LoadedIn(condition.Condition).Ledger.Rows).Select(row => (row, MotionAt.Of(sheet.Shown, condition.Condition, row.Place, row.Title)))];
        html.Put("h3", "Accelerations and tilt").Put("p", MotionView.Stated(stated, text.Units, text.Culture));
        if (told.Length == 0 || told[0].Motion.Result is not { } first)
        {
            html.Put("p", told.Length == 0 ? "Nothing that is aboard has a place." : told[0].Motion.WhyNot ?? QuantityText.Unknown);
            return;
        }

        SheetTables.Open(html, "motions", "At", "Where", "Across", "Fore and aft", "Square to the deck, most", "Least");
        foreach ((WeightRow row, MotionAt motion) in told)
        {
            SheetTables.Cell(html.Open("tr").Put("th", row.Title, ("scope", "row")), "Where", text.At(row.Place));
            Cells(html, motion.Result, text);
            html.Close();
        }

        SheetTables.Close(html);
        string sources = string.Join("; ", told[0].Motion.Working.Select(line => line.Source).Where(source => source.Length > 0).Distinct());
        html.Put("p", $"Gravity is in them. Greatest tilt of the deck: {text.Shown(first.TiltDeg, "Deg")}. {MotionView.PeriodOf(told[0].Motion)} {MotionAt.Range} From: {sources}.", ("class", "small"));
        html.Open("div", ("class", "caution"), ("role", "note")).Text(MotionAt.Caution).Close();
    }

    private static void Cells(HtmlText html, MotionResult? result, SheetText text)
    {
        string Told(double? value, string sign = "") => value is { } known ? $"{sign}{text.Shown(known, "MPerS2")}" : QuantityText.Unknown;
        SheetTables.Cell(html, "Across", Told(result?.AcrossMPerS2, "±\u00A0"));
        SheetTables.Cell(html, "Fore and aft", Told(result?.AlongMPerS2, "±\u00A0"));
        SheetTables.Cell(html, "Square to the deck, most", Told(result?.MostDownMPerS2));
        SheetTables.Cell(html, "Least", $"{Told(result?.LeastDownMPerS2)}{(result?.LeastDownMPerS2 < 0 ? ": lifts off unless held down" : "")}");
    }

    private static IEnumerable<WeightRow> Chosen(IEnumerable<WeightRow> rows)
    {
        WeightRow[] things = [.. rows.Where(row => row.Kind is WeightKind.Gear or WeightKind.Part or WeightKind.Deadweight)];
        return things.OrderByDescending(row => row.MassKg).Take(MostHeavyCount).Concat(things.OrderByDescending(row => row.Place.ZM).Take(1)).DistinctBy(row => row.ThingId);
    }
}
