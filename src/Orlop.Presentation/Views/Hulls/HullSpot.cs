namespace Orlop.Presentation.Views.Hulls;

/// <summary>A point of the hull's lines: its side, its station and its place on it, both counted from 0.</summary>
public readonly record struct HullSpot(bool IsStarboard, int Station, int Point);
