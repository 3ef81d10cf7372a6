using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Tables;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Energy;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Energy;

public sealed class EnergyCheckTests
{
    private const string Lasts = "battery-lasts-plan";
    private const string Chance = "chance-below-reserve";
    private const string Plan = "sampling-days";

    private static readonly BoatModel Boat = ExampleBoats.Read("sandgrouse");

    private static readonly ReviewEngine Engine = new([new EnergyDiscipline()]);

    [Fact]
    public void Demo_SamplingDays_Hold()
    {
        Assert.Equal(Verdict.Holds, Find(Boat, Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Holds, Find(Boat, Chance, Plan).Verdict);
    }

    /// <summary>The freezer is on while she samples; a winch that is on in a condition of no plan's hours is in none.</summary>
    [Fact]
    public void InNoPlan_NamesWhatNoPlanHasOn()
    {
        string unplanned = Boat.All<Condition>().Select(condition => condition.Id).First(id => !Boat.All<DayPlan>().SelectMany(plan => plan.Hours).Any(hours => hours.Condition == id));
        ElectricLoad winch = new() { Id = "winch", Behaviour = LoadBehaviour.Current, NominalV = 24, Uses = [new LoadUse(unplanned, 0.25)] }, counted = winch with { Id = "counted", Uses = [new LoadUse(Boat.All<DayPlan>().First().Hours[0].Condition, 1)] },
            never = counted with { Id = "never", Uses = [new LoadUse(counted.Uses[0].Condition, 0)] };
        string[] ids = [.. new EnergyView(Boat.With(winch, counted, never), null, new Memo(), default).InNoPlan.Select(load => load.Id)];

        Assert.Contains("winch", ids);
        Assert.Contains("never", ids);
        Assert.DoesNotContain("counted", ids);
        Assert.DoesNotContain("freezer", ids);
    }

    // She lies at anchor from 18 h to 8 h and from 12 h to 15 h. 45 W, no converter between: W × share × hours, by hand.
    [Theory]
    [InlineData(null, null, 0.5, 17)]
    [InlineData(18, 23, 1.0, 5)]
    [InlineData(22, 6, 0.5, 8)]
    [InlineData(7, 13, 1.0, 2)]
    [InlineData(9, 9, 0.25, 17)]
    [InlineData(8, 12, 1.0, 0)]
    public void HoursOfAUse_HoldInItsConditionAlone(int? from, int? to, double duty, int hourCount)
    {
        BoatModel boat = With<ElectricLoad>("heater", load => load with { RunningW = 45, RunningA = null, Uses = [new LoadUse("at-anchor", duty, from, to)] });
        double[] watts = [.. Of(boat).Input.Input!.Loads.Where(load => load.Id == "heater").SelectMany(load => load.InUseW)];
        Assert.Equal(hourCount, watts.Count(power => power > 0));
        Assert.Equal(45 * duty * hourCount, watts.Sum(), 1e-9);
    }

    // Idle power of a converter goes with the hours of what hangs on it.
    [Fact]
    public void HoursOfAUse_BehindTheInverter_ItsIdlePowerGoesByThem()
    {
        BoatModel boat = Boat.WithThings(Boat.Things.Select(thing => thing is ElectricLoad { IsAc: true } load ? load with { Uses = load.Id == "kettle" ? [new LoadUse("at-anchor", 0.25, 6, 8)] : [] } : thing));
        double idle = boat.Find<Inverter>("inverter")!.IdleW!.Value;
        double[] watts = [.. Of(boat).Input.Input!.Loads.Single(load => load.Id == "inverter").InUseW];
        Assert.Equal(Enumerable.Range(0, 24).Select(hour => hour is 6 or 7 ? idle : 0), watts);
    }

    [Fact]
    public void HalfAnHourOfAUse_IsUnknownAndNamed()
    {
        Finding finding = Find(With<ElectricLoad>("heater", load => load with { Uses = [new LoadUse("at-anchor", 0.5, 22)] }), Lasts, Plan);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => input is { ThingId: "heater", Field: "uses" });
    }

