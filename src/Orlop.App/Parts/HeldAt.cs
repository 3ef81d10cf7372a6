using Orlop.Drawings.Boats;

namespace Orlop.App.Parts;

/// <summary>What a drawing shows while a thing is held: the plane of the water, and words.</summary>
public sealed record HeldAt(Waterline Water, string Words);
