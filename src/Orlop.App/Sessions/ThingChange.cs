using Orlop.Boat.Things;

namespace Orlop.App.Sessions;

/// <summary>One thing as a person saw it and as they want it.</summary>
/// <param name="Seen">What they saw; null to add a thing.</param>
/// <param name="Becomes">What they want; null to remove it.</param>
public sealed record ThingChange(Thing? Seen, Thing? Becomes)
{
    /// <summary>Id of the thing.</summary>
    public string Id => (Becomes ?? Seen)!.Id;

    /// <summary>Adds a thing.</summary>
    public static ThingChange Add(Thing thing) => new(null, thing);
}
