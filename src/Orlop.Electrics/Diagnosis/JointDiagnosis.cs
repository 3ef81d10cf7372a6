using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Diagnosis;

/// <summary>
/// Finds the one element whose extra resistance explains a set of readings best. For each candidate χ²(δ) = Σ ((predicted - read)/u)² is made
/// least over the extra resistance δ ≥ 0, each prediction being a full solution of the network with δ in series with the element.
/// </summary>
public static class JointDiagnosis
{
    /// <summary>A contact of no resistance gets this first, or the network would make its two nodes one and it would carry no reading.</summary>
    public const double LeastContactOhm = 1e-6;

    /// <summary>Two hypotheses are told apart when their predicted readings lie this far apart, in χ² (two standard uncertainties).</summary>
    public const double ToldApartChiSquareRatio = 4;

    /// <summary>Weight that the leading group must have to be called found.</summary>
    public const double FoundFraction = 0.95;

    /// <summary>Candidates of at least this weight count when the next reading is chosen.</summary>
    private const double LikelyFraction = 0.01;

    private static readonly ImmutableArray<string> Assumptions =
    [
        "At most one element is worse than drawn; everything else is as the network says.",
        "The extra resistance does not depend on current or temperature.",
        "A contact of no resistance is taken as 1 µohm when it is a candidate.",
        "Readings err independently with the standard uncertainty given.",
        "Every candidate, and \"nothing is wrong\", is taken as equally likely before the readings.",
    ];

    /// <summary>Diagnoses with any solver of the network; solves it some ten times for each candidate that the readings feel.</summary>
    [SuppressMessage("Design", "CA1068", Justification = "Cancelling is asked for more often than progress.")]
    public static DiagnosisResult Solve(DiagnosisInput input, Func<Network, NetworkResult> solve, CancellationToken cancellation = default, IProgress<double>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(solve);
        DiagnosisChecks.Refuse(input);
        var fit = new CandidateFit(input, solve);
        if (fit.Predict(input.CandidateIds[0], 0) is not { } asDrawn)
        {
            return new DiagnosisResult { Status = DiagnosisStatus.NotSolvable, Assumptions = Assumptions, SolveCount = fit.SolveCount };
        }

        fit.RefuseUnread(asDrawn);
        var nothingWrong = fit.ChiSquare(asDrawn);
        var fits = ImmutableArray.CreateBuilder<FittedCandidate>(input.CandidateIds.Length);
        foreach (var id in input.CandidateIds)
        {
            cancellation.ThrowIfCancellationRequested();
            fits.Add(fit.Best(id, asDrawn));
            progress?.Report((double)fits.Count / input.CandidateIds.Length);
        }

        var ranked = fits.OrderBy(candidate => candidate.ChiSquare).ThenBy(candidate => candidate.Id, StringComparer.Ordinal).ToImmutableArray();
        var weights = Weights(nothingWrong, ranked);
        var groups = Group(fit, ranked, weights);
        return new DiagnosisResult
        {
            Status = Judge(nothingWrong, ranked, groups, fit.ReadingCount),
            NothingWrongChiSquareRatio = nothingWrong,
            NothingWrongFraction = weights[^1],
            Suspects = [.. ranked.Select((candidate, i) => new Suspect(candidate.Id, candidate.ExtraOhm, candidate.UncertaintyOhm, candidate.ChiSquare, weights[i], candidate.ExtraHeatW))],
            Groups = groups,
            Next = NextReadingChoice.Of(input, [.. ranked.Where((_, i) => weights[i] >= LikelyFraction)], [.. weights.Where((weight, i) => i < ranked.Length && weight >= LikelyFraction)]),
            ResidualRatios = [.. fit.Misfits(nothingWrong <= ranked[0].ChiSquare ? asDrawn : ranked[0].Point)],
            Assumptions = Assumptions,
            SolveCount = fit.SolveCount,
        };
    }

    /// <summary>exp(-χ²/2), normalised; "nothing is wrong" last. Taken from the best so that none underflows.</summary>
    private static ImmutableArray<double> Weights(double nothingWrong, ImmutableArray<FittedCandidate> ranked)
    {
        var least = Math.Min(nothingWrong, ranked[0].ChiSquare);
        var raw = ranked.Select(candidate => Math.Exp((least - candidate.ChiSquare) / 2)).Append(Math.Exp((least - nothingWrong) / 2)).ToArray();
        var sum = raw.Sum();
        return [.. raw.Select(weight => weight / sum)];
    }

    private static ImmutableArray<SuspectGroup> Group(CandidateFit fit, ImmutableArray<FittedCandidate> ranked, ImmutableArray<double> weights)
    {
        var groups = new List<(FittedCandidate Leader, List<int> Members)>();
        for (var i = 0; i < ranked.Length; i++)
        {
            var candidate = ranked[i];
            var group = groups.FirstOrDefault(other => fit.Distance(other.Leader.Point, candidate.Point) < ToldApartChiSquareRatio);
            if (group.Members is null)
            {
                groups.Add((candidate, [i]));
            }
            else
            {
                group.Members.Add(i);
            }
        }

        return [.. groups.Select(group => new SuspectGroup([.. group.Members.Select(i => ranked[i].Id)], group.Members.Sum(i => weights[i])))
            .OrderByDescending(group => group.WeightFraction)];
    }

    private static DiagnosisStatus Judge(double nothingWrong, ImmutableArray<FittedCandidate> ranked, ImmutableArray<SuspectGroup> groups, int readingCount)
    {
        var most = LargestCredibleChiSquare(readingCount);
        if (nothingWrong - ranked[0].ChiSquare < ToldApartChiSquareRatio)
        {
            return nothingWrong <= most ? DiagnosisStatus.NothingWrongSeen : DiagnosisStatus.NotExplained;
        }

        // The resistance that was fitted has used up one reading.
        if (ranked[0].ChiSquare > LargestCredibleChiSquare(Math.Max(1, readingCount - 1)))
        {
            return DiagnosisStatus.NotExplained;
        }

        return groups[0] is { ElementIds.Length: 1, WeightFraction: >= FoundFraction } ? DiagnosisStatus.Found : DiagnosisStatus.NotToldApart;
    }

    /// <summary>χ² that n good readings pass once in ten thousand times (3.72 standard deviations in the cube-root form of Wilson and Hilferty, 1931).</summary>
    private static double LargestCredibleChiSquare(int readingCount)
    {
        var spread = 2.0 / (9 * readingCount);
        return readingCount * Math.Pow(1 - spread + (3.72 * Math.Sqrt(spread)), 3);
    }
}
