using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

public sealed class FreeboardSurveyTests
{
    private static readonly ImmutableArray<Point3> Marks = [new(0.5, 1.8, 2), new(0.5, -1.8, 2), new(5.5, 2, 2), new(5.5, -2, 2), new(11, 0.6, 2.3), new(11, -0.6, 2.3)];

    [Fact]
    public void Calculate_ReadingsOfAFloatingBoat_GiveHerBack()
    {
        var boat = Boats.Working with { CentreOfGravity = new Point3(5.2, -0.05, 1.3) };
        var position = Equilibrium.Solve(boat).Position!;
        var result = FreeboardSurvey.Calculate(Input(Marks.Select(mark => position.Attitude.HeightAboveWaterM(mark))));
        Assert.Equal(position.Attitude.TrimDeg, result.Attitude.TrimDeg, 1e-8);
        Assert.Equal(position.Attitude.HeelDeg, result.Attitude.HeelDeg, 1e-8);
        Assert.Equal(12_000, result.DisplacementKg, 1e-4);
        Assert.Equal(0, result.HogM, 1e-9);
        var centre = result.CentreOfGravityAt(1.3);
        Assert.True((centre - boat.CentreOfGravity).LengthM < 1e-7, $"{centre}");
    }

    [Fact]
    public void Calculate_HoggedBoat_ShowsTheHog()
    {
        // Amidships 30 mm over the ends: the parabola of the model, zero on the mean over the length.
        var level = Attitude.Upright(0.8);
        var result = FreeboardSurvey.Calculate(Input(Marks.Select(mark => level.HeightAboveWaterM(mark) + (0.03 * ((1.0 / 3) - Math.Pow((mark.XM - 6) / 6, 2))))));
        Assert.Equal(0.03, result.HogM, 0.002);
        Assert.True(result.HogDeviationM < 0.006);
    }

    [Fact]
    public void Calculate_ManySurveys_ScatterAsForetold()
    {
        var random = new Random(41);
        var level = new Attitude(0.8, 1, 2);
        var results = Enumerable.Range(0, 400).Select(_ => FreeboardSurvey.Calculate(Input(Marks.Select(mark => level.HeightAboveWaterM(mark) + (0.005 * Normal(random)))))).ToList();
        // Foretold before anything is read: a survey that fits by chance or misfits says its own.
        var foretold = FreeboardSurvey.Calculate(Input(Marks.Select(mark => level.HeightAboveWaterM(mark))));
        AssertScatter(results.Select(result => result.DisplacementKg), foretold.DisplacementDeviationKg);
        AssertScatter(results.Select(result => result.Attitude.TrimDeg), foretold.TrimDeviationDeg);
        AssertScatter(results.Select(result => result.CentreOfBuoyancy.XM), foretold.LcbDeviationM);
        AssertScatter(results.Select(result => result.CentreOfBuoyancy.YM), foretold.TcbDeviationM);
        Assert.All(results, result => Assert.Equal(foretold.DisplacementDeviationKg * Math.Max(1, result.MisfitRatio), result.DisplacementDeviationKg, 0.05 * result.DisplacementDeviationKg));
        Assert.InRange(results.Average(result => result.MisfitRatio), 0.7, 1.1);
    }

