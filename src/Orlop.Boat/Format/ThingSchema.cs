using Orlop.Boat.Things;

namespace Orlop.Boat.Format;

/// <summary>The fields of each kind of thing, as forms, tables and files use them.</summary>
public static class ThingSchema
{
    /// <summary>Fields of a kind by its name; throws <see cref="KeyNotFoundException"/> for a kind that does not exist.</summary>
    public static RecordSchema Of(string kind) => RecordSchema.Of(ThingKinds.ByName[kind]);

    /// <summary>Fields of a kind by its type.</summary>
    public static RecordSchema Of(Type kind) => RecordSchema.Of(kind);

    /// <summary>The same thing with another value of a field.</summary>
    public static Thing With(Thing thing, FieldSchema field, object? value) => (Thing)field.With(thing, value);
}
