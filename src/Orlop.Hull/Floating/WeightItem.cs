using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>One mass and its centre. A weight that hangs freely acts, at every angle, as if it lay at the point it hangs from: give that point.</summary>
/// <param name="Id">Unique in its list.</param>
/// <param name="MassKg">0 to 10 000 000.</param>
/// <param name="Place">Its centre of gravity, or the point it hangs from.</param>
public sealed record WeightItem(string Id, double MassKg, Point3 Place);
