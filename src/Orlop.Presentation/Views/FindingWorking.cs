using System.Collections;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A line of working as it is read.</summary>
public sealed record WorkingRow(string What, string Expression, string Value, string Source, bool IsFromMemory);

/// <summary>An input of a finding: which thing and field, as far as the thing has it (<see cref="FieldPath"/>), what stands there, and what the owner is asked to do. Label and request are empty where it is the thing itself.</summary>
public sealed record InputRow(string ThingId, string Field, string Title, string Label, string Text, bool IsGuess, bool IsMissing, string Ask);

/// <summary>The same check in another condition.</summary>
public sealed record ConditionRow(Verdict Verdict, string Condition, string Use, string Headline);

/// <summary>What stands under a finding when it is opened: check, formula with numbers, sources, inputs, other conditions.</summary>
public sealed record FindingWorking
{
    public required string CheckTitle { get; init; }

    public required string CheckAbout { get; init; }

    public required IReadOnlyList<WorkingRow> Lines { get; init; }

    public required IReadOnlyList<InputRow> Inputs { get; init; }

    /// <summary>The conditions besides the worst in which something is asked.</summary>
    public required IReadOnlyList<ConditionRow> OtherConditions { get; init; }

    /// <summary>The conditions besides the worst in which nothing is asked of it: no current flows.</summary>
    public required IReadOnlyList<string> IdleConditions { get; init; }

    public string? Caution { get; init; }

    /// <summary>The working of a row of a list of findings.</summary>
    public static FindingWorking Of(FindingRow row, FindingsView view)
    {
        FindingGroup group = (row.Pair.After ?? row.Pair.Before)!;
        BoatModel boat = view.BoatOf(row);
        CheckDescription? check = view.Check(row.Pair.CheckId);
        return new FindingWorking
        {
            CheckTitle = check?.Title ?? row.Pair.CheckId,
            CheckAbout = check?.About ?? "",
            Lines = [.. group.Worst.Working.Select(line => new WorkingRow(
                line.What,
                line.Expression,
                line.Value is { } value ? SentenceText.Of(value, view.Units, view.Culture) : "",
                line.Source,
                line.IsFromMemory))],
            Inputs = [.. group.Worst.Inputs.Select(input => Input(input, boat, view))],
            OtherConditions = [.. group.All.Skip(1).Where(finding => !IsIdle(finding)).Select(finding => new ConditionRow(
                finding.Verdict,
                ConditionOf(finding, boat),
                FindingRow.Share(FindingRow.UseOf(finding), view.Culture),
                SentenceText.Of(finding.Headline, view.Units, view.Culture)))],
            IdleConditions = [.. group.All.Skip(1).Where(IsIdle).Select(finding => ConditionOf(finding, boat))],
            Caution = group.Worst.Caution,
        };
    }

    private static bool IsIdle(Finding finding) => finding is { Verdict: Verdict.Holds, UseFraction: 0, ConditionId: not null };

    private static string ConditionOf(Finding finding, BoatModel boat) => finding.ConditionId is { } id ? boat.Find(id)?.Title ?? id : "";

    internal static InputRow Input(FindingInput input, BoatModel boat, FindingsView view)
    {
        Thing? thing = boat.Find(input.ThingId);
        // A thing that is not there yet is named by its kind, and its field as on the form that adds it.
        bool isKind = thing is null && ThingKinds.ByName.ContainsKey(input.ThingId);
        FieldSchema? field = thing is not null ? ThingSchema.Of(thing.GetType()).Field(FirstStep(input.Field)) : isKind ? ThingSchema.Of(input.ThingId).Field(FirstStep(input.Field)) : null;
        string label = field is null ? InputWords.Of(input.Field) : field.Type == FieldType.Id ? "" : thing is null ? FieldLabels.Of(field) : MissingWords.LabelOf(thing, field, input.Field);
        string text = thing is null || field is null || input.IsMissing ? "" : Text(thing, field, boat, view);
        return new InputRow(input.ThingId, thing is null ? FirstStep(input.Field) : FieldPath.In(thing, input.Field) is { Path.Length: > 0 } way ? way.Path : FirstStep(input.Field), thing?.Title ?? (isKind ? Capital(Wording.KindOf(input.ThingId)) : input.ThingId), label, text, input.IsGuess, input.IsMissing, label.Length == 0 ? "" : FieldAsk.Of(label, field));
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    // That it is there at all is told by what it is; a list by how much it holds: the sheet shows the rest.
    private static string Text(Thing thing, FieldSchema field, BoatModel boat, FindingsView view) => (field.Type, field.Get(thing)) switch
    {
        (FieldType.Id, _) => Wording.KindOf(thing),
        (FieldType.List, IEnumerable items) => FieldWords.Count(field, items.Cast<object>().Count()),
        (_, { } value) => FieldText.Show(field, value, view.Units, view.Culture, boat),
        _ => FieldText.Show(field, null, view.Units, view.Culture),
    };

    private static string FirstStep(string field) => field.TrimStart('/').Split('/', '.', '[')[0];
}
