using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Says why a boat's stability cannot be told: no lines, lines that make no surface, or no weight.</summary>
public static class WhyUnknown
{
    /// <summary>The thing that a finding about the whole boat is about.</summary>
    internal static string SubjectOf(StabilityView view) => view.Boat.Particulars?.Id ?? "particulars";

    /// <summary>The end of a sentence about a boat of which freeboards tell mass and LCG.</summary>
    public const string NoKg = "the height of her centre of gravity (KG) is not known; an inclining or a rolling test tells it";

    /// <summary>The finding of a check that has nothing to judge.</summary>
    internal static Finding Of(CheckDescription check, StabilityView view, LoadedBoat loaded, string what)
    {
        (string why, ImmutableArray<FindingInput> missing) = (view.Bodies.Hull, loaded.Total) switch
        {
            (null, _) when view.Bodies.Problems is [var first, ..] => ($"the hull's lines make no closed surface: {first}", (ImmutableArray<FindingInput>)[new FindingInput(Lines(view), "stations")]),
            (null, _) => ("the hull's lines are not given", [new FindingInput(Lines(view), "stations", IsMissing: true)]),
            _ when loaded.WithoutKg is not null => (view.Weight.Trouble is [var spoilt, ..] ? $"{NoKg}, and {view.Boat.Find(spoilt.TestId)?.Title ?? spoilt.TestId} does not count: {spoilt.Message}" : NoKg, loaded.Missing),
            _ => ("her own weight is not known: a freeboard survey tells it", loaded.Missing),
        };
        return StabilityLines.Unknown(check, SubjectOf(view), loaded.Condition.Id, Sentence.Of($"{what} {Electrics.FindingLines.In(loaded.Condition)} cannot be told: {why}"), missing);
    }

    private static string Lines(StabilityView view) => view.Boat.All<HullLines>().FirstOrDefault()?.Id ?? "hull-lines";
}
