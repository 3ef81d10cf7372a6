using System.Collections.Immutable;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

public sealed class StabilitySamplingTests
{
    private static readonly ImmutableArray<Opening> Openings = [new("hatch", new Point3(3, -0.9, 2.1)), new("vent", new Point3(6, 1.2, 2.6))];

    // 3 % of mass, 60 mm, 10 mm and 40 mm; mass and KG go together.
    private static readonly StabilitySamplingInput Input = new()
    {
        Boat = Boats.Working,
        Weight = new WeightSpread(12_000, new Point3(5.2, 0.01, 1.3), Covariance(360, 0.06, 0.01, 0.04, 0.5)),
        Openings = Openings,
    };

    [Fact]
    public void Draws_HaveTheCovariance()
    {
        var draws = WeightDraw.Many(Input.Weight, 40_000, 3);
        double[][] off = [.. draws.Select(draw => new[] { draw.Mass - 12_000, draw.Lcg - 5.2, draw.Tcg - 0.01, draw.Kg - 1.3 })];
        for (var i = 0; i < 4; i++)
        {
            for (var j = 0; j < 4; j++)
            {
                var scale = Math.Sqrt(Input.Weight.Covariance[5 * i] * Input.Weight.Covariance[5 * j]);
                // Four deviations of a sample covariance of normal numbers: √((1 + r²)/n).
                Assert.Equal(Input.Weight.Covariance[(4 * i) + j] / scale, off.Average(one => one[i] * one[j]) / scale, 4 * Math.Sqrt(2.0 / 40_000));
            }
        }
    }

    // 1e-4 m is what the engine's page states; an area is off by that times the heel at most.
    // The same limits read off the same draws with the boat solved anew, by the criteria's own reading of the curve.
    [Fact]
    public void Surface_Draws_AgreeWithDirectSolves()
    {
        var draws = WeightDraw.Many(Input.Weight, 30, 5);
        foreach (var side in new[] { 1, -1 })
        {
            var surface = LeverSurface.Lay(Input, side).Surface!;
            var row = new double[surface.RowLength];
            foreach (var draw in draws)
            {
                var gm = surface.Read(draw, row, new double[surface.RowLength])!.Value;
                var read = new LeverRow(row, surface.HeelCount, gm);
                var curve = LeverSurface.Solve(Input, side, draw);
                Assert.InRange(curve.Points.Select((point, heel) => Math.Abs((side * point.GzM) - row[heel])).Max(), 0, 1e-4);
                var direct = GeneralCriteria.Check(curve).ToDictionary(result => result.Id, result => result.Value!.Value);
                Assert.Equal(direct["area-to-30"], read.Of(SampledQuantity.AreaTo30), 1e-4 * Math.PI / 6);
                Assert.Equal(direct["area-to-40"], read.Of(SampledQuantity.AreaTo40), 1e-4 * Math.PI / 4.5);
                Assert.Equal(direct["area-30-to-40"], read.Of(SampledQuantity.Area30To40), 1e-4 * Math.PI / 18);
                Assert.Equal(direct["lever-at-30"], read.Of(SampledQuantity.LeverFrom30), 1e-4);
                Assert.Equal(direct["initial-gm"], gm, 2e-4);
                // Flat at the top: a tenth of a millimetre of lever is some tenths of a degree of heel.
                Assert.Equal(direct["heel-of-greatest-lever"], read.Of(SampledQuantity.HeelOfGreatestLever), 0.3);
            }
        }
    }

    // Linear propagation of GM = KM(Δ, LCG) - KG and of the area to 30°, derivatives by solving the boat again.
    [Fact]
    public void Calculate_SmallSpread_AgreesWithLinearPropagation()
    {
        var small = Input with { Weight = new WeightSpread(12_000, new Point3(5.2, 0, 1.3), Covariance(60, 0.01, 0, 0.01, 0.3)), Openings = [] };
        var shares = Sampled(small).Shares.ToDictionary(share => share.Id);
        Agree("initial-gm", curve => curve.InitialGmM!.Value);
        Agree("area-to-30", curve => curve.AreaMRad(0, 30)!.Value);

        void Agree(string id, Func<RightingCurve, double> quantity)
        {
            var middle = new WeightDraw(12_000, 5.2, 0, 1.3);
            double[] slopes =
            [
                Slope(middle with { Mass = 12_060 }, middle with { Mass = 11_940 }, 120), Slope(middle with { Lcg = 5.21 }, middle with { Lcg = 5.19 }, 0.02), 0,
                Slope(middle with { Kg = 1.31 }, middle with { Kg = 1.29 }, 0.02),
            ];
            var variance = 0.0;
            for (var i = 0; i < 16; i++)
            {
                variance += slopes[i / 4] * slopes[i % 4] * small.Weight.Covariance[i];
            }

            Assert.Equal(Math.Sqrt(variance), shares[id].Deviation!.Value, 0.03 * Math.Sqrt(variance));
            Assert.Equal(quantity(LeverSurface.Solve(small, 1, middle)), shares[id].Mean!.Value, 0.05 * Math.Sqrt(variance));

            double Slope(WeightDraw above, WeightDraw below, double step) => (quantity(LeverSurface.Solve(small, 1, above)) - quantity(LeverSurface.Solve(small, 1, below))) / step;
        }
    }

