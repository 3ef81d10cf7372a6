using System.Reflection;

namespace Orlop.Boat.Format;

/// <summary>Gets and sets one property through delegates: plain reflection would compile a method for each property on its second use.</summary>
internal abstract class FieldAccess
{
    public static FieldAccess To(PropertyInfo property) =>
        (FieldAccess)Activator.CreateInstance(typeof(FieldAccess<,>).MakeGenericType(property.ReflectedType!, property.PropertyType), property)!;

    public abstract object? Get(object record);

    public abstract void Set(object record, object? value);
}

internal sealed class FieldAccess<TRecord, TValue>(PropertyInfo property) : FieldAccess
{
    private readonly Func<TRecord, TValue> _get = property.GetMethod!.CreateDelegate<Func<TRecord, TValue>>();
    private readonly Action<TRecord, TValue> _set = property.SetMethod!.CreateDelegate<Action<TRecord, TValue>>();

    public override object? Get(object record) => _get((TRecord)record);

    public override void Set(object record, object? value) => _set((TRecord)record, (TValue)value!);
}
