using Orlop.Hull.Measuring;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>Inclining and rolling tests held to published readings and to records made with known damping.</summary>
public sealed class MeasuringReferenceTests
{
    // Hansen 1985 as listed by Biran, example 7.1 (24 readings). Slopes 208355.652 through the origin (s.e. 1106.5), 208361.133 with intercept -6.250, r² 0.99936: stability.md 2.1.
    // Moments in ft·long ton stand for kg·m here: the fit has no units of its own.
    [Fact]
    public void Inclination_PublishedReadings_HaveTheWorkedSlopes()
    {
        var rows = ReferenceCsv.Load("stability-inclining-regression.csv", expectedRows: 24);
        var result = InclinationTest.Calculate(new InclinationInput
        {
            Subject = "inclining",
            Readings = [.. rows.Select((row, i) => new InclinationReading($"reading {i + 1}", row.Number("moment_ft_longton"), row.Number("tan_heel")))],
            DisplacementKg = 100_000,
            DisplacementDeviationKg = 1000,
        });
        Assert.Equal(208355.652, result.ThroughOrigin.SlopeKgM, 5e-4);
        Assert.Equal(1106.5, result.ThroughOrigin.SlopeDeviationKgM, 0.05);
        Assert.Equal(208361.133, result.WithIntercept.SlopeKgM, 5e-4);
        Assert.Equal(-6.250, result.WithIntercept.InterceptKgM, 5e-4);
        Assert.Equal(0.99936, result.DeterminationCoefficient, 5e-6);
        Assert.Equal(2.08355652, result.ThroughOrigin.GmM, 1e-8);
        // t of 23 degrees of freedom, 97.5 %: 2.0687 (printed in every t table); 1 % of the displacement.
        Assert.Equal(Math.Sqrt(Math.Pow(2.0687 * 0.011065, 2) + Math.Pow(1.959964 * 0.0208355652, 2)), result.ThroughOrigin.GmHalfBandM, 2e-5);
        Assert.Empty(result.Outliers);
        Assert.Contains(result.Cautions, caution => caution.Contains("largest heel 1.1", StringComparison.Ordinal));
    }

    // Case I2: 2600 tons, 3 tons moved 40 ft, plumb line 29 ft 6 in, 2 in: GM 8.17 ft. The same shift read to both sides; tons and feet stand for kg and m.
    [Fact]
    public void Inclination_SeamanshipExample_HasThePublishedGm()
    {
        var row = ReferenceCsv.Load("stability-worked-examples.csv", expectedRows: 84).Single(row => row.Text("id") == "I2");
        var tangent = 2 / (29.5 * 12);
        var result = InclinationTest.Calculate(new InclinationInput
        {
            Subject = "I2",
            Readings = [new("a", 120, tangent), new("b", -120, -tangent), new("c", 120, tangent), new("d", -120, -tangent)],
            DisplacementKg = 2600,
            DisplacementDeviationKg = 0,
        });
        row.Agrees(row.Number("published"), result.ThroughOrigin.GmM, 5e-3);
        row.Agrees(row.Number("computed"), result.WithIntercept.GmM, 5e-6);
    }

    // stability-roll-decay.csv: RK4 of the damped roll, T0 4 s, ζ 0.05, β 0 or 0.30 per rad. stability.md 6: δ 0.157276351, ζ 0.0500000; case 2 a 0.157150 and b 0.395625 per rad by
    // the same least squares (theory: π·0.05 = 0.157080 and 4/3·0.3 = 0.4).
    [Fact]
    public void RollDecay_LinearRecord_HasItsDamping()
    {
        var result = Decay("linear");
        Assert.Equal(0.157276351, result.LogDecrementCoefficient, 2e-8);
        Assert.Equal(0.05, result.DampingRatio, 1e-7);
        Assert.Equal(4, result.NaturalPeriodS, 1e-5);
        Assert.Equal(0, result.QuadraticLossCoefficient, 1e-6);
    }

    [Fact]
    public void RollDecay_QuadraticRecord_HasBothCoefficients()
    {
        var result = Decay("linear_plus_quadratic");
        Assert.Equal(0.157150, result.LinearLossCoefficient, 5e-6);
        Assert.Equal(0.395625, result.QuadraticLossCoefficient, 5e-5);
    }

    // A.749(18) annex 3, 3.4: GM = (f·B/T)² with the f of stability-rolling-period-f.csv. B 4 m, GM 0.9 m, f 0.88: 3.71 s (stability.md 6).
    [Fact]
    public void RollPeriod_PublishedCoefficients_GoThereAndBack()
    {
        foreach (var row in ReferenceCsv.Load("stability-rolling-period-f.csv", expectedRows: 7))
        {
            var period = RollPeriod.FromBeamS(row.Number("f_metric"), 4, 0.9)!.Value;
            var gm = RollPeriod.Gm(row.Number("f_metric"), 4, period);
            row.Agrees(0.9, gm.GmM, 1e-12);
            Assert.True(gm.LeastGmM < 0.9 && gm.MostGmM > 0.9);
        }

        Assert.Equal(3.71, RollPeriod.FromBeamS(0.88, 4, 0.9)!.Value, 5e-3);
    }

    // stability.md 6: B 4 m, GM 0.9 m, k/B 0.35, 0.38, 0.40: 2.96, 3.21, 3.38 s.
    [Theory]
    [InlineData(0.35, 2.96)]
    [InlineData(0.38, 3.21)]
    [InlineData(0.40, 3.38)]
    public void RollPeriod_Gyration_HasTheWorkedPeriods(double share, double periodS) => Assert.Equal(periodS, RollPeriod.FromGyrationS(share * 4, 0.9)!.Value, 5e-3);

    // Case R1: GM 1 ft, beam 50 ft, 0.44·B/√GM: 22 s.
    [Fact]
    public void RollPeriod_PublishedExample_IsTwentyTwoSeconds()
    {
        var row = ReferenceCsv.Load("stability-worked-examples.csv", expectedRows: 84).Single(row => row.Text("id") == "R1");
        row.Agrees(row.Number("published"), RollPeriod.FromBeamS(0.44, 50, 1)!.Value, 1e-12);
    }

    private static RollDecayResult Decay(string name) => RollDecay.Calculate(name,
    [
        .. ReferenceCsv.Load("stability-roll-decay.csv", expectedRows: 24).Where(row => row.Text("case") == name).Select(row => new RollPeak(row.Number("time_s"), row.Number("peak_deg"))),
    ]);
}
