using System.Collections.Immutable;
using System.Globalization;
using Orlop.Electrics.Energy;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Energy.Checks;

/// <summary>How often a month of the plan's season runs below the reserve, over years of drawn weather.</summary>
public sealed class ChanceBelowReserveCheck : ICheck<EnergyView>
{
    private const double SureDeviations = 2;

    public CheckDescription Description { get; } = new(
        "chance-below-reserve",
        "The reserve is seldom touched",
        "For each day plan: the share of drawn years in which the charge is below the reserve at least once in a month, the worst month of its season, against the chance the owner bears. Where the number of years cannot tell it from the chance borne, it is tight at best.",
        []);

    public IEnumerable<Finding> Run(EnergyView view) => view.Plans.Select(Judge);

    private Finding Judge(PlanResult plan)
    {
        if (EnergyLines.CannotTell(Description, plan) is { } unknown)
        {
            return unknown;
        }

        if (plan.Plan.MostChanceFraction is not { } most)
        {
            return Unknown(Description, plan.Plan.Id, null, Sentence.Of($"{plan.Plan.Title}: nobody said what chance of running below the reserve is borne"), [new FindingInput(plan.Plan.Id, "mostChanceFraction", IsMissing: true)]);
        }

        ImmutableArray<int> untold = plan.Energy!.UntoldChances;
        if (plan.Energy.WorstChance is not { } worst || (!untold.IsEmpty && Verdicts.Of(worst.ChanceFraction, most.Value) != Verdict.Fails))
        {
            return EnergyLines.TooBright(Description, plan, untold);
        }

        EnergySample sample = plan.Energy.Sample;
        Verdict verdict = Verdicts.Of(worst.ChanceFraction, most.Value);
        bool isNear = worst.ChanceFraction + (SureDeviations * worst.ChanceDeviationFraction) > most.Value;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = plan.Plan.Id,
            Verdict = verdict == Verdict.Holds && isNear ? Verdict.Tight : verdict,
            UseFraction = Verdicts.UseOf(worst.ChanceFraction, most.Value),
            Headline = Sentence.Of($"{plan.Plan.Title}: in {EnergyLines.MonthName(worst.Month)}, the worst month, {Fraction(worst.ChanceFraction)} of years run below the reserve; {Fraction(most.Value)} is borne"),
            Working =
            [
                .. EnergyLines.OfInput(plan, worst.Month),
                .. EnergyLines.OfTooBright(plan, untold),
                new WorkingLine("Years drawn", "days of weather about each month's mean, a day like the last three times in ten; hourly steps", new Amount(sample.YearCount, "Count"), "Bendt, Collares-Pereira and Rabl 1981; likeness of days common practice", true),
                new WorkingLine("Below the reserve", string.Create(CultureInfo.InvariantCulture, $"share of years, at least once in {EnergyLines.MonthName(worst.Month)}"), Fraction(worst.ChanceFraction), "battery stepped through"),
                new WorkingLine("How sure", "one standard deviation, from the number of years", Fraction(worst.ChanceDeviationFraction), "binomial"),
                new WorkingLine("Least charge of the middle year", "", Fraction(worst.MiddleFraction), "battery stepped through"),
                new WorkingLine("Least charge that one year in twenty does not reach", "", Fraction(worst.DullFraction), "battery stepped through"),
                new WorkingLine("Chance borne", "", Fraction(most.Value), "as typed"),
                Use(worst.ChanceFraction, most.Value),
            ],
            Inputs = [.. EnergyLines.Inputs(plan), new FindingInput(plan.Plan.Id, "mostChanceFraction")],
        };
    }
}
