using System.Collections.Immutable;
using Orlop.Electrics.Energy;

namespace Orlop.Electrics.Tests.Energy;

/// <summary>Inputs that tests begin with.</summary>
internal static class EnergyInputs
{
    public static readonly ImmutableArray<double> Shetland = ClimateTable.Places["uk-shetland"].SunWhPerM2;

    public static EnergyInput Plain { get; } = new()
    {
        Subject = "test",
        Climate = new MonthlyClimate { Subject = "Shetland", LatitudeDeg = 60.1, SunWhPerM2 = Shetland, AirC = Same(12, 10) },
        Battery = new BatteryStore { Id = "bank", Kind = BatteryKind.LithiumIronPhosphate, NewWh = 5000 },
        Solar = [new SolarArray("sun", [new PanelPlane { Id = "panel", PeakW = 400 }], 0.95, double.PositiveInfinity)],
        Loads = [Steady("fridge", 30)],
        Cycle = new UseCycle(365, 365),
        StartFraction = 0.9,
        ReserveFraction = 0.3,
    };

    public static HourlyPower Steady(string id, double watts, bool onlyInDark = false) => new(id, Same(24, watts), Same(24, watts), onlyInDark);

    public static ImmutableArray<double> Same(int count, double value) => [.. Enumerable.Repeat(value, count)];
}