    // At the berth the demo's plan has her from 8 h to 17 h.
    [Theory]
    [InlineData(18, 20, true)]
    [InlineData(16, 20, false)]
    public void InNoPlan_CountsTheHoursOfAUse(int from, int to, bool isInNone)
    {
        BoatModel boat = With<ElectricLoad>("heater", load => load with { Uses = [new LoadUse("at-berth", 1, from, to)] });
        Assert.Equal(isInNone, new EnergyView(boat, null, new Memo(), default).InNoPlan.Any(load => load.Id == "heater"));
    }

    // Energy balance: what came in is served, lost, aged or in store, to 1e-9 of the turnover.
    [Fact]
    public void HoursOfUses_LeaveTheBooksClosed()
    {
        BoatModel boat = With<ElectricLoad>("heater", load => load with { Uses = [new LoadUse("at-anchor", 0.8, 21, 7)] });
        Assert.All(Of(boat).Energy!.Months, month =>
        {
            EnergyTotals books = month.Days.Totals;
            double given = books.SunWh + books.EngineWh + books.ShoreWh, gone = books.ServedWh + books.LostWh + books.AgedWh + books.StoredWh;
            Assert.InRange(given - gone, -1e-9 * (given + books.ServedWh), 1e-9 * (given + books.ServedWh));
        });
    }

