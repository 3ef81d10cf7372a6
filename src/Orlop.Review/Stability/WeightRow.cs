using Orlop.Boat.Values;

namespace Orlop.Review.Stability;

/// <summary>What a row of the ledger comes from.</summary>
public enum WeightKind { BareBoat, Gear, Part, Cable, Deadweight, Liquid }

/// <summary>A row of the weight ledger in one condition.</summary>
/// <param name="ThingId">The thing it comes from.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Kind">What kind of thing.</param>
/// <param name="MassKg">Its mass, all pieces together.</param>
/// <param name="DeviationKg">One standard deviation of the mass.</param>
/// <param name="Place">Its centre, or the point it hangs from.</param>
/// <param name="PlaceDeviationM">One standard deviation of the place, in each direction.</param>
/// <param name="How">How mass and place are known, in words.</param>
public sealed record WeightRow(string ThingId, string Title, WeightKind Kind, double MassKg, double DeviationKg, Place Place, double PlaceDeviationM, string How)
{
    /// <summary>How many pieces make it up, 1 or more; each weighs as much, and one error is all theirs.</summary>
    public int PieceCount { get; init; } = 1;
}
