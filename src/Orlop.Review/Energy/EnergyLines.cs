using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Energy;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Energy;

/// <summary>Lines and findings that the checks of energy write alike.</summary>
internal static class EnergyLines
{
    public static Amount Wh(double value) => new(value, "Wh");

    private static Amount Light(double value) => new(value, "WhPerM2");

    public static string MonthName(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    /// <summary>The finding where something is missing; null where nothing is.</summary>
    public static Finding? CannotTell(CheckDescription check, PlanResult plan) => plan.Energy is not null ? null
        : FindingLines.Unknown(check, plan.Plan.Id, null, Sentence.Of($"{plan.Plan.Title}: what the battery does cannot be told while something is missing"), plan.Input.Missing);

    /// <summary>The finding where months of the season hang on one that is brighter than a clear sky, and those that can be told do not settle it.</summary>
    public static Finding TooBright(CheckDescription check, PlanResult plan, ImmutableArray<int> untold)
    {
        int month = plan.Energy!.Climate.TooBrightMonths[0], others = plan.Energy.Climate.TooBrightMonths.Length - 1;
        string more = others == 0 ? "a number is wrong" : $"a number is wrong, and {others} more {(others == 1 ? "month is" : "months are")} too bright";
        return FindingLines.Unknown(
            check, plan.Plan.Id, null,
            Sentence.Of($"{plan.Plan.Title}: {MonthName(month)} of its climate has more light than a clear sky gives at that latitude: {FoundLight(plan, month)} a day, where it can have {MostLight(plan, month)} at most; {more}, and {Untold(untold)}"),
            [new FindingInput(plan.Plan.Climate!, "months")]);
    }

    /// <summary>The light of a month of the plan's climate, and the most that it can have.</summary>
    public static Amount FoundLight(PlanResult plan, int month) => Light(plan.Energy!.Input.Climate.SunWhPerM2[month - 1]);

    /// <summary>The light of a clear day in a month.</summary>
    public static Amount MostLight(PlanResult plan, int month) => Light(plan.Energy!.Climate.ClearDayWhPerM2[month - 1]);

    /// <summary>Months that are too bright, beside a finding that does not hang on them or fails all the same.</summary>
    public static IEnumerable<WorkingLine> OfTooBright(PlanResult plan, ImmutableArray<int> untold)
    {
        foreach (int month in plan.Energy!.Climate.TooBrightMonths)
        {
            yield return new WorkingLine("In the way", $"{MonthName(month)} of the climate has more light than a clear sky, which gives {FindingLines.N(MostLight(plan, month).Value)} Wh/m² a day: what hangs on it is not told", FoundLight(plan, month), "Haurwitz 1945");
        }

        if (!untold.IsEmpty)
        {
            yield return new WorkingLine("Not told", $"{Named(untold)}; may be worse", null, "");
        }
    }

    private static string Untold(ImmutableArray<int> months) => months.Length == 12 ? "no month can be told" : $"{Named(months)} cannot be told";

    private static string Named(ImmutableArray<int> months) => months.Length switch
    {
        1 => MonthName(months[0]),
        _ => $"{string.Join(", ", months.Take(months.Length - 1).Select(MonthName))} and {MonthName(months[^1])}",
    };

    /// <summary>Climate, battery, and what was taken for granted.</summary>
    public static IEnumerable<WorkingLine> OfInput(PlanResult plan, int month)
    {
        EnergyInput input = plan.Energy!.Input;
        BatteryStore battery = input.Battery;
        double air = input.Climate.AirC[month - 1];
        yield return new WorkingLine("Light on the horizontal", $"{input.Climate.Subject}, mean day of {MonthName(month)}", new Amount(input.Climate.SunWhPerM2[month - 1], "WhPerM2"), "climate of the plan");
        if (input.Climate.Clock is { } clock)
        {
            yield return new WorkingLine("The sun is highest", $"12 h + {FindingLines.N(clock.FromUtcHour)} h from UTC − {FindingLines.N(clock.LongitudeDeg)}° ÷ 15°/h, mean of the year", new Amount(clock.MeanNoonHour, "Hour"), "clock of the place");
        }

        yield return new WorkingLine("Of a clear sky", "that light over a clear day's", FindingLines.Fraction(plan.Energy.Climate.ShareFraction[month - 1]), "Haurwitz 1945");
        yield return new WorkingLine("Capacity", $"{FindingLines.N(battery.NewWh)} Wh new × {FindingLines.N(battery.LeftFraction)} left", Wh(battery.NewWh * battery.LeftFraction), "nameplate, nominal voltage");
        yield return new WorkingLine("Of it can be drawn in the cold", $"air of {FindingLines.N(air)} °C", FindingLines.Fraction(battery.Kind.UsableFractionAt(air)), "common practice, no source", true);
        yield return new WorkingLine("Stored of what is put in", battery.Kind.Name, FindingLines.Fraction(battery.ChargeFraction), battery.Kind.Source, true);
        yield return new WorkingLine("Given of what is drawn", battery.Kind.Name, FindingLines.Fraction(battery.DischargeFraction), battery.Kind.Source, true);
        if (battery.PeukertRatio > 1)
        {
            yield return new WorkingLine("Peukert's exponent", $"t = H (C/(I H))^k, H {FindingLines.N(battery.RatedHour)} h; of the mean current of each step, nothing gained below the rated one", new Amount(battery.PeukertRatio, "Ratio"), "as typed");
        }

        yield return new WorkingLine("Charge at the start", "", FindingLines.Fraction(input.StartFraction), "as typed");
        foreach (string assumed in plan.Input.Assumed)
        {
            yield return new WorkingLine("Taken for granted", assumed, null, "");
        }

        foreach (string left in plan.Input.LeftOut)
        {
            yield return new WorkingLine("Not counted", $"{left}: on by the plan, and nothing feeds it", null, "");
        }
    }

    /// <summary>What came in and went out in a day.</summary>
    public static IEnumerable<WorkingLine> OfBooks(EnergyTotals totals, int dayCount)
    {
        foreach ((string what, double wh) in new[]
        {
            ("Loads ask", totals.ServedWh + totals.UnmetWh), ("The sun gives", totals.SunWh), ("The engine's chargers give", totals.EngineWh), ("Shore chargers give", totals.ShoreWh), ("The battery loses", totals.LostWh),
        })
        {
            yield return new WorkingLine(what, "mean of a day", Wh(wh / dayCount), "battery stepped through");
        }

        if (totals.QuickWh > 0)
        {
            yield return new WorkingLine("Quick discharge takes", "mean of a day, beside what the battery loses", Wh(totals.QuickWh / dayCount), "Peukert");
        }
    }

    /// <summary>The inputs that a plan's numbers rest on.</summary>
    public static ImmutableArray<FindingInput> Inputs(PlanResult plan)
    {
        BatteryBank bank = plan.Boat.Find<BatteryBank>(plan.Plan.Battery!)!;
        return
        [
            Of(plan.Plan.Id, "startFraction", plan.Plan.StartFraction), Of(plan.Plan.Id, "reserveFraction", plan.Plan.ReserveFraction), new(plan.Plan.Id, "hours"),
            Of(bank.Id, "capacityAh", bank.CapacityAh), Of(bank.Id, "leftFraction", bank.LeftFraction), .. bank.PeukertRatio is { } peukert ? [Of(bank.Id, "peukertRatio", peukert)] : Array.Empty<FindingInput>(), new(plan.Plan.Climate!, "months"),
        ];
    }

    private static FindingInput Of(string id, string field, Quantity? value) => new(id, field, IsGuess: value?.Known is Knowledge.Guessed or Knowledge.Estimated);
}
