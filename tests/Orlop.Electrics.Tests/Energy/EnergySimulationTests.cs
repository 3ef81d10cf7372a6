using CsCheck;
using Orlop.Electrics.Energy;
using Xunit;
using static Orlop.Electrics.Tests.Energy.EnergyInputs;

namespace Orlop.Electrics.Tests.Energy;

public sealed class EnergySimulationTests
{
    private static readonly Gen<EnergyInput> AnyInput = Gen.Select(
        Gen.Double[0.2, 1], Gen.Double[0, 0.15], Gen.Double[-15, 30], Gen.Double[0, 1500], Gen.Double[0, 800], Gen.Double[0, 600], Gen.Bool, Gen.Int[1, 20])
        .Select((left, loss, air, load, peak, engine, isLead, use) => Plain with
        {
            Climate = Plain.Climate with { AirC = [.. Enumerable.Range(0, 12).Select(month => air - (4 * Math.Cos(month)))] },
            Battery = Plain.Battery with { Kind = isLead ? BatteryKind.LeadAcid : BatteryKind.LithiumIronPhosphate, LeftFraction = left, LossPerYearFraction = loss, PeukertRatio = isLead ? 1 + (4 * loss) : 1 },
            Solar = [new SolarArray("sun", [new PanelPlane { Id = "a", PeakW = peak + 1, TiltDeg = 20 }, new PanelPlane { Id = "b", PeakW = 50, TiltDeg = 60, AzimuthDeg = 120 }], 0.9, 300)],
            Loads = [new HourlyPower("day", [.. Enumerable.Range(0, 24).Select(hour => hour is > 7 and < 19 ? load : 0)], Same(24, 3)), Steady("light", 20, onlyInDark: true)],
            Engine = [new HourlyPower("engine", [.. Enumerable.Range(0, 24).Select(hour => hour == 9 ? engine : 0)], Same(24, 0))],
            Shore = [new HourlyPower("shore", [.. Enumerable.Range(0, 24).Select(hour => hour == 20 ? engine / 3 : 0)], Same(24, 0))],
            Cycle = new UseCycle(use, use + 7, 4, 10),
        });

    // Conservation of energy: what came in went out, was lost, or stayed.
    [Fact]
    public void EveryYearAndSpan_AnyInput_BalancesToABillionth() => AnyInput.Sample(
        input =>
        {
            EnergySimulation simulation = EnergySimulation.Of(input);
            foreach (EnergyResult result in new[] { simulation.Year(), simulation.Span(340, 60, 4) })
            {
                Assert.True(Math.Abs(result.Totals.ResidualWh) <= 1e-9 * result.Totals.ScaleWh, $"{result.Totals}");
                Assert.InRange(result.LeastFraction, 0, 1);
                Assert.True(result.Totals.UnmetWh >= 0 && result.Totals.UnusedSunWh >= 0 && result.Totals.LostWh >= 0 && result.Totals.QuickWh >= 0 && result.Totals.AgedWh >= 0);
            }
        },
        iter: 40);

    [Fact]
    public void EveryStep_AnyInput_BalancesToABillionth() => AnyInput.Sample(
        input =>
        {
            EnergyResult result = EnergySimulation.Of(input).Span(100, 5, 2);
            EnergyMoment[] moments = [.. result.Moments];
            Assert.Equal(5 * 24 * 2, moments.Length);
            Assert.Equal(result.Totals.SunWh, moments.Sum(moment => moment.SunW) / 2, 1e-6);
            Assert.Equal(result.Totals.EngineWh, moments.Sum(moment => moment.EngineW) / 2, 1e-6);
            Assert.Equal(result.Totals.ServedWh + result.Totals.UnmetWh, moments.Sum(moment => moment.LoadW) / 2, 1e-6);
            Assert.All(moments, moment => Assert.True(moment is { SunW: >= 0, EngineW: >= -1e-9, ShoreW: >= 0, ChargeFraction: >= 0 and <= 1.000000001 }, $"{moment}"));
        },
        iter: 20);

    // Closed form: without a source the charge falls in a straight line.
    [Fact]
    public void NoSource_SteadyLoad_ReachesTheReserveWhenItMust()
    {
        EnergyInput input = Plain with { Solar = [], Loads = [Steady("fridge", 20)], Climate = Plain.Climate with { AirC = Same(12, 25) } };
        EnergyResult result = EnergySimulation.Of(input).Span(150, 20, 60, keepsMoments: false);
        double hours = 0.6 * 5000 * input.Battery.DischargeFraction / 20;
        Assert.Equal(hours, result.BelowAtHour!.Value, 1.01 / 60);
    }

