using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
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

        html.Close();
        Stacks(html, pack, text);
        html.Close();
    }

    private static void Stacks(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Stacks.IsEmpty)
        {
            return;
        }

        html.Put("h3", "What lies on a stud, from the face outward");
        html.Put("p", "Faces bright and flat; nothing under or between the rings (FAA AC 43.13-1B 11-174b). The greatest current lies on the face (common practice, no source). Two threads or more stand out of the nut.");
        html.Open("table", ("class", "ends")).Open("thead").Open("tr").Put("th", "", ("class", "tick")).Put("th", "Stud", ("scope", "col")).Put("th", "From the face outward", ("scope", "col")).Put("th", "Torque", ("scope", "col")).Close().Close().Open("tbody");
        foreach (EndStack stack in pack.Stacks)
        {
            html.Open("tr").Open("td", ("class", "tick"));
            BringPages.Box(html, false);
            html.Close().Open("td").Put("b", stack.Where).Put("div", stack.ThreadMm is { } mm ? FormattableString.Invariant($"M{mm:0.#}") : "thread not told", ("class", "small")).Close().Open("td").Open("ol");
            foreach (string layer in stack.Layers)
            {
                html.Put("li", layer);
            }

            html.Close().Close().Open("td");
            _ = stack.Torque is { } torque
                ? html.Put("span", Range(torque, text), ("class", "num")).Put("div", torque.Connection, ("class", "small")).Put("div", torque.Source, ("class", "small"))
                : html.Text("maker's");
            html.Open("span", ("class", "room")).Text("used").Put("span", "", ("class", "blank")).Text(text.TorqueUnit).Close().Close().Close();
        }

        html.Close().Close();
        if (pack.Stacks.Any(stack => pack.AsAltered.Find(stack.At.Part) is BatteryBank))
        {
            html.Put("p", Cautions.BatteryPost, ("class", "caution"));
        }
    }

    private static string Range(TerminalTorque torque, PackText text) => torque.LeastNm < torque.MostNm
        ? $"{text.Of(new Amount(torque.LeastNm, "Nm"))} to {text.Of(new Amount(torque.MostNm, "Nm"))}"
        : text.Of(new Amount(torque.MostNm, "Nm"));

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
            .Put("td", end.LugMm2 is { } lugMm2 ? $"{PackText.Of(end.Means, end.StudMm)}, for {text.Of(new Amount(lugMm2, "Mm2"))}" : PackText.Of(end.Means, end.StudMm), ("class", "means")).Put("td", end.StripMm is { } stripMm ? text.Of(new Amount(stripMm, "Mm")) : end.Means is null ? "–" : "barrel", ("class", "num"))
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
            html.Put("span", Range(torque, text), ("class", "num")).Put("div", torque.IsMakers ? torque.Connection : $"{torque.Connection}; maker's figure first", ("class", "small"));
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
