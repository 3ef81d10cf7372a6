using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>The boat as she is loaded in one condition.</summary>
public sealed record LoadedBoat
{
    public required Condition Condition { get; init; }

    /// <summary>All that is listed aboard, without bare boat and liquids.</summary>
    public required WeightLedger Ledger { get; init; }

    /// <summary>What came, went and moved since her weight was known.</summary>
    public required ImmutableArray<WeightChange> Changes { get; init; }

    /// <summary>Mass and centre without tank liquids, with errors; null when the boat's own weight is not known.</summary>
    public required WeightTotal? Total { get; init; }

    /// <summary>Weak inclining tests that her weight rests on.</summary>
    public ImmutableArray<WeakTest> Weak { get; init; } = [];

    /// <summary>How many stations of the hull that floats her nobody measured, within a sentence; null where all are, or it is not told.</summary>
    public string? HullNotMeasured { get; init; }

    /// <summary>As the engine takes her; null without a weight or a hull.</summary>
    public required FloatingInput? Input { get; init; }

    /// <summary>Where KG alone is not known: what the freeboards tell; null otherwise.</summary>
    public AfloatWithoutKg? WithoutKg { get; init; }

    /// <summary>Everything that is not given and would change the numbers.</summary>
    public required ImmutableArray<FindingInput> Missing { get; init; }

    /// <summary>The same boat with something else, or nothing, in place of things listed; null where no mass is left, or her weight or hull is not known.</summary>
    internal LoadedBoat? Instead(BoatWeight weight, IReadOnlyCollection<string> gone, LedgerItem? instead)
    {
        LedgerItem[] aboard = [.. Ledger.Rows.Where(row => !gone.Contains(row.ThingId)).Select(WeightLedger.Item), .. instead is null ? [] : new[] { instead }];
        WeightChange[] changes = [.. TestEvidence.Changes(weight.Aboard, [.. aboard])];
        return weight.Total?.With(changes) is { MassKg: > 0 } total && Input is { } input
            ? this with { Changes = [.. changes], Total = total, Input = input with { MassKg = total.MassKg, CentreOfGravity = total.Centre } }
            : null;
    }
}

/// <summary>A boat whose mass, LCG and TCG are known and whose KG is not: her draughts and trim can be told, and nothing of her stability.</summary>
/// <param name="Total">Mass and centre without tank liquids; its KG is no more than the keel's height.</param>
/// <param name="Input">The same as the engine takes it, to be read for draught and trim alone.</param>
public sealed record AfloatWithoutKg(WeightTotal Total, FloatingInput Input);
