using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>A place through which water gets in once it is under: a vent, a door sill, a hatch that cannot be closed.</summary>
public sealed record Opening(string Id, Point3 Place)
{
    /// <summary>What people call it; its id where it has no other name.</summary>
    public string Title { get => field ?? Id; init; }
}
