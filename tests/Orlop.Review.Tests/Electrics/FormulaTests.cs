using System.Globalization;
using Orlop.Review.Electrics;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>What a formula prints gives, worked out by hand, the result as it is shown.</summary>
public sealed class FormulaTests
{
    // 24.075 is a little less in binary: it prints as 24.07, and 120 ÷ 24.07 would read 499 %.
    [Fact]
    public void Share_OperandThatPrintsOnTheOtherSideOfItsHalf_TakesMoreDigits() => Assert.Equal("120 ÷ 24.075", Formula.Share(120, 24.075));

    // 99.962 is shown as 100, but 100.26 as 100.3 %: what is worked out by hand may be past the power of ten.
    [Theory]
    [InlineData(115.2955, 11.53)]
    [InlineData(9.9996, 1)]
    public void Share_ResultJustBelowAPowerOfTen_GivesWhatIsShown(double part, double whole)
    {
        double[] printed = [.. Formula.Share(part, whole).Split(" ÷ ").Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        Assert.InRange(printed[0] / printed[1] * 100, 999.5, 1000.5);
    }

    [Theory]
    [InlineData(81_500, 0.1108, "81500 × 0.1108")]
    [InlineData(0.00003, 2, "0.00003 × 2")]
    [InlineData(2e-9, 2, "2E-09 × 2")]
    public void Of_NumberThatAHandReads_StandsWithoutAPowerOfTen(double one, double other, string text) => Assert.Equal(text, Formula.Of("{0} × {1}", v => v[0] * v[1], one, other));

    // 11 349.83 A is shown as 11.3 kA; 26.186 ÷ 0.0023071 would be 11 350.18 A, and 11.4 kA.
    [Fact]
    public void Of_ResultShownInThousands_KeepsItsThirdDigit()
    {
        double[] printed = [.. Formula.Of("{0} ÷ {1}", v => v[0] / v[1], 26.185692834840566, 0.0023071435435932717).Split(" ÷ ").Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        Assert.InRange(printed[0] / printed[1], 11_349.5, 11_350);
    }

    [Fact]
    public void Share_OperandsOfFiveDigitsThatEndInFive_GiveWhatIsShown()
    {
        Random random = new(11);
        for (int k = 0; k < 20_000; k++)
        {
            double part = ((random.Next(1000, 10_000) * 10) + 5) / 1000.0, whole = ((random.Next(1000, 10_000) * 10) + 5) / 1000.0;
            double[] printed = [.. Formula.Share(part, whole).Split(" ÷ ").Select(text => double.Parse(text, CultureInfo.InvariantCulture))];

            // Shown as a percentage with three digits, or all of the whole ones.
            double percent = part / whole * 100;
            double unit = Math.Pow(10, Math.Min(0, Math.Floor(Math.Log10(percent)) - 2));
            Assert.True(Math.Abs((printed[0] / printed[1] * 100) - (Math.Round(percent / unit, MidpointRounding.AwayFromZero) * unit)) <= 0.5000001 * unit, $"{part} ÷ {whole}: {printed[0]} ÷ {printed[1]}");
        }
    }
}
