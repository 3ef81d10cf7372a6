using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Orlop.Electrics.Energy;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop energy</c>: each day plan of a boat, month by month, how often it runs short, what can be run besides, what weighs most.</summary>
internal static class EnergyCommand
{
    private const int FormatVersion = 2;

    public static Command Make(CommandStreams streams) => LoadedInput.Command(
        "energy", "Tell how a battery fares through the days of each plan and the year: least charge, chance of running short, what can be run besides, what weighs most.", streams, (input, form, units) =>
        {
            EnergyView view = new(input.View.Boat, Practice.Of(input.View.Boat, input.Memo), input.Memo, CancellationToken.None);
            switch (form)
            {
                case LoadedInput.OutputForm.Json:
                    streams.Out.WriteLine(Json(input, view));
                    break;
                case LoadedInput.OutputForm.Csv:
                    WriteCsv(streams.Out, view);
                    break;
                default:
                    WriteText(streams.Out, view, UnitsOption.Of(units));
                    break;
            }
        });

    private static void WriteText(TextWriter output, EnergyView view, DisplayUnits units)
    {
        string Text(double? value, string suffix) => value is { } known && double.IsFinite(known) ? QuantityText.Format(known, suffix, units, UnitsOption.Culture).Replace('\u00A0', ' ') : "?";
        if (view.Plans.IsEmpty)
        {
            output.WriteLine("She has no day plan. One says which battery, which climate, and which condition she is in at which hours.");
        }

        foreach (PlanResult plan in view.Plans)
        {
            output.WriteLine(plan.Plan.Title);
            foreach (FindingInput missing in plan.Input.Missing)
            {
                output.WriteLine($"  {(missing.IsMissing ? "not given" : "in the way")}: {MissingWords.Of(missing, plan.Boat)}");
            }

            foreach (int bright in plan.Energy?.Climate.TooBrightMonths ?? [])
            {
                output.WriteLine($"  month {bright} of the climate has more light than a clear sky gives at that latitude: {Text(plan.Energy!.Input.Climate.SunWhPerM2[bright - 1], "WhPerM2")} a day, where it can have {Text(plan.Energy.Climate.ClearDayWhPerM2[bright - 1], "WhPerM2")} at most; what hangs on it cannot be told");
            }

            if (plan.Energy is not { } energy)
            {
                output.WriteLine();
                continue;
            }

            output.WriteLine(energy.Input.Climate.Clock is { } clock ? $"  hours by her clock, by which the sun is highest about {Text(clock.MeanNoonHour, "Hour")}" : "  hours by the sun's clock");
            output.WriteLine($"  {"month",5}{"least",10}{"lasts",10}{"spare",12}{"unmet",10}{"chance",10}{"± ",8}");
            foreach (int number in energy.Months.Select(month => month.Month).Concat(energy.UntoldMonths).Order())
            {
                VisitMonth? month = energy.Months.FirstOrDefault(one => one.Month == number);
                SampledMonth chance = energy.Sample.Months[number - 1];
                string lasts = month switch
                {
                    null => "?",
                    { ReserveAtHour: { } hours } => (hours / 24).ToString("0.0 d", UnitsOption.Culture),
                    { ReserveNotBeforeHour: { } least } => (least / 24).ToString("> 0.0 d", UnitsOption.Culture),
                    _ => $"> {VisitEnergy.MostDays} d",
                };
                output.WriteLine($"  {number,5}{Text(month?.Days.LeastFraction, "Fraction"),10}{lasts,10}{Text(month?.SpareWh, "Wh"),12}{Text(month?.Days.Totals.UnmetWh, "Wh"),10}{Text(chance.ChanceFraction, "Fraction"),10}{Text(chance.ChanceDeviationFraction, "Fraction"),8}");
            }

            if (energy.Worst is not { } worst)
            {
                output.WriteLine();
                continue;
            }

            output.WriteLine($"  What weighs most in month {worst.Month}, a day, and the least charge without it:");
            foreach (EnergyWeight weight in energy.Weights.Take(8))
            {
                output.WriteLine($"  {Text(weight.DailyWh, "Wh"),12}{Text(weight.LeastWithoutFraction, "Fraction"),10}  {(weight.IsSource ? "gives" : "takes")}: {view.TitleOf(weight.Id)}");
            }

            // The month that the page opens with; where nothing is left over in it, the one with the most.
            VisitMonth most = worst.SpareWh > 0 ? worst : energy.Months.MaxBy(month => month.SpareWh)!;
            output.WriteLine(most.SpareWh > 0 ? $"  What can be run besides in month {most.Month}, {(most == worst ? "the month of least charge" : $"that with the most to spare; nothing in month {worst.Month}, that of least charge")}, one of them:" : "  Nothing can be run besides in any month.");
            foreach (RunTime run in most.SpareWh > 0 ? plan.RunTimes(most.Month) : [])
            {
                string how = run.WhyNot ?? (run.PackCount is { } packs ? $"{packs} packs filled" : Lasting(run.RunS!.Value));
                output.WriteLine($"  {how,24}  {run.Title}");
            }

            output.WriteLine();
        }

        if (!view.Plans.IsEmpty && !view.InNoPlan.IsEmpty)
        {
            output.WriteLine($"In no day plan, and in none of these numbers: {string.Join(", ", view.InNoPlan.Select(load => load.Title))}.");
        }

        output.WriteLine(Note);
    }

