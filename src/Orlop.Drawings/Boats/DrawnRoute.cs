using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>A way that a cable may take, drawn over all else.</summary>
/// <param name="Name">What it is called by those who cannot see it; its number stands beside it.</param>
/// <param name="Line">Its points from end to end.</param>
public sealed record DrawnRoute(string Name, ValueList<Place> Line);
