namespace Orlop.Hull.Surfaces;

/// <summary>One measured point of a section, on one side of the boat.</summary>
/// <param name="XM">Forward of the after perpendicular.</param>
/// <param name="HalfBreadthM">From the centre line, 0 or more, to whichever side is measured.</param>
/// <param name="HeightM">Above the base line.</param>
/// <param name="Line">Name of the sharp line it lies on (a chine, a knuckle, the sheer when a deck follows); null on a smooth stretch.</param>
public sealed record SectionPoint(double XM, double HalfBreadthM, double HeightM, string? Line = null);
