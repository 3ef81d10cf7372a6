using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Says why a boat's stability cannot be told: no lines, lines that make no surface, or no weight.</summary>
internal static class WhyUnknown
{
    /// <summary>The thing that a finding about the whole boat is about.</summary>
    public static string SubjectOf(StabilityView view) => view.Boat.Particulars?.Id ?? "particulars";

    /// <summary>The finding of a check that has nothing to judge.</summary>
    public static Finding Of(CheckDescription check, StabilityView view, LoadedBoat loaded, string what)
    {
        (string why, ImmutableArray<FindingInput> missing) = (view.Bodies.Hull, loaded.Total) switch
        {
            (null, _) when view.Bodies.Problems is [var first, ..] => ($"the hull's lines make no closed surface: {first}", (ImmutableArray<FindingInput>)[new FindingInput(Lines(view), "stations")]),
            (null, _) => ("the hull's lines are not given", [new FindingInput(Lines(view), "stations", IsMissing: true)]),
            _ => ("her own weight is not known: a freeboard survey tells it", loaded.Missing),
        };
        return StabilityLines.Unknown(check, SubjectOf(view), loaded.Condition.Id, Sentence.Of($"{what} {Electrics.FindingLines.In(loaded.Condition)} cannot be told: {why}"), missing);
    }

    private static string Lines(StabilityView view) => view.Boat.All<HullLines>().FirstOrDefault()?.Id ?? "hull-lines";
}
