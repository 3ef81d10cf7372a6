using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review;

/// <summary>Runs all checks of all disciplines on the boat as built and as altered, and pairs them. Remembers what it solved; safe from several threads.</summary>
public sealed class ReviewEngine(IEnumerable<IDiscipline> disciplines)
{
    private sealed record FindingsOfBoat(ImmutableArray<Finding> Findings);

    private readonly ImmutableArray<IDiscipline> _disciplines = [.. disciplines];

    /// <summary>What was solved so far, by content.</summary>
    public Memo Memo { get; } = new();

    /// <summary>All checks, by discipline and in the order of the docs.</summary>
    public ImmutableArray<CheckDescription> Checks => [.. _disciplines.SelectMany(discipline => discipline.Checks)];

    /// <summary>Reviews a boat as built.</summary>
    public ReviewResult Review(BoatModel asBuilt, CancellationToken token = default)
    {
        ImmutableArray<Finding> findings = FindingsOf(asBuilt, token);
        return new ReviewResult
        {
            AsBuilt = asBuilt,
            AsAltered = asBuilt,
            Findings = FindingPairs.Of(findings, findings),
        };
    }

    /// <summary>Reviews a boat as built beside the same boat with an alteration.</summary>
    public ReviewResult Review(BoatModel asBuilt, Alteration alteration, CancellationToken token = default)
    {
        EditOutcome outcome = AlteredBoat.Of(asBuilt, alteration);
        return new ReviewResult
        {
            AlterationId = alteration.Id,
            AsBuilt = asBuilt,
            AsAltered = outcome.Boat,
            Clashes = [.. outcome.Clashes],
            Findings = FindingPairs.Of(FindingsOf(asBuilt, token), FindingsOf(outcome.Boat, token)),
        };
    }

    // Each discipline judges only what it reads, so that moving a crate, or writing down a reading, judges no circuit again.
    private ImmutableArray<Finding> FindingsOf(BoatModel boat, CancellationToken token) =>
    [
        .. _disciplines.SelectMany(discipline =>
        {
            BoatModel read = boat.WithThings(boat.Things.Where(discipline.Reads));
            return Memo.Get((discipline.Id, read), () => new FindingsOfBoat([.. discipline.Review(read, Practice.Of(read, Memo), Memo, token)])).Findings;
        }),
    ];
}
