using Orlop.Boat.Things;

namespace Orlop.Boat.Validation;

/// <summary>A thing of a boat under check, with where it stands.</summary>
/// <param name="Thing">The thing, as far as it could be made; null when not even its kind is known.</param>
/// <param name="Id">Its id, where it has one.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="IsWhole">Everything in it could be made.</param>
internal sealed record ThingEntry(Thing? Thing, string? Id, Spot Spot, bool IsWhole);
