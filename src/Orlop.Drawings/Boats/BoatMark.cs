using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>What a mark stands for.</summary>
public enum MarkKind
{
    /// <summary>Centre of gravity: a quartered disc, as in drawings of all trades.</summary>
    Gravity,

    /// <summary>Centre of buoyancy: a ring with a dot.</summary>
    Buoyancy,

    /// <summary>A weight: a disc whose area goes with its mass.</summary>
    Weight,
}

/// <summary>A point marked on the boat.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Name">What it is called by those who cannot see it, and the label of a centre.</param>
/// <param name="Place">Where.</param>
/// <param name="ThingId">The thing that it opens; null for none.</param>
/// <param name="ShareFraction">A weight's mass over the greatest that is marked, 0 to 1.</param>
public sealed record BoatMark(MarkKind Kind, string Name, Place Place, string? ThingId = null, double ShareFraction = 0);
