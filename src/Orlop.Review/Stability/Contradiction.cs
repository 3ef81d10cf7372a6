using Orlop.Boat;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;

namespace Orlop.Review.Stability;

/// <summary>A berth test that lies farther from the rest of what is known of her weight than chance allows. One of the two is wrong, and nothing tells which: the estimate is not to be believed.</summary>
/// <param name="TestId">The test that is farthest off.</param>
/// <param name="Title">What it is called.</param>
/// <param name="DeviationCount">How far, in standard deviations.</param>
/// <param name="WiderRatio">How many times wider every deviation of her weight is made for it: the Birge ratio, and no less than it takes for the two to meet. 1 or more.</param>
public sealed record Contradiction(string TestId, string Title, double DeviationCount, double WiderRatio)
{
    /// <summary>So many standard deviations a test may be off (common practice, no source).</summary>
    public const double MostDeviations = 3;

    /// <summary>"what her weight rests on contradicts itself (Rolling test is 4.4 deviations off the rest, at most 3 expected)".</summary>
    public string Briefly => FormattableString.Invariant($"what her weight rests on contradicts itself ({Title} is {DeviationCount:0.0} deviations off the rest, at most {MostDeviations:0} expected)");

    /// <summary>The same with what follows from it, in sentences.</summary>
    public string Text => FormattableString.Invariant($"{Title} disagrees with the rest of what is known of her weight: {DeviationCount:0.0} deviations off, at most {MostDeviations:0} expected. One of the two is wrong. Every ± that rests on her weight is made {WiderRatio:0.0} times wider for it, and nothing that rests on it holds until it is measured again.");

    /// <summary>As a step of working.</summary>
    public WorkingStep Step => new("Wider", FormattableString.Invariant($"every deviation, √(χ²/ν) and no less than {DeviationCount:0.0}/{MostDeviations:0}"), WiderRatio, "", "Birge ratio, Physical Review 40 (1932) 207 (from memory)");

    /// <summary>The contradiction of an estimate; null where all agree.</summary>
    internal static Contradiction? Of(BoatModel boat, WeightEstimateResult estimate)
    {
        if (estimate.Fits.MaxBy(fit => Math.Abs(fit.StandardisedRatio)) is not { } worst)
        {
            return null;
        }

        double off = Math.Abs(worst.StandardisedRatio);
        return off <= MostDeviations ? null : new Contradiction(worst.Id, boat.Find(worst.Id)?.Title ?? worst.Id, off, Math.Max(estimate.BirgeRatio, off / MostDeviations));
    }
}
