using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a battery is made of.</summary>
public enum BatteryChemistry { LithiumIronPhosphate, FloodedLeadAcid, AbsorbedGlassMat, Gel }

/// <summary>
/// A battery, or a bank told as one source with two posts. Batteries in series and side by side are things of their own, joined by links and cables as they are wired; a bank whose strings
/// nobody has drawn says how many it holds.
/// </summary>
[Kind("battery")]
public sealed record BatteryBank : Part
{
    [Description("What it is made of.")]
    public required BatteryChemistry Chemistry { get; init; }

    [Description("Nominal voltage."), Allowed(1, 1000)]
    public required Quantity NominalV { get; init; }

    [Description("Nameplate capacity at the 20-hour rate, or that of its rated hours."), Allowed(0.1, 100_000)]
    public Quantity? CapacityAh { get; init; }

    [Description("Hours in which its nameplate capacity is drawn; left out, 20."), Allowed(1, 100)]
    public Quantity? RatedHour { get; init; }

    [Description("Peukert's exponent, from its sheet or two discharges: 1.1 to 1.3 is usual for lead-acid (from memory). Drawn quicker than in the rated hours it gives less; left out, the same at any current."), Allowed(1, 1.6)]
    public Quantity? PeukertRatio { get; init; }

    [Description("Internal resistance between the posts."), Allowed(0.000001, 100)]
    public Quantity? InternalResistanceOhm { get; init; }

    [Description("Open-circuit voltage over charge, from empty to full; at least two points.")]
    public ValueList<ChargePoint> OpenCircuit { get; init; } = [];

    [Description("How its open-circuit voltages are known: measured at rest, from its maker's sheet, or guessed: usual for the chemistry, from memory.")]
    public Knowledge? OpenCircuitKnown { get; init; }

    [Description("How they were measured, or where they were read; what is typical of the chemistry says so here.")]
    public string? OpenCircuitMethod { get; init; }

    [Description("Voltage at which its own guard cuts it off."), Allowed(0, 1000)]
    public Quantity? CutOffV { get; init; }

    [Description("Largest current its maker allows out of it."), Allowed(0, 100_000)]
    public Quantity? MostDischargeA { get; init; }

    [Description("Largest current its maker allows into it."), Allowed(0.01, 100_000)]
    public Quantity? MostChargeA { get; init; }

    [Description("Share of the nameplate capacity that is left, by age and use."), Allowed(0.05, 1)]
    public Quantity? LeftFraction { get; init; }

    [Description("Share of the nameplate capacity that a year takes."), Allowed(0, 0.5)]
    public Quantity? LossPerYearFraction { get; init; }

    [Description("Least temperature at which it may be charged, of a lithium battery: 0 °C is usual for lithium iron phosphate (from memory)."), Allowed(-60, 60)]
    public Quantity? LeastChargeC { get; init; }

    [Description("Greatest temperature at which it may be charged."), Allowed(0, 100)]
    public Quantity? MostChargeC { get; init; }

    [Description("Its own guard stops the charge outside those temperatures.")]
    public bool? StopsCharge { get; init; }

    [Description("How many batteries or cells stand one on another in each string of it; its voltages are those of the whole."), Allowed(1, 1000)]
    public int? SeriesCount { get; init; }

    [Description("How many such strings stand side by side in it; its capacity and currents are those of the whole. What each string carries is reckoned where each battery is a thing of its own, with its leads."), Allowed(1, 100)]
    public int? ParallelCount { get; init; }

    [Description("Day it went into use, from new.")]
    public DateOnly? InUseSince { get; init; }

