using System.Globalization;
using Orlop.Presentation.Words;
using Orlop.Work.Bring;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>What to buy, what to bring, what to cut.</summary>
internal static class BringPages
{
    public static void Write(HtmlText html, WorkPack pack, PackTroubles troubles, PackText text)
    {
        html.Open("section", ("class", "follows"), ("id", "bring")).Put("h2", "Bring");
        if (pack.Bring.IsEmpty)
        {
            html.Put("p", "Nothing is left to bring: all is built.");
        }
        else
        {
            html.Open("table", ("class", "bring")).Open("thead").Open("tr")
                .Put("th", "", ("class", "tick")).Put("th", "What", ("scope", "col")).Put("th", "Need", ("scope", "col")).Put("th", "Where it lies", ("scope", "col")).Put("th", "To buy", ("scope", "col"))
                .Close().Close();
            foreach (IGrouping<BringKind, BringItem> kind in pack.Bring.GroupBy(item => item.Kind))
            {
                html.Open("tbody").Open("tr", ("class", "kind")).Put("th", PackText.Of(kind.Key), ("class", "kind"), ("colspan", "5"), ("scope", "rowgroup")).Close();
                foreach (BringItem item in kind)
                {
                    Row(html, item, troubles, text);
                }

                html.Close();
            }

            html.Close();
        }

        html.Close();
        Cuts(html, pack, text);
    }

    /// <summary>An empty box to tick with a pen; a ticked one where the work is done.</summary>
    public static void Box(HtmlText html, bool isDone = false) => html.Put("span", isDone ? "✓" : "", ("class", "box"));

    private static void Row(HtmlText html, BringItem item, PackTroubles troubles, PackText text)
    {
        html.Open("tr").Open("td", ("class", "tick"));
        Box(html);
        html.Close().Open("td").Text(text.Of(item.What));
        if (!item.Remarks.IsEmpty)
        {
            html.Put("div", string.Join(' ', item.Remarks.Select(text.Of)), ("class", "small"));
        }

        TroublePages.Again(html, troubles.FailingFor(item), troubles, text);
        html.Close().Put("td", item.Needed is null ? "" : text.Of(item.Needed), ("class", "num")).Open("td");
        foreach (StockTake take in item.Takes)
        {
            html.Open("div").Text(take.Amount is { } amount ? $"{text.Of(amount)} {take.Title}" : take.Title).Put("span", $" {take.Where ?? "place not given"}", ("class", "small")).Close();
        }

        html.Close().Put("td", ToBuy(item, text), ("class", "num")).Close();
    }

    private static string ToBuy(BringItem item, PackText text) => item switch
    {
        { State: StockState.InStock } => "",
        { ToBuy: { } amount } => text.Of(amount),
        { State: StockState.ToBuy } => "all",
        _ => "look",
    };

    private static void Cuts(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Cuts.IsEmpty)
        {
            return;
        }

        html.Open("section", ("class", "follows"), ("id", "cut")).Put("h2", "Cut").Open("table", ("class", "cut")).Open("thead").Open("tr")
            .Put("th", "", ("class", "tick")).Put("th", $"Cut to, {CableLengthWords.Cut}", ("scope", "col")).Put("th", "For", ("scope", "col")).Put("th", $"{char.ToUpperInvariant(CableLengthWords.Laid[0])}{CableLengthWords.Laid[1..]} + tails, loop, what is not known", ("scope", "col")).Put("th", "From", ("scope", "col"))
            .Close().Close().Open("tbody");
        foreach (CableCut cut in pack.Cuts)
        {
            html.Open("tr").Open("td", ("class", "tick"));
            Box(html);
            html.Close().Put("td", cut.CutM is { } lengthM ? text.Of(new Review.Findings.Amount(lengthM, "M")) : "measure", ("class", "num"))
                .Open("td").Put("b", cut.Title).Text(string.Create(CultureInfo.InvariantCulture, $", {cut.CoreCount} × ")).Text(text.Of(new Review.Findings.Amount(cut.AreaMm2, "Mm2")));
            foreach (Review.Findings.Sentence remark in new[] { cut.Remark, cut.Colour }.OfType<Review.Findings.Sentence>())
            {
                html.Put("div", text.Of(remark), ("class", "small"));
            }

            html.Close().Put("td", cut.RunM is { } runM ? $"{text.Of(new Review.Findings.Amount(runM, "M"))} + {text.Of(new Review.Findings.Amount(cut.AllowanceM, "M"))}" : "–")
                .Put("td", cut.StockId is { } reel ? pack.AsBuilt.Find(reel)?.Title ?? reel : cut.CutM is null ? "–" : "no reel that is known to be it is long enough: buy").Close();
        }

        html.Close().Close();
        Reels(html, pack, text);
        html.Close();
    }

    private static void Reels(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Cutting.Reels.IsEmpty)
        {
            return;
        }

        html.Put("h3", "From each reel and offcut").Open("table", ("class", "reels")).Open("thead").Open("tr")
            .Put("th", "Reel", ("scope", "col")).Put("th", "Where it lies", ("scope", "col")).Put("th", "Cut from it", ("scope", "col")).Put("th", "Left of it", ("scope", "col"))
            .Close().Close().Open("tbody");
        foreach (ReelPlan reel in pack.Cutting.Reels)
        {
            html.Open("tr").Put("td", $"{reel.Title}, {M(reel.HadM)}").Put("td", reel.Where ?? "place not given")
                .Put("td", string.Join(" + ", reel.Pieces.Select(piece => M(piece.LengthM))))
                .Put("td", $"{M(Math.Round(reel.LeftM, 2))}, {(reel.IsKept ? "to keep" : "too short to keep")}").Close();
        }

        html.Close().Close().Put("p", pack.Cutting.IsLeastWaste
            ? "Of the reels that are known to be what was reviewed, no other way of cutting leaves less to buy, and none whose colours go as well throws less away."
            : "Not every way of cutting was looked at: another may throw less away.", ("class", "small"));

        string M(double lengthM) => text.Of(new Review.Findings.Amount(lengthM, "M"));
    }
}
