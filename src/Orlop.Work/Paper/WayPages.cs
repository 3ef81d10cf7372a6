using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Ways;
using Orlop.Work.Bring;
using Orlop.Work.Steps;

namespace Orlop.Work.Paper;

/// <summary>Where each cable goes, the holes and glands on its way, and what must be opened.</summary>
internal static class WayPages
{
    public static void Write(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Ways.IsEmpty)
        {
            return;
        }

        html.Open("section", ("class", "follows"), ("id", "ways")).Put("h2", "Ways and holes");
        if (pack.Ways.SelectMany(way => way.Holes).Any(hole => !hole.Hole.IsMade))
        {
            StepPages.Boxed(html, CautionKind.Drilling, [Cautions.Drilling.Text]);
        }

        html.Open("table", ("class", "ways")).Open("thead").Open("tr")
            .Put("th", "Cable", ("scope", "col")).Put("th", $"Where it goes, {CableLengthWords.Laid}", ("scope", "col")).Put("th", "Holes and glands", ("scope", "col")).Put("th", "To open", ("scope", "col"))
            .Close().Close().Open("tbody");
        foreach (CableWay way in pack.Ways)
        {
            html.Open("tr").Open("td").Put("b", way.Title).Close()
                .Put("td", string.Join(" → ", way.Legs.Select(leg => $"{leg.Where} {text.Of(new Amount(leg.LengthM, "M"))}"))).Open("td");
            foreach (PassedHole hole in way.Holes)
            {
                html.Open("div");
                BringPages.Box(html);
                html.Text($" {RouteWords.Of(hole)}").Close();
            }

            html.Close().Put("td", string.Join("; ", way.ToOpen)).Close();
        }

        html.Close().Close().Close();
    }
}
