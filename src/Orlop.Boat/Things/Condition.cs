using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>A state the boat is judged in.</summary>
[Kind("condition")]
public sealed record Condition : Thing
{
    [Description("The engine runs: its chargers work and the engine space is hot.")]
    public bool EngineRuns { get; init; }

    [Description("Shore power is plugged in.")]
    public bool OnShore { get; init; }

    [Description("The sun shines: solar chargers work.")]
    public bool SunShines { get; init; }

    [Description("State of charge to reckon with normally, 0 empty to 1 full."), Allowed(0, 1)]
    public Quantity? ChargeFraction { get; init; }

    [Description("Lowest state of charge at which this condition must still work."), Allowed(0, 1)]
    public Quantity? LowestChargeFraction { get; init; }
}

/// <summary>The practice the boat is judged by, with the owner's own limits on top. There is one, with the id <c>practice</c>.</summary>
[Kind("practice")]
public sealed record PracticeChoice : Thing
{
    [Description("Name of the practice: us-federal, iso-small-craft or owner.")]
    public required string Basis { get; init; }

    [Description("Limits of the owner's own, in place of the practice's.")]
    public ValueList<OwnLimit> Own { get; init; } = [];
}

/// <summary>A limit the owner sets.</summary>
public sealed record OwnLimit(string Limit, [property: Allowed(0, 1e9)] double Value, string Reason);