    // No longer than it lasts: the last unit is cut, not rounded up.
    private static string Lasting(double seconds) => seconds switch
    {
        < 90 * 60 => string.Create(UnitsOption.Culture, $"{Math.Floor(seconds / 60):0} min"),
        < 72 * 3600 => string.Create(UnitsOption.Culture, $"{Math.Floor(seconds / 360) / 10:0.#} h"),
        _ => string.Create(UnitsOption.Culture, $"{Math.Floor(seconds / 8640) / 10:0.#} days"),
    };

    private const string Note = "Least: least charge in the plan's days, in mean weather, of what can be drawn. Lasts: until the reserve, if the days went on. Spare: over the reserve at the lowest moment. Chance: share of drawn years below the reserve in that month.";

    private static void WriteCsv(TextWriter output, EnergyView view)
    {
        output.WriteLine("plan,month,least_fraction,days_to_reserve,spare_wh,unmet_wh,sun_wh_per_day,engine_wh_per_day,shore_wh_per_day,load_wh_per_day,chance_fraction,chance_deviation_fraction,dull_least_fraction,middle_least_fraction,days_to_reserve_at_least");
        foreach (PlanResult plan in view.Plans)
        {
            foreach (VisitMonth month in plan.Energy?.Months ?? [])
            {
                SampledMonth chance = plan.Energy!.Sample.Months[month.Month - 1];
                EnergyTotals totals = month.Days.Totals;
                double days = plan.Energy.Input.Cycle.UseDayCount;
                output.WriteLine(string.Join(',', new[]
                {
                    plan.Plan.Id, R(month.Month), R(month.Days.LeastFraction), R(month.ReserveAtHour / 24), R(month.SpareWh), R(totals.UnmetWh), R(totals.SunWh / days), R(totals.EngineWh / days), R(totals.ShoreWh / days),
                    R((totals.ServedWh + totals.UnmetWh) / days), R(chance.ChanceFraction), R(chance.ChanceDeviationFraction), R(chance.DullFraction), R(chance.MiddleFraction), R(month.ReserveNotBeforeHour / 24),
                }.Select(Csv.Cell)));
            }
        }
    }

    private static string Json(LoadedInput input, EnergyView view) => new JsonObject
    {
        ["energyFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["inNoPlan"] = new JsonArray([.. view.InNoPlan.Select(load => JsonValue.Create(load.Id))]),
        ["plans"] = new JsonArray([.. view.Plans.Select(Plan)]),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Plan(PlanResult plan) => new()
    {
        ["plan"] = plan.Plan.Id,
        ["missing"] = new JsonArray([.. plan.Input.Missing.Select(missing => new JsonObject { ["thing"] = missing.ThingId, ["field"] = missing.Field })]),
        ["tooBright"] = new JsonArray([.. (plan.Energy?.Climate.TooBrightMonths ?? []).Select(month => new JsonObject
        {
            ["month"] = month,
            ["sunWhPerM2"] = plan.Energy!.Input.Climate.SunWhPerM2[month - 1],
            ["mostWhPerM2"] = plan.Energy.Climate.ClearDayWhPerM2[month - 1],
        })]),
        ["untoldMonths"] = new JsonArray([.. (plan.Energy?.UntoldMonths ?? []).Select(month => JsonValue.Create(month))]),
        ["meanNoonHour"] = plan.Energy?.Input.Climate.Clock?.MeanNoonHour,
        ["yearsDrawn"] = plan.Energy?.Sample.YearCount,
        ["months"] = new JsonArray([.. (plan.Energy?.Months ?? []).Select(month => Month(plan.Energy!, month))]),
        ["weights"] = new JsonArray([.. (plan.Energy?.Weights ?? []).Select(weight => new JsonObject
        {
            ["thing"] = weight.Id,
            ["gives"] = weight.IsSource,
            ["dailyWh"] = weight.DailyWh,
            ["leastWithoutFraction"] = weight.LeastWithoutFraction,
        })]),
        ["runs"] = new JsonArray([.. (plan.Energy?.Worst is { } worst ? plan.RunTimes(worst.Month) : []).Select(run => new JsonObject
        {
            ["thing"] = run.ThingId,
            ["runS"] = run.RunS,
            ["packs"] = run.PackCount,
            ["whyNot"] = run.WhyNot,
        })]),
    };

    private static JsonObject Month(PlanEnergy energy, VisitMonth month)
    {
        SampledMonth chance = energy.Sample.Months[month.Month - 1];
        EnergyTotals totals = month.Days.Totals;
        return new JsonObject
        {
            ["month"] = month.Month,
            ["leastFraction"] = month.Days.LeastFraction,
            ["daysToReserve"] = month.ReserveAtHour / 24,
            ["daysToReserveAtLeast"] = month.ReserveNotBeforeHour / 24,
            ["spareWh"] = month.SpareWh,
            ["sunWh"] = totals.SunWh,
            ["engineWh"] = totals.EngineWh,
            ["shoreWh"] = totals.ShoreWh,
            ["servedWh"] = totals.ServedWh,
            ["unmetWh"] = totals.UnmetWh,
            ["lostWh"] = totals.LostWh,
            ["quickWh"] = totals.QuickWh,
            ["storedWh"] = totals.StoredWh,
            ["chanceFraction"] = Known(chance.ChanceFraction),
            ["chanceDeviationFraction"] = Known(chance.ChanceDeviationFraction),
            ["dullLeastFraction"] = Known(chance.DullFraction),
            ["middleLeastFraction"] = Known(chance.MiddleFraction),
        };
    }

    // JSON has no word for what is no number.
    private static double? Known(double value) => double.IsFinite(value) ? value : null;

    private static string R(double? value) => value is { } known && double.IsFinite(known) ? known.ToString("R", CultureInfo.InvariantCulture) : "";
}
