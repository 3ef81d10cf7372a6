using System.Collections.Immutable;
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
        ImmutableArray<ImmutableArray<StepCaution>> cautions = StepCaution.Of(pack.Steps);
        StepKind? kind = null;
        for (int i = 0; i < pack.Steps.Length; i++)
        {
            WorkStep step = pack.Steps[i];
            if (step.Kind != kind)
            {
                kind = step.Kind;
                html.Put("h3", PackText.Of(step.Kind));
            }

            Step(html, step, i + 1, cautions[i], text, day);
        }

        html.Close();
    }

    /// <summary>Cautions of one kind in their box.</summary>
    public static void Boxed(HtmlText html, CautionKind kind, IReadOnlyList<string> texts)
    {
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", $"{StepCaution.TitleOf(kind)}.").Text($" {texts[0]}");
        foreach (string text in texts.Skip(1))
        {
            html.Put("div", text);
        }

        html.Close();
    }

    private static void Step(HtmlText html, WorkStep step, int number, ImmutableArray<StepCaution> cautions, PackText text, DateOnly day)
    {
        html.Open("div", ("class", step.IsDoneOn(day) ? "step done" : "step"), ("id", $"step-{number.ToString(CultureInfo.InvariantCulture)}"));
        html.Open("div");
        BringPages.Box(html, step.IsDoneOn(day));
        html.Close().Put("div", number.ToString(CultureInfo.InvariantCulture), ("class", "no")).Open("div").Open("div", ("class", "what"));
        Sentence(html, step.Text, text);
        html.Close();
        foreach (StepCaution caution in cautions)
        {
            if (caution.AsInStep is { } before)
            {
                html.Put("div", string.Create(CultureInfo.InvariantCulture, $"{caution.Title}: as in step {before}."), ("class", "again"));
            }
            else
            {
                Boxed(html, caution.Kind, caution.Texts);
            }
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
