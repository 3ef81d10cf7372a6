using Orlop.Electrics.Energy;
using Xunit;
using static Orlop.Electrics.Tests.Energy.EnergyInputs;

namespace Orlop.Electrics.Tests.Energy;

public sealed class VisitEnergyTests
{
    private static readonly EnergySimulation Simulation = EnergySimulation.Of(Plain with { Loads = [Steady("small", 10), Steady("large", 80)] });

    // What is spare at the lowest moment can be drawn then, and the charge comes to the reserve and no lower.
    [Fact]
    public void Spare_DrawnAtTheLowestMoment_LeavesTheReserve()
    {
        EnergyInput dark = Plain with { Solar = [], Loads = [Steady("load", 20)] };
        VisitMonth visit = VisitEnergy.In(EnergySimulation.Of(dark), 6, 2);
        EnergyInput more = dark with { Loads = dark.Loads.Add(new HourlyPower("tool", Same(24, visit.SpareWh / 48), Same(24, 0))) };
        Assert.Equal(0.3, VisitEnergy.In(EnergySimulation.Of(more), 6, 2).Days.LeastFraction, 1e-9);
    }

    [Fact]
    public void Weights_LargerLoadFirst_AndItsEnergyIsItsOwn()
    {
        EnergyWeight[] weights = [.. VisitEnergy.Weights(Simulation, 12, 3)];
        Assert.Equal("large", weights[0].Id);
        Assert.Equal(80 * 24, weights[0].DailyWh, 1e-6);
        Assert.True(weights.Single(weight => weight.Id == "sun") is { IsSource: true, DailyWh: > 0 });
    }

    [Fact]
    public void ReserveAtHour_DarkMonth_IsShorterThanBrightMonth() =>
        Assert.True(VisitEnergy.In(Simulation, 12, 3).ReserveAtHour < (VisitEnergy.In(Simulation, 6, 3).ReserveAtHour ?? double.PositiveInfinity));

    [Fact]
    public void Month13_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => VisitEnergy.In(Simulation, 13, 3));
}
