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
    public ReviewResult Review(BoatModel asBuilt, CancellationToken token = default) => Review(asBuilt, null, null, token);

    /// <summary>Reviews a boat as built beside the same boat with an alteration.</summary>
    public ReviewResult Review(BoatModel asBuilt, Alteration alteration, CancellationToken token = default) => Review(asBuilt, alteration, null, token);

    /// <summary>
    /// Reviews a boat in stages, a discipline at a time in the order they were given: what is found so far is told while what takes longer is
    /// worked out, never later than the whole and only where there is something to wait for.
    /// </summary>
    /// <param name="asBuilt">The boat as built.</param>
    /// <param name="alteration">The alteration to hold beside her; null for none.</param>
    /// <param name="stages">The review before this one, whose findings stand until there are new ones, and who is told; null for one result at the end.</param>
    /// <param name="token">Cancels it.</param>
    /// <returns>The whole review.</returns>
    public ReviewResult Review(BoatModel asBuilt, Alteration? alteration, ReviewStages? stages, CancellationToken token = default)
    {
        EditOutcome? outcome = alteration is null ? null : AlteredBoat.Of(asBuilt, alteration);
        ReviewResult result = new()
        {
            AlterationId = alteration?.Id,
            AsBuilt = asBuilt,
            AsAltered = outcome?.Boat ?? asBuilt,
            Clashes = [.. outcome?.Clashes ?? []],
            Findings = [],
        };
        BoatModel altered = alteration is null ? result.AsAltered : AlteredBoat.Holding(result.AsAltered, alteration);
        List<PairedFinding> found = [];
        for (int k = 0; k < _disciplines.Length; k++)
        {
            if (stages is not null && k > 0 && !(Knows(_disciplines[k], result.AsBuilt) && (_disciplines[k].IsOfWorkDone || Knows(_disciplines[k], altered))))
            {
                stages.Tell(result with { Findings = [.. found], Waiting = [.. _disciplines[k..].SelectMany(discipline => discipline.Checks).Select(check => check.Id)] });
            }

            ImmutableArray<Finding> before = FindingsOf(_disciplines[k], asBuilt, token);
            found.AddRange(FindingPairs.Of(before, outcome is null || _disciplines[k].IsOfWorkDone ? before : FindingsOf(_disciplines[k], altered, token)));
        }

        return result with { Findings = FindingPairs.InOrder(found) };
    }

    // Each discipline judges only what it reads, so that moving a crate, or writing down a reading, judges no circuit again.
    private ImmutableArray<Finding> FindingsOf(IDiscipline discipline, BoatModel boat, CancellationToken token)
    {
        BoatModel read = WhatIsRead(discipline, boat);
        return Memo.Get((discipline.Id, read), () => new FindingsOfBoat([.. discipline.Review(read, Practice.Of(read, Memo), Memo, token)])).Findings;
    }

    private bool Knows(IDiscipline discipline, BoatModel boat) => Memo.Knows<FindingsOfBoat>((discipline.Id, WhatIsRead(discipline, boat)));

    private static BoatModel WhatIsRead(IDiscipline discipline, BoatModel boat) => boat.WithThings(boat.Things.Where(discipline.Reads).Select(discipline.AsRead));
}