    // Closed form, Peukert's t = H (C/(I H))^k by hand: 100 Ah at 20 h, k 1.2, at 20 A 20 × 0.25^1.2 h; at the rated 5 A 20 h; at 2 A nothing is gained.
    [Theory]
    [InlineData(2, 20, 50)]
    [InlineData(5, 20, 20)]
    [InlineData(20, 20, 3.7893)]
    [InlineData(50, 20, 1.2619)]
    [InlineData(20, 10, 4.3528)]
    public void LeadAcid_DrawnQuickly_IsEmptyByPeukert(double currentA, double ratedHours, double hours)
    {
        BatteryStore lead = new() { Id = "lead", Kind = BatteryKind.LeadAcid, NewWh = 1200, PeukertRatio = 1.2, RatedHour = ratedHours };
        double watts = currentA * 12 * lead.DischargeFraction;
        EnergyInput input = Plain with { Battery = lead, Solar = [], StartFraction = 1, ReserveFraction = 0.5, Loads = [Steady("load", watts)], Climate = Plain.Climate with { AirC = Same(12, 25) } };
        EnergyResult result = EnergySimulation.Of(input).Span(150, 5, 60, keepsMoments: false);
        Assert.Equal(hours / 2, result.BelowAtHour!.Value, 1.01 / 60);
        Assert.Equal(watts * hours, result.Totals.ServedWh, 1e-4 * watts * hours);
        Assert.Equal(1200 - (currentA * 12 * hours), result.Totals.QuickWh, 0.05);
    }

    // By hand as above: beside 60 W more, a load of 15 A (12 V, from store) makes 20 A of 5 A: 20 × 4^0.2 − 5 = 21.390 A.
    [Fact]
    public void FurtherLoad_BesideAnother_CountsForMore()
    {
        BatteryStore lead = new() { Id = "lead", Kind = BatteryKind.LeadAcid, NewWh = 1200, PeukertRatio = 1.2 };
        double volts = 12 * lead.DischargeFraction;
        Assert.Equal(21.390 * volts, lead.CountsForW(15 * volts, 5 * volts), 0.001 * volts);
        Assert.Equal(15 * volts, (lead with { PeukertRatio = 1 }).CountsForW(15 * volts, 5 * volts));
    }

    // Closed form: from 80 % lead-acid tails off by e in the hours its full power would take over the rest.
    [Fact]
    public void LeadAcid_PlentyOfCharge_TailsOffByE()
    {
        BatteryStore lead = new() { Id = "lead", Kind = BatteryKind.LeadAcid, NewWh = 1000 };
        EnergyInput input = Plain with { Battery = lead, Solar = [], Loads = [], Shore = [Steady("charger", 5000)], StartFraction = 0.8, Climate = Plain.Climate with { AirC = Same(12, 25) } };
        foreach (int steps in new[] { 1, 20 })
        {
            EnergyMoment[] moments = [.. EnergySimulation.Of(input).Span(10, 1, steps).Moments];
            foreach (int hour in new[] { 1, 3, 6 })
            {
                double expected = 1 - (0.2 * Math.Exp(-hour * lead.ChargeFraction));
                Assert.Equal(expected, moments[(hour * steps) - 1].ChargeFraction, 1e-9);
            }
        }
    }

    [Fact]
    public void Efficiency_ThereAndBack_IsTheKindsOwn() =>
        Assert.Equal(BatteryKind.LeadAcid.EnergyFraction, new BatteryStore { Id = "lead", Kind = BatteryKind.LeadAcid, NewWh = 1 } is var store ? store.ChargeFraction * store.DischargeFraction : 0, 1e-12);

    // Another step of time is another quadrature of the same year.
    [Fact]
    public void Year_ByTheHourAndByTheMinute_AgreeInTheSunUsed()
    {
        EnergySimulation simulation = EnergySimulation.Of(Plain with { Loads = [Steady("much", 500)] });
        double hourly = simulation.Year().Totals.SunWh, minutely = simulation.Year(60).Totals.SunWh;
        Assert.Equal(minutely, hourly, 0.005 * minutely);
    }

    // Cells between 15 °C and 46 °C give 4 % more to 8 % less than by their plate: near the mean the year's sun is what the climate says it is.
    [Fact]
    public void FlatPanel_TakesWhatTheClimateGives()
    {
        EnergyInput input = Plain with { Loads = [Steady("much", 2000)], Solar = [new SolarArray("sun", [new PanelPlane { Id = "flat", PeakW = 1000 }], 1, double.PositiveInfinity)], Climate = Plain.Climate with { AirC = Same(12, 15) } };
        double given = Enumerable.Range(0, 12).Sum(month => DateTime.DaysInMonth(2025, month + 1) * Shetland[month]);
        double found = EnergySimulation.Of(input).Year(60).Totals.SunWh;
        Assert.InRange(found / given, 0.97, 1.02);
    }

    [Fact]
    public void LithiumInFrost_TakesNoCharge()
    {
        EnergyInput input = Plain with { Loads = [], Shore = [Steady("charger", 500)], StartFraction = 0.5, Climate = Plain.Climate with { AirC = Same(12, -5) } };
        Assert.Equal(0, EnergySimulation.Of(input).Span(0, 3).Totals.StoredWh);
    }

    [Fact]
    public void Ageing_FullBattery_IsBooked()
    {
        EnergyInput input = Plain with { Loads = [], Solar = [], StartFraction = 1, Battery = Plain.Battery with { LossPerYearFraction = 0.1 } };
        EnergyTotals totals = EnergySimulation.Of(input).Year().Totals;
        Assert.Equal(5000 * 0.1 * 364 / 365, totals.AgedWh, 1e-6);
        Assert.Equal(-totals.AgedWh, totals.StoredWh, 1e-6);
    }

