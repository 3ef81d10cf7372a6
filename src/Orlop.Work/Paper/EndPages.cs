using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Ends;

namespace Orlop.Work.Paper;

/// <summary>The make-up list: every end, with its terminal, strip length, test pull and torque.</summary>
internal static class EndPages
{
    public static void Write(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Ends.IsEmpty)
        {
            return;
        }

        html.Open("section", ("class", "follows"), ("id", "ends")).Put("h2", "Make-up list");
        html.Put("p", "Strip to the depth of the barrel in hand; the length here is a start. One test crimp of each kind is pulled to the force, on a spare and not on the cable. Write down the torque used.");
        html.Open("table", ("class", "ends")).Open("thead").Open("tr")
            .Put("th", "", ("class", "tick")).Put("th", "End", ("scope", "col")).Put("th", "Terminal", ("scope", "col")).Put("th", "Strip", ("scope", "col"))
            .Put("th", "Test pull", ("scope", "col")).Put("th", "Torque", ("scope", "col")).Close().Close();
        foreach (IGrouping<string, CableEnd> cable in pack.Ends.Where(end => !end.IsKept).GroupBy(end => end.CableId))
        {
            string title = $"{pack.AsAltered.Find(cable.Key)?.Title ?? cable.Key}, {text.Of(new Amount(cable.First().AreaMm2, "Mm2"))}";
            html.Open("tbody").Open("tr", ("class", "kind")).Put("th", title, ("class", "kind"), ("colspan", "6"), ("scope", "rowgroup")).Close();
            foreach (CableEnd end in cable)
            {
                Row(html, end, pack.Cuts.FirstOrDefault(cut => cut.CableId == end.CableId && cut.CoreId == end.CoreId)?.MarkAs, text);
            }

            html.Close();
        }

        html.Close().Close();
    }

    private static void Row(HtmlText html, CableEnd end, string? markAs, PackText text)
    {
        html.Open("tr").Open("td", ("class", "tick"));
        BringPages.Box(html, end.BuiltOn is not null);
        html.Close().Open("td").Put("b", PartWords.CoreName(end.CoreId)).Text($" at {end.Where}");
        if (markAs is not null)
        {
            html.Open("div").Put("b", $"Mark this end {markAs}.").Close();
        }

        html.Close()
            .Put("td", PackText.Of(end.Means, end.StudMm), ("class", "means")).Put("td", end.StripMm is { } stripMm ? text.Of(new Amount(stripMm, "Mm")) : "barrel", ("class", "num"))
            .Open("td");
        _ = end.Pull is { } pull
            ? html.Put("span", text.Of(new Amount(Math.Ceiling(pull.ForceN), "N")), ("class", "num")).Put("div", pull.Gauge, ("class", "small"))
            : html.Text("–");
        html.Close().Open("td");
        Torque(html, end, text);
        html.Close().Close();
    }

    private static void Torque(HtmlText html, CableEnd end, PackText text)
    {
        if (end.Torque is { } torque)
        {
            html.Put("span", $"{text.Of(new Amount(torque.LeastNm, "Nm"))} to {text.Of(new Amount(torque.MostNm, "Nm"))}", ("class", "num")).Put("div", $"{torque.Connection}; maker's figure first", ("class", "small"));
        }

        if (!end.IsTightened && end.Torque is null)
        {
            html.Text("–");
        }
        else if (end.BuiltOn is null)
        {
            html.Open("span", ("class", "room")).Text(end.Torque is null ? "maker's" : "used").Put("span", "", ("class", "blank")).Text(text.TorqueUnit).Close();
        }
        else if (end.Torque is null)
        {
            html.Text("maker's");
        }
    }
}
