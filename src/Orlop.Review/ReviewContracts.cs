using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review;

/// <summary>What a check is, for the list of checks in the docs and on the pages.</summary>
/// <param name="Id">In the field's words: <c>conductor-ampacity</c>.</param>
/// <param name="Title">A few words: "Cable carries its current".</param>
/// <param name="About">What is compared with what, in one or two sentences.</param>
/// <param name="LimitIds">The practice limits it uses.</param>
public sealed record CheckDescription(string Id, string Title, string About, ImmutableArray<string> LimitIds)
{
    /// <summary>It holds the boat against a rule of stability or a limit that the owner chose; others look after what the numbers rest on.</summary>
    public bool IsCriterion { get; init; }

    /// <summary>What it finds is hers only while no water comes in where she rests, and while her weight may be believed. Every criterion does.</summary>
    public bool RestsOnFloatingDry { get => field || IsCriterion; init; }
}

/// <summary>
/// One discipline of the review: electrics, later hull and others. It takes a boat and a practice and gives findings; it knows nothing of
/// before and after. Another discipline is another of these in the list that <see cref="ReviewEngine"/> is made with.
/// </summary>
public interface IDiscipline
{
    /// <summary>Its name: <c>electrics</c>.</summary>
    string Id { get; }

    /// <summary>Its checks, in the order of the docs.</summary>
    ImmutableArray<CheckDescription> Checks { get; }

    /// <summary>Its findings rest on this thing. A thing that it does not read is not in the boat it reviews; the practice always is.</summary>
    bool Reads(Thing thing);

    /// <summary>A thing with no more than its findings rest on, so that what else is written in it judges nothing again.</summary>
    Thing AsRead(Thing thing) => thing;

    /// <summary>
    /// What it finds rests on what was done and read in the boat as built: an alteration that is not built changes none of it, and is reviewed with the
    /// findings of the boat as built.
    /// </summary>
    bool IsOfWorkDone => false;

    /// <summary>All findings of its checks on a boat, in every condition.</summary>
    IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token);
}

/// <summary>The review of a boat: as built, and as altered where an alteration was given.</summary>
public sealed record ReviewResult
{
    /// <summary>The alteration reviewed, or null.</summary>
    public string? AlterationId { get; init; }

    /// <summary>The boat as built.</summary>
    public required BoatModel AsBuilt { get; init; }

    /// <summary>The boat as altered; the same as built without an alteration.</summary>
    public required BoatModel AsAltered { get; init; }

    /// <summary>Edits that no longer fit the boat as built; they are left out of the review.</summary>
    public ImmutableArray<Clash> Clashes { get; init; } = [];

    /// <summary>All findings, paired, in the order of the screen: new trouble, worse, unknown, as before, better, holds, gone.</summary>
    public required ImmutableArray<PairedFinding> Findings { get; init; }

    /// <summary>Checks that are still being worked out: their findings are of the review before. Empty in a whole review.</summary>
    public ImmutableHashSet<string> Waiting { get; init; } = [];

    /// <summary>How many finding groups of the boat as altered have this verdict.</summary>
    public int Count(Verdict verdict) => Findings.Count(finding => finding.After is { } after && after.Worst.Verdict == verdict);
}
