using System.Collections.Immutable;
using System.Globalization;
using Orlop.Review.Findings;
using Orlop.Work.Steps;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>The steps, each with a box to tick, a field to sign and room for what is read.</summary>
internal static class StepPages
{
    private const int NoteLineCount = 3;
    private const int MostLinesTogether = 8;

    public static void Write(HtmlText html, WorkPack pack, PackTroubles troubles, PackText text, DateOnly day)
    {
        html.Open("section", ("class", "follows"), ("id", "steps")).Put("h2", "Steps");
        html.Put("p", "In this order. On paper: tick, write the time, your initials and what you read. If something is not as the step says, stop and write it down.");
        html.Put("p", pack.People.Words, ("class", "people"));
        if (!pack.FailedTests.IsEmpty)
        {
            html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Tests that did not pass.").Text($" {string.Join("; ", pack.FailedTests.Select(step => string.Create(CultureInfo.InvariantCulture, $"step {pack.Steps.IndexOf(step) + 1}: {step.Failed!.Shown}")))}. What rests on them does not go on before they are found, put right and tested again.").Close();
        }

        ImmutableArray<ImmutableArray<StepCaution>> cautions = StepCaution.Of([.. pack.Steps.Select(step => IsBehind(step, day) ? step with { Cautions = [] } : step)]);
        StepKind? kind = null;
        for (int i = 0; i < pack.Steps.Length; i++)
        {
            WorkStep step = pack.Steps[i];
            if (step.Kind != kind)
            {
                kind = step.Kind;
                html.Put("h3", PackText.Of(step.Kind));
            }

            Step(html, step, i + 1, cautions[i], text, day, () => TroublePages.Again(html, troubles.FailingAt(step, pack), troubles, text));
        }

        Notes(html);
        html.Close();
    }

    /// <summary>Cautions of one kind in their box.</summary>
    public static void Boxed(HtmlText html, CautionKind kind, IReadOnlyList<string> texts)
    {
        // What stays live all around is a list and may be long: it alone may break between its lines.
        html.Open("div", ("class", kind == CautionKind.StaysLive ? "caution around" : "caution"), ("role", "note")).Put("b", $"{StepCaution.TitleOf(kind)}.").Text($" {texts[0]}");
        foreach (string text in texts.Skip(1))
        {
            html.Put("div", text);
        }

        html.Close();
    }

    // Done, left out or recorded as built, and that for good: one line of it is enough. What holds for one day only is printed whole, for the next visit.
    private static bool IsBehind(WorkStep step, DateOnly day) => (step.IsDoneOn(day) || step.IsLeftOutOn(day) || step.BuiltOn is not null) && !step.IsForOneDay;

    // A step stays on one page with its lines, unless it is so long that it would leave a hole.
    private static bool IsLong(WorkStep step) => step.Details.Length > MostLinesTogether || step.Cautions.Any(caution => caution.Kind == CautionKind.StaysLive);

    private static void Step(HtmlText html, WorkStep step, int number, ImmutableArray<StepCaution> cautions, PackText text, DateOnly day, Action fails)
    {
        html.Open("div", ("class", $"step{(step.IsDoneOn(day) ? " done" : step.IsLeftOutOn(day) ? " out" : "")}{(IsLong(step) ? " long" : "")}"), ("id", $"step-{number.ToString(CultureInfo.InvariantCulture)}"));
        html.Open("div", ("class", "head")).Open("div");
        BringPages.Box(html, step.IsDoneOn(day));
        html.Close().Put("div", number.ToString(CultureInfo.InvariantCulture), ("class", "no")).Open("div", ("class", "what"));
        Sentence(html, step.Text, text);
        html.Close().Put("div", Signed(step, day), ("class", "sign")).Close();
        if (step.Failed is { } failed)
        {
            html.Open("div", ("class", "failed"), ("role", "note")).Put("b", $"■ Test not passed, {failed.Said}.").Text($" {failed.Words}").Close();
        }

        if (!IsBehind(step, day))
        {
            fails();
            Body(html, step, cautions, text);
        }

        html.Close();
    }

    private static void Body(HtmlText html, WorkStep step, ImmutableArray<StepCaution> cautions, PackText text)
    {
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
            foreach ((int k, Sentence detail) in step.Details.Index())
            {
                html.Open("li");
                Sentence(html, detail, text);
                if (step.WriteDown is { What: null } write && (write.ReadingCount is { } count ? k < count : detail.Parts.Any(part => part.Amount is not null)))
                {
                    Room(html, "", write.Unit);
                }

                html.Close();
            }

            html.Close();
        }

        if (step.WriteDown is { What: { } what, Unit: { } unit })
        {
            html.Open("div", ("class", "reads"));
            Room(html, $"{what}:", unit);
            html.Close();
        }
    }

    private static void Room(HtmlText html, string what, string unit) =>
        html.Open("span", ("class", "room")).Text(what).Put("span", "", ("class", "blank")).Text(unit).Close();

    private static void Notes(HtmlText html)
    {
        html.Open("div", ("class", "notes")).Put("h3", "Found otherwise than written here");
        for (int line = 0; line < NoteLineCount; line++)
        {
            html.Put("div", "", ("class", "line"));
        }

        html.Close();
    }

    private static string Signed(WorkStep step, DateOnly day) => step switch
    {
        { Tick: { } tick, Failed: { } failed } when step.IsTickedOn(day) => string.Create(CultureInfo.InvariantCulture, $"ticked {tick.On:yyyy-MM-dd}, {(failed.Standing is TestStanding.NotTyped or TestStanding.TooFew ? failed.Said : $"read {failed.Shown}")}: not passed, do it again"),
        { Tick: { } tick } when !step.IsDoneOn(day) => string.Create(CultureInfo.InvariantCulture, $"ticked {tick.On:yyyy-MM-dd}: do it again"),
        { Tick: { } tick } => string.Create(CultureInfo.InvariantCulture, $"done {tick.On:yyyy-MM-dd} {tick.Remark}").TrimEnd(),
        { Remark: { } remark } when step.IsLeftOutOn(day) => string.Create(CultureInfo.InvariantCulture, $"left out {remark.On:yyyy-MM-dd}: {remark.Remark}"),
        { Remark: { } remark } when !step.IsForOneDay || remark.On == day => string.Create(CultureInfo.InvariantCulture, $"noted {remark.On:yyyy-MM-dd}: {remark.Remark}; time, initials"),
        { BuiltOn: { } built } => string.Create(CultureInfo.InvariantCulture, $"recorded as built {built:yyyy-MM-dd}, not ticked"),
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
