using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Power by the hour of the day, as the battery's terminals feel it.</summary>
/// <param name="Id">What it is.</param>
/// <param name="InUseW">In each hour of a day in use, 0 to 1e9; twenty-four.</param>
/// <param name="LyingW">In each hour of a day she lies, 0 to 1e9; twenty-four.</param>
/// <param name="OnlyInDark">It is on only while the sun is down.</param>
public sealed record HourlyPower(string Id, ImmutableArray<double> InUseW, ImmutableArray<double> LyingW, bool OnlyInDark = false);

/// <summary>Days in use and days she lies, one after the other, in the months of her season; outside it she lies.</summary>
/// <param name="UseDayCount">Days in use in a row, 1 to 365.</param>
/// <param name="EveryDayCount">From the first of them to the next first, <paramref name="UseDayCount"/> to 365.</param>
/// <param name="FirstMonth">First month of the season, 1 to 12.</param>
/// <param name="LastMonth">Last month of it, 1 to 12; before the first, it goes over the new year.</param>
public sealed record UseCycle(int UseDayCount, int EveryDayCount, int FirstMonth = 1, int LastMonth = 12)
{
    /// <summary>A month is in the season.</summary>
    public bool Has(int month) => FirstMonth <= LastMonth ? month >= FirstMonth && month <= LastMonth : month >= FirstMonth || month <= LastMonth;

    // The days are counted from the start of what is reckoned.
    internal bool IsInUse(int day, int date) => Has(EnergyCalendar.MonthOf(date) + 1) && day % EveryDayCount < UseDayCount;
}

/// <summary>What a battery's year is reckoned from.</summary>
public sealed record EnergyInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    public required MonthlyClimate Climate { get; init; }

    public required BatteryStore Battery { get; init; }

    /// <summary>Panels, behind their controllers.</summary>
    public ImmutableArray<SolarArray> Solar { get; init; } = [];

    /// <summary>Everything that takes power.</summary>
    public required ImmutableArray<HourlyPower> Loads { get; init; }

    /// <summary>What the engine's chargers could give.</summary>
    public ImmutableArray<HourlyPower> Engine { get; init; } = [];

    /// <summary>What shore chargers could give.</summary>
    public ImmutableArray<HourlyPower> Shore { get; init; } = [];

    public required UseCycle Cycle { get; init; }

    /// <summary>Charge at the start, of the capacity then, 0 to 1.</summary>
    public required double StartFraction { get; init; }

    /// <summary>Charge that is to stay, of what can be drawn, 0 to below 1.</summary>
    public required double ReserveFraction { get; init; }

    /// <summary>Light thrown back by what is around, 0 to 1; open water by default (common practice, from memory).</summary>
    public double AlbedoFraction { get; init; } = 0.1;

    internal void Check()
    {
        Climate.Check();
        Battery.Check();
        Guard.InRange(StartFraction, 0, 1, "", Subject);
        Guard.InRange(ReserveFraction, 0, 0.99, "", Subject);
        Guard.InRange(AlbedoFraction, 0, 1, "", Subject);
        Guard.InRange(Cycle.UseDayCount, 1, 365, "days", Subject, nameof(Cycle.UseDayCount));
        Guard.InRange(Cycle.EveryDayCount, Cycle.UseDayCount, 365, "days", Subject, nameof(Cycle.EveryDayCount));
        Guard.InRange(Cycle.FirstMonth, 1, 12, "", Subject, nameof(Cycle.FirstMonth));
        Guard.InRange(Cycle.LastMonth, 1, 12, "", Subject, nameof(Cycle.LastMonth));
        foreach (HourlyPower power in Loads.Concat(Engine).Concat(Shore))
        {
            foreach (ImmutableArray<double> hours in new[] { power.InUseW, power.LyingW })
            {
                Guard.InRange(hours.IsDefault ? 0 : hours.Length, 24, 24, "hours", power.Id, "hours");
                foreach (double watts in hours)
                {
                    Guard.InRange(watts, 0, 1e9, "W", power.Id, "power");
                }
            }
        }

        foreach (PanelPlane plane in Solar.SelectMany(array => array.Planes))
        {
            Guard.Positive(plane.PeakW, 100_000, "W", plane.Id, nameof(plane.PeakW));
            Guard.InRange(plane.TiltDeg, 0, 90, "°", plane.Id, nameof(plane.TiltDeg));
            Guard.InRange(plane.AzimuthDeg ?? 0, -360, 360, "°", plane.Id, nameof(plane.AzimuthDeg));
            Guard.InRange(plane.LostFraction, 0, 1, "", plane.Id, nameof(plane.LostFraction));
        }

        foreach (SolarArray array in Solar)
        {
            Guard.Positive(array.EfficiencyFraction, 1, "", array.Id, nameof(array.EfficiencyFraction));
            Guard.Positive(array.MostW, double.PositiveInfinity, "W", array.Id, nameof(array.MostW));
        }
    }
}
