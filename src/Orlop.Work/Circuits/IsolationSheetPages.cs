using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>Sheets to hang by the panel: how each circuit is made dead, proved dead, and switched on again.</summary>
internal static class IsolationSheetPages
{
    public static void Write(HtmlText html, ElectricalSheet sheet)
    {
        if (sheet.Circuits.IsEmpty)
        {
            return;
        }

        html.Open("section", ("id", "isolation")).Put("h2", "To make it dead: hang by the panel")
            .Open("div", ("class", "caution"), ("role", "note")).Text(IsolationView.Caution).Close();
        foreach (IGrouping<string, (string Title, IsolationView Plan)> same in sheet.Circuits
            .Select(line => (line.Taker.Title, IsolationView.Of(sheet.Boat, line.Taker.Id))).GroupBy(pair => Likeness(pair.Title, pair.Item2), StringComparer.Ordinal))
        {
            (string title, IsolationView plan) = same.First();
            bool isOne = same.Count() == 1;
            html.Open("div", ("class", "hung")).Put("h3", string.Join(", ", same.Select(pair => pair.Title))).Put("p", isOne ? plan.Status : OfIt(plan.Status, title, "Each"));
            if (plan.ReadBefore.Length > 0)
            {
                List(html, "ul", ReadBeforeWords.Head, same.SelectMany(pair => pair.Plan.ReadBefore).Distinct());
                html.Open("div", ("class", "caution"), ("role", "note")).Text(ReadBeforeWords.Caution).Close();
            }

            List(html, "ol", null, plan.Steps);
            List(html, "ul", "Cannot be made dead", plan.Cannot);
            List(html, "ul", "Stays live", plan.StaysLive.Select(line => isOne ? line : OfIt(line, title, "it")));
            List(html, "ul", "Prove it dead", same.SelectMany(pair => pair.Plan.Proofs).Distinct());
            List(html, "ol", "Switch on again, in this order", plan.Restore);
            html.Close();
        }

        html.Close();
    }

    // Circuits behind one switch are made dead in the same way: one sheet for all of them, each with its own proofs.
    private static string Likeness(string title, IsolationView plan) =>
        string.Join('\n', new[] { plan.Status }.Concat(plan.Steps).Concat(plan.Cannot).Concat(plan.StaysLive).Concat(plan.Restore).Select(line => OfIt(line, title, "it")));

    private static string OfIt(string line, string title, string it) => line.Replace(title, it, StringComparison.Ordinal);

    private static void List(HtmlText html, string element, string? title, IEnumerable<string> lines)
    {
        if (!lines.Any())
        {
            return;
        }

        if (title is not null)
        {
            html.Put("b", title);
        }

        html.Open(element);
        foreach (string line in lines)
        {
            html.Put("li", line);
        }

        html.Close();
    }
}
