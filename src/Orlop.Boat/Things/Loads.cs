using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a load holds constant as its voltage changes.</summary>
public enum LoadBehaviour { Power, Current, Resistance }

/// <summary>How much voltage a load may lose on the way to it: critical (3 %) or general (10 %) in most practices.</summary>
public enum DropClass { Critical, General }

/// <summary>Something that uses electricity.</summary>
[Kind("load")]
public sealed record ElectricLoad : Part
{
    [Description("What it holds constant as its voltage changes.")]
    public required LoadBehaviour Behaviour { get; init; }

    [Description("Nominal voltage."), Allowed(1, 1000)]
    public required Quantity NominalV { get; init; }

    [Description("It runs on AC.")]
    public bool IsAc { get; init; }

    [Description("Running power at nominal voltage; give this or the current."), Allowed(0, 100_000)]
    public Quantity? RunningW { get; init; }

    [Description("Running current at nominal voltage; give this or the power."), Allowed(0, 5000)]
    public Quantity? RunningA { get; init; }

    [Description("Power over apparent power, for an AC load."), Allowed(0.1, 1)]
    public Quantity? PowerFactor { get; init; }

    [Description("It is doubly insulated (class II, two squares on its plate): it has no earth and needs none.")]
    public bool? IsDoubleInsulated { get; init; }

    [Description("Starting current over running current: 1 for a soft start, and for electronics and lamps that have none. A load of resistance may leave it out."), Allowed(1, 20)]
    public Quantity? StartRatio { get; init; }

    [Description("How long the start lasts."), Allowed(0, 600)]
    public Quantity? StartS { get; init; }

    [Description("Least voltage at which it works."), Allowed(0, 1000)]
    public Quantity? LeastV { get; init; }

    [Description("How much voltage may be lost on the way to it.")]
    public DropClass Drop { get; init; } = DropClass.General;

    [Description("It must not be switched off by anything but its own protection (a bilge pump).")]
    public bool IsVital { get; init; }

    [Description("It cranks an engine: practices exempt its conductors from protection.")]
    public bool IsCrankingMotor { get; init; }

    [Description("It is on only while the sun is down, where a day's energy is reckoned (an anchor light).")]
    public bool? IsOnlyInDark { get; init; }

    [Description("Share of its power that stays as heat where it stands; left out, all of it: the most that can."), Allowed(0, 1)]
    public Quantity? HeatFraction { get; init; }

    [Description("The conditions in which it is on, and for what share of the time.")]
    public ValueList<LoadUse> Uses { get; init; } = [];

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => IsAc
        ? [Things.TerminalNames.Live, Things.TerminalNames.Neutral, Things.TerminalNames.Earth]
        : Things.TerminalNames.PlusMinus;
}

/// <summary>A load is on in a condition, for a share of the time.</summary>
/// <param name="Condition">Id of the condition.</param>
/// <param name="DutyFraction">Share of the time, 0 to 1; with hours, of those.</param>
/// <param name="FromHour">When in the day it may be on first, a whole hour; null: at any hour.</param>
/// <param name="ToHour">When no more, a whole hour; at or before the first, it goes over midnight.</param>
public sealed record LoadUse(
    [property: RefersTo(typeof(Condition))] string Condition,
    [property: Description("Share of the time that it is on; with hours, of those."), Allowed(0, 1)] double DutyFraction,
    [property: Description("From which hour of the day, a whole one; left out, at any hour. Energy goes by it; what is judged in a condition counts the load as on."), Allowed(0, 24)] int? FromHour = null,
    [property: Description("To which hour of the day, a whole one; at or before the first it goes over midnight."), Allowed(0, 24)] int? ToHour = null);
