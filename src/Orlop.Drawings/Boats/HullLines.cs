using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>The lines of a hull, straight between their points.</summary>
/// <param name="outline">What profile and plan are drawn from.</param>
/// <param name="along">Lines along the boat from the keel up, of which sections are drawn.</param>
internal sealed class HullLines(HullOutline outline, IReadOnlyList<ValueList<OutlinePoint>> along)
{
    internal ValueList<OutlinePoint> Sheer => outline.Sheer;

    internal ValueList<OutlinePoint> Chine => outline.Chine;

    internal ValueList<OutlinePoint> Keel => outline.Keel;

    internal ValueList<Deckhouse> Deckhouses => outline.Deckhouses;

    internal IEnumerable<OutlinePoint> Points => [.. Sheer, .. Chine, .. Keel];

    /// <summary>Half-breadth and height of one side at x, from the keel up; fewer than two where the hull does not reach.</summary>
    internal IReadOnlyList<OutlinePoint> SectionAt(double xM) =>
        [.. along.Select(line => At(line, xM)).OfType<OutlinePoint>()];

    /// <summary>The line's point at x, or null where the line does not reach.</summary>
    internal static OutlinePoint? At(ValueList<OutlinePoint> line, double xM)
    {
        for (int index = 1; index < line.Count; index++)
        {
            OutlinePoint aft = line[index - 1], fore = line[index];
            if (xM >= Math.Min(aft.XM, fore.XM) && xM <= Math.Max(aft.XM, fore.XM) && aft.XM != fore.XM)
            {
                double part = (xM - aft.XM) / (fore.XM - aft.XM);
                return new(xM, Between(aft.HalfBreadthM, fore.HalfBreadthM, part), Between(aft.HeightM, fore.HeightM, part));
            }
        }

        return null;
    }

    private static double Between(double from, double to, double part) => from + (part * (to - from));
}
