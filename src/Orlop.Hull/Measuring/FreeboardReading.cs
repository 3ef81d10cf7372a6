using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>One freeboard: how high a mark on the boat stands over calm water, measured plumb.</summary>
/// <param name="Id">For messages.</param>
/// <param name="Mark">The mark in the boat's axes.</param>
/// <param name="FreeboardM">Height over the water, negative below it; -5 to 20.</param>
/// <param name="DeviationM">Standard deviation of the reading, above 0 to 1.</param>
public sealed record FreeboardReading(string Id, Point3 Mark, double FreeboardM, double DeviationM);