    [Fact]
    public void DarkLoad_AsksOnlyWithTheSunDown()
    {
        EnergyResult june = EnergySimulation.Of(Plain with { Loads = [Steady("light", 10, onlyInDark: true)] }).Span(171, 1, 60);
        double hours = june.Moments.Count(moment => moment.LoadW > 0) / 60.0;

        // Geometric night at 60.1° N in midsummer: 24 − 2/15 × acos(−tan φ tan δ), δ 23.44°.
        Assert.Equal(24 - (2.0 / 15 * Math.Acos(-Math.Tan(60.1 * Math.PI / 180) * Math.Tan(23.44 * Math.PI / 180)) * 180 / Math.PI), hours, 0.05);
    }

    // The full series at the instant that the clock shows, through the year, on both sides of the date line.
    [Theory]
    [InlineData(60.5, 18.4, 1)]
    [InlineData(39.7, -105.2, -7)]
    [InlineData(-36.8, 174.8, 13)]
    [InlineData(1, -172, 14)]
    public void SunPath_ByTheClock_IsWhereTheSunStandsThen(double latitude, double longitude, double ahead)
    {
        SunPath path = new(latitude, new PlaceClock(longitude, ahead));
        for (int step = 0; step < 365 * 3; step++)
        {
            (int day, double hour) = (step / 3, 7.3 * (step % 3) + 2);
            SunPosition sun = SunPosition.At(EnergyCalendar.FirstJulianDay + day + ((hour - ahead) / 24), latitude, longitude);
            double up = path.At(day, hour).Up;
            Assert.Equal(sun.ElevationDeg, Math.Asin(up) * 180 / Math.PI, 0.01);
        }
    }

    // A clock two hours ahead of the sun's shows its work two hours later; the day's sum stays.
    [Fact]
    public void Clock_AheadOfTheSun_ShiftsTheDay()
    {
        EnergyMoment[] Of(PlaceClock? clock) => [.. EnergySimulation.Of(Plain with { Loads = [Steady("much", 2000)], Climate = Plain.Climate with { Clock = clock } }).Span(171, 1, 4).Moments];
        EnergyMoment[] mean = Of(null), same = Of(new PlaceClock(-30, -2)), later = Of(new PlaceClock(0, 2));
        Assert.True(mean.Max(moment => moment.SunW) > 100);
        for (int at = 8; at < mean.Length; at++)
        {
            Assert.Equal(mean[at - 8].SunW, later[at].SunW, 0.02 * mean.Max(moment => moment.SunW));
            Assert.Equal(mean[at].SunW, same[at].SunW, 0.02 * mean.Max(moment => moment.SunW));
        }

        Assert.Equal(14, new PlaceClock(0, 2).MeanNoonHour);
    }

    [Fact]
    public void BrighterThanAClearSky_IsToldAndNotReckoned()
    {
        EnergySimulation simulation = EnergySimulation.Of(Plain with { Climate = Plain.Climate with { SunWhPerM2 = Shetland.SetItem(11, 3000) } });
        Assert.Equal([12], simulation.Climate.TooBrightMonths);
        Assert.Throws<InvalidOperationException>(() => simulation.Year());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void BadNumbers_AreRefused(double bad)
    {
        EnergyInput[] inputs =
        [
            Plain with { StartFraction = bad }, Plain with { ReserveFraction = bad }, Plain with { AlbedoFraction = bad },
            Plain with { Battery = Plain.Battery with { NewWh = bad } }, Plain with { Battery = Plain.Battery with { LeftFraction = bad } }, Plain with { Battery = Plain.Battery with { LossPerYearFraction = bad } },
            Plain with { Battery = Plain.Battery with { PeukertRatio = bad } }, Plain with { Battery = Plain.Battery with { RatedHour = bad } },
            Plain with { Loads = [Steady("x", bad)] }, Plain with { Climate = Plain.Climate with { SunWhPerM2 = Shetland.SetItem(3, bad) } },
            Plain with { Solar = [new SolarArray("sun", [new PanelPlane { Id = "p", PeakW = bad }], 0.9, 100)] }, Plain with { Solar = [new SolarArray("sun", [], bad, 100)] },
        ];
        Assert.All(inputs, input => Assert.Throws<ArgumentOutOfRangeException>(() => EnergySimulation.Of(input)));
        Assert.ThrowsAny<ArgumentException>(() => EnergySimulation.Of(Plain with { Climate = Plain.Climate with { Clock = new PlaceClock(double.NaN, 0) } }));
        Assert.ThrowsAny<ArgumentException>(() => EnergySimulation.Of(Plain with { Climate = Plain.Climate with { Clock = new PlaceClock(0, double.NaN) } }));
        Assert.ThrowsAny<ArgumentException>(() => EnergySimulation.Of(Plain with { Climate = Plain.Climate with { LatitudeDeg = double.NaN } }));
    }
}
