using Orlop.Hull.Working;

namespace Orlop.Hull.Surfaces;

/// <summary>How a box lies to a hull.</summary>
public enum BoxCutStatus
{
    /// <summary>Wholly inside: the body is the box itself.</summary>
    Inside,

    /// <summary>The hull's skin bounds it on some side.</summary>
    Cut,

    /// <summary>Nothing of it is inside.</summary>
    Outside,
}

/// <summary>The part of a box that lies inside a hull.</summary>
/// <param name="Status">How the box lies.</param>
/// <param name="Message">The same in a sentence.</param>
/// <param name="Body">A closed body, its corners on hull and box, good for volumes, tanks and flooded spaces; null when nothing is inside.</param>
/// <param name="VolumeM3">Its volume, 0 when nothing is inside.</param>
/// <param name="InsideFraction">Share of the box's volume that is inside.</param>
public sealed record BoxCutResult(BoxCutStatus Status, string Message, TriangleMesh? Body, double VolumeM3, double InsideFraction);

/// <summary>
/// A tank or a space given as a box and sided by the hull: the hull's closed surface cut by the six planes of the box, each cut capped. Exact for the triangles given. The skin has no
/// thickness; what plating, frames and linings take up is the owner's to leave off the box.
/// </summary>
public static class BoxCut
{
    /// <summary>What rounding leaves of nothing, and what it takes off a whole box, as a share of the box.</summary>
    private const double RoundingShare = 1e-11;

    /// <param name="subject">What it is, for messages.</param>
    /// <param name="hull">Closed surface of the hull.</param>
    /// <param name="low">Aftermost, starboard, lowest corner.</param>
    /// <param name="high">Foremost, port, highest corner.</param>
    public static BoxCutResult Calculate(string subject, TriangleMesh hull, Point3 low, Point3 high)
    {
        ArgumentNullException.ThrowIfNull(hull);
        hull.Closed($"{subject}: hull");
        Guard.Place(low, subject);
        Guard.Place(high, subject);
        Guard.Positive(high.XM - low.XM, 1000, "m", subject, "length");
        Guard.Positive(high.YM - low.YM, 1000, "m", subject, "breadth");
        Guard.Positive(high.ZM - low.ZM, 1000, "m", subject, "height");
        TriangleMesh? inside = hull;
        foreach (var (normal, offset) in new[]
        {
            (new Point3(1, 0, 0), high.XM), (new Point3(-1, 0, 0), -low.XM), (new Point3(0, 1, 0), high.YM),
            (new Point3(0, -1, 0), -low.YM), (new Point3(0, 0, 1), high.ZM), (new Point3(0, 0, -1), -low.ZM),
        })
        {
            inside = inside is null ? null : PlaneCut.Keep(inside, normal, offset);
        }

        var box = Solids.Box(low, high);
        var whole = box.SignedVolumeM3;
        var volume = inside is null ? 0 : inside.SignedVolumeM3;
        if (volume <= RoundingShare * whole)
        {
            return new BoxCutResult(BoxCutStatus.Outside, $"{subject}: from {low} to {high} nothing is inside the hull, which reaches from {hull.Lowest} to {hull.Highest}", null, 0, 0);
        }

        return volume >= (1 - RoundingShare) * whole
            ? new BoxCutResult(BoxCutStatus.Inside, $"{subject}: wholly inside the hull", box, whole, 1)
            : new BoxCutResult(BoxCutStatus.Cut, FormattableString.Invariant($"{subject}: {100 * volume / whole:0.#} % of the box is inside the hull"), inside, volume, volume / whole);
    }
}
