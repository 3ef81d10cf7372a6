using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>Sum of masses and their common centre; the centre is null when there is no mass.</summary>
public sealed record WeightSumResult(double MassKg, double MomentXKgM, double MomentYKgM, double MomentZKgM, Point3? Centre);

/// <summary>
/// Σm, Σm·x, Σm·y, Σm·z. Items are summed in the order of their ids, so the same items give the same bits whatever the order they were added in, and an item added and
/// taken off again leaves no trace.
/// </summary>
public static class WeightSum
{
    public static WeightSumResult Calculate(IEnumerable<WeightItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        ImmutableArray<WeightItem> ordered = [.. items.OrderBy(item => item.Id, StringComparer.Ordinal)];
        double mass = 0, momentX = 0, momentY = 0, momentZ = 0;
        string? before = null;
        foreach (var item in ordered)
        {
            if (item.Id == before)
            {
                throw new ArgumentException($"weights: {item.Id} stands twice in the list; an id stands once.", nameof(items));
            }

            before = item.Id;
            Guard.InRange(item.MassKg, 0, 1e7, "kg", item.Id);
            Guard.Place(item.Place, item.Id);
            mass += item.MassKg;
            momentX += item.MassKg * item.Place.XM;
            momentY += item.MassKg * item.Place.YM;
            momentZ += item.MassKg * item.Place.ZM;
        }

        return new WeightSumResult(mass, momentX, momentY, momentZ, mass > 0 ? new Point3(momentX / mass, momentY / mass, momentZ / mass) : null);
    }
}
