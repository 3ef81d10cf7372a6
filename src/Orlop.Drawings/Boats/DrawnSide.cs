using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>One side of a hull, straight between its points.</summary>
/// <param name="Sheer">Deck edge.</param>
/// <param name="Chine">Outermost sharp line; empty where there is none.</param>
/// <param name="Along">Lines along the boat from the keel up, of which sections are drawn.</param>
internal sealed record DrawnSide(ValueList<OutlinePoint> Sheer, ValueList<OutlinePoint> Chine, IReadOnlyList<ValueList<OutlinePoint>> Along)
{
    /// <summary>Half-breadth and height at x, from the keel up; fewer than two where the hull does not reach.</summary>
    internal IReadOnlyList<OutlinePoint> SectionAt(double xM) => [.. Along.Select(line => HullLines.At(line, xM)).OfType<OutlinePoint>()];
}
