using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>A bar or stud on which conductors meet: one terminal, <c>bar</c>.</summary>
[Kind("busbar")]
public sealed record Busbar : Part
{
    [Description("Current it may carry."), Allowed(1, 10_000)]
    public Quantity? RatedA { get; init; }

    [Description("It is bonded to the hull. What is wired to a bonded minus bar stays at the hull's potential and needs no fuse of its own; without one, the minus counts as ungrounded and both poles need protection.")]
    public bool IsBonded { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => [Things.TerminalNames.Bar];
}

/// <summary>What opens on too much current.</summary>
public enum ProtectionMeans { Fuse, Breaker }

/// <summary>The shape of residual current that a residual-current device sees (IEC 60755).</summary>
public enum ResidualType { Ac, A, F, B }

/// <summary>A fuse or breaker: <c>in</c> and <c>out</c>, and <c>in2</c> and <c>out2</c> where it opens both poles.</summary>
[Kind("protection")]
public sealed record Protection : Part
{
    [Description("Fuse or breaker.")]
    public required ProtectionMeans Means { get; init; }

    [Description("Rating."), Allowed(0.05, 5000)]
    public required Quantity RatedA { get; init; }

    [Description("Voltage it may interrupt."), Allowed(1, 1500)]
    public Quantity? RatedV { get; init; }

    [Description("Greatest current it can break."), Allowed(1, 1_000_000)]
    public Quantity? BreakingA { get; init; }

    [Description("Id of its operating-time gates, as listed in the docs.")]
    public string? Gates { get; init; }

    [Description("Operating times from its own sheet, in place of listed gates, by rising current.")]
    public ValueList<OperatingTime> OwnTimes { get; init; } = [];

    [Description("The least energy that melts it in a short time (pre-arcing I²t), from its sheet. With the other's greatest it shows which of two opens first on a hard fault."), Allowed(1e-3, 1e12)]
    public Quantity? MeltingA2S { get; init; }

    [Description("The most energy that it lets through in a short time (operating I²t) at the voltage of its circuit, from its sheet."), Allowed(1e-3, 1e12)]
    public Quantity? ClearingA2S { get; init; }

    [Description("It opens both poles.")]
    public bool IsTwoPole { get; init; }

    [Description("Resistance through one pole."), Allowed(0, 10)]
    public Quantity? ResistanceOhm { get; init; }

    [Description("Residual current at which it opens, where it has that."), Allowed(0.001, 10)]
    public Quantity? ResidualA { get; init; }

    [Description("What shape of residual current it sees: AC alternating only; A pulsating too; F mixed frequencies too; B smooth direct too.")]
    public ResidualType? ResidualType { get; init; }

    [Description("Longest that it takes at its residual current, from its sheet; left out, 0.3 s, and sooner on more, as devices without delay."), Allowed(0.001, 10)]
    public Quantity? ResidualOpensS { get; init; }

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => IsTwoPole ? Things.TerminalNames.TwoPole : Things.TerminalNames.OnePole;
}

/// <summary>A point of a device's sheet: at this multiple of its rating it opens no earlier and no later than this; at least one of the two.</summary>
public sealed record OperatingTime(
    [property: Allowed(1, 1000)] double RatingRatio,
    [property: Allowed(0.0001, 1e6)] double? EarliestS = null,
    [property: Allowed(0.0001, 1e6)] double? LatestS = null);

/// <summary>A switch that a hand or a relay works: <c>in</c> and <c>out</c>, and <c>in2</c> and <c>out2</c> where it opens both poles.</summary>
[Kind("switch")]
public sealed record IsolatorSwitch : Part
{
    [Description("Current it may carry and break."), Allowed(0.1, 5000)]
    public Quantity? RatedA { get; init; }

    [Description("It opens both poles.")]
    public bool IsTwoPole { get; init; }

    [Description("It makes its circuit dead for work: it stays open by itself and shows that it is open.")]
    public bool IsIsolator { get; init; } = true;

    [Description("Resistance through one closed pole."), Allowed(0, 10)]
    public Quantity? ResistanceOhm { get; init; }

    [Description("The conditions in which it is open; closed in all others."), RefersTo(typeof(Condition))]
    public ValueList<string> OpenIn { get; init; } = [];

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => IsTwoPole ? Things.TerminalNames.TwoPole : Things.TerminalNames.OnePole;
}

/// <summary>Where a change-over stands.</summary>
public enum ChangeoverPosition { Off, A, B }

/// <summary>A two-pole switch that takes its <c>out</c> and <c>out2</c> from <c>a</c>, <c>a2</c> or <c>b</c>, <c>b2</c>, never both.</summary>
[Kind("changeover")]
public sealed record Changeover : Part
{
    [Description("Current it may carry and break."), Allowed(0.1, 5000)]
    public Quantity? RatedA { get; init; }

    [Description("It cannot join A and B, even for a moment: its contacts break before they make and are locked to each other.")]
    public bool? IsInterlocked { get; init; }

    [Description("Resistance through one closed pole."), Allowed(0, 10)]
    public Quantity? ResistanceOhm { get; init; }

    [Description("Where it stands in each condition; off in any not named.")]
    public ValueList<ChangeoverUse> Positions { get; init; } = [];

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames =>
        [Things.TerminalNames.A, Things.TerminalNames.A2, Things.TerminalNames.B, Things.TerminalNames.B2, Things.TerminalNames.Out, Things.TerminalNames.Out2];
}

/// <summary>Where a change-over stands in a condition.</summary>
public sealed record ChangeoverUse([property: RefersTo(typeof(Condition))] string Condition, ChangeoverPosition Position);

/// <summary>A plug in its socket: <c>in</c>, <c>in2</c> on the fixed, supply side; <c>out</c>, <c>out2</c> on the lead that parts.</summary>
[Kind("plug")]
public sealed record PlugAndSocket : Part
{
    [Description("Current it may carry."), Allowed(0.1, 1000)]
    public Quantity? RatedA { get; init; }

    [Description("Voltage it may be used at."), Allowed(1, 1000)]
    public Quantity? RatedV { get; init; }

    [Description("Resistance of one mated contact."), Allowed(0, 1)]
    public Quantity? ContactOhm { get; init; }

    [Description("Shape or key that decides what mates with it, in the owner's words; equal words mate.")]
    public string? Keying { get; init; }

    [Description("Which contact is which pole, in the owner's words.")]
    public string? Arrangement { get; init; }

    [Description("Length of the loose lead behind the plug: how far it reaches from its own socket."), Allowed(0, 50)]
    public Quantity? LooseLeadM { get; init; }

    [Description("It is pulled apart in normal use; its contacts on the fixed side stay live.")]
    public bool PartsInUse { get; init; } = true;

    [JsonIgnore]
    public override IReadOnlyList<string> TerminalNames => Things.TerminalNames.TwoPole;
}

/// <summary>A bolted link between two terminals with no cable between them: a fuse on a battery post, two devices side by side.</summary>
[Kind("link")]
public sealed record Link : Thing
{
    [Description("One end.")]
    public required Terminal From { get; init; }

    [Description("Other end.")]
    public required Terminal To { get; init; }

    [Description("Length of metal between them."), Allowed(0, 5)]
    public Quantity? LengthM { get; init; }

    [Description("Resistance of the link and its joints."), Allowed(0, 1)]
    public Quantity? ResistanceOhm { get; init; }
}
