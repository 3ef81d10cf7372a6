using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>A level, steady force across the boat (wind, a tow, a line), met by an equal one from the water.</summary>
/// <param name="Id">For messages.</param>
/// <param name="ForceN">Positive to starboard; -1e7 to 1e7.</param>
/// <param name="At">Where it acts.</param>
/// <param name="MetAt">Centre of lateral resistance, where the water's answer acts.</param>
public sealed record SidewaysPull(string Id, double ForceN, Point3 At, Point3 MetAt);
