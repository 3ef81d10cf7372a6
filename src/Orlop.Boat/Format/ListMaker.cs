using System.Collections.Concurrent;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>Makes a <see cref="ValueList{T}"/> whose item type is known only at run time.</summary>
internal abstract class ListMaker
{
    private static readonly ConcurrentDictionary<Type, ListMaker> Makers = new();

    public static ListMaker For(Type item) =>
        Makers.GetOrAdd(item, static type => (ListMaker)Activator.CreateInstance(typeof(ListMaker<>).MakeGenericType(type))!);

    public abstract object Make(List<object?> items);
}

internal sealed class ListMaker<T> : ListMaker
{
    public override object Make(List<object?> items) => items.Select(item => item is null ? default! : (T)item).ToValueList();
}
