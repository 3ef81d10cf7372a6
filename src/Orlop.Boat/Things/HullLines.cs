using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>The hull as measured, good enough to float her: stations of points from keel to deck edge. There is one in a boat.</summary>
[Kind("hull-lines")]
public sealed record HullLines : Thing
{
    [Description("Stations from aft to forward: transom or stern first, stem last. Both sides, or the port side where starboard is given apart.")]
    public ValueList<HullStation> Stations { get; init; } = [];

    [Description("Stations of the starboard side where the sides differ: as many, in the same order; left out for a symmetric boat.")]
    public ValueList<HullStation> StarboardStations { get; init; } = [];

    [Description("Deckhouses that keep water out and so hold her up; they stand on the deck and are closed at sea.")]
    public ValueList<Deckhouse> TightHouses { get; init; } = [];
}

/// <summary>Where the points of a station are from.</summary>
public enum StationOrigin { Form, Between, Measured }

/// <summary>One station: its points from keel to deck edge. A stem or a pointed stern has no breadth; its points are the profile.</summary>
public sealed record HullStation
{
    [Description("What it is called.")]
    public required string Name { get; init; }

    [Description("The surface may have a crease across the boat here, as at the foot of a rake.")]
    public bool IsSharp { get; init; }

    [Description("Where its points are from: a starting form, laid between other stations, or measured on the boat or read off her lines. Left out, it is not told.")]
    public StationOrigin? Origin { get; init; }

    [Description("Its points, from the keel up.")]
    public ValueList<StationPoint> Points { get; init; } = [];
}

/// <summary>One measured point of a station.</summary>
/// <param name="XM">Forward of the after perpendicular.</param>
/// <param name="HalfBreadthM">From the centre line.</param>
/// <param name="HeightM">Above the base line.</param>
/// <param name="Line">Name of the sharp line it lies on: chine, knuckle.</param>
public sealed record StationPoint(
    [property: Allowed(-5, 60)] double XM,
    [property: Allowed(0, 10)] double HalfBreadthM,
    [property: Allowed(-5, 20)] double HeightM,
    string? Line = null);

/// <summary>What an opening is.</summary>
public enum OpeningUse { Hatch, Door, Window, Vent, ThroughHull, Other, Exhaust, Well }

/// <summary>A place where water can come in.</summary>
[Kind("opening")]
public sealed record HullOpening : Thing
{
    [Description("What it is. An engine's or a heater's exhaust lets water in as a vent does; a well or a cockpit over its coaming, to both sides: it tells its length and breadth.")]
    public required OpeningUse Use { get; init; }

    [Description("The middle of its lowest edge, where water first comes in: of a hatch or well that lies, the middle between its sides and ends at the height of its coaming; of a door or window that stands, the middle of its sill. A through-hull: its centre.")]
    public Place? Place { get; init; }

    [Description("Of a hatch or well that lies, its clear length along the boat: with length and breadth its four corners count, to both sides; a well needs both, without them its sides are taken to lie at the deck edge. Of a door or window in the side of a house, the breadth of its sill, along the boat; its height does not count for flooding."), Allowed(0, 40)]
    public Quantity? ClearLengthM { get; init; }

    [Description("Of a hatch or well that lies, its clear breadth across the boat, from side to side: a wide one on the centre line floods over its lower side sooner than over its middle. Of a door or window that faces forward or aft, the breadth of its sill, across the boat. A door or window tells one of the two: with both, which is the sill and which way it runs is taken cautiously."), Allowed(0, 20)]
    public Quantity? ClearBreadthM { get; init; }

    [Description("Where water must climb to inside before it runs in: top of a swan neck or of a vented loop. It counts in place of the opening itself; empty where there is none.")]
    public Place? LoopTop { get; init; }

    [Description("It keeps water out while it is shut and under.")]
    public bool? IsTightWhenShut { get; init; }

    [Description("The conditions in which it is shut; open in all others."), RefersTo(typeof(Condition))]
    public ValueList<string> ShutIn { get; init; } = [];

    [Description("A through-hull has a seacock. With one it counts as shut tight, unless it is said not to be tight; without one water comes in there as by a vent.")]
    public bool? HasSeacock { get; init; }

    /// <summary>Water can come in: all but a through-hull whose seacock shuts tight.</summary>
    [JsonIgnore]
    public bool IsWayIn => Use != OpeningUse.ThroughHull || HasSeacock != true || IsTightWhenShut == false;

    /// <summary>Where water first comes in; null where that is not given.</summary>
    [JsonIgnore]
    public Place? WaterEntersAt => LoopTop ?? Place;

    /// <summary>It stands, in a bulkhead or the side of a house: its sill has one breadth, and its height lets no water in sooner.</summary>
    [JsonIgnore]
    public bool IsStanding => Use is OpeningUse.Door or OpeningUse.Window;

    /// <summary>It lies, and both its length and its breadth are given, greater than 0.</summary>
    [JsonIgnore]
    public bool IsExtentTold => !IsStanding && ClearLengthM is { Value: > 0 } && ClearBreadthM is { Value: > 0 };

    [Description("The space that water comes into."), RefersTo(typeof(Space))]
    public string? Space { get; init; }
}

/// <summary>A tank, as a box that the hull may cut.</summary>
[Kind("tank")]
public sealed record Tank : Thing
{
    [Description("After, starboard, lower corner of its inside.")]
    public required Place From { get; init; }

    [Description("Forward, port, upper corner of its inside.")]
    public required Place To { get; init; }

    [Description("The hull is its side or bottom: what of the box lies outside the hull is cut away.")]
    public bool IsHullSided { get; init; }

    [Description("Density of what is in it: fresh water 1000, diesel about 840."), Allowed(500, 2500)]
    public Quantity? LiquidKgPerM3 { get; init; }

    [Description("How full it is where a condition says nothing, 0 empty to 1 full."), Allowed(0, 1)]
    public Quantity? FillFraction { get; init; }

    [Description("How full it is in each condition.")]
    public ValueList<TankFill> Fills { get; init; } = [];
}

/// <summary>How full a tank is in a condition.</summary>
public sealed record TankFill([property: RefersTo(typeof(Condition))] string Condition, [property: Allowed(0, 1)] double FillFraction);
