using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>A space open to the sea: what it held up below the water is lost (lost buoyancy), but for what its contents displace.</summary>
/// <param name="Id">For messages.</param>
/// <param name="Shape">Closed surface, wholly inside the hull.</param>
/// <param name="PermeabilityFraction">Share of the space that water can fill, 0 to 1.</param>
public sealed record FloodedSpace(string Id, TriangleMesh Shape, double PermeabilityFraction);
