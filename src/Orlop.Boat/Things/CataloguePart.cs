using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a part of the catalogue is.</summary>
public enum CatalogueUse { Cable, Fuse, Breaker, Switch, Plug, Busbar, SoftStart, Vent, Fan }

/// <summary>
/// A generic part that may be bought: what the electrics must know of it, its mass and its price. The owner's entry stands in place of
/// the built-in one of the same id.
/// </summary>
[Kind("catalogue-part")]
public sealed record CataloguePart : Thing
{
    [Description("What it is.")]
    public required CatalogueUse Use { get; init; }

    [Description("Cross-section of each core of a cable."), Allowed(0.2, 500)]
    public Quantity? AreaMm2 { get; init; }

    [Description("Cores of a cable in one sheath; 1 for a single conductor."), Allowed(1, 5)]
    public int? CoreCount { get; init; }

    [Description("How a cable's conductors are stranded.")]
    public StrandClass Strands { get; init; } = StrandClass.FlexibleTinned5;

    [Description("Temperature a cable's insulation is rated for."), Allowed(40, 250)]
    public Quantity? InsulationC { get; init; }

    [Description("Outer diameter of a cable."), Allowed(0.5, 150)]
    public Quantity? OuterDiameterMm { get; init; }

    [Description("Rating: of a fuse, breaker, switch, plug or bar the current it may carry; of a soft starter the running current of the load."), Allowed(0.05, 10_000)]
    public Quantity? RatedA { get; init; }

    [Description("Voltage it may interrupt or be used at; of a fan the nominal one."), Allowed(1, 1500)]
    public Quantity? RatedV { get; init; }

    [Description("Greatest current that a fuse or breaker can break."), Allowed(1, 1_000_000)]
    public Quantity? BreakingA { get; init; }

    [Description("Id of a fuse's or breaker's operating-time gates, as listed in the docs.")]
    public string? Gates { get; init; }

    [Description("It opens both poles.")]
    public bool IsTwoPole { get; init; }

    [Description("Resistance through one pole, or of one mated contact of a plug."), Allowed(0, 10)]
    public Quantity? ResistanceOhm { get; init; }

    [Description("Shape or key of a plug that decides what mates with it; equal words mate.")]
    public string? Keying { get; init; }

    [Description("Which contact of a plug is which pole.")]
    public string? Arrangement { get; init; }

    [Description("Starting current over running current that a soft starter leaves, or with which a fan starts."), Allowed(1, 20)]
    public Quantity? StartRatio { get; init; }

    [Description("How long the start lasts with a soft starter, or of a fan."), Allowed(0, 600)]
    public Quantity? StartS { get; init; }

    [Description("What is free of a vent, screens and louvres taken off."), Allowed(0.01, 100_000)]
    public Quantity? AreaCm2 { get; init; }

    [Description("Air that a fan moves through the openings of a space, fitted."), Allowed(0, 100_000)]
    public Quantity? FanM3PerH { get; init; }

    [Description("Power that a fan takes."), Allowed(0, 10_000)]
    public Quantity? RunningW { get; init; }

    [Description("What a fuse or breaker is fitted in: a holder, a place in a panel. Parts of equal words take each other's place in it.")]
    public string? Mount { get; init; }

    [Description("Mass of that holder or place, counted where there is none yet."), Allowed(0, 1000)]
    public Quantity? MountMassKg { get; init; }

    [Description("Price of that holder or place, counted where there is none yet, in the owner's currency."), Allowed(0, 100_000)]
    public Quantity? MountPriceMoney { get; init; }

    [Description("How conductors are made off at a fuse's holder or a breaker.")]
    public TerminationMeans? EndMeans { get; init; }

    [Description("Thread of the studs of a fuse's holder or a breaker, where rings are bolted on: 8 for M8."), Allowed(2, 16)]
    public double? StudMm { get; init; }

    [Description("Largest conductor that a fuse's holder or a breaker takes."), Allowed(0.2, 500)]
    public Quantity? TerminalMm2 { get; init; }

    [Description("Mass of one piece."), Allowed(0, 10_000)]
    public Quantity? MassKg { get; init; }

    [Description("Mass per metre of a cable."), Allowed(0, 50)]
    public Quantity? MassKgPerM { get; init; }

    [Description("Price of one piece without its holder or place in a panel, in the owner's currency."), Allowed(0, 1_000_000)]
    public Quantity? PriceMoney { get; init; }

    [Description("Price per metre of a cable, in the owner's currency."), Allowed(0, 10_000)]
    public Quantity? PriceMoneyPerM { get; init; }
}
