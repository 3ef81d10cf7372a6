using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a space is like for what runs through it.</summary>
public enum SpaceUse { Dry, Wet, Bilge, Engine, OpenDeck }

/// <summary>A space of the boat, as a box.</summary>
[Kind("space")]
public sealed record Space : Thing
{
    [Description("What it is like for what runs through it.")]
    public required SpaceUse Use { get; init; }

    [Description("After, starboard, lower corner of its box.")]
    public required Place From { get; init; }

    [Description("Forward, port, upper corner of its box.")]
    public required Place To { get; init; }

    [Description("Temperature to reckon with while the engine is stopped."), Allowed(-40, 90)]
    public Quantity? AmbientC { get; init; }

    [Description("Temperature to reckon with while the engine runs; as stopped when left out."), Allowed(-40, 120)]
    public Quantity? EngineRunningC { get; init; }

    [Description("Air can pass through it.")]
    public bool? IsVentilated { get; init; }

    [Description("Its lining or insulation burns: a caution for hot work.")]
    public bool? LiningBurns { get; init; }

    [Description("Least temperature of its air while she is in use: a lithium battery in it may be too cold to charge."), Allowed(-60, 60)]
    public Quantity? LeastAmbientC { get; init; }

    [Description("Its temperature is reckoned from the heat set free in it, and used for what is in it, in place of the typed one.")]
    public bool? IsReckoned { get; init; }

    [Description("Its walls, deck and lid, as far as heat goes through them: what lies on their other side, and whether the sun is on them.")]
    public ValueList<SpaceWall> Walls { get; init; } = [];

    [Description("Its openings for air, low and high ones.")]
    public ValueList<AirVent> Vents { get; init; } = [];

    [Description("The space that its openings take their air from; left out, the air outside."), RefersTo(typeof(Space))]
    public string? AirFrom { get; init; }

    [Description("Air that its fan moves through the openings as they are."), Allowed(0, 100_000)]
    public Quantity? FanM3PerH { get; init; }

    [Description("The load that is the fan: it moves air in the conditions in which that is on. Left out, it runs in all."), RefersTo(typeof(ElectricLoad))]
    public string? Fan { get; init; }

    [Description("Share of it that water can fill when it is open to the sea; left out where flooding is not looked at."), Allowed(0, 1)]
    public Quantity? PermeabilityFraction { get; init; }

    /// <summary>The point is inside the box or on its face.</summary>
    public bool Contains(Place place) =>
        place.XM >= From.XM && place.XM <= To.XM && place.YM >= From.YM && place.YM <= To.YM && place.ZM >= From.ZM && place.ZM <= To.ZM;
}

/// <summary>A side of a space that heat goes through. Either its transmittance is given, or what it is made of and how thick.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="AreaM2">Its area.</param>
/// <param name="TransmittanceWPerM2K">Heat through a square metre for each kelvin, air to air (U).</param>
/// <param name="ThicknessMm">Thickness of what keeps the heat, where U is not given.</param>
/// <param name="ConductivityWPerMK">Its conductivity.</param>
/// <param name="Space">The space on its other side; left out, the open air.</param>
/// <param name="SunWPerM2">Sun on it at its worst, in conditions in which the sun shines.</param>
/// <param name="AbsorbedFraction">Share of the sun that it takes up: a dark deck most of it.</param>
public sealed record SpaceWall(
    string Name,
    [property: Description("Its area."), Allowed(0.001, 1000)] double AreaM2,
    [property: Description("Heat through a square metre for each kelvin, air to air (U); a painted sheet has about 5.5, from memory."), Allowed(0.01, 50)] double? TransmittanceWPerM2K = null,
    [property: Description("Thickness of what keeps the heat, where U is not given."), Allowed(0.1, 1000)] double? ThicknessMm = null,
    [property: Description("Its conductivity: plywood about 0.13, cork and foam 0.04, from memory."), Allowed(0.01, 500)] double? ConductivityWPerMK = null,
    [property: Description("The space on its other side; left out, the open air."), RefersTo(typeof(Space))] string? Space = null,
    [property: Description("Sun on it at its worst; it counts in conditions in which the sun shines."), Allowed(0, 1400)] double? SunWPerM2 = null,
    [property: Description("Share of the sun that it takes up: a dark deck about 0.9, a white one 0.3, from memory."), Allowed(0, 1)] double? AbsorbedFraction = null);

/// <summary>An opening of a space for air.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="AreaCm2">What is free of it, screens and louvres taken off.</param>
/// <param name="HeightM">Height of its middle over the floor of the space, or of the top of the pipe that leads up from it.</param>
public sealed record AirVent(
    string Name,
    [property: Description("What is free of it, screens and louvres taken off."), Allowed(0.01, 100_000)] double AreaCm2,
    [property: Description("Height of its middle over the floor of the space; of a pipe or cowl that leads up, of its open end."), Allowed(-5, 20)] double HeightM);

/// <summary>Something with a mass and a place that is not electrical.</summary>
[Kind("gear")]
public sealed record Gear : Thing
{
    [Description("Mass."), Allowed(0, 100_000)]
    public Quantity? MassKg { get; init; }

    [Description("Its centre.")]
    public Place? Place { get; init; }

    [Description("Box around it, for the drawing.")]
    public BoxSize? Size { get; init; }

    [Description("How far its centre may be from there, in any direction: one standard deviation."), Allowed(0, 20)]
    public Quantity? PlaceDeviationM { get; init; }

    [Description("The space it stands in."), RefersTo(typeof(Space))]
    public string? Space { get; init; }

    [Description("Heat it gives off for long: an engine, a stove, a hot tank."), Allowed(0, 100_000)]
    public Quantity? HeatW { get; init; }

    [Description("The conditions in which it gives that heat off; in all when none is named."), RefersTo(typeof(Condition))]
    public ValueList<string> HeatIn { get; init; } = [];
}
