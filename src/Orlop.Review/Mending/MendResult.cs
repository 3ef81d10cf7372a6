using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What is asked of mending.</summary>
public sealed record MendRequest
{
    /// <summary>The boat as the draft would make her, or as built.</summary>
    public required BoatModel Draft { get; init; }

    /// <summary>The parts to choose from.</summary>
    public required Catalogue Catalogue { get; init; }

    /// <summary>What a cable is cut longer than its run.</summary>
    public required CutAllowance Cut { get; init; }

    /// <summary>What the set is to have least of.</summary>
    public MendAim Aim { get; init; } = MendAim.Cost;

    /// <summary>What is tight is to be cleared too: what is to be cleared must hold, and where everything is, nothing may become tight that held.</summary>
    public bool IsTightToo { get; init; }

    /// <summary>Check and subject of the findings to clear; empty for every electrical finding that fails, or is tight where that is asked.</summary>
    public ImmutableArray<(string CheckId, string SubjectId)> Only { get; init; } = [];

    /// <summary>The most reviews that are made. A limit by number, not by the clock, so that the answer is the same every time.</summary>
    public int MostReviewCount { get; init; } = 2000;
}

/// <summary>How mending ended.</summary>
public enum MendOutcome
{
    /// <summary>Nothing fails that could be cleared.</summary>
    NothingFails,

    /// <summary>A set clears all of it, but for what <see cref="MendResult.Beyond"/> names.</summary>
    Cleared,

    /// <summary>No set of the choices clears it.</summary>
    NotCleared,

    /// <summary>The search ended before any set was found, by its limit or because it was stopped.</summary>
    NotFound,
}

/// <summary>One change of a set.</summary>
/// <param name="ThingId">The thing.</param>
/// <param name="What">In words.</param>
/// <param name="Cost">What it costs and weighs.</param>
/// <param name="CatalogueId">The part it is made of; null where none is needed.</param>
/// <param name="StockIds">What it may be taken from; empty where it is bought.</param>
public sealed record MendChange(string ThingId, Sentence What, MendCost Cost, string? CatalogueId, ImmutableArray<string> StockIds);

/// <summary>A set of changes that the true review found good.</summary>
/// <param name="Changes">Each of them needed.</param>
/// <param name="Boat">The draft with them.</param>
/// <param name="Before">How many electrical findings of each verdict the draft has.</param>
/// <param name="After">How many they leave.</param>
public sealed record MendSet(ImmutableArray<MendChange> Changes, BoatModel Boat, ImmutableDictionary<Verdict, int> Before, ImmutableDictionary<Verdict, int> After)
{
    /// <summary>What is tight with it and was not before: what it cleared no farther, and what it brings.</summary>
    public ImmutableArray<Finding> NewlyTight { get; init; } = [];

    /// <summary>Who hangs on a battery with no isolator between, of those that the changes are on the way to.</summary>
    public ImmutableArray<Sentence> Remarks { get; init; } = [];

    /// <summary>The sum over the changes.</summary>
    public MendCost Cost => new(Changes.Sum(change => change.Cost.PriceMoney), Changes.Sum(change => change.Cost.AddedKg));

    /// <summary>An alteration with the changes put into it: of the boat as built where it had no edits.</summary>
    public Alteration PutInto(BoatModel asBuilt, Alteration alteration) => BoatEdits.Between(AlteredBoat.Of(asBuilt, alteration).Boat, Boat)
        .Where(edit => (edit.Becomes ?? edit.Was) is not Alteration)
        .Aggregate(alteration, (becomes, edit) => AlteredBoat.WithEdit(asBuilt, becomes, edit.Id, edit.Becomes));
}

/// <summary>A finding that no set clears together with the rest.</summary>
/// <param name="Finding">What was given up.</param>
/// <param name="Against">What stood most often against sets that would have cleared it; null where no set that was reviewed did.</param>
public sealed record MendConflict(Finding Finding, Finding? Against);

/// <summary>Proposals for one finding.</summary>
/// <param name="Sets">Each of them clears it.</param>
/// <param name="Whole">What the search of sets came to, where no single change does; null where one does.</param>
public sealed record MendProposals(ImmutableArray<MendSet> Sets, MendResult? Whole);

/// <summary>What mending came to.</summary>
public sealed record MendResult
{
    public required MendOutcome Outcome { get; init; }

    /// <summary>What was sought least of.</summary>
    public required MendAim Aim { get; init; }

    /// <summary>What is tight was to be cleared too.</summary>
    public bool IsTightToo { get; init; }

    /// <summary>The findings that were to be cleared.</summary>
    public ImmutableArray<Finding> Targets { get; init; } = [];

    /// <summary>Those of them that no choice clears, or for which there is none; the set is without them. Where what is tight is to be cleared too, one that failed may be among them and only be tight.</summary>
    public ImmutableArray<Finding> Beyond { get; init; } = [];

    /// <summary>Those of <see cref="Beyond"/> that were given up because no set clears them together with the rest; by itself one may have a mend.</summary>
    public ImmutableArray<MendConflict> Conflicts { get; init; } = [];

    /// <summary>The best set; null where none was found.</summary>
    public MendSet? Set { get; init; }

    /// <summary>No other set of the choices is less, by the reviews that were made and the rules of direction.</summary>
    public bool IsProved { get; init; }

    /// <summary>No set can cost less, where the least to pay was sought; null where that is not known.</summary>
    public double? LeastMoney { get; init; }

    /// <summary>No set can add less mass, where the least mass was sought; null where that is not known.</summary>
    public double? LeastKg { get; init; }

    /// <summary>The search was stopped; the set is the best that was found until then.</summary>
    public bool IsStopped { get; init; }

    /// <summary>Things that could be changed.</summary>
    public int SlotCount { get; init; }

    /// <summary>Sets that could be made of the choices.</summary>
    public double SetCount { get; init; }

    /// <summary>Sets that were reviewed.</summary>
    public int ReviewedCount { get; init; }
}
