using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>How a way is made.</summary>
public enum WayKind { Deckhead, Lining, Tray, Conduit, Gland, Bilge }

/// <summary>What may run in a way together. Divided: direct and alternating current, each on its side of a divider.</summary>
public enum WayShare { Any, DcOnly, AcOnly, Divided }

/// <summary>What keeps the edge of a hole off a cable.</summary>
public enum EdgeGuard { Bare, Grommet, Gland, Sealed }

/// <summary>
/// A route that cables may take. Ways are the lines of a graph in three dimensions: where two of them come near enough to each other, a cable may pass from one
/// to the other. A conduit or a gland is entered and left at its ends only.
/// </summary>
[Kind("way")]
public sealed record Way : Thing
{
    [Description("How it is made.")]
    public required WayKind Means { get; init; }

    [Description("Its line, from one end to the other.")]
    public ValueList<Place> Points { get; init; } = [];

    [Description("The space that sets its temperature: the hottest it passes."), RefersTo(typeof(Space))]
    public string? Space { get; init; }

    [Description("Inner diameter of a conduit."), Allowed(3, 300)]
    public Quantity? InnerDiameterMm { get; init; }

    [Description("Inside cross-section, where it is not round."), Allowed(10, 1_000_000)]
    public Quantity? InsideMm2 { get; init; }

    [Description("What may run in it together; left out, nobody said.")]
    public WayShare? Share { get; init; }

    [Description("Greatest distance between its supports."), Allowed(0.02, 10)]
    public Quantity? SupportM { get; init; }

    [Description("Radius of its tightest bend, inside the cable."), Allowed(0, 5000)]
    public Quantity? BendMm { get; init; }

    [Description("What must be opened to get at it: a lining panel, a hatch.")]
    public string? Opened { get; init; }

    [Description("Holes that a cable in it goes through.")]
    public ValueList<WayHole> Holes { get; init; } = [];
}

/// <summary>A hole in a bulkhead, deck or frame on a way.</summary>
public sealed record WayHole
{
    [Description("Where it is, in words: engine bulkhead, to port.")]
    public required string Where { get; init; }

    [Description("Its place; left out, every cable in the way goes through it.")]
    public Place? Place { get; init; }

    [Description("What keeps its edge off the cable; left out, nobody looked.")]
    public EdgeGuard? Guard { get; init; }

    [Description("Of a gland: the thickest cable that its bore and seal take."), Allowed(1, 300)]
    public Quantity? BoreMm { get; init; }

    [Description("Of a gland: the thinnest cable that its seal closes on."), Allowed(0.5, 300)]
    public Quantity? LeastClampedMm { get; init; }

    [Description("It is there; otherwise it has to be made first.")]
    public bool IsMade { get; init; } = true;
}

/// <summary>A magnetic compass.</summary>
[Kind("compass")]
public sealed record Compass : Thing
{
    [Description("Its centre.")]
    public Place? Place { get; init; }

    [Description("Horizontal part of the Earth's field where she sails."), Allowed(0.1, 45)]
    public Quantity? EarthUT { get; init; }

    [Description("Deviation from her own currents that the owner bears."), Allowed(0.05, 45)]
    public Quantity? MostDeviationDeg { get; init; }

    [Description("The conditions in which she is steered by it; left out, all."), RefersTo(typeof(Condition))]
    public ValueList<string> SteeredIn { get; init; } = [];
}

/// <summary>
/// What the owner prefers when a cable looks for its way: each metre there is worth this many dry ones, each hole this many metres. There is one, with the id
/// <c>way-preferences</c>; what is left out is common practice without a source.
/// </summary>
[Kind("way-preferences")]
public sealed record WayPreferences : Thing
{
    [Description("A metre in the bilge is worth this many dry metres."), Allowed(1, 1000)]
    public double? BilgeFactor { get; init; }

    [Description("A metre in a wet space is worth this many dry metres."), Allowed(1, 1000)]
    public double? WetFactor { get; init; }

    [Description("A metre in an engine space is worth this many dry metres."), Allowed(1, 1000)]
    public double? EngineFactor { get; init; }

    [Description("A metre on the open deck is worth this many dry metres."), Allowed(1, 1000)]
    public double? OutsideFactor { get; init; }

    [Description("A metre beside the other kind of current, undivided, is worth this many metres apart from it."), Allowed(1, 1000)]
    public double? BesideAcFactor { get; init; }

    [Description("A metre loose in a space is worth this many metres along a way."), Allowed(1, 1000)]
    public double? LooseFactor { get; init; }

    [Description("A metre lower than the height below is worth this many higher ones."), Allowed(1, 1000)]
    public double? LowFactor { get; init; }

    [Description("Height over the base line below which a run counts as low; left out, none does."), Allowed(-5, 20)]
    public double? LowBelowM { get; init; }

    [Description("A hole that has to be made is worth this many metres."), Allowed(0, 1000)]
    public double? NewHoleM { get; init; }

    [Description("Passing a hole or gland that is there is worth this many metres."), Allowed(0, 1000)]
    public double? MadeHoleM { get; init; }

    [Description("Opening what is in the way is worth this many metres."), Allowed(0, 1000)]
    public double? OpeningM { get; init; }

    [Description("Length at each end of a cable, to make off and make off again."), Allowed(0, 5)]
    public double? TailM { get; init; }

    [Description("Length of a loop in each cable that lets it be pulled back."), Allowed(0, 5)]
    public double? LoopM { get; init; }

    [Description("Share by which a cable is longer than its line."), Allowed(0, 1)]
    public double? SlackFraction { get; init; }

    [Description("Two ways that come as near as this are joined."), Allowed(0, 2)]
    public double? JoinM { get; init; }

    [Description("A cable may go this far loose through a space from way to way."), Allowed(0, 10)]
    public double? MostLooseM { get; init; }
}