    [Description("Its minus post is bonded to the hull, the engine block or an earth plate. A bonded minus needs no fuse of its own; one that is not needs protection in both poles.")]
    public bool? IsMinusBonded { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => Things.TerminalNames.PlusMinus;
}

/// <summary>Rested open-circuit voltage at a state of charge (0 empty to 1 full).</summary>
public sealed record ChargePoint([property: Allowed(0, 1)] double ChargeFraction, [property: Allowed(0, 1000)] double OpenCircuitV);

/// <summary>What drives a charger; it works in a condition that has it.</summary>
public enum ChargerDrive { Engine, Shore, Sun }

/// <summary>A source that charges: current-limited below its set voltage, holding that voltage above.</summary>
[Kind("charger")]
public sealed record Charger : Part
{
    [Description("What drives it.")]
    public required ChargerDrive Drive { get; init; }

    [Description("Most current it gives."), Allowed(0.01, 2000)]
    public required Quantity LimitA { get; init; }

    [Description("Voltage it holds when the battery is full."), Allowed(1, 1000)]
    public required Quantity SetpointV { get; init; }

    [Description("Current it takes at its shore terminals at full output, for a shore charger."), Allowed(0, 100)]
    public Quantity? ShoreA { get; init; }

    [Description("Its panels, for a solar charger: what lies in one plane is one row.")]
    public ValueList<SolarPanel> Panels { get; init; } = [];

    [Description("Output over input power; of a solar charger, over what its panels could give."), Allowed(0.3, 1)]
    public Quantity? EfficiencyFraction { get; init; }

    /// <summary>Output posts, and shore terminals where it has them.</summary>
    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => Drive == ChargerDrive.Shore
        ? [Things.TerminalNames.Plus, Things.TerminalNames.Minus, Things.TerminalNames.Live, Things.TerminalNames.Neutral, Things.TerminalNames.Earth]
        : Things.TerminalNames.PlusMinus;
}

/// <summary>Solar panels in one plane.</summary>
/// <param name="PeakW">Power by their plates, at 1000 W/m² and 25 °C, all together.</param>
/// <param name="TiltDeg">From the horizontal; 0 lies flat.</param>
/// <param name="FromBowDeg">Way that a tilted panel faces, clockwise from the bow.</param>
/// <param name="LostFraction">Lost to shade, dirt and leads.</param>
public sealed record SolarPanel(
    [property: Description("Power by the plates, all together."), Allowed(1, 100_000)] double PeakW,
    [property: Description("From the horizontal; 0 lies flat."), Allowed(0, 90)] double TiltDeg = 0,
    [property: Description("Way that a tilted panel faces, clockwise from the bow."), Allowed(-360, 360)] double FromBowDeg = 0,
    [property: Description("Lost to shade, dirt and leads."), Allowed(0, 1)] double LostFraction = 0);

/// <summary>A converter from one DC voltage to another.</summary>
[Kind("dc-converter")]
public sealed record DcConverter : Part
{
    [Description("Output voltage."), Allowed(1, 1000)]
    public required Quantity OutputV { get; init; }

    [Description("Continuous output current."), Allowed(0.01, 2000)]
    public required Quantity RatedA { get; init; }

    [Description("Output over input power at rated output."), Allowed(0.3, 1)]
    public Quantity? EfficiencyFraction { get; init; }

    [Description("Power it takes with nothing connected."), Allowed(0, 1000)]
    public Quantity? IdleW { get; init; }

    [Description("Least input voltage at which it works."), Allowed(0, 1000)]
    public Quantity? LeastInputV { get; init; }

    [Description("Its two minus posts are separate inside.")]
    public bool IsIsolated { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames =>
        [Things.TerminalNames.InPlus, Things.TerminalNames.InMinus, Things.TerminalNames.OutPlus, Things.TerminalNames.OutMinus];
}

/// <summary>An inverter: DC in, single-phase AC out. Losses are idle + proportional + ohmic, as in the inverter table of the references.</summary>
[Kind("inverter")]
public sealed record Inverter : Part
{
    [Description("Continuous output."), Allowed(10, 100_000)]
    public required Quantity RatedW { get; init; }

