using Orlop.Boat.Format;

namespace Orlop.Presentation.Views;

/// <summary>What the owner is asked to do so that a field is given: "Type in the rated current", "Say whether it opens both poles".</summary>
public static class FieldAsk
{
    /// <summary>The request, as a sentence without its stop.</summary>
    /// <param name="label">What the field is called.</param>
    /// <param name="field">The field; null where the thing has none of that name.</param>
    public static string Of(string label, FieldSchema? field) => field switch
    {
        { Type: FieldType.Flag, Description: { } said } => $"Say whether {Small(said.Split('.', ';', ':')[0])}",
        { Type: FieldType.Choice or FieldType.Reference } => $"Choose the {Small(label)}",
        null or { Type: FieldType.Quantity or FieldType.Number or FieldType.Count or FieldType.Text or FieldType.Date } => $"Type in the {Small(label)}",
        _ => $"Give the {Small(label)}",
    };

    private static string Small(string words) => words.Length == 0 ? words : char.ToLowerInvariant(words[0]) + words[1..];
}
