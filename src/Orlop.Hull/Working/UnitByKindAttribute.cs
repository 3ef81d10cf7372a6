namespace Orlop.Hull.Working;

/// <summary>Marks a number whose unit stands in a field beside it instead of in its name.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class UnitByKindAttribute : Attribute;