    // Each reading moved by itself, twice through the whole reading: Σσ²·(∂x/∂f)(∂x/∂f)ᵀ of displacement, LCG and TCG. No hog is expected, so the readings are all the errors there are.
    [Theory]
    [InlineData(0.8, 1, 2, 1.3)]
    [InlineData(0.9, -2, 5, 2.5)]
    public void CovarianceAt_IsTheSumOverReadingsMovedOneByOne(double draughtM, double trimDeg, double heelDeg, double kgM)
    {
        var at = new Attitude(draughtM, trimDeg, heelDeg);
        double[] freeboards = [.. Marks.Select(mark => at.HeightAboveWaterM(mark))];
        FreeboardResult Read(int moved, double byM) => FreeboardSurvey.Calculate(Input(freeboards.Select((freeboard, i) => freeboard + (i == moved ? byM : 0))) with { HogDeviationM = 1e-7 });
        double[] Weight(int moved, double byM) => Read(moved, byM) is var read && read.CentreOfGravityAt(kgM) is var centre ? [read.DisplacementKg, centre.XM, centre.YM] : [];
        var expected = new double[9];
        foreach (var i in Enumerable.Range(0, freeboards.Length))
        {
            double[] slopes = [.. Weight(i, 1e-4).Zip(Weight(i, -1e-4), (more, less) => (more - less) / 2e-4)];
            foreach (var k in Enumerable.Range(0, 9))
            {
                expected[k] += 0.005 * 0.005 * slopes[k / 3] * slopes[k % 3];
            }
        }

        var found = Read(-1, 0).CovarianceAt(kgM);
        Assert.True(Math.Abs(expected[1]) > 0.1 * Math.Sqrt(expected[0] * expected[4]), "one reading moves displacement and LCG together");
        Assert.All(Enumerable.Range(0, 9), k => Assert.Equal(expected[k], found[k], 1e-3 * Math.Sqrt(expected[4 * (k / 3)] * expected[4 * (k % 3)])));
    }

    // 400 surveys whose readings scatter, each put together with the same weighing of the boat: LCG scatters as the estimate foretells, less than the survey alone tells it; told apart it would not.
    [Fact]
    public void Evidence_OfManySurveysWithAWeighing_ScattersAsForetold()
    {
        // Marks in the after half alone: what they miss of draught and of trim goes together.
        ImmutableArray<Point3> marks = [new(0.5, 1.8, 2), new(0.5, -1.8, 2), new(3, 1.9, 2), new(3, -1.9, 2), new(5.5, 2, 2), new(5.5, -2, 2)];
        var (random, at) = (new Random(17), new Attitude(0.8, 1, 2));
        WeightEstimateResult Weighed(Func<double> error, Func<FreeboardResult, double> weighing)
        {
            var read = FreeboardSurvey.Calculate(Input([]) with { HogDeviationM = 1e-7, Readings = [.. marks.Select(mark => new FreeboardReading($"{mark}", mark, at.HeightAboveWaterM(mark) + error(), 0.005))] });
            return WeightEstimate.Combine("boat", [], [.. FreeboardEvidence.Of("survey", read, 1.3, WeightTotal.Nothing), WeightEvidence.OfDisplacement("weighed", weighing(read), 1), WeightEvidence.OfKg("inclined", 1.3, 0.01)]).Estimate!;
        }

        var foretold = Weighed(() => 0, read => read.DisplacementKg);
        var results = Enumerable.Range(0, 400).Select(_ => Weighed(() => 0.005 * Normal(random), _ => foretold.MassKg)).ToList();
        var alone = ImmutableArray<double>.Empty;
        Weighed(() => 0, read => (alone = read.CovarianceAt(1.3))[0]);
        AssertScatter(results.Select(result => result.Centre.XM), Math.Sqrt(foretold.Covariance[1, 1]));
        Assert.Equal(alone[4] - (alone[3] * alone[3] / (alone[0] + 1)), foretold.Covariance[1, 1], 1e-3 * alone[4]);
        Assert.True(foretold.Covariance[1, 1] < 0.95 * alone[4]);
    }

    [Fact]
    public void Calculate_OneReadingMisread_ShowsInTheMisfit()
    {
        var level = Attitude.Upright(0.8);
        var result = FreeboardSurvey.Calculate(Input(Marks.Select((mark, i) => level.HeightAboveWaterM(mark) + (i == 2 ? 0.1 : 0))));
        Assert.True(result.MisfitRatio > 5);
    }

