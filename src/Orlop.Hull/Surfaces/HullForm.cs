using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// A hull as measured: sections from aft to forward, transom or stern profile first, stem last. Between the points of a section and from section to section the surface is
/// smooth, but for named lines and sharp sections. Where a section begins or ends off the centre line, bottom and deck are closed level to it.
/// </summary>
public sealed record HullForm
{
    public required string Id { get; init; }

    /// <summary>Both sides, or the port side when the starboard side is given apart.</summary>
    public required ImmutableArray<HullSection> Sections { get; init; }

    /// <summary>The starboard side of a boat whose sides differ: as many sections, in the same order. Empty for a symmetric boat.</summary>
    public ImmutableArray<HullSection> StarboardSections { get; init; } = [];
}
