using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Measured points of one cross section or end profile, from the keel up to the deck edge, and on over the deck if that is measured too. A stem or a pointed stern is a section
/// whose half-breadths are all 0; a transom is the first section, with breadth. A section need not lie square across the boat.
/// </summary>
public sealed record HullSection
{
    /// <summary>What it is called, for messages.</summary>
    public required string Id { get; init; }

    public required ImmutableArray<SectionPoint> Points { get; init; }

    /// <summary>True where the surface may have a crease across the boat, as at the foot of a barge's rake.</summary>
    public bool IsSharp { get; init; }

    /// <summary>A section square across the boat.</summary>
    public static HullSection At(string id, double xM, params ReadOnlySpan<(double HalfBreadthM, double HeightM, string? Line)> points)
    {
        var measured = ImmutableArray.CreateBuilder<SectionPoint>(points.Length);
        foreach (var (halfBreadthM, heightM, line) in points)
        {
            measured.Add(new SectionPoint(xM, halfBreadthM, heightM, line));
        }

        return new HullSection { Id = id, Points = measured.ToImmutable() };
    }

    /// <summary>A stem or stern profile on the centre line.</summary>
    public static HullSection Profile(string id, params ReadOnlySpan<(double XM, double HeightM, string? Line)> points)
    {
        var measured = ImmutableArray.CreateBuilder<SectionPoint>(points.Length);
        foreach (var (xM, heightM, line) in points)
        {
            measured.Add(new SectionPoint(xM, 0, heightM, line));
        }

        return new HullSection { Id = id, Points = measured.ToImmutable() };
    }
}
