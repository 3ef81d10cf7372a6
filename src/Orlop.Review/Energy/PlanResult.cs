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
/// <param name="Months">Days in use in each month of the season that can be told: where the climate is brighter than a clear sky in a month, those that do not hang on it.</param>
/// <param name="Sample">Years of drawn weather; no numbers in months that hang on such a month.</param>
/// <param name="Weights">What each load and source does in the worst month; none where no month can be told.</param>
public sealed record PlanEnergy(EnergyInput Input, ClimateShare Climate, ImmutableArray<VisitMonth> Months, EnergySample Sample, ImmutableArray<EnergyWeight> Weights)
{
    private const int YearCount = 400;

    /// <summary>The month with the least charge, of those that can be told; the most unmet where several are empty. Null where none can be.</summary>
    public VisitMonth? Worst => Months.OrderBy(month => month.Days.LeastFraction).ThenByDescending(month => month.Days.Totals.UnmetWh).FirstOrDefault();

    /// <summary>The month of the season in which it most often runs below the reserve, of those that can be told; null where none can be.</summary>
    public SampledMonth? WorstChance => Sample.Months.Where(month => Input.Cycle.Has(month.Month) && double.IsFinite(month.ChanceFraction))
        .OrderByDescending(month => month.ChanceFraction).ThenBy(month => month.DullFraction).FirstOrDefault();

    /// <summary>Months of the season whose days cannot be told: they hang on a month that is brighter than a clear sky.</summary>
    public ImmutableArray<int> UntoldMonths => [.. Season(Input).Except(Months.Select(month => month.Month))];

    /// <summary>Months of the season whose chance cannot be told, likewise.</summary>
    public ImmutableArray<int> UntoldChances => [.. Season(Input).Where(month => !double.IsFinite(Sample.Months[month - 1].ChanceFraction))];

    /// <summary>Reckons it.</summary>
    public static PlanEnergy Of(EnergyInput input, CancellationToken token)
    {
        ArgumentNullException.ThrowIfNull(input);
        EnergySimulation simulation = EnergySimulation.Of(input);
        VisitMonth Visit(EnergySimulation of, int month) => VisitEnergy.In(of, month, input.Cycle.UseDayCount);
        PlanEnergy Told(EnergySimulation of, IEnumerable<VisitMonth?> months, EnergySample sample)
        {
            PlanEnergy energy = new(input, simulation.Climate, [.. months.OfType<VisitMonth>()], sample, []);
            return energy.Worst is { } worst ? energy with { Weights = VisitEnergy.Weights(of, worst.Month, input.Cycle.UseDayCount) } : energy;
        }

        if (simulation.Climate.TooBrightMonths.IsEmpty)
        {
            return Told(simulation, Season(input).Select(month => Visit(simulation, month)), EnergySampling.Calculate(simulation, YearCount, token: token));
        }

        (EnergySimulation dark, EnergySimulation clear) = simulation.Ends();
        return Told(
            dark, Season(input).Select(month => VisitEnergy.Sure(Visit(dark, month), Visit(clear, month))),
            EnergySampling.Sure(EnergySampling.Calculate(dark, YearCount, token: token), EnergySampling.Calculate(clear, YearCount, token: token)));
    }

    private static IEnumerable<int> Season(EnergyInput input) => Enumerable.Range(1, 12).Where(input.Cycle.Has);
}
