using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class WeatherCheckTests
{
    private const string Steady = "particulars.steady-wind-heel";
    private const string Gust = "particulars.gust-reserve";

    // lw1 = 504 · 20 · (1.6 - 0.4)/(9.81 · 32 800); the sides are straight, so GZ = (GM + ½ BM tan² φ) sin φ. The deck edge goes under at 32.0°: 16° is the less.
    [Fact]
    public void SteadyHeel_Box_IsWhereTheExactLeversMeetTheWind()
    {
        Finding finding = Wind(20).Only("weather", Steady);
        double heel = finding.Amounts()[0] * Math.PI / 180, lever = 504 * 20 * 1.2 / (9.81 * JudgedBox.MassKg);
        Assert.Equal(lever, (JudgedBox.GmM + (0.5 * JudgedBox.BmM * Math.Pow(Math.Tan(heel), 2))) * Math.Sin(heel), 1e-8);
        Assert.Equal(16, finding.Amounts()[1], 1e-6);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
    }

    [Fact]
    public void BoatBelow24M_IsToldAsIndicativeWithTheTablesEnds_AndNeverHolds()
    {
        Finding finding = Wind(20).Only("weather", Gust);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("indicative only", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains(finding.Working, line => line.Expression.Contains("24 m", StringComparison.Ordinal));
        Assert.Contains(finding.Working, line => line.What == "B/d" || line.Expression.Contains("B/d", StringComparison.Ordinal));
    }

    [Fact]
    public void MoreArea_UsesMore_AndFailsInTheEnd()
    {
        foreach (string subject in new[] { Steady, Gust })
        {
            Finding[] findings = [.. new[] { 10.0, 20, 40, 80 }.Select(area => Wind(area).Only("weather", subject))];
            double[] uses = [.. findings.Select(finding => finding.UseFraction).OfType<double>()];
            Assert.Equal(uses.Order(), uses);
            Assert.Equal(Verdict.Fails, Wind(400).Only("weather", subject).Verdict);
        }
    }

    [Fact]
    public void AreaNotGiven_IsUnknown()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Rules(StabilityRule.Weather));
        boat.Only("weather", Steady).IsUnknownFor("stability-basis", "windAreaM2");
        boat.Only("weather", Gust).IsUnknownFor("stability-basis", "windCentreM");
    }

    [Fact]
    public void NotChosen_NoFinding() => Assert.Empty(JudgedBox.Of(JudgedBox.Rules(StabilityRule.GeneralIntact)).Found("weather"));

    [Fact]
    public void WeightVeryUnsure_IsUnknown() => Assert.Equal(Verdict.Unknown, Wind(20).With(JudgedBox.Bare(kgPlusMinus: 0.35)).Only("weather", Gust).Verdict);

    private static BoatModel Wind(double areaM2) => JudgedBox.Of(JudgedBox.Rules(StabilityRule.Weather) with { WindAreaM2 = areaM2, WindCentreM = 1.6 });
}
