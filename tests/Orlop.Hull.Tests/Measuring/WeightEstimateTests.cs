using System.Collections.Immutable;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

public sealed class WeightEstimateTests
{
    // Displacement, LCG and TCG of one survey.
    private static readonly ImmutableArray<double> Together = [10_000, -3, 0.8, -3, 0.0016, -0.0001, 0.8, -0.0001, 0.0004];

    // Bayes' rule for normal numbers: a second measurement of displacement shifts LCG by cov/(var + var₂) of what it differs, and takes cov²/(var + var₂) off its variance; TCG alike.
    [Fact]
    public void Combine_NumbersOfOneSurvey_MoveTogether()
    {
        var result = Estimate([], [.. WeightEvidence.OfAfloat("survey", 12_000, 5, 0.1, Together), WeightEvidence.OfDisplacement("weighed", 12_150, 50), WeightEvidence.OfKg("inclined", 1.2, 0.05)]);
        var shift = 150.0 / (10_000 + 2500);
        Assert.Equal(12_000 + (10_000 * shift), result.MassKg, 1e-6);
        Assert.Equal(5 - (3 * shift), result.Centre.XM, 1e-9);
        Assert.Equal(0.1 + (0.8 * shift), result.Centre.YM, 1e-9);
        Assert.Equal(0.0016 - (9 / 12_500.0), result.Covariance[1, 1], 1e-12);
        Assert.Equal(-0.0001 + (3 * 0.8 / 12_500), result.Covariance[1, 2], 1e-12);
    }

    [Fact]
    public void Combine_OneSurveyAlone_GivesItsOwnCovarianceBack()
    {
        var result = Estimate([], [.. WeightEvidence.OfAfloat("survey", 12_000, 5, 0.1, Together), WeightEvidence.OfKg("inclined", 1.2, 0.05)]);
        Assert.All(Enumerable.Range(0, 9), k => Assert.Equal(Together[k], result.Covariance[k / 3, k % 3], 1e-9 * Math.Sqrt(Together[4 * (k / 3)] * Together[4 * (k % 3)])));
        Assert.Equal((12_000, 5, 0.1), (Math.Round(result.MassKg, 6), Math.Round(result.Centre.XM, 9), Math.Round(result.Centre.YM, 9)));
    }

    [Fact]
    public void OfAfloat_WithoutCovarianceOfThree_IsRefused() => Assert.Throws<ArgumentException>(() => WeightEvidence.OfAfloat("survey", 12_000, 5, 0, [1, 2]));

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

