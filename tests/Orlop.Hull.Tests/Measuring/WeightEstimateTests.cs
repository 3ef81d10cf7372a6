using System.Collections.Immutable;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

public sealed class WeightEstimateTests
{
    private static readonly ImmutableArray<LedgerItem> Ledger =
    [
        new("hull", 8000, 400, new Point3(5.2, 0, 1.0), new Point3(0.1, 0.02, 0.1)),
        new("engine", 900, 20, new Point3(3, 0, 0.7), new Point3(0.05, 0.02, 0.05)),
        new("winch", 120, 2, new Point3(9.5, -0.5, 2), new Point3(0.01, 0.01, 0.01)),
    ];

    // Two independent measurements of one thing: weighted mean and 1/σ² = 1/σ1² + 1/σ2² (any text on least squares).
    [Fact]
    public void Combine_TwoMeasurementsOfMass_IsTheirWeightedMean()
    {
        var result = Estimate([], WeightEvidence.OfDisplacement("weighed", 12_000, 100), WeightEvidence.OfDisplacement("freeboards", 12_500, 200),
            WeightEvidence.OfLcg("trim", 5, 0.05), WeightEvidence.OfTcg("list", 0, 0.01), WeightEvidence.OfKg("inclined", 1.2, 0.05));
        Assert.Equal(12_100, result.MassKg, 1e-6);
        Assert.Equal(1 / Math.Sqrt((1 / 1e4) + (1 / 4e4)), result.MassDeviationKg, 1e-6);
        Assert.Equal(1.2, result.Centre.ZM, 1e-12);
        Assert.Equal(0.05, result.KgDeviationM, 1e-12);
        // The residuals over their own deviations are equal and opposite: 500/√(100² + 200²).
        Assert.Equal(-500 / Math.Sqrt(5e4), result.Fits[0].StandardisedRatio, 1e-6);
        Assert.Equal(500 / Math.Sqrt(5e4), result.Fits[1].StandardisedRatio, 1e-6);
    }

    [Fact]
    public void Combine_LedgerAlone_PropagatesItsErrors()
    {
        var result = Estimate(Ledger);
        Assert.Equal(9020, result.MassKg, 1e-6);
        Assert.Equal(Math.Sqrt((400 * 400) + (20 * 20) + 4), result.MassDeviationKg, 1e-6);
        // By sampling: 200 000 ledgers with normal errors.
        var random = new Random(31);
        double sum = 0, squares = 0;
        const int Draws = 200_000;
        for (var draw = 0; draw < Draws; draw++)
        {
            double mass = 0, moment = 0;
            foreach (var item in Ledger)
            {
                var drawn = item.MassKg + (item.MassDeviationKg * Normal(random));
                mass += drawn;
                moment += drawn * (item.Place.ZM + (item.PlaceDeviation.ZM * Normal(random)));
            }

            sum += moment / mass;
            squares += moment / mass * moment / mass;
        }

        var sampled = Math.Sqrt((squares / Draws) - (sum / Draws * (sum / Draws)));
        Assert.Equal(sampled, result.KgDeviationM, 0.01 * sampled);
    }

    [Fact]
    public void Combine_InclinedAfterTheLedger_NarrowsKgAndPullsMass()
    {
        var before = Estimate(Ledger);
        var after = Estimate(Ledger, WeightEvidence.OfGm("inclined", 0.9, 0.02, kmM: 2.0, atMassKg: 9000, kmPerKg: -2e-5));
        Assert.True(after.KgDeviationM < 0.4 * before.KgDeviationM);
        Assert.True(after.MassDeviationKg <= before.MassDeviationKg);
        // Kalman's update written out: gain = C·h/(h·C·h + σ²).
        double[] h = [-2e-5, 0, 0, -1];
        var expected = 0.9 - 2.0 - (2e-5 * 9000) - ((h[0] * before.MassKg) + (h[3] * before.Centre.ZM));
        var spread = Math.Pow(before.Deviation(h[0], 0, 0, h[3]), 2) + 4e-4;
        var gainKg = (before.Covariance[3, 0] * h[0]) + (before.Covariance[3, 3] * h[3]);
        Assert.Equal(before.Centre.ZM + (gainKg * expected / spread), after.Centre.ZM, 1e-9);
        Assert.Equal(before.Covariance[3, 3] - (gainKg * gainKg / spread), after.Covariance[3, 3], 1e-12);
    }

    [Fact]
    public void Combine_OrderOfEvidence_ChangesNothingThatMatters()
    {
        WeightEvidence[] evidence = [WeightEvidence.OfKg("a", 1.1, 0.1), WeightEvidence.OfDisplacement("b", 9500, 150), WeightEvidence.OfLcg("c", 4.9, 0.05)];
        var (one, other) = (Estimate(Ledger, evidence), Estimate(Ledger, [.. evidence.Reverse()]));
        Assert.Equal(one.MassKg, other.MassKg, 1e-7);
        Assert.Equal(one.Centre.ZM, other.Centre.ZM, 1e-11);
    }

    [Fact]
    public void Combine_NothingOnKg_SaysSo()
    {
        var outcome = WeightEstimate.Combine("boat", [],
            [WeightEvidence.OfDisplacement("weighed", 12_000, 100), WeightEvidence.OfLcg("trim", 5, 0.05), WeightEvidence.OfTcg("list", 0, 0.01)]);
        Assert.Null(outcome.Estimate);
        Assert.Equal("boat: there is no evidence of KG", outcome.Missing);
    }

    [Fact]
    public void Combine_WrongPiece_StandsOut()
    {
        var result = Estimate(Ledger, WeightEvidence.OfKg("a", 1.05, 0.03), WeightEvidence.OfKg("b", 1.06, 0.03), WeightEvidence.OfKg("slip of the pen", 1.50, 0.03));
        Assert.Equal("slip of the pen", result.Fits.MaxBy(fit => Math.Abs(fit.StandardisedRatio))!.Id);
        Assert.True(result.Fits[2].StandardisedRatio > 3);
    }

    [Fact]
    public void Combine_ImpossibleEvidence_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightEvidence.OfDisplacement("x", -1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightEvidence.OfKg("x", double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightEvidence.OfKg("x", 1, 0));
        Assert.Contains("TCG carries no deviation",
            Assert.Throws<ArgumentException>(() => WeightEstimate.Combine("boat", [new("hull", 10, 1, default, new Point3(1, 0, 1))], [])).Message, StringComparison.Ordinal);
    }

    private static WeightEstimateResult Estimate(ImmutableArray<LedgerItem> ledger, params WeightEvidence[] evidence) =>
        WeightEstimate.Combine("boat", ledger, [.. evidence]).Estimate!;

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
}
