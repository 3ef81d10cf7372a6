using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>The boat without what is listed as gear, parts, cables, deadweight and tanks: hull, deck, lining, ballast, engine if it is not listed. There is one.</summary>
[Kind("bare-boat")]
public sealed record BareBoat : Thing
{
    [Description("Its mass."), Allowed(10, 500_000)]
    public Quantity? MassKg { get; init; }

    [Description("Its centre, forward of the after perpendicular."), Allowed(-5, 60)]
    public Quantity? LcgM { get; init; }

    [Description("Its centre, to port of the centre line."), Allowed(-5, 5)]
    public Quantity? TcgM { get; init; }

    [Description("Its centre, above the base line."), Allowed(-2, 10)]
    public Quantity? KgM { get; init; }
}

/// <summary>What is carried in some conditions and not in others.</summary>
public enum DeadweightUse { People, Stores, Cargo, Hung }

/// <summary>People, stores, cargo, or a weight that hangs from a hook: aboard in the conditions that say so.</summary>
[Kind("deadweight")]
public sealed record Deadweight : Thing
{
    [Description("What it is. A hung weight acts at the point it hangs from, at every heel.")]
    public required DeadweightUse Use { get; init; }

    [Description("Mass of one."), Allowed(0, 100_000)]
    public Quantity? MassKg { get; init; }

    [Description("Centre of all of them; of a hung weight, the point it hangs from.")]
    public Place? Place { get; init; }

    [Description("How many are aboard in each condition; none in any not named.")]
    public ValueList<DeadweightCount> Aboard { get; init; } = [];

    /// <summary>How many are aboard in a condition; 0 where it does not name them.</summary>
    public int PiecesIn(string conditionId) => Aboard.Where(count => count.Condition == conditionId).Sum(count => count.PieceCount);
}

/// <summary>How many are aboard in a condition.</summary>
public sealed record DeadweightCount([property: RefersTo(typeof(Condition))] string Condition, [property: Allowed(0, 1000)] int PieceCount);

/// <summary>Rules that a boat's stability is held against.</summary>
public enum StabilityRule { GeneralIntact, Weather, SimplifiedUnited, SmallCraft, OpenBoat }

/// <summary>Waters that she is used in.</summary>
public enum Waters { Protected, PartiallyProtected, Exposed }

/// <summary>What stability is judged by, and what the rules ask to be known of the boat. There is one.</summary>
[Kind("stability-basis")]
public sealed record StabilityBasis : Thing
{
    [Description("The rules that she is held against. Which of them she must keep, the authority of her waters says; without one nothing of her stability is judged.")]
    public ValueList<StabilityRule> Rules { get; init; } = [];

    [Description("Area above the waterline that the wind meets from the side: hull, houses, rigging, deck load. Wind and rolling and the proof test ask for it."), Allowed(0.1, 1000)]
    public Quantity? WindAreaM2 { get; init; }

    [Description("Height of that area's centre above the base line. Wind and rolling and the proof test ask for it."), Allowed(0, 30)]
    public Quantity? WindCentreM { get; init; }

    [Description("Area of bilge keels and bar keel, both sides; 0 for none. Wind and rolling ask for it: they damp her roll."), Allowed(0, 100)]
    public Quantity? BilgeKeelAreaM2 { get; init; }

    [Description("The bilge is a sharp chine. Wind and rolling ask for it.")]
    public bool? IsSharpBilge { get; init; }

    [Description("Greatest displacement she may have, as her papers or her builder say; every condition is held against it."), Allowed(20, 500_000)]
    public Quantity? MostDisplacementKg { get; init; }

    [Description("Most people aboard. Everyone at one side and the proof test ask for it."), Allowed(0, 500)]
    public int? PeopleCount { get; init; }

    [Description("Greatest breadth that people can reach from side to side. The proof test asks for it."), Allowed(0.3, 20)]
    public Quantity? PeopleBreadthM { get; init; }

    [Description("Length of an open cockpit that water can fill; 0 for none. The proof test alone asks for it: that she is open at all is said of her deck in the particulars."), Allowed(0, 60)]
    public Quantity? CockpitLengthM { get; init; }

    [Description("Waters she is used in: protected, partially protected (within 20 nautical miles of a harbour of refuge, from memory), or exposed. The proof test asks for it.")]
    public Waters? Waters { get; init; }
}