    // Two weighings 100 kg apart, each to 10 kg: 50 kg from their mean, χ² = 2·5², one number more than the four sought. Without one to spare nothing is too narrow.
    [Fact]
    public void BirgeRatio_OfTwoWeighings_IsRootOfChiSquareOverWhatIsSpare()
    {
        WeightEvidence[] centre = [WeightEvidence.OfLcg("trim", 5, 0.05), WeightEvidence.OfTcg("list", 0, 0.01), WeightEvidence.OfKg("inclined", 1.2, 0.05)];
        var two = Estimate([], [WeightEvidence.OfDisplacement("one", 1000, 10), WeightEvidence.OfDisplacement("other", 1100, 10), .. centre]);
        var one = Estimate([], [WeightEvidence.OfDisplacement("one", 1000, 10), .. centre]);

        Assert.Equal(Math.Sqrt(50), two.BirgeRatio, 1e-9);
        Assert.Equal(1, one.BirgeRatio);
        Assert.Equal([false, false, true, true, true], two.Fits.Select(fit => fit.IsAlone));
        Assert.Equal(Math.Sqrt(50) * two.KgDeviationM, WeightTotal.Of(two).Widened(two.BirgeRatio).KgDeviationM, 1e-9);
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

    // GM = KM - KG with KM = 2.0 - 2e-5·(Δ - 9000), nothing come since. Kalman's update written out: gain = C·h/(h·C·h + σ²).
    [Fact]
    public void Combine_GmAfterTheLedger_NarrowsKgAndPullsMass()
    {
        var before = Estimate(Ledger);
        var after = Estimate(Ledger, WeightEvidence.OfGm("rolled", 0.9, 0.02, Then(before, kmM: 2.0 - (2e-5 * (before.MassKg - 9000)), kmPerKg: -2e-5)));
        Assert.True(after.KgDeviationM < 0.4 * before.KgDeviationM);
        Assert.True(after.MassDeviationKg <= before.MassDeviationKg);
        double[] h = [-2e-5, 0, 0, -1];
        var expected = 0.9 - 2.0 - (2e-5 * 9000) - ((h[0] * before.MassKg) + (h[3] * before.Centre.ZM));
        var spread = Math.Pow(before.Deviation(h[0], 0, 0, h[3]), 2) + 4e-4;
        var gainKg = (before.Covariance[3, 0] * h[0]) + (before.Covariance[3, 3] * h[3]);
        Assert.Equal(before.Centre.ZM + (gainKg * expected / spread), after.Centre.ZM, 1e-9);
        Assert.Equal(before.Covariance[3, 3] - (gainKg * gainKg / spread), after.Covariance[3, 3], 1e-12);
    }

    // Δ·GM = S is measured and Δ weighed: KG = KM(Δ) - S/Δ, so its variance is (σS/Δ)² + ((KM' + S/Δ²)·σΔ)², and Cov(Δ, KG) = (KM' + S/Δ²)·σΔ² (propagation of errors).
    // With KM' = -S/Δ² the displacement leaves KG alone, however badly it is known.
    [Theory]
    [InlineData(-1.5e-5)]
    [InlineData(-1e-5)]
    [InlineData(0)]
    public void Combine_RightingMoment_TiesKgToDisplacement(double kmPerKg)
    {
        const double mass = 9000, km = 2, gm = 0.09, massDeviation = 300, deviation = 90;
        WeightEvidence[] rest = [WeightEvidence.OfDisplacement("weighed", mass, massDeviation), WeightEvidence.OfLcg("trim", 5, 0.05), WeightEvidence.OfTcg("list", 0, 0.01)];
        var about = Estimate([], [.. rest, WeightEvidence.OfKg("first", km - gm, 1)]);
        var result = Estimate([], [.. rest, WeightEvidence.OfRightingMoment("inclined", gm * mass, deviation, Then(about, km, kmPerKg))]);

        var perKg = kmPerKg + (gm / mass);
        Assert.Equal(km - gm, result.Centre.ZM, 1e-9);
        Assert.Equal(Math.Sqrt(Math.Pow(deviation / mass, 2) + Math.Pow(perKg * massDeviation, 2)), result.KgDeviationM, 1e-9);
        Assert.Equal(perKg * massDeviation * massDeviation, result.Covariance[0, 3], 1e-6);
        // Δ·GM itself is known as it was measured: GM at the displacement it is asked for, Δ·KM' - KG's share.
        Assert.Equal(deviation, result.Deviation(km + (mass * kmPerKg) - (km - gm), 0, 0, -mass), 1e-6);
    }

    // The same by sampling: weigh and incline 40 000 times with errors, reckon KG each time by KG = KM(Δ) - S/Δ, and spread GM at a loading of 500 kg more at a height of 0.4 m.
    [Fact]
    public void Combine_RightingMoment_CarriedToALoading_AgreesWithSampling()
    {
        const double mass = 6500, km = 1.9, kmPerKg = -6e-5, moment = 1505, momentDeviation = 15, massDeviation = 33;
        var chest = new LedgerItem("chest", 500, 40, new Point3(5, 0, 0.4), default);
        WeightEvidence[] rest = [WeightEvidence.OfDisplacement("afloat", mass, massDeviation), WeightEvidence.OfLcg("trim", 5, 0.05), WeightEvidence.OfTcg("list", 0, 0.01)];
        var about = Estimate([], [.. rest, WeightEvidence.OfKg("first", km - (moment / mass), 1)]);
        var loaded = WeightTotal.Of(Estimate([], [.. rest, WeightEvidence.OfRightingMoment("inclined", moment, momentDeviation, Then(about, km, kmPerKg))])).With([new WeightChange(null, chest)]);

        double Km(double displacement) => km + (kmPerKg * (displacement - mass));
        var random = new Random(47);
        double sum = 0, squares = 0;
        const int Draws = 40_000;
        for (var draw = 0; draw < Draws; draw++)
        {
            var displacement = mass + (massDeviation * Normal(random));
            var kg = Km(displacement) - ((moment + (momentDeviation * Normal(random))) / displacement);
            var came = chest.MassKg + (chest.MassDeviationKg * Normal(random));
            var gm = Km(displacement + came) - (((displacement * kg) + (came * chest.Place.ZM)) / (displacement + came));
            sum += gm;
            squares += gm * gm;
        }

        var sampled = Math.Sqrt((squares / Draws) - (sum / Draws * (sum / Draws)));
        Assert.Equal(sampled, loaded.Deviation(kmPerKg, 0, 0, -1), 0.02 * sampled);
    }

    // What came since the test brings its errors: S = Δt·GM then, Δt = Δ - m. With KM' = 0 and m = 400 ± 50 kg at 0.5 m, σS of m alone is (KM - z)·σm (closed form), here nothing else being unsure.
    [Fact]
    public void Combine_RightingMoment_OfALighterBoat_TakesWhatCameSince()
    {
        const double mass = 9000, km = 2, kg = 1.4, came = 400, cameDeviation = 50, height = 0.5;
        WeightEvidence[] rest = [WeightEvidence.OfDisplacement("weighed", mass + came, 1e-3), WeightEvidence.OfLcg("trim", 5, 1e-6), WeightEvidence.OfTcg("list", 0, 1e-6)];
        var about = Estimate([], WeightEvidence.OfDisplacement("weighed", mass, 1e-3), WeightEvidence.OfLcg("trim", 5, 1e-6), WeightEvidence.OfTcg("list", 0, 1e-6), WeightEvidence.OfKg("first", kg, 1));
        var then = Then(about, km, 0) with { Came = WeightTotal.Nothing.With([new WeightChange(null, new LedgerItem("chest", came, cameDeviation, new Point3(5, 0, height), default))]) };
        var result = Estimate([], [.. rest, WeightEvidence.OfRightingMoment("inclined", mass * (km - kg), 1e-3, then)]);

        Assert.Equal(((mass * kg) + (came * height)) / (mass + came), result.Centre.ZM, 1e-7);
        Assert.Equal((km - height) * cameDeviation / (mass + came), result.KgDeviationM, 1e-6);
    }

    // One measurement put in at a time is all of them at once (Gauss-Markov).
    [Fact]
    public void Knowing_OneAfterAnother_IsTheEstimateOfAll()
    {
        var about = Estimate(Ledger);
        WeightEvidence[] evidence = [WeightEvidence.OfDisplacement("afloat", 9300, 40), WeightEvidence.OfLcg("trim", 5.1, 0.02), WeightEvidence.OfRightingMoment("inclined", 8000, 100, Then(about, 2, -3e-5))];
        var whole = WeightTotal.Of(Estimate(Ledger, evidence));
        var steps = evidence.Aggregate(WeightTotal.Of(about), (total, piece) => total.Knowing(piece));

        Assert.Equal(whole.MassKg, steps.MassKg, 1e-6);
        Assert.Equal(0, (whole.Centre - steps.Centre).LengthM, 1e-9);
        Assert.All(whole.Spread().Covariance.Zip(steps.Spread().Covariance), pair => Assert.Equal(pair.First, pair.Second, 1e-7));
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

    private static MetacentreThen Then(WeightEstimateResult about, double kmM, double kmPerKg) =>
        new() { Boat = WeightTotal.Of(about), Came = WeightTotal.Nothing, KmM = kmM, KmPerKg = kmPerKg, KmPerLcgRatio = 0 };

    private static WeightEstimateResult Estimate(ImmutableArray<LedgerItem> ledger, params WeightEvidence[] evidence) =>
        WeightEstimate.Combine("boat", ledger, [.. evidence]).Estimate!;

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
}
