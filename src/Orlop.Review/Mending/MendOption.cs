using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What a choice costs, and what it weighs.</summary>
/// <param name="PriceMoney">What is bought for it, in the owner's currency; nothing for what is taken from stock.</param>
/// <param name="AddedKg">What it makes the boat heavier by; nothing where it makes her lighter.</param>
public sealed record MendCost(double PriceMoney, double AddedKg)
{
    /// <summary>Nothing.</summary>
    public static MendCost None { get; } = new(0, 0);
}

/// <summary>What the rules of direction compare of two choices; what a choice does not touch is null.</summary>
internal sealed record MendTraits
{
    public double? AreaMm2 { get; init; }

    public double? InsulationC { get; init; }

    public double? LengthM { get; init; }

    /// <summary>Which way a cable takes: 0 as it is, 1 another run.</summary>
    public int Route { get; init; }

    /// <summary>A device at its end stands elsewhere.</summary>
    public bool IsMoved { get; init; }

    public double? RatedA { get; init; }

    public double? RatedV { get; init; }

    public double? BreakingA { get; init; }

    public string? Gates { get; init; }

    /// <summary>Fuse or breaker.</summary>
    public ProtectionMeans? Means { get; init; }

    /// <summary>How the cables at it are made off anew; null where their ends stay as they are.</summary>
    public string? MadeOffAs { get; init; }

    public double? ResistanceOhm { get; init; }

    public string? Keying { get; init; }

    public string? Arrangement { get; init; }

    public double? StartRatio { get; init; }

    public double? StartS { get; init; }

    /// <summary>Its ends were made off anew.</summary>
    public bool IsMadeOff { get; init; }

    /// <summary>What the openings of a space are worth for its own draught, m² √m.</summary>
    public double? Draught { get; init; }

    /// <summary>What its fan moves.</summary>
    public double? FanM3PerH { get; init; }

    /// <summary>Which circuit was made: choices that lead a circuit elsewhere are never compared.</summary>
    public int Circuit { get; init; }
}

/// <summary>One choice for one thing.</summary>
internal sealed record MendOption
{
    /// <summary>In words: "Fuse-link gG 125 A in place of 150 A".</summary>
    public required Sentence What { get; init; }

    /// <summary>The boat with it; the order in which the choices of different slots are put in makes no difference.</summary>
    public required Func<BoatModel, BoatModel> Apply { get; init; }

    public MendCost Cost { get; init; } = MendCost.None;

    public required MendTraits Traits { get; init; }

    /// <summary>The catalogue part it is made of; null where none is needed.</summary>
    public CataloguePart? Part { get; init; }

    /// <summary>Pieces of that part.</summary>
    public int PieceCount { get; init; } = 1;

    /// <summary>What of its price is paid also where the part is taken from stock: a holder, a cable and fuse with it.</summary>
    public double BesidesMoney { get; init; }

    /// <summary>How far it is from what is there: the logarithm of its size over the size that is there, without a sign.</summary>
    public double StepFactor { get; init; }

    /// <summary>It is taken from stock.</summary>
    public bool IsFromStock { get; init; }

    /// <summary>Lengths that are cut for it, in metres.</summary>
    public ImmutableArray<double> CutsM { get; init; } = [];

    /// <summary>Choices of two slots that have this alike are only taken together: a device that is moved. Null where it may be taken alone.</summary>
    public string? TogetherId { get; init; }

    /// <summary>The thickest conductor that goes into it, in mm²; null where any does, or what stands there stays.</summary>
    public double? TakesMm2 { get; init; }

    /// <summary>It leaves everything as it is.</summary>
    public bool IsKept { get; init; }
}

/// <summary>What kind of thing a slot chooses for.</summary>
internal enum SlotKind { Cable, Device, Contact, Start, Fuse, Split, End, Air, Leads }

/// <summary>A thing that may be changed, and what may become of it; the first choice leaves it as it is.</summary>
/// <param name="Id">Unique among the slots.</param>
/// <param name="Kind">What it is.</param>
/// <param name="ThingId">The thing.</param>
/// <param name="Options">At most <see cref="MostOptionCount"/>.</param>
internal sealed record MendSlot(string Id, SlotKind Kind, string ThingId, ImmutableArray<MendOption> Options)
{
    /// <summary>What else its choices change; empty where they change the thing alone.</summary>
    public ImmutableArray<string> AlsoIds { get; init; } = [];

    /// <summary>The cables that end at it, with their cross-section in mm²; of a device alone.</summary>
    public ImmutableArray<(string CableId, double AreaMm2)> Ends { get; init; } = [];

    /// <summary>The things that its choices add and that a finding could be about; empty where they add none.</summary>
    public ImmutableArray<string> AddedIds { get; init; } = [];

    /// <summary>Of air: what comes in is in no condition warmer than the space, whatever else is chosen (<see cref="AirDirection"/>).</summary>
    public bool IsAirCooler { get; init; }

    /// <summary>A set of choices is kept as bits.</summary>
    public const int MostOptionCount = 63;
}
