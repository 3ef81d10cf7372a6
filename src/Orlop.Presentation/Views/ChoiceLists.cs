using System.Collections;
using Orlop.Boat.Format;

namespace Orlop.Presentation.Views;

/// <summary>Lists of which each item is one of a few choices, as boxes to tick.</summary>
public static class ChoiceLists
{
    /// <summary>The field is such a list.</summary>
    public static bool Is(FieldSchema field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field is { Type: FieldType.List, Choices.Count: > 0 };
    }

    /// <summary>Names of those that are chosen, as <see cref="FieldSchema.Choices"/> writes them.</summary>
    public static IReadOnlyList<string> Ids(FieldSchema field, object owner)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field.Get(owner) is IEnumerable chosen ? [.. chosen.Cast<object>().Select(FieldText.ChoiceId)] : [];
    }

    /// <summary>The same record with these chosen, in the field's order.</summary>
    public static object With(FieldSchema field, object owner, IReadOnlyList<string> ids)
    {
        ArgumentNullException.ThrowIfNull(field);
        Array values = Enum.GetValues(field.ValueType);
        return field.WithItems(owner, field.Choices.Select((choice, index) => (choice, index)).Where(one => ids.Contains(one.choice)).Select(one => values.GetValue(one.index)!));
    }
}