    // Four marks at the corners of a rectangle can only twist: e at one mark leaves e/4 at each, so χ² = 4·(e/4)²/σ² with one degree of freedom, and χ = e/(2σ). A box of 10 × 4 m
    // displaces 41 t a metre; the mean of four readings of 5 mm is 2.5 mm, hog of 5 mm hides two thirds at the ends: √(2.5² + 3.33²) mm is 171 kg.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.008, 1)]
    [InlineData(0.04, 4)]
    [InlineData(0.09, 9)]
    public void Calculate_FourMarksThatTwist_WidenTheirDeviation(double offM, double widening)
    {
        var result = FreeboardSurvey.Calculate(Corners(offM));
        Assert.Equal(offM / 0.01, result.MisfitRatio, 1e-6);
        Assert.Equal(widening * 171, result.DisplacementDeviationKg, widening);
        Assert.Equal(widening * 0.005, result.HogDeviationM, 1e-6);
        Assert.False(result.IsHogMeasured);
        Assert.Null(result.BeyondReason);
    }

    [Fact]
    public void Calculate_MarkBeyondReason_IsNamed()
    {
        var result = FreeboardSurvey.Calculate(Corners(-2.2));
        Assert.Equal(0.55, Math.Abs(result.BeyondReason!.ResidualM), 0.02);
        Assert.True(FreeboardSurvey.Calculate(Input(Marks.Select((mark, i) => Attitude.Upright(0.8).HeightAboveWaterM(mark) - (i == 4 ? 2 : 0)))).BeyondReason!.ResidualM < -0.5);
        Assert.True(FreeboardSurvey.Calculate(Input(Marks.Select(mark => Attitude.Upright(0.8).HeightAboveWaterM(mark)))).IsHogMeasured);
    }

    [Fact]
    public void Calculate_PoorSurveys_AreRefused()
    {
        var good = Input(Marks.Select(mark => Attitude.Upright(0.8).HeightAboveWaterM(mark)));
        Assert.Contains("3 freeboards", Refused(good with { Readings = good.Readings[..3] }), StringComparison.Ordinal);
        Assert.Contains("do not settle heel", Refused(good with { Readings = [.. good.Readings.Select(reading => reading with { Mark = reading.Mark with { YM = 0, ZM = 0 } })] }), StringComparison.Ordinal);
        Assert.Contains("out of the water", Refused(good with { Readings = [.. good.Readings.Select(reading => reading with { FreeboardM = 4 })] }), StringComparison.Ordinal);
        Assert.Contains("reading.FreeboardM", Refused(good with { Readings = good.Readings.SetItem(0, good.Readings[0] with { FreeboardM = double.NaN }) }), StringComparison.Ordinal);
        Assert.Contains("HogDeviationM", Refused(good with { HogDeviationM = 0 }), StringComparison.Ordinal);
    }

    private static FreeboardInput Corners(double offM) => new()
    {
        Subject = "survey",
        Hull = Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2)),
        Readings = [.. new[] { 0.0, 10 }.SelectMany(x => new[] { -2.0, 2 }.Select(y => new FreeboardReading($"mark {x} {y}", new Point3(x, y, 2), x + y == 12 ? 1.2 + offM : 1.2, 0.005)))],
        WaterKgPerM3 = 1025,
        HogDeviationM = 0.005,
    };

    private static string Refused(FreeboardInput input) => Assert.ThrowsAny<ArgumentException>(() => FreeboardSurvey.Calculate(input)).Message;

    private static FreeboardInput Input(IEnumerable<double> freeboards) => new()
    {
        Subject = "survey",
        Hull = Boats.Hull,
        Readings = [.. freeboards.Select((freeboard, i) => new FreeboardReading($"mark {i + 1}", Marks[i], freeboard, 0.005))],
        WaterKgPerM3 = 1025,
        HogDeviationM = 0.05,
    };

    private static void AssertScatter(IEnumerable<double> values, double deviation)
    {
        var list = values.ToList();
        var mean = list.Average();
        var scatter = Math.Sqrt(list.Sum(value => (value - mean) * (value - mean)) / (list.Count - 1));
        Assert.Equal(1, scatter / deviation, 0.15);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
}
