using Orlop.Drawings.Paper;
using Orlop.Review;
using Orlop.Work.Steps;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>A work pack as one HTML file that prints well and asks nothing of the network.</summary>
public static class WorkPackHtml
{
    /// <summary>The pack on the paper of the options.</summary>
    /// <param name="engine">Reviews what the alteration does to her, with every discipline; what it solved before is not solved again. Null for a new one.</param>
    public static string Render(WorkPack pack, PaperOptions options, ReviewEngine? engine = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(options);
        engine ??= WholeReview.NewEngine();
        PackText text = new(options);
        PackTroubles troubles = PackTroubles.Of(pack, engine);
        HtmlText html = new();
        string title = $"Work pack: {pack.Alteration.Title}, {pack.BoatTitle}";
        PaperPage.Begin(html, title, Foot(pack, options), options);
        Head(html, pack, troubles, text, options);
        Parts(html, pack);
        WhereTyped(html, options);
        BringPages.Write(html, pack, troubles, text);
        WayPages.Write(html, pack, text);
        StepPages.Write(html, pack, troubles, text, options.On);
        EndPages.Write(html, pack, text);
        ReadingPages.Write(html, pack, text);
        WeightPages.Write(html, pack, engine, options);
        SourcePage.Write(html, pack);
        DiagramPages.Write(html, pack, options);
        LabelPages.Write(html, pack, options);
        return PaperPage.End(html);
    }

    // For a screen only; paper has its headings.
    private static void Parts(HtmlText html, WorkPack pack)
    {
        (string Id, string Name, bool IsIn)[] parts =
        [
            ("bring", "Bring", true), ("cut", "Cut", !pack.Cuts.IsEmpty), ("ways", "Ways and holes", !pack.Ways.IsEmpty), ("steps", "Steps", true), ("ends", "Make-up list", !pack.Ends.IsEmpty),
            ("readings", "Readings", !pack.Readings.IsEmpty), ("freeboards", "Freeboards", pack.Weights.IsFelt), ("drawing", "Diagram", DiagramPages.Has(pack)), ("labels", "Labels", !pack.Labels.IsEmpty),
        ];
        html.Open("nav", ("class", "parts"), ("aria-label", "Parts of the pack"));
        foreach ((string id, string name, _) in parts.Where(part => part.IsIn))
        {
            html.Put("a", name, ("href", $"#{id}"));
        }

        html.Close();
    }

    // For a screen only, on which somebody may look for a box to tick.
    private static void WhereTyped(HtmlText html, PaperOptions options)
    {
        html.Open("p", ("class", "screen")).Put("b", "Nothing can be typed or ticked on this page: it is for paper and a pencil. ").Text("What is done and read is ticked and typed in under ");
        _ = options.RecordHref is { } href ? html.Put("a", "Record", ("href", href)) : html.Text("Record");
        html.Text(", on the computer that runs the program. No other device can reach that: on a phone this page, or a copy of it, is only to be read.").Close();
    }

    private static string Foot(WorkPack pack, PaperOptions options) =>
        $"{pack.BoatTitle} · {pack.Alteration.Title} · {PaperPage.Date(options)}{PaperPage.Revision(options, " · ")} · {TitleBlock.Caution}";

    private static void Head(HtmlText html, WorkPack pack, PackTroubles troubles, PackText text, PaperOptions options)
    {
        html.Put("h1", $"Work pack: {pack.Alteration.Title}");
        PaperPage.Title(
            html,
            ("Boat", pack.BoatTitle), ("Status", troubles.Status), ("Why", pack.Alteration.Purpose ?? "not said"), ("Date", $"{PaperPage.Date(options)}{PaperPage.Revision(options, ", ")}"),
            ("In it", string.Create(options.Culture, $"{pack.Steps.Length} steps, {pack.Steps.Count(step => step.IsDoneOn(options.On))} of them done{(pack.FailedTests.IsEmpty ? "" : string.Create(options.Culture, $", {pack.FailedTests.Length} with a test that did not pass"))}; {pack.Ends.Length} ends; {pack.Readings.Length} readings")),
            ("Mind", $"{TitleBlock.Caution} Works on 230 V, gas, fuel and structure belong to licensed people and the local code."));
        if (!pack.Clashes.IsEmpty)
        {
            html.Open("div", ("class", "caution")).Put("b", "Do not start.").Text($" The boat has changed since this was drafted: {string.Join("; ", pack.Clashes.Select(clash => clash.Id))}. Settle that first and print again.").Close();
        }

        TroublePages.Write(html, troubles, text);

        // What is near a battery, or measured live, is said again in full where leads come off its posts.
        Caution[] grave = [.. pack.Steps.SelectMany(step => step.Cautions).Where(caution => caution.Kind is CautionKind.Battery or CautionKind.Mains or CautionKind.NotDead).Where(caution => caution != ReadBefore.Live).Distinct()];
        foreach (Caution caution in grave.Where(caution => caution != Cautions.BatteryNear || !grave.Contains(Cautions.Battery)))
        {
            StepPages.Boxed(html, caution.Kind, [caution.Text]);
        }

        AssumedPages.Write(html, pack, options);
    }
}
