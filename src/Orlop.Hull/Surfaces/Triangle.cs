namespace Orlop.Hull.Surfaces;

/// <summary>Three corners by their place in the mesh's list, counter-clockwise as seen from outside.</summary>
public readonly record struct Triangle(int A, int B, int C);
