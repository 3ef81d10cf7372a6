using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A missing input in the middle of a sentence.</summary>
internal static class MissingWords
{
    /// <summary>All of them with their verb: "length of Feed and internal resistance of House bank are".</summary>
    public static string Of(IEnumerable<FindingInput> inputs, BoatModel boat)
    {
        string[] all = [.. inputs.Select(input => Of(input, boat)).Distinct()];
        return $"{SentenceText.Listed(all)} {(all.Length == 1 ? "is" : "are")}";
    }

    /// <summary>"internal resistance of House bank".</summary>
    public static string Of(FindingInput input, BoatModel boat)
    {
        Thing? thing = boat.Find(input.ThingId);
        if (thing is null && ThingKinds.ByName.ContainsKey(input.ThingId) && ThingSchema.Of(input.ThingId).Field(input.Field) is { } absent)
        {
            return $"{FieldWords.InSentence(absent)} of the {Wording.KindOf(input.ThingId)}";
        }

        FieldSchema? field = thing is null ? null : ThingSchema.Of(thing.GetType()).Field(input.Field.Split('/', '.')[0]);
        string label = field is null ? input.Field : LabelOf(field, input.Field);
        return $"{char.ToLowerInvariant(label[0])}{label[1..]} of {thing?.Title ?? input.ThingId}";
    }

    /// <summary>What is missing of a field: its label, or "Way or space of run 1" for where a stretch of a run lies.</summary>
    /// <param name="path">The field as the finding names it.</param>
    public static string LabelOf(FieldSchema field, string path) =>
        path.Split('/') is ["run", var stretch] ? $"Way or space of run {stretch}" : FieldWords.Label(field);
}
