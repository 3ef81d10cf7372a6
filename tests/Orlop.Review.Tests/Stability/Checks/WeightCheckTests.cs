using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>Checks on what is known of her weight: displacement, free surfaces, what is not given, berth tests and drift.</summary>
public sealed class WeightCheckTests
{
    [Theory]
    [InlineData(40_000, Verdict.Holds)]
    [InlineData(33_500, Verdict.Tight)]
    [InlineData(32_000, Verdict.Fails)]
    public void MostDisplacement_Held(double most, Verdict verdict) => Assert.Equal(verdict, JudgedBox.Of(JudgedBox.Rules() with { MostDisplacementKg = most }).Only("most-displacement", "stability-basis").Verdict);

    [Fact]
    public void MostDisplacement_BandAcross_IsUnknown() => Assert.Equal(
        Verdict.Unknown, JudgedBox.Of(JudgedBox.Rules() with { MostDisplacementKg = 33_500 }, JudgedBox.Bare(massPlusMinus: 500)).Only("most-displacement", "stability-basis").Verdict);

    // ρ l b³/12 over displacement: 1000 · 2 · 2³/12 over 34.8 t.
    [Theory]
    [InlineData(2, Verdict.Holds)]
    [InlineData(3.6, Verdict.Tight)]
    public void FreeSurface_BoxTank_IsTheClosedForm(double breadth, Verdict verdict)
    {
        BoatModel boat = JudgedBox.Of(new Tank { Id = "water", From = new Place(4, -breadth / 2, 0.2), To = new Place(6, breadth / 2, 1.2), LiquidKgPerM3 = 1000, FillFraction = 0.5 });
        Finding finding = boat.Only("free-surface");
        Assert.Equal(1000 * 2 * Math.Pow(breadth, 3) / 12 / (JudgedBox.MassKg + (1000 * breadth)), finding.Amounts()[0], 1e-6);
        Assert.Equal(verdict, finding.Verdict);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    public void FreeSurface_EmptyOrFull_NoFinding(double fill) => Assert.Empty(
        JudgedBox.Of(new Tank { Id = "water", From = new Place(4, -1, 0.2), To = new Place(6, 1, 1.2), LiquidKgPerM3 = 1000, FillFraction = fill }).Found("free-surface"));

    [Fact]
    public void WeightsGiven_TellsEachThingOnce()
    {
        Finding[] findings = JudgedBox.Of(
            new Gear { Id = "anchor", MassKg = 30 },
            new BatteryBank { Id = "bank", Chemistry = BatteryChemistry.AbsorbedGlassMat, NominalV = 12 },
            new Protection { Id = "fuse", Means = ProtectionMeans.Fuse, RatedA = 10 },
            new Tank { Id = "diesel", From = new Place(1, -1, 0), To = new Place(2, 1, 1) }).Found("weights-given");
        Assert.Equal(["anchor", "bank", "diesel"], findings.Select(finding => finding.SubjectId).Order(StringComparer.Ordinal));
        Assert.All(findings, finding => Assert.Equal(Verdict.Unknown, finding.Verdict));
        Assert.Empty(JudgedBox.Of().Found("weights-given"));
    }

    [Fact]
    public void BerthTest_AgreesOrNot()
    {
        Assert.Equal(Verdict.Holds, Surveyed(Survey(1.2)).Only("berth-test-agrees", "survey").Verdict);
        Finding off = Surveyed(Survey(1.0)).Only("berth-test-agrees", "survey");
        Assert.Equal(Verdict.Fails, off.Verdict);
        Assert.Contains("measure again", off.Headline.ToString(), StringComparison.Ordinal);
    }

    // Freeboards 40 mm less than the list of 32.8 t ± 0.1 t gives: 1.6 t more. Until one of the two is measured again nothing that rests on her weight holds, though its number is far from the limit.
    [Fact]
    public void BerthTest_ThatContradictsTheRest_LetsNothingHold()
    {
        BoatModel Wanted(double freeboardM) => Surveyed(Survey(freeboardM), JudgedBox.Own(LimitIds.LeastGmM, 0.05));
        BoatModel agreed = Wanted(1.2), off = Wanted(1.16);
        Contradiction found = off.View().Weight.Contradiction!;
        Finding finding = off.Only("least-gm");

        Assert.Null(agreed.View().Weight.Contradiction);
        Assert.Equal(Verdict.Holds, agreed.Only("least-gm").Verdict);
        Assert.Equal("survey", found.TestId);
        Assert.True(found.DeviationCount > 3);
        Assert.InRange(found.DeviationCount / found.WiderRatio, 0, 3);
        Assert.Equal(agreed.View().Weight.Total!.KgDeviationM * found.WiderRatio, off.View().Weight.Total!.KgDeviationM, 0.02 * off.View().Weight.Total!.KgDeviationM);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("contradicts itself (survey is ", finding.Headline.ToString(), StringComparison.OrdinalIgnoreCase);
    }

    // Freeboards tell displacement, rolling KG, and nothing tells either again.
    [Fact]
    public void BerthTest_WithNothingToHoldItAgainst_SaysSo()
    {
        RollingTest rolling = new() { Id = "rolling", Aboard = [new AboardItem("engine", 1000, new Place(5, 0, 1.2))], Runs = [new TimedRolls(10, 34)] };
        BoatModel boat = Surveyed(Survey(1.2), rolling);
        BoatModel alone = boat with { Things = [.. boat.Things.Where(thing => thing is not BareBoat)] };

        Assert.Contains("nothing to hold it against", alone.Only("berth-test-agrees", "rolling").Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Unknown, alone.Only("berth-test-agrees", "rolling").Verdict);
        Assert.DoesNotContain("nothing to hold it against", boat.Only("berth-test-agrees", "rolling").Headline.ToString(), StringComparison.Ordinal);
    }

    // One mark a metre wrong, as by a slip of the tape: the survey is named, and her weight is that of the list and not of the marks.
    [Fact]
    public void BerthTest_WithAMarkBeyondReason_TellsNothing()
    {
        FreeboardSurvey survey = Survey(1.2);
        BoatModel boat = Surveyed(survey with { Marks = [.. survey.Marks.Select((mark, i) => i == 1 ? mark with { FreeboardM = -1 } : mark)] });
        Finding finding = boat.Only("berth-test-agrees", "survey");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("four marks cannot say which", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Null(boat.View().Weight.TestId);
        Assert.Equal(31_800, boat.View().Weight.Total!.MassKg);
    }

    // Box at 0.8 m: KM 2.0667 m, KG 1.2 m; moment = displacement·GM·tan heel. One shift read twice too far is off the line: nothing is said to agree until it is left out.
    [Fact]
    public void BerthTest_InclinedWithAShiftOffTheLine_IsUnknownUntilLeftOut()
    {
        InclinationTest Inclined(bool isOff, bool isLeftOut) => new()
        {
            Id = "inclining",
            Aboard = [new AboardItem("engine", 1000, new Place(5, 0, 1.2))],
            Readings =
            [
                .. new[] { 1.0, 2, 1, 0, -1, -2, -1, 0 }.Select((moved, i) => new InclinedReading(
                    $"shift {i + 1}", 600, moved, (i == 2 && isOff ? 2 : 1) * 2 * 600 * moved / (32_800 * (2.066667 - 1.2)), 2, IsLeftOut: i == 2 && isLeftOut)),
            ],
        };
        Finding Judged(bool isOff, bool isLeftOut) => Surveyed(Survey(1.2), Inclined(isOff, isLeftOut)).Only("berth-test-agrees", "inclining");
        Assert.Equal(Verdict.Holds, Judged(false, false).Verdict);
        Finding off = Judged(true, false);
        Assert.Equal(Verdict.Unknown, off.Verdict);
        Assert.Contains("tells nothing: shift 3", off.Headline.ToString(), StringComparison.Ordinal);
        // Nothing of it is in her weight: KG is as sure as the list alone makes it.
        StabilityView spoilt = Surveyed(Survey(1.2), Inclined(true, false)).View(), without = Surveyed(Survey(1.2)).View();
        Assert.Equal(without.Weight.Total!.KgDeviationM, spoilt.Weight.Total!.KgDeviationM, 1e-9);
        Assert.Equal(without.Weight.Total.Centre.ZM, spoilt.Weight.Total.Centre.ZM, 1e-9);
        Assert.Equal(Verdict.Holds, Judged(true, true).Verdict);
    }

    // Signs of all shifts turned round: a line, and one that upsets her. It counts for nothing.
    [Fact]
    public void BerthTest_InclinedTheWrongWayRound_TellsNothing()
    {
        InclinationTest test = new()
        {
            Id = "inclining",
            Aboard = [new AboardItem("engine", 1000, new Place(5, 0, 1.2))],
            Readings = [.. new[] { 1.0, 2, -1, -2 }.Select((moved, i) => new InclinedReading($"shift {i + 1}", 600, -moved, 2 * 600 * moved / (32_800 * (2.066667 - 1.2)), 2))],
        };
        Assert.Contains("a sign is turned round", Surveyed(Survey(1.2), test).Only("berth-test-agrees", "inclining").Headline.ToString(), StringComparison.Ordinal);
    }

    // One mark of four 50 mm off leaves 12.5 mm at each, 2.5 deviations: χ² is 4 · 2.5², and every ± is √25 times wider.
    [Fact]
    public void BerthTest_WhoseMarksDisagree_NeitherHoldsNorFails()
    {
        FreeboardSurvey survey = Survey(1.2);
        Finding Judged(double off) => Surveyed(survey with { Marks = [.. survey.Marks.Select((mark, i) => i == 3 ? mark with { FreeboardM = 1.2 + off } : mark)] }).Only("berth-test-agrees", "survey");
        Assert.Equal(Verdict.Holds, Judged(0.005).Verdict);
        Finding off = Judged(0.05);
        Assert.Equal(Verdict.Unknown, off.Verdict);
        Assert.Contains("5 times wider", off.Headline.ToString(), StringComparison.Ordinal);
    }

    // 16.3, 14.7 and 16.2 s for ten rolls each: 14.7 s is nine of them (9/10 of 16.25 s is 14.6 s).
    [Fact]
    public void BerthTest_RollsMiscountedInOneRun_NameItAndCountForNothing()
    {
        RollingTest Timed(params double[] times) => new() { Id = "rolling", Aboard = [new AboardItem("engine", 1000, new Place(5, 0, 1.2))], Runs = [.. times.Select(time => new TimedRolls(10, time))] };
        Finding off = Surveyed(Survey(1.2), Timed(16.3, 14.7, 16.2)).Only("berth-test-agrees", "rolling");
        Assert.Equal(Verdict.Unknown, off.Verdict);
        Assert.Contains("run 2 (10 rolls in 14.7 s) is more than half a roll off", off.Headline.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(Surveyed(Survey(1.2), Timed(16.3, 14.7, 16.2)).View().Weight.Fits, fit => fit.Id == "rolling");
        Assert.Contains(Surveyed(Survey(1.2), Timed(16.3, 16.1, 16.2)).View().Weight.Fits, fit => fit.Id == "rolling");
        Assert.Contains("two runs differ", Surveyed(Survey(1.2), Timed(16.3, 14.7)).Only("berth-test-agrees", "rolling").Headline.ToString(), StringComparison.Ordinal);
    }

    // The printed numbers give the printed result.
    [Fact]
    public void Drift_Working_GivesItsResultFromWhatIsPrinted()
    {
        Finding finding = Surveyed(Survey(1.2), JudgedBox.Gear("generator", 137, 6.3, 0, 3.1)).Only("drift-since-test", "survey");
        WorkingLine[] lines = [.. finding.Working.Where(line => line.Expression.Contains("% − |", StringComparison.Ordinal))];
        Assert.Equal(6, lines.Length);
        Assert.All(lines, line =>
        {
            double[] numbers = [.. line.Expression.Split(["% − |", " − ", "|/", " = ", "%"], StringSplitOptions.RemoveEmptyEntries).Select(text => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture))];
            Assert.Equal(numbers[4], numbers[0] - (100 * Math.Abs(numbers[1] - numbers[2]) / numbers[3]), 5e-5);
        });
    }

    // Without lines no freeboard can be read: her weight is the list's alone, and how far she has drifted since is not known.
    [Fact]
    public void Drift_NoTestCounts_IsUnknown()
    {
        BoatModel boat = Surveyed(Survey(1.2), JudgedBox.Gear("generator", 700, 5, 0, 1.2)).Without("hull-lines");
        Assert.Null(boat.View().Weight.TestId);
        Finding finding = boat.Only("drift-since-test", "survey");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => input is { ThingId: "hull-lines", Field: "stations", IsMissing: true });
    }

    // Nothing was aboard, and it says so: gear that came since is seen.
    [Fact]
    public void BerthTest_OfTheBareBoat_Counts()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(massKg: 31_800, massPlusMinus: 1000), Survey(1.2) with { Aboard = [], IsBare = true });
        Assert.Equal(Verdict.Holds, boat.Only("berth-test-agrees", "survey").Verdict);
        Assert.InRange(boat.View().Weight.Total!.MassKg, 32_700, 32_800);
        Assert.Equal(Verdict.Fails, boat.With(Fitted(JudgedBox.Gear("generator", 700, 5, 0, 1.2))).Only("drift-since-test", "survey").Verdict);
    }

    [Fact]
    public void BerthTest_WithoutList_IsUnknown() => Assert.Equal(
        Verdict.Unknown, Surveyed(Survey(1.2) with { Aboard = [] }).Only("berth-test-agrees", "survey").Verdict);

    // 32.8 t: 1 % is 328 kg, 2 % is 656 kg. LCG: 0.5 % of 10 m is 0.05 m, 300 kg 9 m forward moves it 0.08 m. KG: 0.5 % of 1.2 m is 6 mm, 1 % is 12 mm; 100 kg 3 m up moves it 9 mm, 200 kg 18 mm.
    [Theory]
    [InlineData(100, 5, 1.2, Verdict.Holds)]
    [InlineData(400, 5, 1.2, Verdict.Tight)]
    [InlineData(700, 5, 1.2, Verdict.Fails)]
    [InlineData(100, 10, 1.2, Verdict.Holds)]
    [InlineData(300, 14, 1.2, Verdict.Tight)]
    [InlineData(100, 5, 4.2, Verdict.Tight)]
    [InlineData(200, 5, 4.2, Verdict.Fails)]
    public void Drift_GearAddedSinceTheSurvey(double massKg, double x, double z, Verdict verdict) =>
        Assert.Equal(verdict, Surveyed(Survey(1.2), Fitted(JudgedBox.Gear("generator", massKg, x, 0, z))).Only("drift-since-test", "survey").Verdict);

    [Fact]
    public void Drift_PeopleAndLiquids_DoNotCount() => Assert.Equal(Verdict.Holds, Surveyed(
        Survey(1.2), JudgedBox.Aboard("crew", DeadweightUse.People, 80, 5, 0, 2, count: 20)).Only("drift-since-test", "survey").Verdict);

    // The weights of an inclining test go home with who lent them: she is no lighter for it. The same 700 kg unmarked were part of her, and gone.
    [Theory]
    [InlineData(true, Verdict.Holds)]
    [InlineData(false, Verdict.Fails)]
    public void Drift_WeightsOfTheTest_WereNeverHers(bool isCarried, Verdict verdict)
    {
        FreeboardSurvey survey = Survey(1.2);
        Finding finding = Surveyed(survey with { Aboard = [.. survey.Aboard, new AboardItem("shifted-weights", 700, new Place(5, 0, 2), IsCarried: isCarried)] }).Only("drift-since-test", "survey");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(!isCarried, finding.Working.Any(line => line.What == "shifted-weights"));
    }

    // A list that was kept before anyone asked does not say: she may have lost 700 kg, or never had them.
    [Fact]
    public void Drift_NothingSaysWhetherItWasCarried_IsUnknown()
    {
        FreeboardSurvey survey = Survey(1.2);
        Finding finding = Surveyed(survey with { Aboard = [.. survey.Aboard, new AboardItem("shifted-weights", 700, new Place(5, 0, 2))] }).Only("drift-since-test", "survey");
        finding.IsUnknownFor("survey", "aboard");
        Assert.Contains("shifted-weights", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // No mass is exact: a bare number is a guess, 30 % for one standard deviation (our own, no source).
    [Fact]
    public void Ledger_MassThatNothingIsSaidOf_CountsAsAGuess()
    {
        StabilityView view = JudgedBox.Of(new Gear { Id = "chest", MassKg = 200, Place = new Place(5, 0, 1) }, new Gear { Id = "safe", MassKg = new Quantity(200, PlusMinus: 0), Place = new Place(5, 0, 1) }).View();
        WeightLedger ledger = WeightLedger.Of(view.Boat, view.Conditions[0]);
        Assert.Equal([60, 0], ledger.Rows.Select(row => row.DeviationKg));
    }

    [Fact]
    public void Drift_GearWithoutMass_IsUnknown() => Surveyed(Survey(1.2), new Gear { Id = "anchor" }).Only("drift-since-test", "survey").IsUnknownFor("anchor", "massKg");

    [Fact]
    public void Drift_BetterKnownMass_IsNoChange() => Assert.Equal(
        0, Surveyed(Survey(1.2), new Gear { Id = "engine", MassKg = JudgedBox.Sure(1000, 1), Place = new Place(5, 0, 1.2) }).Only("drift-since-test", "survey").UseFraction!.Value, 1e-9);

    // A rule that is chosen is judged, or said to be unknown: none passes by being left out.
    [Theory]
    [InlineData(StabilityRule.GeneralIntact)]
    [InlineData(StabilityRule.Weather)]
    [InlineData(StabilityRule.SimplifiedUnited)]
    [InlineData(StabilityRule.SmallCraft)]
    [InlineData(StabilityRule.OpenBoat)]
    public void RuleChosen_HasFindingsOfItsOwn(StabilityRule rule)
    {
        string[] Found(params StabilityRule[] rules) =>
            [.. JudgedBox.Of(JudgedBox.Rules(rules)).Review().Findings.SelectMany(pair => pair.After!.All).Select(finding => $"{finding.CheckId} {finding.SubjectId}")];
        Assert.NotEmpty(Found(rule).Except(Found()));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-5)]
    public void NotAMass_IsRefusedByTheModel(double massKg)
    {
        Assert.NotEmpty(BoatValidation.Check(JudgedBox.Of(JudgedBox.Gear("anchor", massKg, 5, 0, 1))));
        Assert.NotEmpty(BoatValidation.Check(JudgedBox.Of(JudgedBox.Bare(massKg: massKg))));
    }

    // i = l·b³/12 = 2·2³/12 = 4/3 m⁴ of fresh water: 1333 kg·m, on the boat then.
    [Theory]
    [InlineData(2000, true)]
    [InlineData(3990, false)]
    public void RollingTest_WithASlackTank_SaysWhichAndWhatItTook(double liquidKg, bool isSlack)
    {
        BoatModel boat = StableBoats.Box(StableBoats.Bare(), SlackTank(), Rolled(liquidKg));
        Finding finding = boat.Only("berth-test-agrees", "rolls");
        double then = boat.View().Weight.Total!.MassKg;

        Assert.Equal(isSlack, finding.Headline.ToString().Contains("slack then: Fuel (50 % full)", StringComparison.Ordinal));
        WorkingLine[] warned = [.. finding.Working.Where(line => line.What == "Slack tanks")];
        Assert.Equal(isSlack ? 1 : 0, warned.Length);
        Assert.All(warned, line => Assert.Equal(4000.0 / 3 / then, line.Value!.Value, 1e-5));
    }

    // How full it was is not known without the liquid's density, and that is said.
    [Fact]
    public void RollingTest_WithATankOfUnknownLiquid_SaysThatItsFillIsNotTold() => Assert.Contains(
        "Fuel (how full is not told)", StableBoats.Box(StableBoats.Bare(), SlackTank() with { LiquidKgPerM3 = null }, Rolled(2000)).Only("berth-test-agrees", "rolls").Headline.ToString(), StringComparison.Ordinal);

    // Recorded as built after the survey.
    private static Thing[] Fitted(Gear gear) => [gear, new Alteration { Id = "fitting", Status = AlterationStatus.Built, Edits = [new Edit { Id = gear.Id, Becomes = gear, BuiltOn = new DateOnly(2026, 11, 1) }] }];

    private static Tank SlackTank() => new() { Id = "fuel", Name = "Fuel", From = new Place(4, -1, 0.1), To = new Place(6, 1, 1.1), LiquidKgPerM3 = 1000, FillFraction = 0 };

    private static RollingTest Rolled(double liquidKg) => new()
    {
        Id = "rolls",
        On = new DateOnly(2026, 5, 1),
        Aboard = [new AboardItem("fuel", liquidKg, new Place(5, 0, 0.6))],
        WaterDensityKgPerM3 = 1025,
        RollingFactor = new Quantity(0.80, Knowledge.Measured, 0.04),
        Runs = [new TimedRolls(10, 10 * 0.80 * 4 / Math.Sqrt(0.85))],
    };

    private static BoatModel Surveyed(FreeboardSurvey survey, params Thing[] more) =>
        JudgedBox.Of([JudgedBox.Bare(massKg: 31_800, massPlusMinus: 100, kgPlusMinus: 0.05, tcgPlusMinus: 0.01), JudgedBox.Gear("engine", 1000, 5, 0, 1.2), survey, .. more]);

    private static FreeboardSurvey Survey(double freeboardM) => new()
    {
        Id = "survey",
        Aboard = [new AboardItem("engine", 1000, new Place(5, 0, 1.2))],
        Marks = [.. new[] { 0.0, 10 }.SelectMany(x => new[] { -2.0, 2 }.Select(y => new FreeboardMark($"mark {x} {y}", new Place(x, y, 2), freeboardM)))],
    };
}
