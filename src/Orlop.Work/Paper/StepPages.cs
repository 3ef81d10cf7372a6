using System.Globalization;
using Orlop.Review.Findings;
using Orlop.Work.Steps;

namespace Orlop.Work.Paper;

/// <summary>The steps, each with a box to tick and a field to sign.</summary>
internal static class StepPages
{
    public static void Write(HtmlText html, WorkPack pack, PackText text, DateOnly day)
    {
        html.Open("section", ("id", "steps")).Put("h2", "Steps");
        html.Put("p", "In this order. Tick, write the time and your initials. If something is not as the step says, stop and write it down.");
        Dictionary<string, int> firstSaid = new(StringComparer.Ordinal);
        StepKind? kind = null;
        for (int i = 0; i < pack.Steps.Length; i++)
        {
            WorkStep step = pack.Steps[i];
            if (step.Kind != kind)
            {
                kind = step.Kind;
                html.Put("h3", PackText.Of(step.Kind));
            }

            Step(html, step, i + 1, text, day, firstSaid);
        }

        html.Close();
    }

    /// <summary>Cautions of one kind in their box.</summary>
    public static void Boxed(HtmlText html, CautionKind kind, IReadOnlyList<string> texts)
    {
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", $"{PackText.Of(kind)}.").Text($" {texts[0]}");
        foreach (string text in texts.Skip(1))
        {
            html.Put("div", text);
        }

        html.Close();
    }

    private static void Step(HtmlText html, WorkStep step, int number, PackText text, DateOnly day, Dictionary<string, int> firstSaid)
    {
        html.Open("div", ("class", step.IsDoneOn(day) ? "step done" : "step"), ("id", $"step-{number.ToString(CultureInfo.InvariantCulture)}"));
        html.Open("div");
        BringPages.Box(html, step.IsDoneOn(day));
        html.Close().Put("div", number.ToString(CultureInfo.InvariantCulture), ("class", "no")).Open("div").Open("div", ("class", "what"));
        Sentence(html, step.Text, text);
        html.Close();
        foreach (IGrouping<CautionKind, Caution> kind in step.Cautions.GroupBy(caution => caution.Kind))
        {
            SayOnce(html, kind.Key, [.. kind.Select(caution => caution.Text)], number, firstSaid);
        }

        if (!step.Details.IsEmpty)
        {
            html.Open("ul");
            foreach (Sentence detail in step.Details)
            {
                html.Open("li");
                Sentence(html, detail, text);
                html.Close();
            }

            html.Close();
        }

        html.Close().Put("div", Signed(step, day), ("class", "sign")).Close();
    }

    // What may kill is said in full each time; the rest in full once and then by the step that said it.
    private static void SayOnce(HtmlText html, CautionKind kind, IReadOnlyList<string> texts, int number, Dictionary<string, int> firstSaid)
    {
        string all = string.Join('\n', texts);
        bool isGrave = kind is CautionKind.Battery or CautionKind.Mains or CautionKind.NotDead or CautionKind.StaysLive or CautionKind.StoredCharge;
        if (isGrave || firstSaid.TryAdd(all, number))
        {
            Boxed(html, kind, texts);
        }
        else
        {
            html.Put("div", string.Create(CultureInfo.InvariantCulture, $"{PackText.Of(kind)}: as in step {firstSaid[all]}."), ("class", "again"));
        }
    }

    private static string Signed(WorkStep step, DateOnly day) => step switch
    {
        { Tick: { } tick } when !step.IsDoneOn(day) => string.Create(CultureInfo.InvariantCulture, $"ticked {tick.On:yyyy-MM-dd}: do it again"),
        { Tick: { } tick } => string.Create(CultureInfo.InvariantCulture, $"done {tick.On:yyyy-MM-dd} {tick.Remark}").TrimEnd(),
        { BuiltOn: { } built } => string.Create(CultureInfo.InvariantCulture, $"built {built:yyyy-MM-dd}"),
        _ => "time, initials",
    };

    /// <summary>A sentence whose amounts stand out.</summary>
    private static void Sentence(HtmlText html, Sentence sentence, PackText text)
    {
        foreach (SentencePart part in sentence.Parts)
        {
            _ = part.Amount is { } amount ? html.Put("b", text.Of(amount), ("class", "amount")) : html.Text(part.Text ?? "");
        }
    }
}
