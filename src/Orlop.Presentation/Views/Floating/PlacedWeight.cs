using System.Globalization;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A weight or a centre where it is, to be marked on a drawing.</summary>
/// <param name="Name">What it is, with its mass.</param>
/// <param name="Place">Where.</param>
/// <param name="MassKg">Its mass.</param>
/// <param name="ThingId">The thing it comes from; null for a centre.</param>
public sealed record PlacedWeight(string Name, Place Place, double MassKg, string? ThingId)
{
    /// <summary>What is listed aboard and what stands in tanks, of a kilogram and more.</summary>
    public static IEnumerable<PlacedWeight> Of(StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture) =>
        from row in LedgerView.RowsOf(view, facts.Condition)
        where row.MassKg >= 1
        select new PlacedWeight($"{row.Title}, {LedgerView.Kg(row.MassKg, units, culture)}", row.Place, row.MassKg, row.ThingId);

    /// <summary>Centre of gravity with all liquids as they lie at rest; null without a position.</summary>
    public static PlacedWeight? Gravity(FloatingFacts facts, DisplayUnits units, CultureInfo culture) =>
        facts.Position is { } at ? new($"Centre of gravity, {LedgerView.Kg(facts.Floating!.Rest.MassKg, units, culture)}", At(at.CentreOfGravity), facts.Floating.Rest.MassKg, null) : null;

    /// <summary>Centre of buoyancy at rest; null without a position.</summary>
    public static PlacedWeight? Buoyancy(FloatingFacts facts) => facts.Position is { } at ? new("Centre of buoyancy", At(at.CentreOfBuoyancy), 0, null) : null;

    private static Place At(Point3 point) => new(point.XM, point.YM, point.ZM);
}
