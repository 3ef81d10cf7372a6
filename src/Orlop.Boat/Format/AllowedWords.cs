using Orlop.Boat.Things;

namespace Orlop.Boat.Format;

/// <summary>Says in a few words what may stand in a field.</summary>
internal static class AllowedWords
{
    public static string Of(FieldSchema field, FieldType type) => type switch
    {
        FieldType.Id => "an id: small letters, digits and hyphens, a letter first",
        FieldType.Quantity => $"{Number(field)}, or an object with value, known, plusMinus, on, method, typed",
        FieldType.Number => Number(field),
        FieldType.Count => field.AllowedText is string range ? $"a whole number, {range}" : "a whole number",
        FieldType.Text => "words",
        FieldType.Flag => "true or false",
        FieldType.Choice => string.Join(", ", field.Choices),
        FieldType.Reference => $"the id of {AKind(field.RefersTo!)}",
        FieldType.Terminal => "part.terminal, for example bank.+",
        FieldType.Place => "an object with xM, yM, zM in metres",
        FieldType.Box => "an object with lengthM, breadthM, heightM in metres",
        FieldType.Date => "a day written 2026-04-30",
        FieldType.Record => $"an object with {string.Join(", ", field.Record!.Fields.Select(inner => inner.Name))}",
        FieldType.List => "a list",
        _ => "a thing",
    };

    /// <summary>The kind with its article: a cable, an alteration.</summary>
    public static string AKind(Type type)
    {
        string kind = type.IsAbstract ? "thing" : ThingKinds.NameOf(type);
        return "aeiou".Contains(kind[0], StringComparison.Ordinal) ? $"an {kind}" : $"a {kind}";
    }

    private static string Number(FieldSchema field) =>
        field.AllowedText is string range ? $"a number, {range}" : field.Unit is { Text: not "" } unit ? $"a number in {unit.Text}" : "a number";
}
