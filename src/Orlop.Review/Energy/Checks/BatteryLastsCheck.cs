using System.Collections.Immutable;
using System.Globalization;
using Orlop.Electrics.Energy;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Energy.Checks;

/// <summary>The battery lasts the days of a plan, in the mean weather of the worst month.</summary>
public sealed class BatteryLastsCheck : ICheck<EnergyView>
{
    public CheckDescription Description { get; } = new(
        "battery-lasts-plan",
        "The battery lasts the days of the plan",
        "For each day plan: how far down the charge goes in its days, in the middle of each month of its season and in that month's mean weather, against the reserve the owner wants to stay. The use is what is drawn down, of what can be drawn, over what may be.",
        []);

    public IEnumerable<Finding> Run(EnergyView view) => view.Plans.Select(Judge);

    private Finding Judge(PlanResult plan)
    {
        if (EnergyLines.CannotTell(Description, plan) is { } unknown)
        {
            return unknown;
        }

        ImmutableArray<int> untold = plan.Energy!.UntoldMonths;
        if (plan.Energy.Worst is not { } worst)
        {
            return EnergyLines.TooBright(Description, plan, untold);
        }

        EnergyInput input = plan.Energy.Input;
        double drawn = 1 - worst.Days.LeastFraction, allowed = 1 - input.ReserveFraction;
        string days = string.Create(CultureInfo.InvariantCulture, $"{input.Cycle.UseDayCount} {(input.Cycle.UseDayCount == 1 ? "day" : "days")}");
        double unmet = worst.Days.Totals.UnmetWh;
        Verdict verdict = unmet > 0 ? Verdict.Fails : Verdicts.Of(drawn, allowed);
        return !untold.IsEmpty && verdict != Verdict.Fails ? EnergyLines.TooBright(Description, plan, untold) : new Finding
        {
            CheckId = Description.Id,
            SubjectId = plan.Plan.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(drawn, allowed),
            Headline = unmet > 0
                ? Sentence.Of($"{plan.Plan.Title}: in {days} of mean {EnergyLines.MonthName(worst.Month)} weather the battery is empty, and {EnergyLines.Wh(unmet)} is not served")
                : Sentence.Of($"{plan.Plan.Title}: in {days} of mean {EnergyLines.MonthName(worst.Month)} weather the charge goes down to {Fraction(worst.Days.LeastFraction)}; {Fraction(input.ReserveFraction)} is to stay"),
            Working =
            [
                .. EnergyLines.OfInput(plan, worst.Month),
                .. EnergyLines.OfTooBright(plan, untold),
                .. EnergyLines.OfBooks(worst.Days.Totals, input.Cycle.UseDayCount),
                new WorkingLine("Least charge", string.Create(CultureInfo.InvariantCulture, $"of what can be drawn, from day 15 of {EnergyLines.MonthName(worst.Month)}, steps of 15 min"), Fraction(worst.Days.LeastFraction), "battery stepped through"),
                new WorkingLine("Reserve", "", Fraction(input.ReserveFraction), "as typed"),
                Use(drawn, allowed),
            ],
            Inputs = EnergyLines.Inputs(plan),
        };
    }
}
