using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>One item of a weight ledger with how well it is known.</summary>
/// <param name="Id">Unique in its list.</param>
/// <param name="MassKg">0 to 10 000 000.</param>
/// <param name="MassDeviationKg">Standard deviation of the mass, 0 or more.</param>
/// <param name="Place">Its centre of gravity.</param>
/// <param name="PlaceDeviation">Standard deviations of the place along x, y and z, 0 or more.</param>
public sealed record LedgerItem(string Id, double MassKg, double MassDeviationKg, Point3 Place, Point3 PlaceDeviation)
{
    /// <summary>How many alike make up the item, their errors going together as they come from one scale; 1 or more.</summary>
    public int PieceCount { get; init; } = 1;
}
