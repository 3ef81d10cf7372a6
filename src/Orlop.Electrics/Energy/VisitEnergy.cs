using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>What leaving one thing out does to days in use.</summary>
/// <param name="Id">The load, charger or solar controller.</param>
/// <param name="IsSource">It gives.</param>
/// <param name="DailyWh">What it takes or gives in a day.</param>
/// <param name="LeastWithoutFraction">Least charge without it, of what can be drawn.</param>
/// <param name="UnmetWithoutWh">Asked and not given without it.</param>
public sealed record EnergyWeight(string Id, bool IsSource, double DailyWh, double LeastWithoutFraction, double UnmetWithoutWh);

/// <summary>Days in use in the middle of a month, in its mean weather.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Days">Step by step.</param>
/// <param name="SpareWh">What could be drawn besides, at the terminals, at any time of them, without going below the reserve: what stands over it at the lowest moment. 0 where nothing does.</param>
/// <param name="ReserveAtHour">Hours until it first is below the reserve, if they went on; null where it is not in <see cref="VisitEnergy.MostDays"/>.</param>
public sealed record VisitMonth(int Month, EnergyResult Days, double SpareWh, double? ReserveAtHour)
{
    /// <summary>Hours before which it is not below the reserve, where the days would go on into a month whose light is not known and it hangs on that how long it lasts; null elsewhere.</summary>
    public double? ReserveNotBeforeHour { get; init; }
}

/// <summary>Days in use at a time of the year: how far the charge goes down, how long it would last, what could be run besides, what matters most.</summary>
public static class VisitEnergy
{
    /// <summary>Days that are looked ahead for how long it lasts.</summary>
    public const int MostDays = 60;

    private const int StepsPerHour = 4;

    /// <summary>Days in use in the middle of a month.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="dayCount">1 to 365.</param>
    public static VisitMonth In(EnergySimulation simulation, int month, int dayCount)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        EnergySimulation visit = AlwaysInUse(simulation);
        EnergyResult days = visit.Span(FirstDay(month, simulation.Input.Subject), dayCount, StepsPerHour);
        EnergyResult longer = visit.Span(FirstDay(month, simulation.Input.Subject), MostDays, 1, keepsMoments: false);
        return new VisitMonth(month, days, Spare(simulation.Input, days, month), longer.BelowAtHour);
    }

    /// <summary>What is sure of the same days at both ends of a light that is not known (<see cref="EnergySimulation.Ends"/>); null where the days themselves hang on it.</summary>
    public static VisitMonth? Sure(VisitMonth dark, VisitMonth clear)
    {
        ArgumentNullException.ThrowIfNull(dark);
        ArgumentNullException.ThrowIfNull(clear);
        return dark.Days.Totals != clear.Days.Totals || dark.Days.LeastFraction != clear.Days.LeastFraction ? null
            : dark.ReserveAtHour == clear.ReserveAtHour ? dark
            : dark with { ReserveAtHour = null, ReserveNotBeforeHour = dark.ReserveAtHour };
    }

    /// <summary>What each load and source does to those days, the weightiest first: a load that leaves most charge when it is off, a source that leaves least.</summary>
    public static ImmutableArray<EnergyWeight> Weights(EnergySimulation simulation, int month, int dayCount)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        EnergyInput input = simulation.Input;
        EnergySimulation visit = AlwaysInUse(simulation);
        int first = FirstDay(month, input.Subject);
        EnergyResult all = visit.Span(first, dayCount, 1, keepsMoments: false);
        EnergyWeight Without(string id, Func<EnergyTotals, double>? given, EnergyInput rest)
        {
            EnergyResult result = visit.With(rest with { Cycle = visit.Input.Cycle }).Span(first, dayCount, 1, keepsMoments: false);
            Func<EnergyTotals, double> moved = given ?? (totals => totals.ServedWh + totals.UnmetWh);
            return new EnergyWeight(id, given is not null, (moved(all.Totals) - moved(result.Totals)) / dayCount, result.LeastFraction, result.Totals.UnmetWh);
        }

        return
        [
            .. input.Loads.Select(load => Without(load.Id, null, input with { Loads = input.Loads.Remove(load) }))
                .Concat(input.Engine.Select(charger => Without(charger.Id, totals => totals.EngineWh, input with { Engine = input.Engine.Remove(charger) })))
                .Concat(input.Shore.Select(charger => Without(charger.Id, totals => totals.ShoreWh, input with { Shore = input.Shore.Remove(charger) })))
                .Concat(input.Solar.Select(array => Without(array.Id, totals => totals.SunWh, input with { Solar = input.Solar.Remove(array) })))
                .OrderByDescending(weight => Math.Abs(weight.LeastWithoutFraction - all.LeastFraction))
                .ThenByDescending(weight => Math.Abs(weight.DailyWh))
                .ThenBy(weight => weight.Id, StringComparer.Ordinal),
        ];
    }

    private static EnergySimulation AlwaysInUse(EnergySimulation simulation) => simulation.With(simulation.Input with { Cycle = new UseCycle(365, 365) });

    private static int FirstDay(int month, string subject) => EnergyCalendar.FirstDayOf((int)Guard.InRange(month, 1, 12, "", subject) - 1) + 14;

    private static double Spare(EnergyInput input, EnergyResult days, int month)
    {
        double drawable = input.Battery.NewWh * input.Battery.LeftFraction * input.Battery.Kind.UsableFractionAt(input.Climate.AirC[month - 1]);
        return Math.Max(0, days.LeastFraction - input.ReserveFraction) * drawable * input.Battery.DischargeFraction;
    }
}
