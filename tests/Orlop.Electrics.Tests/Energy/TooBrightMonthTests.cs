using Orlop.Electrics.Energy;
using Xunit;
using static Orlop.Electrics.Tests.Energy.EnergyInputs;

namespace Orlop.Electrics.Tests.Energy;

/// <summary>A month that is brighter than a clear sky: what is told of the others is what any light of that month that can be gives.</summary>
public sealed class TooBrightMonthTests
{
    private const int June = 6;
    private const int YearCount = 60;

    private static readonly EnergyInput Loaded = Plain with { Loads = [Steady("load", 38)] };
    private static readonly double ClearJune = EnergySimulation.Of(Plain).Climate.ClearDayWhPerM2[June - 1];
    private static readonly (EnergySimulation Dark, EnergySimulation Clear) Ends = EnergySimulation.Of(InJune(Loaded, 11_000)).Ends();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public void TheMonth_IsNamed() => Assert.Equal([June], EnergySimulation.Of(InJune(Plain, ClearJune + 1)).Climate.TooBrightMonths);

    // The same days with a June that can be.
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(7)]
    [InlineData(12)]
    public void DaysThatDoNotReachIt_AreToldAsWithAnyJune(int month)
    {
        VisitMonth told = Sure(Ends, month, 3)!, real = VisitEnergy.In(EnergySimulation.Of(Loaded), month, 3);
        Assert.Equal(real.Days.LeastFraction, told.Days.LeastFraction);
        Assert.Equal(real.Days.Totals, told.Days.Totals);
        Assert.Equal(real.SpareWh, told.SpareWh);
    }

    [Theory]
    [InlineData(6, 1)]
    [InlineData(5, 20)]
    public void DaysInIt_AreNotTold(int month, int dayCount) => Assert.Null(Sure(Ends, month, dayCount));

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void HowLongItLasts_WhereItHangsOnIt_IsNotShorterThanWithAnyJune(double share)
    {
        EnergyInput heavy = Plain with { Loads = [Steady("load", 80)], Battery = Plain.Battery with { NewWh = 18_000 } };
        VisitMonth told = Sure(EnergySimulation.Of(InJune(heavy, 11_000)).Ends(), 5, 3)!;
        Assert.Null(told.ReserveAtHour);
        Assert.InRange(told.ReserveNotBeforeHour!.Value, 17 * 24, VisitEnergy.MostDays * 24);
        Assert.True(told.ReserveNotBeforeHour <= (VisitEnergy.In(EnergySimulation.Of(InJune(heavy, share * ClearJune)), 5, 3).ReserveAtHour ?? double.PositiveInfinity));
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.4)]
    [InlineData(0.99)]
    public void DrawnYears_WhatIsTold_IsAsWithAnyJune(double share)
    {
        EnergySample told = EnergySampling.Sure(Sample(Ends.Dark), Sample(Ends.Clear)), real = Sample(EnergySimulation.Of(InJune(Loaded, share * ClearJune)));
        Assert.All(told.Months.Take(June - 1), month => Assert.Equal(real.Months[month.Month - 1], month));
        Assert.True(double.IsNaN(told.Months[June - 1].ChanceFraction));
        SampledMonth[] later = [.. told.Months.Skip(June).Where(month => double.IsFinite(month.ChanceFraction))];
        // By December a battery that is charged in summer has forgotten June.
        Assert.Contains(later, month => month.Month == 12);
        Assert.All(later, month => Assert.Equal(real.Months[month.Month - 1].ChanceFraction, month.ChanceFraction));
        Assert.All(later, month => Assert.Equal(real.Months[month.Month - 1].DullFraction, month.DullFraction, 2e-4));
        Assert.All(Enumerable.Range(0, told.MeanFraction.Length).Where(at => double.IsFinite(told.MeanFraction[at])), at => Assert.Equal(real.MeanFraction[at], told.MeanFraction[at], 2e-4));
        Assert.All(Enumerable.Range((June - 1) * 24, 24), hour => Assert.True(double.IsNaN(told.MeanFraction[hour])));
    }

    [Fact]
    public void WithoutPanels_NothingHangsOnIt()
    {
        EnergyInput none = Loaded with { Solar = [] };
        (EnergySimulation dark, EnergySimulation clear) = EnergySimulation.Of(InJune(none, 11_000)).Ends();
        Assert.Equal(VisitEnergy.In(EnergySimulation.Of(none), June, 3).Days.LeastFraction, Sure((dark, clear), June, 3)!.Days.LeastFraction);
        Assert.All(EnergySampling.Sure(Sample(dark), Sample(clear)).Months, month => Assert.True(double.IsFinite(month.ChanceFraction)));
    }

    private static EnergyInput InJune(EnergyInput input, double sunWhPerM2) => input with { Climate = input.Climate with { SunWhPerM2 = input.Climate.SunWhPerM2.SetItem(June - 1, sunWhPerM2) } };

    private static VisitMonth? Sure((EnergySimulation Dark, EnergySimulation Clear) ends, int month, int dayCount) => VisitEnergy.Sure(VisitEnergy.In(ends.Dark, month, dayCount), VisitEnergy.In(ends.Clear, month, dayCount));

    private static EnergySample Sample(EnergySimulation simulation) => EnergySampling.Calculate(simulation, YearCount, token: Token);
}
