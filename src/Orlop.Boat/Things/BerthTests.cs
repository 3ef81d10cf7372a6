using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>A measurement of the whole boat at her berth, with what was aboard.</summary>
public abstract record BerthTest : Thing
{
    [Description("Everything listed that was aboard then, liquids too: as it was, whatever becomes of it later. Left out when nobody wrote it down, and then, unless she was bare, the test says nothing of other conditions.")]
    public ValueList<AboardItem> Aboard { get; init; } = [];

    [Description("Nothing of the list was aboard, and the list of what was is empty for that reason: all she weighed was the bare boat.")]
    public bool IsBare { get; init; }

    /// <summary>It says what was aboard: things, or that there were none.</summary>
    public bool TellsAboard => IsBare || Aboard.Count > 0;

    [Description("Day it was done.")]
    public DateOnly? On { get; init; }

    [Description("Density of the water she lay in, measured."), Allowed(990, 1040)]
    public Quantity? WaterDensityKgPerM3 { get; init; }
}

/// <summary>One listed thing as it was aboard at a test.</summary>
/// <param name="Id">Id of the thing in the boat then; it need not be there now.</param>
/// <param name="MassKg">Its mass then.</param>
/// <param name="Place">Its centre then; of a liquid, where it lay.</param>
/// <param name="DeviationKg">One standard deviation of its mass.</param>
/// <param name="PlaceDeviationM">One standard deviation of its place, in each direction.</param>
/// <param name="IsCarried">Carried, and no part of the empty boat: people, stores, liquids, weights brought for the test. When it is gone, the boat has not become lighter. Left out where nobody wrote it down.</param>
public sealed record AboardItem(
    string Id,
    [property: Allowed(0, 500_000)] double MassKg,
    Place Place,
    [property: Allowed(0, 100_000)] double DeviationKg = 0,
    [property: Allowed(0, 20)] double PlaceDeviationM = 0,
    [property: Description("It was carried, and is no part of the empty boat; left out where nobody told.")] bool? IsCarried = null);

/// <summary>Heights of marks over calm water, four or more, at both ends and on both sides.</summary>
[Kind("freeboard-survey")]
public sealed record FreeboardSurvey : BerthTest
{
    [Description("Each mark and its height over the water.")]
    public ValueList<FreeboardMark> Marks { get; init; } = [];

    [Description("Hog or sag amidships that may be expected, one standard deviation."), Allowed(0.0005, 0.5)]
    public Quantity? HogM { get; init; }
}

/// <summary>One freeboard.</summary>
/// <param name="Name">What the mark is called.</param>
/// <param name="Mark">Where it is on the boat.</param>
/// <param name="FreeboardM">Its height over the water, plumb; below 0 under water.</param>
/// <param name="DeviationM">One standard deviation of the reading.</param>
public sealed record FreeboardMark(
    string Name, Place Mark, [property: Allowed(-5, 20)] double FreeboardM, [property: Allowed(0.0005, 0.5)] double DeviationM = 0.005);

/// <summary>Timed rolls in calm water, lines slack.</summary>
[Kind("rolling-test")]
public sealed record RollingTest : BerthTest
{
    [Description("Runs: how many whole rolls, there and back, counted on the same side, and the time they took.")]
    public ValueList<TimedRolls> Runs { get; init; } = [];

    [Description("Coefficient f of T = f B / root GM, from the boat's own inclining test or from experience with her like."), Allowed(0.3, 1.5)]
    public Quantity? RollingFactor { get; init; }

    [Description("Extremes of one roll as it dies out, to starboard positive, by turns to either side.")]
    public ValueList<RollExtreme> Decay { get; init; } = [];
}

/// <summary>Whole rolls, there and back, timed in one run.</summary>
public sealed record TimedRolls([property: Allowed(1, 100)] int RollCount, [property: Allowed(0.5, 1000)] double TimeS);

/// <summary>One extreme of a roll: its time and heel, starboard positive.</summary>
public sealed record RollExtreme([property: Allowed(0, 10_000)] double TimeS, [property: Allowed(-60, 60)] double HeelDeg);

/// <summary>Weights moved across the deck, and the heel each move gave.</summary>
[Kind("inclining-test")]
public sealed record InclinationTest : BerthTest
{
    [Description("Each reading, in the order taken.")]
    public ValueList<InclinedReading> Readings { get; init; } = [];
}

/// <summary>One reading of an inclining test: all weights that are off their place, and the heel by a pendulum or as an angle.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="MassKg">Mass off its place.</param>
/// <param name="MovedM">How far across, to starboard positive.</param>
/// <param name="DeflectionM">Of the pendulum's foot, to starboard positive.</param>
/// <param name="PendulumM">Length of the pendulum from its point to the batten.</param>
/// <param name="HeelDeg">Heel where it was read as an angle, to starboard positive; then no pendulum is given.</param>
/// <param name="IsLeftOut">Kept, and not counted: the owner found it wrong.</param>
public sealed record InclinedReading(
    string Name,
    [property: Allowed(0, 100_000)] double MassKg,
    [property: Allowed(-20, 20)] double MovedM,
    [property: Allowed(-5, 5)] double? DeflectionM = null,
    [property: Allowed(0.2, 20)] double? PendulumM = null,
    [property: Allowed(-16, 16)] double? HeelDeg = null,
    [property: Description("It is kept, and left out of the result.")] bool IsLeftOut = false);
