using Orlop.Electrics.Energy;
using Xunit;
using static Orlop.Electrics.Tests.Energy.EnergyInputs;

namespace Orlop.Electrics.Tests.Energy;

public sealed class WeatherTests
{
    private const int YearCount = 400;

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    // The truncated exponential is solved for the month's mean: the mean of many days must be it.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.535)]
    [InlineData(0.8)]
    [InlineData(0.95)]
    public void ManyYears_MeanOfDays_IsTheMonths(double mean)
    {
        WeatherYears weather = new(Same(12, mean));
        double[] days = [.. Enumerable.Range(0, YearCount).SelectMany(year => weather.Year(1, year))];
        Assert.Equal(mean, days.Average(), 0.004);
        Assert.All(days, share => Assert.InRange(share, 0.07, 1));
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.3)]
    [InlineData(0.9)]
    [InlineData(1)]
    public void MeanDays_HaveTheMonthsMean(double mean)
    {
        WeatherPoint[] points = [.. new WeatherYears(Same(12, mean)).MeanDays(5)];
        Assert.Equal(1, points.Sum(point => point.WeightFraction), 1e-12);
        Assert.Equal(mean, points.Sum(point => point.WeightFraction * point.ShareFraction), 1e-3);
    }

    // A day is like the last three times in ten, so days are related by that and no more.
    [Fact]
    public void ManyYears_OneDayAndTheNext_AreRelatedByThreeTenths()
    {
        WeatherYears weather = new(Same(12, 0.6));
        double above = 0, below = 0;
        foreach (double[] year in Enumerable.Range(0, YearCount).Select(number => weather.Year(7, number)))
        {
            for (int day = 1; day < year.Length; day++)
            {
                above += (year[day] - 0.6) * (year[day - 1] - 0.6);
                below += (year[day] - 0.6) * (year[day] - 0.6);
            }
        }

        Assert.Equal(0.3, above / below, 0.01);
    }

    [Fact]
    public void Sample_SameSeed_IsTheSame_AndAnotherIsNot()
    {
        EnergySimulation simulation = EnergySimulation.Of(Plain with { Loads = [Steady("load", 45)] });
        EnergySample one = EnergySampling.Calculate(simulation, 50, 3, Token), again = EnergySampling.Calculate(simulation, 50, 3, Token), other = EnergySampling.Calculate(simulation, 50, 4, Token);
        Assert.Equal(one.Months, again.Months);
        Assert.Equal(one.MeanFraction, again.MeanFraction);
        Assert.NotEqual(one.MeanFraction, other.MeanFraction);
    }

    // Weather that cannot vary gives the one year that there is.
    [Fact]
    public void Sample_WithoutSun_IsTheDeterministicYear()
    {
        EnergySimulation simulation = EnergySimulation.Of(Plain with { Climate = Plain.Climate with { SunWhPerM2 = Same(12, 0) }, Loads = [Steady("load", 0.4)] });
        EnergyResult year = simulation.Year();
        EnergySample sample = EnergySampling.Calculate(simulation, 20, token: Token);
        Assert.Equal(year.Months.Select(month => month.LeastFraction), sample.Months.Select(month => month.MiddleFraction));
        Assert.All(sample.Months, month => Assert.Equal(year.Months[month.Month - 1].LeastFraction < 0.3 ? 1 : 0, month.ChanceFraction));
    }

    [Fact]
    public void Sample_EveryYear_BalancesToABillionth() =>
        Assert.InRange(EnergySampling.Calculate(EnergySimulation.Of(Plain with { Battery = Plain.Battery with { LossPerYearFraction = 0.05 } }), 100, token: Token).WorstResidualRatio, 0, 1e-9);

    [Fact]
    public void DullerClimate_MoreOftenBelow()
    {
        double Chance(double factor) => EnergySampling.Calculate(EnergySimulation.Of(Plain with { Loads = [Steady("load", 40)], Climate = Plain.Climate with { SunWhPerM2 = [.. Shetland.Select(sun => factor * sun)] } }), 100, token: Token).Months[4].ChanceFraction;
        Assert.True(Chance(0.7) > Chance(1), $"{Chance(0.7)} {Chance(1)}");
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(1.01)]
    [InlineData(-0.1)]
    public void BadShare_IsRefused(double share) => Assert.Throws<ArgumentOutOfRangeException>(() => new WeatherYears(Same(12, share)));

    // Independent of the closed form: the mean over many headings.
    [Theory]
    [InlineData(10, 30)]
    [InlineData(40, 60)]
    [InlineData(70, 20)]
    [InlineData(5, 85)]
    public void SwingingPanel_IsTheMeanOverHeadings(double elevationDeg, double tiltDeg)
    {
        SunPosition sun = new(elevationDeg, 133, 0, 0, 1);
        double mean = Enumerable.Range(0, 7200).Average(step => Math.Max(0, PlaneIrradiance.CosIncidence(sun, tiltDeg, step / 20.0)));
        Assert.Equal(mean, PlaneIrradiance.CosIncidence(sun, tiltDeg, null), 1e-6);
    }
}
