using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>One criterion over all draws.</summary>
/// <param name="Id">Name of the criterion.</param>
/// <param name="Least">The least that is asked.</param>
/// <param name="Unit">Unit of limit, mean, deviation and fifth percentile.</param>
/// <param name="MeetsFraction">Share of the draws that keep the limit to both sides.</param>
/// <param name="UnknownFraction">Share in which it could not be told; they do not count as kept.</param>
/// <param name="ShareDeviationFraction">Standard deviation of the share by the number of draws alone, √(p(1 - p)/n).</param>
/// <param name="Mean">Mean of the lesser side's value where it is known; null where it never is.</param>
/// <param name="Deviation">Its standard deviation.</param>
/// <param name="FifthPercentile">One draw in twenty lies below.</param>
public sealed record SampledShare(
    string Id, double Least, string Unit, double MeetsFraction, double UnknownFraction, double ShareDeviationFraction,
    [property: UnitByKind] double? Mean, [property: UnitByKind] double? Deviation, [property: UnitByKind] double? FifthPercentile);

/// <summary>What a spread of weights does to the criteria.</summary>
/// <param name="Message">What was done, or why nothing could be.</param>
/// <param name="Shares">One for each criterion; empty when the boat does not float over the whole spread.</param>
/// <param name="LargestErrorM">Largest difference of levers between the interpolation and the boat solved anew at the heaviest, lightest, foremost and aftermost draws; null without shares.</param>
/// <param name="MeetsAllFraction">Share of the draws that keep every limit; null without shares.</param>
public sealed record StabilitySamplingResult(string Message, ImmutableArray<SampledShare> Shares, double? LargestErrorM, double? MeetsAllFraction);
