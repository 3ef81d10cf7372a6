using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>A field of a thing that a draft and the boat as built no longer agree on.</summary>
/// <param name="Label">The field, in words.</param>
/// <param name="Drafted">What stood there when it was drafted.</param>
/// <param name="Now">What stands there now.</param>
/// <param name="Wanted">What the draft makes of it.</param>
public sealed record ClashField(string Label, string Drafted, string Now, string Wanted);

/// <summary>A clash as it is read: what the draft saw, what is there now and what the draft wants.</summary>
public static class ClashView
{
    private const string NotThere = "not there";

    /// <summary>What has happened since, as the end of a sentence that begins with the thing's name.</summary>
    public static string What(Clash clash)
    {
        ArgumentNullException.ThrowIfNull(clash);
        return (clash.Expected, clash.Found) switch
        {
            (null, _) => "was not in the boat when this draft was made, and is there now.",
            (_, null) => "was in the boat when this draft was made, and is gone.",
            _ => "has changed in the boat as built since this was drafted.",
        };
    }

    /// <summary>Each field in which the three are not all the same.</summary>
    /// <param name="boat">To say what is referred to by its name.</param>
    public static IReadOnlyList<ClashField> Fields(Clash clash, DisplayUnits units, CultureInfo culture, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(clash);
        Thing?[] states = [clash.Expected, clash.Found, clash.Wanted];
        Type[] types = [.. states.OfType<Thing>().Select(thing => thing.GetType()).Distinct()];
        if (types.Length != 1)
        {
            return types.Length == 0 ? [] : [Row("Kind", [.. states.Select(thing => thing is null ? NotThere : Wording.KindOf(thing))])];
        }

        return
        [
            .. ThingSchema.Of(types[0]).Fields.Where(field => field.Type != FieldType.Id)
                .Select(field => (Field: field, Texts: states.Select(thing => thing is null ? NotThere : FieldText.Show(field, field.Get(thing), units, culture, boat)).ToArray(), IsGiven: states.Any(thing => thing is not null && field.Get(thing) is not null)))
                .Where(row => row.IsGiven && row.Texts.Distinct(StringComparer.Ordinal).Count() > 1)
                .Select(row => Row(FieldLabels.Of(row.Field), row.Texts)),
        ];
    }

    private static ClashField Row(string label, string[] texts) => new(label, texts[0], texts[1], texts[2]);
}
