using System.Collections;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Views;

/// <summary>The things of a boat that rest on another: that end at it, run along it, show it or were read there.</summary>
public static class ThingUses
{
    private const int MostNamed = 5;

    /// <summary>The things that refer to one by its id, in the boat's order; an alteration's edits are not looked into.</summary>
    public static ImmutableArray<Thing> Of(BoatModel boat, string id) => [.. boat.Things.Where(thing => thing.Id != id && thing is not Alteration && Refers(thing, id))];

    /// <summary>Why a thing cannot be removed yet, and what to do; null where nothing rests on it.</summary>
    public static string? WhyNotRemoved(BoatModel boat, Thing thing)
    {
        ImmutableArray<Thing> users = Of(boat, thing.Id);
        if (users.Length == 0)
        {
            return null;
        }

        string named = string.Join("; ", users.Take(MostNamed).Select(user => user.Title)) + (users.Length > MostNamed ? $"; and {users.Length - MostNamed} more" : "");
        string them = users.Length == 1 ? "it" : "them";
        string other = thing is Protection or IsolatorSwitch ? " Or take it out of its circuit on the Electrics page: what is before and behind it is joined then." : "";
        return $"{thing.Title} cannot be removed while it is in use by {named}. Connect or point {them} elsewhere, or remove {them}, first.{other}";
    }

    private static bool Refers(object record, string id) =>
        (record is Reading { Through: { } element } && ElementIds.ThingOf(element) == id) || RecordSchema.Of(record.GetType()).Fields.Any(field => Values(field, record).Any(value => IsOrRefers(field, value, id)));

    private static bool IsOrRefers(FieldSchema field, object value, string id) => (field.ItemType ?? field.Type, value) switch
    {
        (FieldType.Reference, string target) => target == id,
        (FieldType.Terminal, Terminal terminal) => terminal.Part == id,
        (FieldType.Record, not (string or Terminal)) => Refers(value, id),
        _ => false,
    };

    private static IEnumerable<object> Values(FieldSchema field, object record) => field.Get(record) switch
    {
        null => [],
        IEnumerable items when field.Type == FieldType.List => items.Cast<object>(),
        { } value => [value],
    };
}
