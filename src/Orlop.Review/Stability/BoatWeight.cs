using System.Collections.Immutable;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>What is known of the boat's weight at one time, from her list and her berth tests: everything later is reckoned from it by what changed.</summary>
/// <param name="Total">Mass and centre then, with errors; null when nothing tells them.</param>
/// <param name="TestId">The test that says what was aboard; null when the total is the bare boat alone.</param>
/// <param name="Aboard">What was aboard then.</param>
/// <param name="Fits">How each measurement agrees with all together.</param>
/// <param name="Working">The steps.</param>
/// <param name="Missing">What would tell more.</param>
/// <param name="Trouble">Tests that could not be read, each with why.</param>
public sealed record BoatWeight(
    WeightTotal? Total,
    string? TestId,
    ImmutableArray<LedgerItem> Aboard,
    ImmutableArray<EvidenceFit> Fits,
    ImmutableArray<WorkingStep> Working,
    ImmutableArray<FindingInput> Missing,
    ImmutableArray<TestTrouble> Trouble)
{
    private const double WeighedFraction = 0.001;

    /// <summary>Mass, LCG and TCG where freeboards tell them and nothing tells KG, its own KG no more than the keel's height; null where the total is known, or not even these are.</summary>
    public WeightTotal? WithoutKg { get; init; }

    /// <summary>The berth test that contradicts the rest beyond chance, for which the total's deviations are made wider; null where all agree.</summary>
    public Contradiction? Contradiction { get; init; }

    /// <summary>Her centre of gravity, or that of all the rest of her, where it is one that no boat of her hull has; null where it may be hers.</summary>
    public ImpossibleCentre? Impossible { get; init; }

    /// <summary>Her metacentre as she was then, tanks not slack, to tell what a further inclining test would; null where her weight or her hull is not known.</summary>
    public MetacentreThen? Metacentre { get; init; }

    /// <summary>The list that went into the estimate; empty where the total is no estimate, or has no list.</summary>
    internal ImmutableArray<LedgerItem> Listed { get; init; } = [];

    /// <summary>The measurements that went into it.</summary>
    internal ImmutableArray<WeightEvidence> Evidence { get; init; } = [];

    /// <summary>Inclining tests that count though they are weak, each with why and how little it weighs.</summary>
    public ImmutableArray<WeakTest> Weak { get; init; } = [];

    /// <summary>What of the variance that KG would have without a test the test takes away: 0 to 1, 1 where nothing else tells KG; null where it does not count.</summary>
    internal double? KgShareFraction(string testId)
    {
        if (Total is null || Evidence.All(piece => piece.Id != testId))
        {
            return null;
        }

        return WeightEstimate.Combine(testId, Listed, [.. Evidence.Where(piece => piece.Id != testId)]).Estimate is { } without
            ? Math.Clamp(1 - Math.Pow(Total.KgDeviationM / (Contradiction?.WiderRatio ?? 1) / WeightTotal.Of(without).KgDeviationM, 2), 0, 1) : 1;
    }

    /// <summary>The total as it would be if a thing that was aboard had been weighed to a thousandth of its error; null where there is no total.</summary>
    internal WeightTotal? Weighing(string id) => Listed.Any(item => item.Id == id)
        ? WeightEstimate.Combine(id, [.. Listed.Select(item => item.Id == id ? Weighed(item) : item)], Evidence).Estimate is { } estimate ? WeightTotal.Of(estimate).Widened(Contradiction?.WiderRatio ?? 1) : null
        : Total;

    /// <summary>A thing once it is weighed.</summary>
    internal static LedgerItem Weighed(LedgerItem item) => item with { MassDeviationKg = WeighedFraction * item.MassDeviationKg };
}

/// <summary>A berth test that tells nothing, and why.</summary>
public sealed record TestTrouble(string TestId, string Message);
