using Orlop.Electrics.Ways;
using Xunit;

namespace Orlop.Electrics.Tests.Ways;

public sealed class ConduitFillTests
{
    /// <summary>Of round things the fill is the sum of squares of diameters over the square of the inside: 3 × 10 mm in 27 mm is 41.2 %, in 28 mm 38.3 %.</summary>
    [Theory]
    [InlineData(27, 0.412)]
    [InlineData(28, 0.383)]
    public void Fraction_ThreeCables_IsTheSumOfSquares(double innerMm, double expected) =>
        Assert.Equal(expected, ConduitFill.Fraction(ConduitFill.RoundMm2(innerMm), [.. Enumerable.Repeat(ConduitFill.RoundMm2(10), 3)]), 5e-4);

    [Theory]
    [InlineData(27.9, false)]
    [InlineData(28, true)]
    [InlineData(32, true)]
    [InlineData(32.1, false)]
    public void MayJam_ThreeCablesOfAThirdOfTheInside(double innerMm, bool mayJam)
    {
        Assert.Equal(mayJam, ConduitFill.MayJam(innerMm, [10, 10, 10]));
        Assert.False(ConduitFill.MayJam(innerMm, [10, 10]));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    public void DiameterThatCannotBe_IsRefused(double diameterMm) => Assert.Throws<ArgumentOutOfRangeException>(() => ConduitFill.RoundMm2(diameterMm));
}
