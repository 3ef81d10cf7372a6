using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;

namespace Orlop.Work.Loading;

/// <summary>What a loading and stability sheet tells: in each condition what is aboard, how she floats, her levers and what she is held against, as built and as altered.</summary>
public sealed record LoadingSheet
{
    /// <summary>The alteration; null for the boat as built.</summary>
    public required Alteration? Alteration { get; init; }

    /// <summary>The boat the sheet is about: as altered, or as built without an alteration.</summary>
    public required StabilityView Shown { get; init; }

    /// <summary>The boat as built; null without an alteration.</summary>
    public required StabilityView? AsBuilt { get; init; }

    /// <summary>One for each condition, in the boat's order.</summary>
    public required ImmutableArray<SheetCondition> Conditions { get; init; }

    /// <summary>Findings that are the same in every condition.</summary>
    public required ImmutableArray<SheetFinding> Always { get; init; }

    /// <summary>Everything the discipline checks, in the order of the docs.</summary>
    public required ImmutableArray<CheckDescription> Checks { get; init; }

    /// <summary>What the boat is called.</summary>
    public string BoatTitle => Shown.Boat.Particulars?.Title is { Length: > 0 } title ? title : "Boat";

    /// <summary>Makes the sheet of a boat.</summary>
    /// <param name="engine">Reviews the boat; what it solved before is not solved again. Only its findings on stability are used.</param>
    /// <param name="alteration">The alteration to compare with; null for the boat as built alone.</param>
    /// <param name="conditionIds">The conditions that are wanted; null for all.</param>
    /// <param name="isDrawn">Also hold many draws of her weight against the general criteria: a second or more for each condition.</param>
    /// <param name="hasLevers">With righting levers to draw, and how sure they are: most of the work.</param>
    /// <param name="progress">Is told the condition whose draws go on, and how far they are, 0 to 1.</param>
    /// <param name="token">Stops it.</param>
    public static LoadingSheet Make(ReviewEngine engine, BoatModel asBuilt, Alteration? alteration, IReadOnlyCollection<string>? conditionIds = null, bool isDrawn = false, bool hasLevers = true, IProgress<SheetProgress>? progress = null, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(asBuilt);
        ReviewResult review = alteration is null ? engine.Review(asBuilt, token) : engine.Review(asBuilt, alteration, token);
        CheckDescription[] checks = [.. new StabilityDiscipline().Checks];
        PairedFinding[] pairs = [.. review.Findings.Where(pair => checks.Any(check => check.Id == pair.CheckId))];
        StabilityView View(BoatModel boat) => new(boat, Practice.Of(boat, engine.Memo), engine.Memo);
        StabilityView shown = View(alteration is null ? asBuilt : AlteredBoat.Of(asBuilt, alteration).Boat);
        StabilityView? was = alteration is null ? null : View(asBuilt);
        ImmutableArray<SheetCondition>.Builder conditions = ImmutableArray.CreateBuilder<SheetCondition>();
        foreach (Condition condition in shown.Conditions.Where(condition => conditionIds?.Contains(condition.Id) != false))
        {
            token.ThrowIfCancellationRequested();
            conditions.Add(SheetCondition.Of(shown, was, condition, FindingsIn(condition.Id), isDrawn, hasLevers, engine.Memo, progress is null ? null : new DrawsProgress(condition.Title, progress), token));
        }

        return new LoadingSheet
        {
            Alteration = alteration,
            Shown = shown,
            AsBuilt = was,
            Conditions = conditions.ToImmutable(),
            Always = FindingsIn(null),
            Checks = [.. checks],
        };

        ImmutableArray<SheetFinding> FindingsIn(string? conditionId)
        {
            Finding? In(FindingGroup? group) => group?.All.FirstOrDefault(finding => finding.ConditionId == conditionId);
            return
            [
                .. pairs.Select(pair => new SheetFinding(Array.Find(checks, check => check.Id == pair.CheckId)!, In(pair.After), alteration is null ? null : In(pair.Before)))
                    .Where(row => row.Now is not null || row.Was is not null)
                    .OrderByDescending(row => Verdicts.Weight((row.Now ?? row.Was)!.Verdict)).ThenBy(row => Array.IndexOf(checks, row.Check)),
            ];
        }
    }
}
