using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>The lines of a hull, straight between their points.</summary>
/// <param name="outline">What profile and plan are drawn from.</param>
/// <param name="port">The port side, which profiles are drawn of.</param>
/// <param name="starboard">The starboard side; the same where the sides are alike.</param>
internal sealed class HullLines(HullOutline outline, DrawnSide port, DrawnSide starboard)
{
    internal DrawnSide Port => port;

    internal DrawnSide Starboard => starboard;

    internal ValueList<OutlinePoint> Sheer => port.Sheer;

    internal ValueList<OutlinePoint> Chine => port.Chine;

    internal ValueList<OutlinePoint> Keel => outline.Keel;

    internal ValueList<Deckhouse> Deckhouses => outline.Deckhouses;

    internal IEnumerable<OutlinePoint> Points => [.. Sheer, .. Chine, .. Keel, .. starboard.Sheer, .. starboard.Chine];

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
