using Orlop.Electrics.Energy;
using Xunit;

namespace Orlop.Electrics.Tests.Energy;

public sealed class LightOutsideAirTests
{
    private const double MegajoulesPerWh = 0.0036;

    // FAO Irrigation and Drainage Paper 56, example 8: 20° S on 3 September, δ 0.120 rad, 1/r² 0.985: 32.2 MJ/m² with 0.0820 MJ/(m² min). Duffie and Beckman, example 1.10.1: 43° N on 15 April, δ 9.4°,
    // 1/r² = 1 + 0.033 cos(360°·105/365): 33.8 MJ/m² with 1367 W/m². Both from memory, checked by hand; three figures are printed: 0.2 %.
    [Theory]
    [InlineData(-20, 6.875, 0.985, 32.2, 1e6 * 0.0820 / 60)]
    [InlineData(43, 9.4, 0.99226, 33.8, 1367)]
    public void Day_IsAsPublished(double latitudeDeg, double declinationDeg, double nearness, double megajoules, double constantWPerM2) =>
        Assert.Equal(megajoules, LightOutsideAir.DayWhPerM2(latitudeDeg, declinationDeg, 1 / Math.Sqrt(nearness)) * MegajoulesPerWh * constantWPerM2 / ClearSky.SolarConstantWPerM2, 0.002 * megajoules);

    // The closed form against the sun followed through the day by the engine's own path, minute by minute.
    [Theory]
    [InlineData(0)]
    [InlineData(35)]
    [InlineData(60.5)]
    [InlineData(-66)]
    public void Month_IsTheSunFollowedThroughItsDays(double latitudeDeg)
    {
        SunPath path = new(latitudeDeg);
        double sum = 0;
        for (int day = 151; day < 181; day++)
        {
            for (int minute = 0; minute < 24 * 60; minute++)
            {
                sum += Math.Max(0, path.At(day, (minute + 0.5) / 60).Up) * ClearSky.SolarConstantWPerM2 / (60 * 30 * Math.Pow(path.DistanceRatio(day), 2));
            }
        }

        Assert.Equal(sum, LightOutsideAir.MonthWhPerM2(latitudeDeg, 6), 0.002 * sum);
    }

    // Polar night gives nothing, and the midsummer pole more than the equator.
    [Fact]
    public void Poles_HaveANightAndADayWithoutEnd()
    {
        Assert.Equal(0, LightOutsideAir.MonthWhPerM2(90, 12));
        Assert.True(LightOutsideAir.MonthWhPerM2(90, 6) > LightOutsideAir.MonthWhPerM2(0, 6));
    }

    // A clear sky and every published climate lie below it.
    [Fact]
    public void PublishedClimates_LieBelowIt() => Assert.All(ClimateTable.Places.Values, place =>
        Assert.All(Enumerable.Range(1, 12), month => Assert.InRange(place.SunWhPerM2[month - 1] / LightOutsideAir.MonthWhPerM2(place.LatitudeDeg, month), 0.05, 0.8)));

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(91, 1)]
    [InlineData(50, 0)]
    [InlineData(50, 13)]
    public void OutOfRange_IsRefused(double latitudeDeg, int month) => Assert.ThrowsAny<ArgumentException>(() => LightOutsideAir.MonthWhPerM2(latitudeDeg, month));
}
