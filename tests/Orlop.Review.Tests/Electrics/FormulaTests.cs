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
