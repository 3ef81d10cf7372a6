using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Work.Loading;
using Orlop.Work.Steps;

namespace Orlop.Work.Paper;

/// <summary>What a pack says of the boat's weight: the freeboards to read after the work, and how she floats before and after.</summary>
internal static class WeightPages
{
    // Of a sheet upright: more do not fit beside each other.
    private const int MostColumnCount = 6;

    public static void Write(HtmlText html, WorkPack pack, ReviewEngine engine, PaperOptions options)
    {
        if (!pack.Weights.IsFelt)
        {
            return;
        }

        Freeboards(html, pack, engine, new SheetText(options));
        Summary(html, pack, engine, options);
    }

    private static void Freeboards(HtmlText html, WorkPack pack, ReviewEngine engine, SheetText text)
    {
        html.Open("section", ("class", "follows stability"), ("id", "freeboards")).Put("h2", "Freeboards to read after the work");
        if (pack.Weights.Freeboards() is not { Count: > 0 } expected)
        {
            html.Open("p").Put("b", "They cannot be predicted: ").Text(pack.Weights.Survey is null
                ? "no freeboard survey is kept, so there are no marks to read. Take one before the work begins, and another after it."
                : "her weight, her lines or something on the list is not given. Read them all the same, before and after the work.").Close().Close();
            return;
        }

        html.Put("p", $"Loaded as in “{pack.Weights.Condition!.Title}” (why that one stands in the step), {pack.Weights.TankWords}, calm water, lines slack, the people of the list in their stated places, nobody else aboard. A height outside its range: read it again, then look for a weight that is not as listed.");
        SheetTables.Open(html, "readings", "Mark", "Where", "Expect", "Accept", "Read");
        foreach (PredictedFreeboard mark in expected)
        {
            html.Open("tr").Put("th", mark.Name, ("scope", "row"));
            SheetTables.Cell(html, "Where", text.At(mark.Mark), "small");
            SheetTables.Cell(html, "Expect", text.M(mark.NominalM), "num");
            SheetTables.Cell(html, "Accept", $"{text.M(mark.LeastM)} to {text.M(mark.MostM)}", "accept");
            html.Open("td", ("data-head", "Read")).Put("span", "", ("class", "write")).Close().Close();
        }

        SheetTables.Close(html);
        Elsewhere(html, pack.Weights.FreeboardsElsewhere(engine.Memo), expected.Count, text);
        html.Close();
    }

    // Whoever finds her loaded otherwise on the day reads against that loading.
    private static void Elsewhere(HtmlText html, IReadOnlyList<(Condition Condition, IReadOnlyList<PredictedFreeboard> Marks)> others, int markCount, SheetText text)
    {
        if (others.Count == 0)
        {
            return;
        }

        html.Put("h3", "The same marks loaded otherwise");
        string[] marks = [.. others.Select(other => other.Marks).MaxBy(found => found.Count)!.Select(mark => mark.Name)];
        if (marks.Length == 0)
        {
            html.Put("p", "They cannot be predicted: something on the list is not given.");
            return;
        }

        if (markCount > MostColumnCount)
        {
            html.Put("p", $"They stand under each condition of the loading and stability sheet, {LoadingSheetHtml.FileName}, “Freeboards at the marks of the survey”.");
            return;
        }

        SheetTables.Open(html, "marks", ["Loaded as in", .. marks]);
        foreach ((Condition condition, IReadOnlyList<PredictedFreeboard> found) in others)
        {
            html.Open("tr").Put("th", condition.Title, ("scope", "row"));
            foreach (string name in marks)
            {
                SheetTables.Cell(html, name, found.FirstOrDefault(mark => mark.Name == name) is { } mark ? $"{text.M(mark.LeastM)} to {text.M(mark.MostM)}" : QuantityText.Unknown, "accept");
            }

            html.Close();
        }

        SheetTables.Close(html);
    }

    private static void Summary(HtmlText html, WorkPack pack, ReviewEngine engine, PaperOptions options)
    {
        LoadingSheet sheet = LoadingSheet.Make(engine, pack.AsBuilt, pack.Alteration, hasLevers: false);
        SheetText text = new(options);
        html.Open("section", ("class", "follows stability"), ("id", "loading")).Put("h2", "How she floats, before and after");
        StepPages.Boxed(html, CautionKind.Stability, [FloatingWords.Caution]);
        SheetSummary.Table(html, sheet, text);
        foreach (SheetCondition condition in sheet.Conditions)
        {
            SheetFinding[] worse = [.. condition.Findings.Where(row => row.Now is { } now && row.Was?.Verdict != now.Verdict && now.Verdict != Review.Findings.Verdict.Holds)];
            if (worse.Length > 0)
            {
                html.Put("h3", $"{condition.Condition.Title}: what changes for the worse");
                SheetConditionPages.CriteriaTable(html, sheet, condition.Condition, worse, text);
            }
        }

        html.Put("p", $"Curves, criteria, what is aboard and what it all rests on: the loading and stability sheet, {LoadingSheetHtml.FileName} beside this pack, or printed from the page Weights.", ("class", "small")).Close();
    }
}
