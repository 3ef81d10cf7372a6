using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review.Energy;

/// <summary>A plan and what came of it.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Input">The plan taken apart.</param>
/// <param name="Energy">What came of it; null where something is missing.</param>
public sealed record PlanResult(BoatModel Boat, PlanInput Input, PlanEnergy? Energy)
{
    public DayPlan Plan => Input.Plan;

    /// <summary>What can be run besides in a month of the plan's; empty where it cannot be told.</summary>
    public ImmutableArray<RunTime> RunTimes(int month) => Energy?.Months.FirstOrDefault(one => one.Month == month) is { } visit ? RunTime.Of(Boat, visit.SpareWh, Energy.Input) : [];
}

/// <summary>A plan's days in each month of its season, its year of drawn weather, and what weighs most.</summary>
/// <param name="Input">What it was reckoned from.</param>
/// <param name="Climate">The climate beside a clear sky.</param>
/// <param name="Months">Days in use in each month of the season; none where the climate is brighter than a clear sky.</param>
/// <param name="Sample">Years of drawn weather; null likewise.</param>
/// <param name="Weights">What each load and source does in the worst month.</param>
public sealed record PlanEnergy(EnergyInput Input, ClimateShare Climate, ImmutableArray<VisitMonth> Months, EnergySample? Sample, ImmutableArray<EnergyWeight> Weights)
{
    private const int YearCount = 400;

    /// <summary>The month with the least charge; the most unmet where several are empty.</summary>
    public VisitMonth? Worst => Months.OrderBy(month => month.Days.LeastFraction).ThenByDescending(month => month.Days.Totals.UnmetWh).FirstOrDefault();

    /// <summary>The month of the season in which it most often runs below the reserve.</summary>
    public SampledMonth? WorstChance => Sample?.Months.Where(month => Input.Cycle.Has(month.Month)).OrderByDescending(month => month.ChanceFraction).ThenBy(month => month.DullFraction).FirstOrDefault();

    /// <summary>Reckons it.</summary>
    public static PlanEnergy Of(EnergyInput input, CancellationToken token)
    {
        ArgumentNullException.ThrowIfNull(input);
        EnergySimulation simulation = EnergySimulation.Of(input);
        if (simulation.Climate.TooBrightMonth is not null)
        {
            return new PlanEnergy(input, simulation.Climate, [], null, []);
        }

        ImmutableArray<VisitMonth> months = [.. Enumerable.Range(1, 12).Where(input.Cycle.Has).Select(month => VisitEnergy.In(simulation, month, input.Cycle.UseDayCount))];
        PlanEnergy energy = new(input, simulation.Climate, months, EnergySampling.Calculate(simulation, YearCount, token: token), []);
        return energy with { Weights = VisitEnergy.Weights(simulation, energy.Worst!.Month, input.Cycle.UseDayCount) };
    }
}
