using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

public sealed class SelectivityTests
{
    private static SeriesDevice Listed(string curve, double ratingA) => new(OperatingGateTable.Find(curve, ratingA)!, ratingA);

    private static SelectivityInput Pair(SeriesDevice earlier, SeriesDevice nearer, double leastA, double greatestA, double besidesA = 0) => new()
    {
        Subject = "pair",
        Earlier = earlier,
        Nearer = nearer,
        LeastA = leastA,
        GreatestA = greatestA,
        BesidesA = besidesA,
    };

    [Fact]
    public void Between_InverseCurves_CrossWhereTheEquationsDo()
    {
        // Very inverse 100 A against extremely inverse 50 A, multiplier 0.3: 13.5/(I/100 - 1) = 0.3 · 80/((I/50)² - 1). With x = I/50:
        // 13.5 (x² - 1) = 24 (x/2 - 1), which has no root above 2: the nearer is always first. With multiplier 3: 13.5 x² - 120 x + 226.5 = 0, roots 2.728 and 6.161.
        InverseTimeCurve very = InverseTimeCurve.Standard[1], extremely = InverseTimeCurve.Standard[2];
        Assert.True(Selectivity.Between(Pair(new(very, 100), new(extremely with { TimeMultiplierFactor = 0.3 }, 50), 60, 5000)).IsSelective());

        var crossing = Selectivity.Between(Pair(new(very, 100), new(extremely with { TimeMultiplierFactor = 3 }, 50), 60, 5000));
        var root = Math.Sqrt((120 * 120) - (4 * 13.5 * 226.5));
        Assert.Equal([SelectivityStatus.NearerFirst, SelectivityStatus.EarlierFirst, SelectivityStatus.NearerFirst], crossing.Bands.Select(band => band.Status));
        Assert.Equal(50 * (120 - root) / 27, crossing.Bands[0].ToA, 1e-5);
        Assert.Equal(50 * (120 + root) / 27, crossing.Bands[1].ToA, 1e-5);
        Assert.Equal(crossing.Bands[0].ToA, crossing.SelectiveToA);
    }

    [Fact]
    public void Between_StripOverBlade_IsSelectiveUpToTheLastGate()
    {
        // SF30 100 A over blade 20 A, as gated: above 500 A (5 × 100 A) nothing is said of the strip's earliest opening.
        var result = Selectivity.Between(Pair(Listed("strip-sf30", 100), Listed("blade-type-c", 20), 27, 2000));
        Assert.Equal(SelectivityStatus.NotTold, result.Bands[^1].Status);
        Assert.InRange(result.SelectiveToA, 100, 500);
        Assert.False(result.IsSelective());
        Assert.True(result.ProvedToA <= result.SelectiveToA);
    }

    [Fact]
    public void Between_TypedEnergies_DecideWhereTheGatesEnd()
    {
        SeriesDevice strip = Listed("strip-sf30", 100) with { LeastMeltingA2S = 20_000 }, blade = Listed("blade-type-c", 20) with { MostClearingA2S = 2_000 };
        Assert.Equal(SelectivityStatus.NearerFirst, Selectivity.At(Pair(strip, blade, 27, 2000), 1500));
        Assert.Equal(SelectivityStatus.NotTold, Selectivity.At(Pair(strip, blade with { MostClearingA2S = 30_000 }, 27, 2000), 1500));
    }

    [Fact]
    public void Between_PromiseOfTheStandard_ProvesWhatIsDrawnAndHardFaults()
    {
        // gG 100 A over gG 40 A. A promise never makes selective what the gates rule out.
        var input = Pair(Listed("link-gg", 100), Listed("link-gg", 40), 40, 5000);
        Assert.Equal(SelectivityStatus.NotTold, Selectivity.At(input, 3000));
        Assert.Equal(SelectivityStatus.NearerFirst, Selectivity.At(input with { IsPromised = true }, 3000));
        var drawn = Pair(Listed("link-gg", 250), Listed("link-gg", 125), 125, 5000);
        Assert.Equal(SelectivityStatus.NearerFirstAsDrawn, Selectivity.At(drawn, 600));
        Assert.Equal(SelectivityStatus.NearerFirst, Selectivity.At(drawn with { IsPromised = true }, 600));
        var reversed = Pair(Listed("blade-type-c", 10), Listed("strip-sf51", 200), 20, 500) with { IsPromised = true };
        Assert.Equal(SelectivityStatus.EarlierFirst, Selectivity.At(reversed, 60));
    }

    [Fact]
    public void At_SmallerDeviceBefore_OpensFirst() =>
        Assert.Equal(SelectivityStatus.EarlierFirst, Selectivity.At(Pair(Listed("blade-type-c", 10), Listed("strip-sf51", 200), 20, 500), 60));

    [Fact]
    public void At_CurrentThatOpensNeither_SaysSo() =>
        Assert.Equal(SelectivityStatus.NeitherMustOpen, Selectivity.At(Pair(Listed("strip-sf51", 200), Listed("blade-type-c", 20), 5, 100), 22));

    [Fact]
    public void At_MoreBesides_NeverMakesSelective()
    {
        for (var currentA = 30.0; currentA < 600; currentA *= 1.03)
        {
            var (alone, besides) = (At(0, currentA), At(60, currentA));
            Assert.False(besides == SelectivityStatus.NearerFirst && alone is SelectivityStatus.EitherFirst or SelectivityStatus.EarlierFirst);
        }

        static SelectivityStatus At(double besidesA, double currentA) =>
            Selectivity.At(Pair(Listed("strip-sf30", 100), Listed("blade-type-c", 20), 27, 1000, besidesA), currentA);
    }

    [Fact]
    public void At_EveryListedPair_IsAntisymmetric()
    {
        // Property: where one device opens first, the other does not, whichever of the two stands before.
        (string Curve, double RatingA)[] devices =
            [("blade-type-c", 5), ("blade-type-c", 30), ("strip-sf30", 80), ("strip-sf51", 250), ("breaker-b", 16), ("breaker-c", 32), ("breaker-d", 63)];
        var judged = 0;
        foreach (var first in devices)
        {
            foreach (var second in devices)
            {
                for (var currentA = 4.0; currentA < 4000; currentA *= 1.17)
                {
                    var one = Selectivity.At(Pair(Listed(first.Curve, first.RatingA), Listed(second.Curve, second.RatingA), 1, 5000), currentA);
                    var other = Selectivity.At(Pair(Listed(second.Curve, second.RatingA), Listed(first.Curve, first.RatingA), 1, 5000), currentA);
                    judged += one == SelectivityStatus.NearerFirst ? 1 : 0;
                    Assert.False(one == SelectivityStatus.NearerFirst && other == SelectivityStatus.NearerFirst);
                    if (one == SelectivityStatus.EarlierFirst)
                    {
                        Assert.True(other is SelectivityStatus.NearerFirst or SelectivityStatus.NearerFirstAsDrawn);
                    }
                }
            }
        }

        Assert.True(judged > 100);
    }

    [Theory]
    [InlineData(double.NaN, 10, 0)]
    [InlineData(10, double.NaN, 0)]
    [InlineData(10, 5, 0)]
    [InlineData(1, 10, -1)]
    public void Between_ImpossibleCurrents_AreRefused(double leastA, double greatestA, double besidesA) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Selectivity.Between(Pair(Listed("strip-sf30", 100), Listed("blade-type-c", 20), leastA, greatestA, besidesA)));
}