    // GM of a wall-sided box depends on KG alone when only KG is uncertain: the share is the normal distribution's, P(KG <= KM - 0.15).
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.841344746)]
    [InlineData(-1.5, 0.066807201)]
    public void Calculate_OnlyKg_GivesTheNormalShare(double deviations, double share)
    {
        var box = Boats.Barge(4, 2, 0.8, 1.2);
        var input = new StabilitySamplingInput
        {
            Boat = box,
            Weight = new WeightSpread(box.MassKg, new Point3(5, 0, 1.2), Covariance(0, 0, 0, 0.05, 0)),
            Criteria = [new SampledCriterion("gm", SampledQuantity.InitialGm, 0.8666666667 - (deviations * 0.05))],
        };
        var result = Sampled(input);
        Assert.Equal(share, result.Shares[0].MeetsFraction, 4 * Math.Sqrt(share * (1 - share) / 10_000));
        Assert.Equal(0.05, result.Shares[0].Deviation!.Value, 0.0015);
        Assert.Equal(0, result.Shares[0].UnknownFraction);
        Assert.InRange(result.LargestErrorM!.Value, 0, 1e-9);
    }

    [Fact]
    public void Calculate_SameSeed_IsTheSame_OtherSeedIsNear()
    {
        var (first, again, other) = (Sampled(Input), Sampled(Input), Sampled(Input with { Seed = 9 }));
        Assert.Equal(first.Shares, again.Shares);
        Assert.NotEqual(first.Shares, other.Shares);
        Assert.All(first.Shares.Zip(other.Shares), pair => Assert.Equal(pair.First.MeetsFraction, pair.Second.MeetsFraction, 0.03));
        Assert.InRange(first.LargestErrorM!.Value, 1e-9, 1e-4);
        Assert.True(first.MeetsAllFraction <= first.Shares.Min(share => share.MeetsFraction));
    }

    [Fact]
    public void Calculate_NoSpread_MeetsAllOrNothing()
    {
        var result = Sampled(Input with { Weight = Input.Weight with { Covariance = [.. new double[16]] }, DrawCount = 100 });
        var direct = GeneralCriteria.Check(LeverSurface.Solve(Input, -1, new WeightDraw(12_000, 5.2, 0.01, 1.3)));
        Assert.All(result.Shares.Zip(direct), pair => Assert.Equal((pair.Second.Id, pair.Second.Verdict == CriterionVerdict.Meets ? 1.0 : 0), (pair.First.Id, pair.First.MeetsFraction)));
    }

    [Fact]
    public void Calculate_TankLiquids_CountAsTheyDoInTheCurve()
    {
        var tank = new Tank { Id = "tank", Shape = Solids.Box(new Point3(4, -1, 0.5), new Point3(6, 1, 1)), FillFraction = 0.5, LiquidKgPerM3 = 1000 };
        var input = Input with { Boat = Boats.Working with { Tanks = [tank] } };
        Assert.InRange(Sampled(input).LargestErrorM!.Value, 0, 3e-4);
    }

    [Fact]
    public void Calculate_TooHeavyAtTheEdge_SaysSoAndClaimsNothing()
    {
        var result = Sampled(Input with { Weight = Input.Weight with { Covariance = Covariance(30_000, 0.06, 0.01, 0.04, 0) } });
        Assert.Empty(result.Shares);
        Assert.Null(result.MeetsAllFraction);
        Assert.Contains("reaches down to nothing", result.Message, StringComparison.Ordinal);
        Assert.Contains("pushes aside only", Sampled(Input with { Weight = Input.Weight with { MassKg = 60_000, Covariance = Covariance(9_000, 0, 0, 0, 0) } }).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, -1)]
    [InlineData(1, 1e6)]
    [InlineData(0, double.NaN)]
    public void Calculate_NotACovariance_IsRefused(int at, double value) =>
        Assert.Contains("covariance", Assert.Throws<ArgumentException>(() => Sampled(Input with { Weight = Input.Weight with { Covariance = Input.Weight.Covariance.SetItem(at, value) } })).Message, StringComparison.Ordinal);

    // Correlation between mass and KG.
    private static ImmutableArray<double> Covariance(double massKg, double lcgM, double tcgM, double kgM, double correlation) =>
    [
        massKg * massKg, 0, 0, correlation * massKg * kgM,
        0, lcgM * lcgM, 0, 0,
        0, 0, tcgM * tcgM, 0,
        correlation * massKg * kgM, 0, 0, kgM * kgM,
    ];

    private static StabilitySamplingResult Sampled(StabilitySamplingInput input) => StabilitySampling.Calculate(input, token: TestContext.Current.CancellationToken);
}
