using System.Collections.Frozen;
using System.Reflection;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>Every kind of thing, by the name that files and tables use.</summary>
public static class ThingKinds
{
    /// <summary>Name to type, for all sealed records of this assembly derived from <see cref="Thing"/>.</summary>
    public static FrozenDictionary<string, Type> ByName { get; } = typeof(Thing).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Thing)) && !type.IsAbstract)
        .ToFrozenDictionary(type => type.GetCustomAttribute<KindAttribute>()!.Name, StringComparer.Ordinal);

    private static readonly FrozenDictionary<Type, string> Names = ByName.ToFrozenDictionary(pair => pair.Value, pair => pair.Key);

    /// <summary>The kind's name: <c>battery</c>, <c>cable</c>.</summary>
    public static string NameOf(Type type) => Names[type];

    /// <summary>The kind's name of a thing.</summary>
    public static string NameOf(Thing thing) => Names[thing.GetType()];
}
