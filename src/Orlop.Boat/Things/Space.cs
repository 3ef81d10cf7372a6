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

    [Description("Share of it that water can fill when it is open to the sea; left out where flooding is not looked at."), Allowed(0, 1)]
    public Quantity? PermeabilityFraction { get; init; }

    /// <summary>The point is inside the box or on its face.</summary>
    public bool Contains(Place place) =>
        place.XM >= From.XM && place.XM <= To.XM && place.YM >= From.YM && place.YM <= To.YM && place.ZM >= From.ZM && place.ZM <= To.ZM;
}

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
}
