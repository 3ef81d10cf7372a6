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

    [Description("Air outside, as warm as it is to be reckoned with, for the heat of spaces."), Allowed(-60, 60)]
    public Quantity? OutsideC { get; init; }

    [Description("How she is taken to move in this condition, for accelerations and tilt at any place of her; nothing else reads it. Left out where nobody stated it.")]
    public StatedMotion? Motion { get; init; }
}

/// <summary>A roll, pitch and heave that the owner states for a condition; amplitudes are to one side of rest, periods there and back.</summary>
/// <param name="RollDeg">Roll to either side.</param>
/// <param name="PitchDeg">Pitch to either end.</param>
/// <param name="PitchPeriodS">Period of the pitch.</param>
/// <param name="HeaveM">Heave up or down.</param>
/// <param name="HeavePeriodS">Period of the heave.</param>
/// <param name="RollPeriodS">Period of the roll; left out, it follows from GM and beam.</param>
public sealed record StatedMotion(
    [property: Allowed(0, 60)] double RollDeg,
    [property: Allowed(0, 30)] double PitchDeg,
    [property: Allowed(1, 60)] double PitchPeriodS,
    [property: Allowed(0, 5)] double HeaveM,
    [property: Allowed(1, 60)] double HeavePeriodS,
    [property: Allowed(1, 60)] double? RollPeriodS = null);

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
