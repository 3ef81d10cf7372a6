using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>An estimate, or which of the four has no evidence; never both.</summary>
public sealed record WeightEstimateOutcome(WeightEstimateResult? Estimate, string? Missing);

/// <summary>
/// Displacement, LCG, TCG and KG from a ledger and from measurements, weighted by the inverse of their variances (Gauss-Markov; the same as Bayes' rule with normal
/// distributions, the ledger as prior). Evidence must be independent: numbers from one set of readings come as pieces made so (<see cref="WeightEvidence.OfAfloat"/>).
/// </summary>
public static class WeightEstimate
{
    private static readonly ImmutableArray<string> Names = ["displacement", "LCG", "TCG", "KG"];

    /// <param name="subject">What it is, for messages.</param>
    /// <param name="ledger">Items with deviations; empty when nothing is itemised. When not empty, its total must carry some deviation in mass and in every direction.</param>
    /// <param name="evidence">Measurements.</param>
    public static WeightEstimateOutcome Combine(string subject, ImmutableArray<LedgerItem> ledger, ImmutableArray<WeightEvidence> evidence)
    {
        var information = new double[4, 4];
        var pull = new double[4];
        var working = ImmutableArray.CreateBuilder<WorkingStep>();
        double[,]? list = null;
        double[] listed = [];
        if (!ledger.IsDefaultOrEmpty)
        {
            var (values, covariance) = LedgerTotal.Calculate(subject, ledger);
            var (prior, missing) = FourUnknowns.Inverse(covariance);
            if (prior is null)
            {
                throw new ArgumentException($"{subject}: the ledger's {Names[missing]} carries no deviation; give at least one item a standard deviation of mass and of place.", nameof(ledger));
            }

            (list, listed) = (prior, values);
            for (var i = 0; i < 4; i++)
            {
                for (var j = 0; j < 4; j++)
                {
                    information[i, j] += prior[i, j];
                    pull[i] += prior[i, j] * values[j];
                }

                working.Add(new WorkingStep(Names[i], FormattableString.Invariant($"ledger of {ledger.Length} items, ± {2 * Math.Sqrt(covariance[i, i]):0.####}, two standard deviations"), values[i], i == 0 ? "kg" : "m", "sum of items, propagation of errors"));
            }
        }

        foreach (var piece in evidence)
        {
            var weight = 1 / (piece.Deviation * piece.Deviation);
            for (var i = 0; i < 4; i++)
            {
                pull[i] += weight * piece.Shares[i] * piece.Value;
                for (var j = 0; j < 4; j++)
                {
                    information[i, j] += weight * piece.Shares[i] * piece.Shares[j];
                }
            }
        }

        var (combined, unknown) = FourUnknowns.Inverse(information);
        return combined is null
            ? new WeightEstimateOutcome(null, $"{subject}: there is no evidence of {Names[unknown]}")
            : new WeightEstimateOutcome(Result(combined, pull, evidence, working, values => BirgeRatio(values, listed, list, evidence)), null);
    }

    private static WeightEstimateResult Result(double[,] covariance, double[] pull, ImmutableArray<WeightEvidence> evidence, ImmutableArray<WorkingStep>.Builder working, Func<double[], double> birgeRatio)
    {
        double[] values = [.. Enumerable.Range(0, 4).Select(i => Enumerable.Range(0, 4).Sum(j => covariance[i, j] * pull[j]))];
        var fits = evidence.Select(piece =>
        {
            var residual = piece.Value - piece.Shares.Zip(values, (share, value) => share * value).Sum();
            var left = (piece.Deviation * piece.Deviation) - FourUnknowns.Spread(covariance, piece.Shares);
            // Evidence that alone decides its number cannot disagree with it.
            var isAlone = !(left > 1e-9 * piece.Deviation * piece.Deviation);
            return new EvidenceFit(piece.Id, isAlone ? 0 : residual / Math.Sqrt(left), isAlone);
        });
        for (var i = 0; i < 4; i++)
        {
            working.Add(new WorkingStep(Names[i], FormattableString.Invariant($"with {evidence.Length} measurements, ± {2 * Math.Sqrt(covariance[i, i]):0.####}, two standard deviations"), values[i], i == 0 ? "kg" : "m", "weighted least squares"));
        }

        return new WeightEstimateResult(values, covariance, birgeRatio(values), [.. fits], working.ToImmutable());
    }

    // The list counts as four numbers, each with what it is sure to.
    private static double BirgeRatio(double[] values, double[] listed, double[,]? list, ImmutableArray<WeightEvidence> evidence)
    {
        var spare = evidence.Length + (list is null ? 0 : 4) - 4;
        var square = evidence.Sum(piece => Math.Pow((piece.Value - piece.Shares.Zip(values, (share, value) => share * value).Sum()) / piece.Deviation, 2));
        if (list is not null)
        {
            double[] off = [.. values.Zip(listed, (value, before) => value - before)];
            square += FourUnknowns.Spread(list, off);
        }

        return spare > 0 ? Math.Sqrt(square / spare) : 1;
    }
}
