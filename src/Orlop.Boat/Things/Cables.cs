using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>How a conductor is stranded, by the classes of IEC 60228.</summary>
public enum StrandClass { Stranded2, Flexible5, StrandedTinned2, FlexibleTinned5 }

/// <summary>A cable: one or more cores of one size along one run.</summary>
[Kind("cable")]
public sealed record Cable : Thing
{
    [Description("Cross-section of each core; \"10 AWG\" may be typed."), Allowed(0.2, 500)]
    public required Quantity AreaMm2 { get; init; }

    [Description("How its conductors are stranded.")]
    public StrandClass Strands { get; init; } = StrandClass.FlexibleTinned5;

    [Description("Temperature its insulation is rated for."), Allowed(40, 250)]
    public Quantity? InsulationC { get; init; }

    [Description("Outer diameter of the cable."), Allowed(0.5, 150)]
    public Quantity? OuterDiameterMm { get; init; }

    [Description("Length from terminal to terminal of a core that does not give its own."), Allowed(0, 300)]
    public Quantity? LengthM { get; init; }

    [Description("It is in a sheath, conduit or closed box for its whole length.")]
    public bool IsSheathed { get; init; }

    [Description("Mass per metre of the whole cable."), Allowed(0, 50)]
    public Quantity? MassKgPerM { get; init; }

    [Description("Its cores, each from a terminal to a terminal.")]
    public ValueList<Core> Cores { get; init; } = [];

    [Description("Where it runs, in order from its first end.")]
    public ValueList<RunLeg> Run { get; init; } = [];

    [Description("Distance between the centres of its cores; left out, half the outer diameter."), Allowed(0.2, 500)]
    public Quantity? CoreSpacingMm { get; init; }

    [Description("Length of a full twist of its cores; left out, they run straight."), Allowed(5, 2000)]
    public Quantity? TwistPitchMm { get; init; }

    [Description("Least radius it may be bent to, inside the cable; left out, the practice's multiple of its outer diameter."), Allowed(1, 5000)]
    public Quantity? LeastBendMm { get; init; }
}

/// <summary>One core of a cable.</summary>
public sealed record Core
{
    [JsonPropertyOrder(-1)]
    [Description("Id in its cable: plus, minus, live, neutral, earth.")]
    public required string Id { get; init; }

    [Description("First end.")]
    public required Terminal From { get; init; }

    [Description("Other end.")]
    public required Terminal To { get; init; }

    [Description("Its own length, where it differs from the cable's."), Allowed(0, 300)]
    public Quantity? LengthM { get; init; }

    [Description("How its first end is made off.")]
    public Termination? FromEnd { get; init; }

    [Description("How its other end is made off.")]
    public Termination? ToEnd { get; init; }
}

/// <summary>How a core's end is made off.</summary>
public enum TerminationMeans { Ring, Fork, Ferrule, Butt, Blade, Screw, Contact }

/// <summary>The end of a core: what is crimped on, the stud it goes on, the resistance of crimp and stud face together.</summary>
/// <param name="Means">What is crimped on.</param>
/// <param name="StudMm">Thread that its hole is made for, 8 for M8.</param>
/// <param name="ResistanceOhm">Of crimp and stud face together.</param>
/// <param name="LugMm2">Conductor that its barrel is made for.</param>
/// <param name="FromFaceCount">Its place on a stud with others: 1 lies on the face.</param>
public sealed record Termination(
    TerminationMeans Means,
    [property: Allowed(2, 16)] double? StudMm = null,
    [property: Allowed(0, 1)] Quantity? ResistanceOhm = null,
    [property: Description("Conductor that its barrel is made for, as stamped on it."), Allowed(0.2, 500)] double? LugMm2 = null,
    [property: Description("Its place on a stud that carries others too: 1 lies on the face."), Allowed(1, 20)] int? FromFaceCount = null);

/// <summary>A stretch of a cable's run: along a way, or loose in a space.</summary>
public sealed record RunLeg
{
    [Description("The way it follows."), RefersTo(typeof(Way))]
    public string? Way { get; init; }

    [Description("The space it is in, where it follows no way."), RefersTo(typeof(Space))]
    public string? Space { get; init; }

    [Description("Length of this stretch."), Allowed(0, 300)]
    public required double LengthM { get; init; }
}