    [Description("Output voltage."), Allowed(50, 300)]
    public required Quantity OutputV { get; init; }

    [Description("Power it takes with nothing connected."), Allowed(0, 1000)]
    public Quantity? IdleW { get; init; }

    [Description("Loss per watt of output."), Allowed(0, 0.5)]
    public Quantity? ProportionalLossFraction { get; init; }

    [Description("Loss per watt squared of output, in 1/W."), Allowed(0, 0.01)]
    public Quantity? OhmicLossPerW { get; init; }

    [Description("Input voltage at which it stops."), Allowed(0, 1000)]
    public Quantity? CutOffV { get; init; }

    [Description("How long its input may be below that before it stops; left out, it is taken to stop at once."), Allowed(0, 600)]
    public Quantity? CutOffDelayS { get; init; }

    [Description("What it bears for a short time: multiple of its rating, seconds.")]
    public ValueList<Overload> Overloads { get; init; } = [];

    [Description("Capacitance across its input."), Allowed(0, 10)]
    public Quantity? InputF { get; init; }

    [Description("Where its neutral is joined to earth: inside it always; inside it only while it feeds (a relay that opens when other power comes in); never (it floats).")]
    public NeutralBond? NeutralBond { get; init; }

    [Description("Most current it gives into a short circuit of its AC side, from its sheet; left out, no more than its rating is counted on."), Allowed(0.1, 10_000)]
    public Quantity? ShortCircuitA { get; init; }

    [Description("On a short circuit it takes its voltage away no later than this, from its sheet."), Allowed(0.001, 600)]
    public Quantity? ShutsDownS { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames =>
        [Things.TerminalNames.InPlus, Things.TerminalNames.InMinus, Things.TerminalNames.Live, Things.TerminalNames.Neutral, Things.TerminalNames.Earth];
}

/// <summary>A short-time overload: so many times the rating for so long.</summary>
public sealed record Overload([property: Allowed(1, 20)] double RatingRatio, [property: Allowed(0.01, 36_000)] double DurationS);

/// <summary>Where the neutral of an AC source is joined to earth.</summary>
public enum NeutralBond
{
    /// <summary>At the source, always: inside it, or ashore with the earth that comes along.</summary>
    Always,

    /// <summary>Inside it, only while it feeds.</summary>
    WhileFeeding,

    /// <summary>At the supply ashore alone; the earth that comes along leads to an electrode of its own.</summary>
    OwnEarth,

    /// <summary>Nowhere: it floats.</summary>
    Never,
}

/// <summary>What stands in the earth that comes from ashore.</summary>
public enum EarthIsolation { None, GalvanicIsolator, IsolatingTransformer }

/// <summary>An inlet for shore power.</summary>
[Kind("shore-inlet")]
public sealed record ShoreInlet : Part
{
    [Description("Voltage ashore."), Allowed(50, 300)]
    public required Quantity SupplyV { get; init; }

    [Description("Rating of the inlet and its cord."), Allowed(1, 125)]
    public required Quantity RatedA { get; init; }

    [Description("Loop resistance ashore, from live back by the earth, with the cord."), Allowed(0.001, 10)]
    public Quantity? SourceOhm { get; init; }

    [Description("Where the supply's neutral is joined to earth: always (ashore, with the earth that comes along; behind an isolating transformer, on board at its secondary), own earth (the earth that comes along has an electrode of its own), never (it floats).")]
    public NeutralBond? NeutralBond { get; init; }

    [Description("What stands between the earth from ashore and the boat's: nothing, a galvanic isolator, or an isolating transformer, which passes no earth.")]
    public EarthIsolation? EarthIsolation { get; init; }

    [Description("A lamp or meter at the inlet shows when live and neutral are exchanged ashore.")]
    public bool? ShowsPolarity { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => [Things.TerminalNames.Live, Things.TerminalNames.Neutral, Things.TerminalNames.Earth];
}