    [Fact]
    public void Lasts_ReserveAtTheLeastCharge_IsTight_AndAboveItFails()
    {
        double least = new EnergyView(Boat, null, new Memo(), default).Plans.Single(plan => plan.Plan.Id == Plan).Energy!.Worst!.Days.LeastFraction;
        Assert.Equal(Verdict.Tight, Find(With<DayPlan>(Plan, plan => plan with { ReserveFraction = least - 0.001 }), Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Fails, Find(With<DayPlan>(Plan, plan => plan with { ReserveFraction = least + 0.001 }), Lasts, Plan).Verdict);
    }

    [Fact]
    public void EmptyBattery_WithoutAReserve_StillFails()
    {
        BoatModel boat = With<DayPlan>(Plan, plan => plan with { ReserveFraction = 0, UseDayCount = 10 });
        boat = boat.WithThings(boat.Things.Select(thing => thing is BatteryBank { Id: "bank" } bank ? bank with { CapacityAh = 20 } : thing));
        Finding finding = Find(boat, Lasts, Plan);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("not served", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Missing => new()
    {
        { "bank", "capacityAh", Lasts }, { "solar", "panels", Lasts }, { "solar", "efficiencyFraction", Chance }, { "converter", "efficiencyFraction", Lasts }, { "inverter", "idleW", Chance },
        { "freezer", "runningW", Lasts }, { Plan, "reserveFraction", Lasts }, { Plan, "startFraction", Chance }, { Plan, "battery", Lasts }, { Plan, "climate", Lasts }, { Plan, "hours", Chance },
        { Plan, "useDayCount", Lasts }, { Plan, "lyingW", Lasts }, { Plan, "mostChanceFraction", Chance }, { "ytterskaren", "latitudeDeg", Lasts }, { "ytterskaren", "months", Chance },
    };

    [Theory]
    [MemberData(nameof(Missing))]
    public void MissingInput_IsUnknownAndNamed(string thing, string field, string check)
    {
        Finding finding = Find(Without(thing, field), check, Plan);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => input.ThingId == thing && input.Field == field && input.IsMissing);
    }

    [Fact]
    public void MonthWithoutSun_TakesTheTable_OnlyNearItsLatitude()
    {
        BoatModel Climate(string? table) => With<Climate>("ytterskaren", climate => climate with { Table = table, Months = [.. climate.Months.Select(month => month with { SunWhPerM2 = null })] });
        Assert.NotEqual(Verdict.Unknown, Find(Climate("uk-shetland"), Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Unknown, Find(Climate("us-miami"), Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Unknown, Find(Climate("nowhere"), Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Unknown, Find(Climate(null), Lasts, Plan).Verdict);
    }

    // The same numbers, once from the built-in table and once imported as a published table of the place prints them: the same year, to the last bit.
    [Theory]
    [InlineData("sun_wh_per_m2", 1)]
    [InlineData("sun_kwh_per_m2", 1000)]
    public void ImportedMonths_GiveTheYearOfTheTable(string column, double per)
    {
        BoatModel built = With<Climate>("ytterskaren", climate => climate with { Table = "uk-shetland", Months = [.. climate.Months.Select(month => month with { SunWhPerM2 = null })] });
        BoatModel bare = With<Climate>("ytterskaren", climate => climate with { Months = [] });
        IEnumerable<string> rows = built.Find<Climate>("ytterskaren")!.Months.Select(month =>
            FormattableString.Invariant($"ytterskaren,{month.CalendarMonth},{month.AirC},{ClimateTable.Places["uk-shetland"].SunWhPerM2[month.CalendarMonth - 1] / per}"));
        TableImport import = BoatTable.Import(bare, "climate-months", $"climate,calendar_month,air_c,{column}\n{string.Join('\n', rows)}\n");
        Assert.Empty(import.Problems);
        PlanResult expected = Of(built), found = Of(BoatEdits.Apply(bare, import.Edits).Boat);

        Assert.Equal(expected.Energy!.Months.Select(month => month.Days.LeastFraction), found.Energy!.Months.Select(month => month.Days.LeastFraction));
        Assert.Equal(expected.Energy.Sample!.Months, found.Energy.Sample!.Months);
        Assert.NotEqual(Of(Boat).Energy!.Months.Select(month => month.Days.LeastFraction), found.Energy.Months.Select(month => month.Days.LeastFraction));
    }

    // 60.5° N in December: 0.9 kWh/m² a day outside the air (Duffie and Beckman, fig. 1.10.1, as read: about 3 MJ/m²).
    [Fact]
    public void ImportedLight_AboveWhatTheSunGivesThere_IsRefused()
    {
        TableImport import = BoatTable.Import(Boat, "climate-months", BoatTable.Export(Boat, "climate-months").Replace("ytterskaren,12,", "ytterskaren,12,0,2000,", StringComparison.Ordinal));
        TableProblem problem = Assert.Single(import.Problems, one => one.Column == "sun_wh_per_m2");
        Assert.Equal((13, "2000 Wh/m2"), (problem.Row, problem.Found));
        Assert.Contains("in month 12 at 60.5°", problem.Allowed, StringComparison.Ordinal);
    }

    // 12 h + 1 h from UTC − 18.75°/15 = 11.75 h. One of the two alone cannot be used.
    [Fact]
    public void Clock_SetsTheHourOfNoon_AndHalfOfItIsUnknown()
    {
        BoatModel Placed(double? longitude, double? ahead) => With<Climate>("ytterskaren", climate => climate with { LongitudeDeg = longitude is { } east ? east : (Quantity?)null, ClockFromUtcHour = ahead is { } hours ? hours : (Quantity?)null });
        Finding told = Find(Placed(18.75, 1), Lasts, Plan);
        Assert.Contains(told.Working, line => line is { What: "The sun is highest", Value.Value: 11.75 });
        Assert.Contains(Of(Placed(null, null)).Input.Assumed, line => line.Contains("sun's clock", StringComparison.Ordinal));
        Assert.DoesNotContain(Of(Placed(18.75, 1)).Input.Assumed, line => line.Contains("sun's clock", StringComparison.Ordinal));
        Find(Placed(18.75, null), Lasts, Plan).IsUnknownFor("ytterskaren", "clockFromUtcHour");
        Find(Placed(null, 1), Lasts, Plan).IsUnknownFor("ytterskaren", "longitudeDeg");
    }

    [Fact]
    public void ClimateBrighterThanAClearSky_IsUnknown()
    {
        BoatModel boat = With<Climate>("ytterskaren", climate => climate with { Months = [.. climate.Months.Select(month => month with { SunWhPerM2 = 9000 })] });
        Assert.Equal(Verdict.Unknown, Find(boat, Lasts, Plan).Verdict);
        Assert.Equal(Verdict.Unknown, Find(boat, Chance, Plan).Verdict);
        double[] told = [.. Find(boat, Lasts, Plan).Headline.Parts.Select(part => part.Amount).OfType<Amount>().Select(amount => amount.Value)];
        Assert.Equal(9000, told[0]);
        // 1098 W/m² times the sine of the sun's height, and less (Haurwitz 1945): over a day with the sun overhead at noon and up for 12 h that is 1098 × 24/π = 8388 Wh/m². Ytterskären lies far north of that, and January is dark.
        Assert.InRange(told[1], 100, 8388 / 4);
    }

    /// <summary>One month that is too bright: the days of the others are told as they are with any June, and only what hangs on it is unknown.</summary>
    [Fact]
    public void OneMonthTooBright_TheOthersAreTold()
    {
        BoatModel boat = JuneTooBright(Boat);
        PlanEnergy told = Of(boat).Energy!, real = Of(Boat).Energy!;
        Assert.Equal([6], told.Climate.TooBrightMonths);
        Assert.Equal([6], told.UntoldMonths);
        Assert.Equal(real.Months.Where(month => month.Month != 6).Select(month => (month.Month, month.Days.LeastFraction)), told.Months.Select(month => (month.Month, month.Days.LeastFraction)));
        Finding finding = Find(boat, Lasts, Plan);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("and June cannot be told", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // She runs below the reserve in no year, whatever light June has: the engine charges on every visit. With 40 W on between visits it is the sun that counts.
    [Theory]
    [InlineData(1.5, Verdict.Holds)]
    [InlineData(40, Verdict.Unknown)]
    public void OneMonthTooBright_ChanceIsUnknownWhereItHangsOnIt(double lyingW, Verdict verdict)
    {
        BoatModel boat = JuneTooBright(With<DayPlan>(Plan, plan => plan with { LyingW = lyingW, MostChanceFraction = 1 }));
        Assert.Equal(verdict, Find(boat, Chance, Plan).Verdict);
        Assert.Equal(verdict == Verdict.Unknown, Of(boat).Energy!.UntoldChances.Contains(6));
        Assert.DoesNotContain(5, Of(boat).Energy!.UntoldChances);
    }

    [Fact]
    public void OneMonthTooBright_AMonthThatFailsAllTheSame_Fails()
    {
        Quantity reserve = 0.97;
        BoatModel boat = JuneTooBright(With<DayPlan>(Plan, plan => plan with { ReserveFraction = reserve, MostChanceFraction = 0.01 }));
        foreach (string check in new[] { Lasts, Chance })
        {
            Finding finding = Find(boat, check, Plan);
            Assert.Equal(Verdict.Fails, finding.Verdict);
            Assert.Contains(finding.Working, line => line.What == "In the way" && line.Expression.Contains("June", StringComparison.Ordinal));
        }
    }

    // Out of her season, on which nothing hangs.
    [Fact]
    public void MonthTooBrightOutOfTheSeason_DaysAreHeldToTheLimit() =>
        Assert.Equal(Verdict.Holds, Find(JuneTooBright(With<DayPlan>(Plan, plan => plan with { FirstMonth = 8, LastMonth = 9 })), Lasts, Plan).Verdict);

    [Fact]
    public void OverlappingHours_AreUnknown() =>
        Assert.Equal(Verdict.Unknown, Find(With<DayPlan>(Plan, plan => plan with { Hours = [.. plan.Hours, new PlanHours("at-anchor", 8, 9)] }), Lasts, Plan).Verdict);

    [Fact]
    public void VisitsOftenerThanTheyLast_AreInTheWay()
    {
        Finding finding = Find(With<DayPlan>(Plan, plan => plan with { EveryDayCount = 2 }), Lasts, Plan);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => input is { ThingId: Plan, Field: "everyDayCount", IsMissing: false });
    }

    // Lead-acid that is drawn quicker than in its rated hours gives less, a loss in the books of its own; what it is rated at in fewer hours it gives at a greater current.
    [Fact]
    public void Peukert_LeavesLess_IsToldAndBooked_AndRunsForAShorterTime()
    {
        PlanResult plain = Of(Lead(null, null)), quick = Of(Lead(1.3, 100)), rated = Of(Lead(1.3, null));
        (EnergyTotals books, EnergyTotals none) = (quick.Energy!.Worst!.Days.Totals, plain.Energy!.Worst!.Days.Totals);
        Assert.Equal(0, none.QuickWh);
        Assert.True(books.QuickWh > rated.Energy!.Worst!.Days.Totals.QuickWh);
        Assert.True(quick.Energy.Worst.Days.LeastFraction < plain.Energy.Worst.Days.LeastFraction);
        Assert.InRange(books.ResidualWh, -1e-9 * books.ScaleWh, 1e-9 * books.ScaleWh);
        Assert.Contains(plain.Input.Assumed, line => line.Contains("any current", StringComparison.Ordinal));
        Assert.DoesNotContain(quick.Input.Assumed, line => line.Contains("any current", StringComparison.Ordinal));
        Finding finding = Find(Lead(1.3, 100), Lasts, Plan);
        Assert.Contains(finding.Working, line => line is { What: "Peukert's exponent", Value.Value: 1.3 });
        Assert.Contains(finding.Inputs, input => input is { ThingId: "bank", Field: "peukertRatio" });
        double Seconds(PlanResult plan) => RunTime.Of(Boat, 1000, plan.Input.Input).Single(run => run.ThingId == "angle-grinder").RunS!.Value;
        Assert.Equal(3600 * 1000 / 1205.3, Seconds(plain), 1e-6);
        Assert.True(Seconds(quick) < Seconds(plain));
    }

    // A load of the plan that takes more must not leave more.
    [Fact]
    public void LargerLoad_LeavesLess()
    {
        double Least(BoatModel boat) => new EnergyView(boat, null, new Memo(), default).Plans.Single(plan => plan.Plan.Id == Plan).Energy!.Worst!.Days.LeastFraction;
        Assert.True(Least(With<ElectricLoad>("freezer", load => load with { RunningW = 150 })) < Least(Boat));
    }

    // The engine's charger in a locker of 46 °C while the engine runs: 1 - 0.025 × (46 - 40) = 85 % of 40 A, at 25.6 V; told, and the plan has less.
    [Fact]
    public void WarmCharger_GivesLess_AndThePlanSaysSo()
    {
        BoatModel warm = With<Space>("after-locker", space => space with { AmbientC = 46, EngineRunningC = 46 });
        double Most(BoatModel boat) => Of(boat).Input.Input!.Engine.Single(power => power.Id == "dc-charger").InUseW.Max();
        Assert.Equal(0.85, Most(warm) / Most(Boat), 1e-9);
        Assert.Contains(Of(warm).Input.Assumed, words => words.Contains("gives 85 %", StringComparison.Ordinal));
        Assert.True(Of(warm).Energy!.Worst!.Days.LeastFraction <= Of(Boat).Energy!.Worst!.Days.LeastFraction);
        BoatModel unknown = warm.WithThings(warm.Things.Select(thing => thing is Charger { Id: "dc-charger" } charger ? charger with { LostPerKFraction = null } : thing));
        Assert.Contains(Of(unknown).Input.Missing, input => input is { ThingId: "dc-charger", Field: "lostPerKFraction" });
    }

    // The starter hangs on a battery of its own.
    [Fact]
    public void LoadsOfAnotherBattery_AreNotCounted() =>
        Assert.DoesNotContain(new EnergyView(Boat, null, new Memo(), default).Plans[0].Input.Input!.Loads, load => load.Id == "starter");

    [Fact]
    public void RunTimes_MoreThanTheInverterBears_SaysSo()
    {
        BoatModel boat = With<Tool>("angle-grinder", tool => tool with { RunningW = 2000 });
        RunTime run = RunTime.Of(boat, 1000).Single(one => one.ThingId == "angle-grinder");
        Assert.Equal((null, "more than the inverter's rating"), (run.RunS, run.WhyNot));
    }

    // 1100 W × 1.05 + 3e-5 × 1100² + 14 W = 1205.3 W.
    [Fact]
    public void RunTimes_Grinder_IsSpareOverWhatTheInverterTakes() =>
        Assert.Equal(3600 * 1000 / 1205.3, RunTime.Of(Boat, 1000).Single(one => one.ThingId == "angle-grinder").RunS!.Value, 1e-6);

    private static BoatModel Lead(double? peukert, double? hours) => With<BatteryBank>("bank", bank => bank with
    {
        Chemistry = BatteryChemistry.AbsorbedGlassMat,
        PeukertRatio = peukert is { } ratio ? ratio : (Quantity?)null,
        RatedHour = hours is { } rated ? rated : (Quantity?)null,
    });

    private static BoatModel JuneTooBright(BoatModel boat) => boat.WithThings(boat.Things.Select(thing => thing is Climate { Id: "ytterskaren" } climate
        ? climate with { Months = [.. climate.Months.Select(month => month.CalendarMonth == 6 ? month with { SunWhPerM2 = 11_900 } : month)] } : thing));

    private static PlanResult Of(BoatModel boat) => new EnergyView(boat, null, new Memo(), default).Plans.Single(plan => plan.Plan.Id == Plan);

    private static Finding Find(BoatModel boat, string check, string subject) =>
        Engine.Review(boat, TestContext.Current.CancellationToken).Findings.Single(finding => finding.CheckId == check && finding.SubjectId == subject).Shown;

    private static BoatModel With<T>(string id, Func<T, T> change)
        where T : Thing
    {
        Assert.NotNull(Boat.Find<T>(id));
        return Boat.WithThings(Boat.Things.Select(thing => thing is T own && own.Id == id ? change(own) : thing));
    }

    private static BoatModel Without(string id, string field) => (id, field) switch
    {
        ("bank", _) => With<BatteryBank>(id, bank => bank with { CapacityAh = null }),
        ("solar", "panels") => With<Charger>(id, charger => charger with { Panels = [] }),
        ("solar", _) => With<Charger>(id, charger => charger with { EfficiencyFraction = null }),
        ("converter", _) => With<DcConverter>(id, converter => converter with { EfficiencyFraction = null }),
        ("inverter", _) => With<Inverter>(id, inverter => inverter with { IdleW = null }),
        ("freezer", _) => With<ElectricLoad>(id, load => load with { RunningW = null }),
        ("ytterskaren", "latitudeDeg") => With<Climate>(id, climate => climate with { LatitudeDeg = null }),
        ("ytterskaren", _) => With<Climate>(id, climate => climate with { Months = [.. climate.Months.Skip(1)] }),
        (_, "reserveFraction") => With<DayPlan>(id, plan => plan with { ReserveFraction = null }),
        (_, "startFraction") => With<DayPlan>(id, plan => plan with { StartFraction = null }),
        (_, "battery") => With<DayPlan>(id, plan => plan with { Battery = null }),
        (_, "climate") => With<DayPlan>(id, plan => plan with { Climate = null }),
        (_, "hours") => With<DayPlan>(id, plan => plan with { Hours = [] }),
        (_, "useDayCount") => With<DayPlan>(id, plan => plan with { UseDayCount = null }),
        (_, "lyingW") => With<DayPlan>(id, plan => plan with { LyingW = null }),
        (_, "mostChanceFraction") => With<DayPlan>(id, plan => plan with { MostChanceFraction = null }),
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };
}
