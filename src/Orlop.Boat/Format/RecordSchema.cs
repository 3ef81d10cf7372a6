using System.Collections.Concurrent;
using System.Reflection;

namespace Orlop.Boat.Format;

/// <summary>The fields of a record of the boat, a thing or a part of one, in the order in which files write them.</summary>
public sealed class RecordSchema
{
    private static readonly ConcurrentDictionary<Type, RecordSchema> Schemas = new();

    private readonly ConstructorInfo _constructor;
    private readonly ParameterInfo[] _parameters;
    private readonly int[] _parameterFields;
    private readonly MethodInfo? _clone;
    private readonly Dictionary<string, int> _byName = new(StringComparer.Ordinal);

    private RecordSchema(Type type)
    {
        Type = type;
        _constructor = type.GetConstructors().MinBy(constructor => constructor.GetParameters().Length)
            ?? throw new NotSupportedException($"{type.Name} has no public constructor");
        _parameters = _constructor.GetParameters();
        _clone = type.GetMethod("<Clone>$");
        List<FieldSchema> fields = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.CanWrite)
            .Select(property => new FieldSchema(property, Array.Find(_parameters, parameter => parameter.Name == property.Name)))
            .OrderBy(field => field.Order)];
        _parameterFields = [.. _parameters.Select(parameter => fields.FindIndex(field => field.PropertyName == parameter.Name))];
        for (int i = 0; i < fields.Count; i++)
        {
            _byName.Add(fields[i].Name, i);
        }

        Fields = fields;
    }

    /// <summary>The record's type.</summary>
    public Type Type { get; }

    /// <summary>Its fields, in the order in which files write them.</summary>
    public IReadOnlyList<FieldSchema> Fields { get; }

    /// <summary>The schema of a record type; made once.</summary>
    public static RecordSchema Of(Type type) => Schemas.GetOrAdd(type, static wanted => new RecordSchema(wanted));

    /// <summary>The field with this JSON name, or null.</summary>
    public FieldSchema? Field(string name) => IndexOf(name) is int index and >= 0 ? Fields[index] : null;

    /// <summary>Makes the record from values of some of its fields; every other field has its default.</summary>
    /// <exception cref="ArgumentException">A field that must be given is not.</exception>
    public object Make(IReadOnlyDictionary<FieldSchema, object?> given)
    {
        object?[] values = [.. Fields.Select(field => given.GetValueOrDefault(field))];
        bool[] isSet = [.. Fields.Select(given.ContainsKey)];
        FieldSchema? missing = Fields.Where((field, index) => field.IsRequired && values[index] is null).FirstOrDefault();
        return missing is null ? Create(values, isSet) : throw new ArgumentException($"{Type.Name}: {missing.Name} must be given", nameof(given));
    }

    internal int IndexOf(string name) => _byName.GetValueOrDefault(name, -1);

    /// <summary>Makes the record. A field that is not set keeps its default; one that has none is null or zero, for validation to find.</summary>
    internal object Create(object?[] values, bool[] isSet)
    {
        object?[] arguments = new object?[_parameters.Length];
        for (int i = 0; i < arguments.Length; i++)
        {
            int field = _parameterFields[i];
            arguments[i] = isSet[field] ? values[field]
                : _parameters[i].HasDefaultValue ? Default(_parameters[i], Fields[field])
                : Fields[field].MissingValue;
        }

        object record = _constructor.Invoke(arguments);
        for (int i = 0; i < values.Length; i++)
        {
            if (isSet[i] && !_parameterFields.Contains(i))
            {
                Fields[i].Set(record, values[i]);
            }
        }

        return record;
    }

    internal object Copy(object record) => _clone!.Invoke(record, null)!;

    private static object? Default(ParameterInfo parameter, FieldSchema field) =>
        parameter.DefaultValue is object value && field.ValueType.IsEnum ? Enum.ToObject(field.ValueType, value) : parameter.DefaultValue;
}
