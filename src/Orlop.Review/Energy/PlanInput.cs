using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Energy;

/// <summary>A boat's day plan taken apart for the energy engine.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Input">What is reckoned from; null where something is missing.</param>
/// <param name="Missing">What is missing, each thing and field once.</param>
/// <param name="Assumed">What was taken for granted because nobody said: a line each.</param>
/// <param name="LeftOut">Loads that are on by the plan and that its battery does not reach.</param>
public sealed record PlanInput(DayPlan Plan, EnergyInput? Input, ImmutableArray<FindingInput> Missing, ImmutableArray<string> Assumed, ImmutableArray<string> LeftOut)
{
    private const int Hours = 24;

    /// <summary>Takes a boat apart for one of her plans.</summary>
    public static PlanInput Of(ElectricsView view, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(plan);
        PlanGaps gaps = new();
        BatteryBank? bank = plan.Battery is null ? null : view.Boat.Find<BatteryBank>(plan.Battery);
        gaps.Need(bank, plan.Id, "battery");
        Condition?[]? hours = HoursOf(view, plan);
        gaps.Need(hours, plan.Id, "hours");
        gaps.Need(plan.UseDayCount, plan.Id, "useDayCount");
        gaps.Need(plan.StartFraction, plan.Id, "startFraction");
        gaps.Need(plan.ReserveFraction, plan.Id, "reserveFraction");
        if (LiesAtTimes(plan) || hours?.Contains(null) == true)
        {
            gaps.Need(plan.LyingW, plan.Id, "lyingW");
        }

        if (plan.EveryDayCount < plan.UseDayCount)
        {
            gaps.InTheWay(plan.Id, "everyDayCount");
        }

        MonthlyClimate? climate = PlanClimate.Of(view.Boat, plan, gaps);
        BatteryStore? store = bank is null ? null : PlanBattery.Of(bank, gaps);
        if (bank is null || hours is null)
        {
            return new PlanInput(plan, null, gaps.Missing, gaps.Assumed, []);
        }

        PlanPower power = new(view, bank, hours, gaps);
        ImmutableArray<HourlyPower> loads = [.. power.Loads(), .. plan.LyingW is { } lying ? [Lying(plan.Id, hours, lying.Value)] : Array.Empty<HourlyPower>()];
        (ImmutableArray<HourlyPower> engine, ImmutableArray<HourlyPower> shore, ImmutableArray<SolarArray> solar) = (power.Chargers(ChargerDrive.Engine), power.Chargers(ChargerDrive.Shore), PlanSolar.Of(view, plan, bank, hours.OfType<Condition>().Distinct(), gaps));
        bool isWhole = gaps.Missing.IsEmpty && climate is not null && store is not null;
        return new PlanInput(plan, !isWhole ? null : new EnergyInput
        {
            Subject = plan.Id,
            Climate = climate!,
            Battery = store!,
            Solar = solar,
            Loads = loads,
            Engine = engine,
            Shore = shore,
            Cycle = new UseCycle(plan.UseDayCount!.Value, plan.EveryDayCount ?? plan.UseDayCount.Value, plan.FirstMonth ?? 1, plan.LastMonth ?? 12),
            StartFraction = plan.StartFraction!.Value,
            ReserveFraction = plan.ReserveFraction!.Value,
        }, gaps.Missing, gaps.Assumed, power.LeftOut);
    }

    private static bool LiesAtTimes(DayPlan plan) => plan.EveryDayCount > plan.UseDayCount || (plan.FirstMonth ?? 1) != 1 || (plan.LastMonth ?? 12) != 12;

    private static HourlyPower Lying(string id, Condition?[] hours, double watts) => new(id, [.. hours.Select(condition => condition is null ? watts : 0)], [.. Enumerable.Repeat(watts, Hours)]);

    // The condition of each hour, none where she lies; null where there is no row, an hour has two, or a condition is not there.
    private static Condition?[]? HoursOf(ElectricsView view, DayPlan plan)
    {
        Condition?[] hours = new Condition?[Hours];
        foreach (PlanHours row in plan.Hours)
        {
            foreach (int hour in Enumerable.Range(0, Hours).Where(hour => UseHours.IsWithin(row.FromHour, row.ToHour, hour)))
            {
                if (hours[hour] is not null || view.Boat.Find<Condition>(row.Condition) is not { } condition)
                {
                    return null;
                }

                hours[hour] = condition;
            }
        }

        return plan.Hours.Count == 0 ? null : hours;
    }
}
