using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What the hull is made of.</summary>
public enum HullMaterial { Steel, Aluminium, Grp, Wood, Other }

/// <summary>Whether the deck keeps water out.</summary>
public enum DeckKind { Closed, PartlyOpen, Open }

/// <summary>What is said of the boat as a whole. There is one, with the id <c>particulars</c>.</summary>
[Kind("particulars")]
public sealed record Particulars : Thing
{
    [Description("Length over all."), Allowed(1, 60)]
    public Quantity? LengthOverAllM { get; init; }

    [Description("Greatest breadth."), Allowed(0.3, 20)]
    public Quantity? BeamM { get; init; }

    [Description("Depth amidships from the base line to the deck edge."), Allowed(0.2, 15)]
    public Quantity? DepthM { get; init; }

    [Description("Draught as she usually floats, from the base line."), Allowed(0.05, 10)]
    public Quantity? DraughtM { get; init; }

    [Description("Weight of the boat as she usually floats."), Allowed(20, 500_000)]
    public Quantity? DisplacementKg { get; init; }

    [Description("What the hull is made of; a metal hull matters to bonding and faults. Left out, it is not known.")]
    public HullMaterial? Material { get; init; }

    [Description("Deck: closed and watertight from edge to edge; partly open, with a cockpit or a well that water can fill; or open. Water comes into an open boat over the deck edge, into a partly open one over the coaming of the well that is listed among the openings with its length and breadth, or over the deck edge where none is. Left out, it is not known where water comes in.")]
    public DeckKind? Deck { get; init; }

    [Description("Year of build."), Allowed(1800, 2100)]
    public int? BuiltYear { get; init; }

    [Description("Density of the water she lies in."), Allowed(990, 1040)]
    public Quantity? WaterDensityKgPerM3 { get; init; }

    [Description("Currency of the owner's prices: EUR, SEK. Without one, prices are in the catalogue's own units.")]
    public string? Currency { get; init; }

    [Description("How many of it the built-in catalogue's unit of price is worth; its prices are typical figures in a unit of about a euro. 1 when left out."), Allowed(0.0001, 1_000_000)]
    public Quantity? CurrencyRatio { get; init; }
}

/// <summary>Lines good enough to draw the boat: profile, plan and a few sections. Measured from the after perpendicular and the base line.</summary>
[Kind("hull-outline")]
public sealed record HullOutline : Thing
{
    [Description("Deck edge at the side, from aft forward: x, half-breadth, height.")]
    public ValueList<OutlinePoint> Sheer { get; init; } = [];

    [Description("Chine or turn of bilge, from aft forward: x, half-breadth, height.")]
    public ValueList<OutlinePoint> Chine { get; init; } = [];

    [Description("Keel and stem, from aft forward: x, half-breadth (0), height.")]
    public ValueList<OutlinePoint> Keel { get; init; } = [];

    [Description("Deckhouses and casings, as boxes with a sloping front.")]
    public ValueList<Deckhouse> Deckhouses { get; init; } = [];
}

/// <summary>A point of an outline: x forward of the after perpendicular, half-breadth from the centre line, height above the base line.</summary>
public sealed record OutlinePoint([property: Allowed(-5, 60)] double XM, [property: Allowed(0, 10)] double HalfBreadthM, [property: Allowed(-5, 20)] double HeightM);

/// <summary>A deckhouse: after and forward end at its foot, at its roof, half-breadth, foot and roof heights.</summary>
public sealed record Deckhouse(
    string Name,
    [property: Allowed(-5, 60)] double AftXM,
    [property: Allowed(-5, 60)] double ForeXM,
    [property: Allowed(-5, 60)] double RoofAftXM,
    [property: Allowed(-5, 60)] double RoofForeXM,
    [property: Allowed(0, 10)] double HalfBreadthM,
    [property: Allowed(-5, 20)] double FootM,
    [property: Allowed(-5, 20)] double RoofM);
