using System.ComponentModel;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>One field of a record: everything that files, tables, forms and validation need to know of it.</summary>
public sealed class FieldSchema
{
    private readonly PropertyInfo _property;
    private readonly FieldAccess _access;
    private readonly string[] _choices;
    private readonly Lazy<RecordSchema?> _record;

    internal FieldSchema(PropertyInfo property, ParameterInfo? parameter)
    {
        _property = property;
        _access = FieldAccess.To(property);
        IsRequired = parameter is { HasDefaultValue: false };
        ReadAttributes(property);
        Type declared = property.PropertyType;
        bool isList = declared.IsGenericType && declared.GetGenericTypeDefinition() == typeof(ValueList<>);
        ValueType = Bare(isList ? declared.GetGenericArguments()[0] : declared);
        IsNullable = !isList && (!declared.IsValueType || declared != ValueType);
        FieldType single = TypeOf(property, ValueType, RefersTo);
        Type = isList ? FieldType.List : single;
        ItemType = isList ? single : null;
        Name = FieldNames.Camel(property.Name);
        Unit = single is FieldType.Quantity or FieldType.Number or FieldType.Count ? UnitSuffix.Of(property.Name) : null;
        _choices = ValueType.IsEnum ? [.. Enum.GetNames(ValueType).Select(FieldNames.Kebab)] : [];
        _record = new(() => single is FieldType.Place or FieldType.Box or FieldType.Record or FieldType.Quantity ? RecordSchema.Of(ValueType) : null);
    }

    /// <summary>Name in JSON: <c>lengthM</c>.</summary>
    public string Name { get; }

    /// <summary>Name of the column: <c>length_m</c>.</summary>
    public string Column => FieldNames.Snake(_property.Name);

    /// <summary>Plain words for a form, without the unit.</summary>
    public string Label => FieldNames.Label(_property.Name, Unit is { Suffix: not ("Factor" or "Year") } ? Unit.Suffix : "");

    /// <summary>Unit of a number; null where the field is no number or has none.</summary>
    public UnitSuffix? Unit { get; private set; }

    /// <summary>What it holds.</summary>
    public FieldType Type { get; }

    /// <summary>What each item of a list holds; null when it is no list.</summary>
    public FieldType? ItemType { get; }

    /// <summary>Type of the value, or of an item of the list, never nullable.</summary>
    public Type ValueType { get; }

    /// <summary>It can be left empty.</summary>
    public bool IsNullable { get; }

    /// <summary>It must be given.</summary>
    public bool IsRequired { get; private set; }

    /// <summary>Range of a number; null where any finite number goes.</summary>
    public AllowedAttribute? Allowed { get; private set; }

    /// <summary>Kind of thing that it refers to; null when it is no reference.</summary>
    public Type? RefersTo { get; private set; }

    /// <summary>Names of the choices, in order; empty when it is no choice.</summary>
    public IReadOnlyList<string> Choices => _choices;

    /// <summary>One sentence for people; null where the name says it all.</summary>
    public string? Description { get; private set; }

    /// <summary>Fields of the record it holds, or of each record in its list; null where it holds none.</summary>
    public RecordSchema? Record => _record.Value;

    /// <summary>The range in words with its unit; null where there is none.</summary>
    public string? AllowedText => Allowed switch
    {
        null => null,
        { Most: double.MaxValue } => string.Create(CultureInfo.InvariantCulture, $"{Allowed.Least} or more {Unit?.Text}").TrimEnd(),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Allowed.Least} to {Allowed.Most} {Unit?.Text}").TrimEnd(),
    };

    /// <summary>The same field read in a unit that another field of its record gives, with the range in that unit.</summary>
    public FieldSchema In(UnitSuffix unit, AllowedAttribute allowed)
    {
        FieldSchema copy = (FieldSchema)MemberwiseClone();
        (copy.Unit, copy.Allowed) = (unit, allowed);
        return copy;
    }

    /// <summary>Its value in a record.</summary>
    public object? Get(object record) => _access.Get(record);

    /// <summary>The same record with another value of this field; null empties it.</summary>
    public object With(object record, object? value)
    {
        object copy = RecordSchema.Of(record.GetType()).Copy(record);
        Set(copy, value);
        return copy;
    }

    /// <summary>The same record with these items in this list field.</summary>
    public object WithItems(object record, IEnumerable<object> items) => With(record, List([.. items]));

    /// <summary>Position that the record asks for; fields of equal order follow their declaration.</summary>
    internal int Order { get; private set; }

    internal string PropertyName => _property.Name;

    internal void Set(object record, object? value) => _access.Set(record, value);

    internal object? MissingValue => ValueType.IsValueType && !IsNullable && Type != FieldType.List ? Activator.CreateInstance(ValueType) : null;

    /// <summary>A list of this field from its items; an item that could not be read is null.</summary>
    internal object List(List<object?> items) => ListMaker.For(ValueType).Make(items);

    internal bool TryChoice(string text, out object? choice)
    {
        int index = Array.IndexOf(_choices, text);
        choice = index < 0 ? null : Enum.GetValues(ValueType).GetValue(index);
        return index >= 0;
    }

    private void ReadAttributes(PropertyInfo property)
    {
        // One look at all attributes: each look is slow, and a program that is started for one answer takes them all.
        foreach (Attribute attribute in property.GetCustomAttributes(inherit: false))
        {
            switch (attribute)
            {
                case AllowedAttribute allowed:
                    Allowed = allowed;
                    break;
                case RefersToAttribute reference:
                    RefersTo = reference.Kind;
                    break;
                case DescriptionAttribute description:
                    Description = description.Description;
                    break;
                case JsonPropertyOrderAttribute order:
                    Order = order.Order;
                    break;
                case RequiredMemberAttribute:
                    IsRequired = true;
                    break;
            }
        }
    }

    private static Type Bare(Type type) => Nullable.GetUnderlyingType(type) ?? type;

    private static FieldType TypeOf(PropertyInfo property, Type type, Type? refersTo) => type switch
    {
        _ when type == typeof(string) => refersTo is not null ? FieldType.Reference : property.Name == "Id" ? FieldType.Id : FieldType.Text,
        _ when type == typeof(Quantity) => FieldType.Quantity,
        _ when type == typeof(double) => FieldType.Number,
        _ when type == typeof(int) => FieldType.Count,
        _ when type == typeof(bool) => FieldType.Flag,
        _ when type == typeof(Terminal) => FieldType.Terminal,
        _ when type == typeof(Place) => FieldType.Place,
        _ when type == typeof(BoxSize) => FieldType.Box,
        _ when type == typeof(DateOnly) => FieldType.Date,
        _ when type == typeof(Thing) => FieldType.Thing,
        _ when type.IsEnum => FieldType.Choice,
        _ when type.IsClass => FieldType.Record,
        _ => throw new NotSupportedException($"{property.DeclaringType!.Name}.{property.Name}: the file format knows no {type.Name}"),
    };
}
