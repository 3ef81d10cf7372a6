namespace Orlop.Boat.Values;

/// <summary>The range a number may have, both ends allowed, in the unit of the property's name.</summary>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
public sealed class AllowedAttribute(double least, double most) : Attribute
{
    public double Least { get; } = least;

    public double Most { get; } = most;
}

/// <summary>The string is the id of a thing of this kind in the same boat.</summary>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
public sealed class RefersToAttribute(Type kind) : Attribute
{
    public Type Kind { get; } = kind;
}

/// <summary>The name by which files and tables call a kind of thing.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class KindAttribute(string name) : Attribute
{
    public string Name { get; } = name;
}
