using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class BerthTestDraftTests
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private static readonly DateOnly Day = new(2026, 5, 2);

    // A box of 1.8 m at 0.4 m has 1.4 m of freeboard all round; Archimedes gives the 12 t back.
    [Fact]
    public void Freeboards_OfTheBarge_GiveHerWeightBack()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        double[] corners = [0, 0, 10, 10];
        for (int i = 0; i < corners.Length; i++)
        {
            (draft.Marks[i].Forward, draft.Marks[i].ToPort, draft.Marks[i].Up, draft.Marks[i].Freeboard) = ($"{corners[i]}", i % 2 == 0 ? "1.5" : "-1.5", "1.8 m", "1.4 m");
        }

        FreeboardSurvey survey = draft.Make()!;
        FreeboardReport report = FreeboardReport.Of(Barge.View(Barge.Boat), survey, DisplayUnits.Metric, Culture);

        Assert.Null(report.Refusal);
        Assert.StartsWith("12000\u00A0kg", report.Facts[0].Value, StringComparison.Ordinal);
        Assert.All(report.Marks, mark => Assert.Equal("fits", mark.Off));
        Assert.Equal(Day, survey.On);
    }

    [Fact]
    public void Refused_NamesEachFieldAndRowThatCannotBeUsed()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        (draft.Name, draft.Water, draft.Marks[1].Name, draft.Marks[1].Freeboard) = (" ", "wet", "Port quarter", "lots");

        Assert.Null(draft.Make());
        Assert.Equal([("test-name", "Name"), ("test-water", "Density of the water"), ("mark-1", "Port quarter")], draft.Refused.Select(field => (field.Id, field.Label)));
    }

    // Hog's shape is the same at all four ends, so it cannot be told from draught.
    [Fact]
    public void Freeboards_FourMarks_CannotTellHog() =>
        Assert.StartsWith("these marks cannot tell", FreeboardReport.Of(Barge.View(Barge.Boat), Read("1.4 m"), DisplayUnits.Metric, Culture).Facts.Single(fact => fact.Name == "Bent amidships").Value, StringComparison.Ordinal);

    [Fact]
    public void Freeboards_AMarkBeyondReason_GivesNoWeight()
    {
        FreeboardReport report = FreeboardReport.Of(Barge.View(Barge.Boat), Read("-1 m"), DisplayUnits.Metric, Culture);

        Assert.Contains("four marks cannot say which", report.Refusal!, StringComparison.Ordinal);
        Assert.Empty(report.Facts);
        Assert.Equal(4, report.Marks.Count);
    }

    [Fact]
    public void Freeboards_ThatTwist_HaveAWiderBand()
    {
        FreeboardReport report = FreeboardReport.Of(Barge.View(Barge.Boat), Read("1.45 m"), DisplayUnits.Metric, Culture);

        Assert.Contains("5 times wider", report.Agreement, StringComparison.Ordinal);
    }

    // An empty ledger is nothing aboard; a ledger of things without a mass tells nothing, and that is said before it is kept.
    [Fact]
    public void Freeboards_OnAnEmptyLedger_CountAsTheBareBoats()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        FreeboardSurvey survey = Read("1.4 m");

        Assert.True(survey.IsBare);
        Assert.Null(draft.WhyNotCounted(survey));
        Assert.StartsWith("nothing", draft.AboardText, StringComparison.Ordinal);
        FreeboardDraft unweighed = Freeboards(Barge.Boat.With(new Gear { Id = "chest", Name = "Chest" }));
        Assert.Contains("what was aboard is not written down", unweighed.WhyNotCounted(survey with { IsBare = false })!, StringComparison.Ordinal);
        Assert.DoesNotContain("nothing", unweighed.AboardText, StringComparison.Ordinal);
    }

    /// <summary>A tank on the centre line in three pieces: its centroid, off by rounding, is kept as on it.</summary>
    [Fact]
    public void Aboard_WhatReckoningLeavesOver_IsNotKept()
    {
        BoatModel boat = Barge.Boat.With(new Tank { Id = "tank", From = new(1.05, -0.1, 0.2), To = new(2.35, 0.1, 0.7), LiquidKgPerM3 = 1000, FillFraction = 1.0 / 3 });
        StabilityView view = Barge.View(boat);

        Assert.All(BerthTestGuide.Aboard(view, view.Conditions[0]).SelectMany(item => new[] { item.Place!.XM, item.Place.YM, item.Place.ZM }), lengthM => Assert.Equal(Math.Round(lengthM, 9), lengthM));
        Assert.All(BerthTestGuide.Aboard(view, view.Conditions[0]), item => Assert.Equal((Math.Round(item.MassKg, 9), Math.Round(item.DeviationKg, 9)), (item.MassKg, item.DeviationKg)));
        Assert.Equal(0, BerthTestGuide.Aboard(view, view.Conditions[0]).Single(item => item.Id == "tank").Place!.YM);
    }

    // 7 ft 10 4/8 in and 3/64 in are 2.4003 m and 0.001190625 m, exact (25.4 mm to the inch); 80 lb are 36.2873896 kg (NIST SP 811).
    [Fact]
    public void Aboard_WhatWasTypedInFeetAndPounds_StaysAsItWas()
    {
        BoatModel boat = Barge.Boat.With(new Gear { Id = "chest", Name = "Chest", MassKg = 36.2873896, Place = new Place(2.4003, 0.001190625, 0.5) });
        StabilityView view = Barge.View(boat);
        AboardItem chest = BerthTestGuide.Aboard(view, view.Conditions[0]).Single(item => item.Id == "chest");

        Assert.Equal(36.2873896, chest.MassKg);
        Assert.Equal(new Place(2.4003, 0.001190625, 0.5), chest.Place);
    }

    // What hangs on a hook in the condition is aboard in the test: it is said before anything is measured, and the loading can be changed while it is typed in.
    [Fact]
    public void LoadAs_AnotherCondition_TakesItsLoadingAndSaysWhatHangs()
    {
        BoatModel boat = Barge.Boat.With(new Condition { Id = "lifting", Name = "Lifting" })
            .With(new Deadweight { Id = "sampler", Name = "Sampler", Use = DeadweightUse.Hung, MassKg = 130, Place = new Place(5, -2, 3), Aboard = [new DeadweightCount("lifting", 1)] });
        FreeboardDraft draft = Freeboards(boat);
        Assert.Null(draft.HungText);

        Assert.True(draft.LoadAs(Barge.View(boat), boat.Find<Condition>("lifting")!));
        Assert.Equal("Lifting", draft.LoadedAs);
        Assert.Contains("On the hook, and counted: Sampler, 130\u00A0kg", draft.HungText!, StringComparison.Ordinal);
        FreeboardSurvey survey = Typed(draft, "1.4 m").Make()!;
        Assert.Equal("sampler", Assert.Single(survey.Aboard).Id);
        Assert.Contains("130\u00A0kg aboard and on the hook Sampler, 130\u00A0kg", TestLoading.Doubt(boat, survey, DisplayUnits.Metric, Culture), StringComparison.Ordinal);
        Assert.False(draft.LoadAs(Barge.View(boat), boat.Find<Condition>("lifting")!));
    }

    // 1093 m of freeboard no boat has: a comma of three decimals is read, and the row says how.
    [Theory]
    [InlineData("1,093", 1.093)]
    [InlineData("0,845", 0.845)]
    public void Freeboard_WithADecimalComma_IsReadWhereTheRangeLeavesOneMeaning(string typed, double freeboardM)
    {
        FreeboardDraft draft = Typed(Freeboards(Barge.Boat), typed);

        Assert.All(draft.Make()!.Marks, mark => Assert.Equal(freeboardM, mark.FreeboardM, 9));
        Assert.All(draft.Marks, mark => Assert.Equal(typed == "1,093" ? "Height over the water: taken as 1.093 m: 1093 m is out of range." : null, mark.Remark));
    }

    // They tell displacement, draughts and trim; that KG is not known is said where her stability would stand.
    [Fact]
    public void Freeboards_WithoutAnyHeightOfHerWeight_Count() => Assert.Null(
        Freeboards(Barge.Boat.WithThings(Barge.Boat.Things.Where(thing => thing is not BareBoat))).WhyNotCounted(Read("1.4 m")));

    [Fact]
    public void Freeboards_Three_AreTooFew()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        foreach (MarkDraft mark in draft.Marks.Take(3))
        {
            (mark.Forward, mark.ToPort, mark.Up, mark.Freeboard) = ("0", "1.5", "1.8", "1.4");
        }

        Assert.Null(draft.Make());
        Assert.Contains("at least 4", draft.Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void Freeboards_AMarkThatIsNoLength_IsRefusedAtTheMark()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        draft.Marks[0].Freeboard = "high";

        Assert.Null(draft.Make());
        Assert.Contains("high", draft.Marks[0].Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void Aboard_IsTheLedgerWithLiquids()
    {
        BoatModel boat = Barge.Boat.With(
            new Gear { Id = "chest", Name = "Chest", MassKg = 100, Place = new(5, 0, 1) },
            new Tank { Id = "tank", From = new(1, -0.5, 0.2), To = new(2, 0.5, 0.7), LiquidKgPerM3 = 1000, FillFraction = 1 });
        RollingDraft draft = new(Barge.View(boat), Barge.View(boat).Conditions[0], Day, DisplayUnits.Metric, Culture);
        draft.Runs[0].Time = "29.1 s";

        RollingTest test = draft.Make()!;
        Assert.Equal(["chest", "tank"], test.Aboard.Select(item => item.Id).Order(StringComparer.Ordinal));
        Assert.Equal(600, test.Aboard.Sum(item => item.MassKg), 1e-6);
        Assert.Equal(["tank"], test.Aboard.Where(item => item.IsCarried == true).Select(item => item.Id));
        Assert.Equal(new TimedRolls(10, 29.1), Assert.Single(test.Runs));
    }

    // GM = (f B / T)², Res. A.749(18) annex 3, 3.4, with f = 0.80: (0.8 · 3 / 2.4)² = 1.
    [Fact]
    public void Rolling_TenRollsIn24Seconds_GiveAGmOfOneMetre()
    {
        RollingReport report = RollingReport.Of(Barge.View(Barge.Boat), new RollingTest { Id = "rolling", Runs = [new TimedRolls(10, 24)] }, DisplayUnits.Metric, Culture);

        Assert.StartsWith("1\u00A0m ", report.Facts.Single(fact => fact.Name == "GM").Value, StringComparison.Ordinal);
    }

    // Barge at 0.4 m: KM 2.075 m. 1 m of GM is ten rolls of 2.4 s; counted by halves, ten in 12 s, 4 m: G 1.925 m below the keel.
    [Theory]
    [InlineData(24, false)]
    [InlineData(12, true)]
    public void Rolling_CountedByHalves_IsAskedAboutAsSoonAsItIsTyped(double seconds, bool isAsked)
    {
        RollingTest test = new() { Id = "rolling", IsBare = true, Runs = [new TimedRolls(10, seconds)] };
        string? remark = RollingReport.Of(Barge.View(Barge.Boat), test, DisplayUnits.Metric, Culture).Remark;

        Assert.Equal(isAsked, remark is not null);
        Assert.True(remark?.Contains("1.925\u00A0m below her keel, where no boat has it: did you count half rolls? A roll is there and back.", StringComparison.Ordinal) ?? !isAsked);
    }

    // Res. A.749(18) annex 3: 0.80, scatter 0.05; as every ± that is shown, two of them.
    [Fact]
    public void Rolling_WithoutACoefficient_TellsItsBandAsTwoDeviations() => Assert.StartsWith(
        "0.8 ±\u00A00.1,", RollingReport.Of(Barge.View(Barge.Boat), new RollingTest { Id = "rolling", Runs = [new TimedRolls(10, 24)] }, DisplayUnits.Metric, Culture).Facts.Single(fact => fact.Name == "Coefficient f").Value, StringComparison.Ordinal);

    [Fact]
    public void Bands_SayThatTheLinesAreNotInThem_AndHowManyStationsNobodyMeasured()
    {
        HullLines lines = Barge.Boat.All<HullLines>().Single();
        Assert.EndsWith("errors of the lines are not in it.", BerthTestGuide.Bands(lines), StringComparison.Ordinal);
        Assert.EndsWith("errors of the lines are not in it, and 1 of 2 stations is the form's, not measured.", BerthTestGuide.Bands(lines with { Stations = [lines.Stations[0] with { Origin = StationOrigin.Form }, lines.Stations[1]] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Rolling_WithoutABeam_TellsNothing()
    {
        BoatModel boat = Barge.Boat.Change<Particulars>("particulars", particulars => particulars with { BeamM = null });
        RollingReport report = RollingReport.Of(Barge.View(boat), new RollingTest { Id = "rolling", Runs = [new TimedRolls(10, 24)] }, DisplayUnits.Metric, Culture);

        Assert.Contains("beam", report.Refusal!, StringComparison.Ordinal);
        Assert.Equal("Run 1", Assert.Single(report.Facts).Name);
    }

    // Barge at 0.4 m: KM = T/2 + B²/(12 T) = 0.2 + 9/4.8 = 2.075 m, KG 0.8 m, GM 1.275 m; moment = displacement·GM·tan φ: 12 000·1.275·0.05 = 765 kg m, a deflection of 0.1 m over 2 m.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Inclining_TheBarge_GivesHerGmAndKgBack(bool isByAngle)
    {
        InclinationDraft draft = Shifted(isByAngle);
        InclinationTest test = draft.Make()!;
        InclinationReport report = InclinationReport.Of(draft.View, test, DisplayUnits.Metric, Culture);

        Assert.Null(report.Refusal);
        Assert.Equal(1.275, report.Found!.Fit.WithIntercept.GmM, 1e-6);
        Assert.Equal(0.8, report.Found.KgM, 1e-5);
        Assert.StartsWith("0.8\u00A0m ±", report.Facts.Single(fact => fact.Name == "KG as inclined").Value, StringComparison.Ordinal);
        Assert.Empty(report.Found.Fit.Outliers);
        Assert.Null(draft.Survey);
    }

    // Displacement's 300 kg move KG by (dKM/dΔ + GM/Δ)·300: dKM/dT = 1/2 - B²/(12 T²) = -4.1875, dT/dΔ = 1/30 000, GM/Δ = 1.275/12 000: |-1.39583e-4 + 1.0625e-4|·300 = 0.0100 m;
    // the batten's 0.289 % of GM, 0.0037 m, is added as squares: 0.01066 m.
    [Fact]
    public void Inclining_TheBarge_IsAsSureOfKgAsOfHerDisplacement()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        Assert.Equal(0.01066, InclinationReport.Of(draft.View, draft.Make()!, DisplayUnits.Metric, Culture).Found!.KgDeviationM, 2e-4);
    }

    [Fact]
    public void Inclining_OneShiftMisread_IsNamed()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        draft.Shifts[2].Heel = "0.2 m";

        InclinationTest test = draft.Make()!;
        InclinationReport report = InclinationReport.Of(draft.View, test, DisplayUnits.Metric, Culture);
        Assert.StartsWith("It tells nothing: Shift 3 is too far off the line", report.Refusal, StringComparison.Ordinal);
        Assert.Empty(report.Facts);
        Assert.NotNull(report.Found);
        Assert.Contains("will not count: Shift 3", draft.WhyNotCounted(test)!, StringComparison.Ordinal);
    }

    // Readings to the millimetre that fit exactly are no surer than the batten is fine: 0.5 mm over 2 m is 2.5e-4 in tan φ; Σtan² = 12·0.025² = 0.0075, and 2.5e-4/√0.0075 is 0.289 % of 15 300 kg m, one deviation.
    [Fact]
    public void Inclining_ReadingsThatFitExactly_AreNotTakenAsErrorless()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        Assert.Equal(44.2, InclinationReport.Of(draft.View, draft.Make()!, DisplayUnits.Metric, Culture).Found!.Fit.WithIntercept.SlopeDeviationKgM, 0.1);
    }

    // Ten rolls of 2.4 s, and nine counted as ten in one run.
    [Fact]
    public void Rolling_OneRunMiscounted_IsNamedAndTheRunsAreListed()
    {
        RollingTest test = new() { Id = "rolling", Runs = [new TimedRolls(10, 24), new TimedRolls(10, 21.6), new TimedRolls(10, 24.1)] };
        RollingReport report = RollingReport.Of(Barge.View(Barge.Boat), test, DisplayUnits.Metric, Culture);
        Assert.Contains("run 2 (10 rolls in 21.6 s)", report.Refusal, StringComparison.Ordinal);
        Assert.Equal(["Run 1", "Run 2", "Run 3"], report.Facts.Select(fact => fact.Name));
        Assert.Equal("10 rolls in 21.6\u00A0s, 2.16\u00A0s each", report.Facts[1].Value);
    }

    [Fact]
    public void Inclining_AShiftLeftOut_IsKeptAndNotCounted()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        (draft.Shifts[2].Heel, draft.Shifts[2].IsLeftOut) = ("0.2 m", true);
        InclinationTest test = draft.Make()!;
        InclinationReport report = InclinationReport.Of(draft.View, test, DisplayUnits.Metric, Culture);

        Assert.Equal(8, test.Readings.Count);
        Assert.Equal(1.275, report.Found!.Fit.WithIntercept.GmM, 1e-6);
        Assert.Empty(report.Found.Fit.Outliers);
        Assert.Contains("Left out, and kept in the file: Shift 3", string.Join(' ', report.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Inclining_WithFreeboardsOfTheDay_TakesItsDisplacementFromThem()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        double[] corners = [0, 0, 10, 10];
        for (int i = 0; i < corners.Length; i++)
        {
            (draft.Marks[i].Forward, draft.Marks[i].ToPort, draft.Marks[i].Up, draft.Marks[i].Freeboard) = ($"{corners[i]}", i % 2 == 0 ? "1.5" : "-1.5", "1.8 m", "1.4 m");
        }

        (draft.Others[0].Mass, draft.Others[0].Forward, draft.Others[0].ToPort, draft.Others[0].Up) = ("300 kg", "5", "0", "0.8");
        InclinationTest test = draft.Make()!;
        InclinationReport report = InclinationReport.Of(draft.View, test, DisplayUnits.Metric, Culture);
        Assert.Equal(test.Aboard, draft.Survey!.Aboard);
        Assert.NotEqual(test.Id, draft.Survey.Id);
        // The list makes it 12 300 ± 300 kg, the freeboards 12 000 ± 130: near the freeboards.
        Assert.InRange(report.Found!.Input.DisplacementKg, 12_000, 12_100);
        // Four readings of 5 mm know the draught to 2.5 mm, 30 t a metre: 75 kg; hog adds to it, and the 300 kg of the list take a little off.
        Assert.InRange(report.Found.Input.DisplacementDeviationKg, 75, 200);
    }

    [Fact]
    public void Inclining_OtherThingsAboard_AreKeptWithTheTest()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        (draft.Others[0].Mass, draft.Others[0].Forward, draft.Others[0].ToPort, draft.Others[0].Up) = ("400 kg", "5", "0", "1.8");

        AboardItem weights = Assert.Single(draft.Make()!.Aboard);
        Assert.Equal((400, true), (weights.MassKg, weights.IsCarried == true));
        draft.Others[0].Up = "";
        Assert.Null(draft.Make());
        Assert.Contains("Up", draft.Others[0].Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void Inclining_WithoutPendulumOrDisplacement_SaysWhatIsNeeded()
    {
        InclinationDraft draft = Shifted(isByAngle: false);
        draft.Pendulum = "";
        Assert.Null(draft.Make());
        Assert.NotNull(draft.PendulumRefusal);

        BoatModel boat = Barge.Boat.WithThings(Barge.Boat.Things.Where(thing => thing is not BareBoat));
        InclinationDraft weightless = Shifted(isByAngle: true, boat);
        Assert.Contains("displacement", InclinationReport.Of(weightless.View, weightless.Make()!, DisplayUnits.Metric, Culture).Refusal!, StringComparison.Ordinal);
    }

    private static FreeboardSurvey Read(string last) => Typed(Freeboards(Barge.Boat), "1.4 m", last).Make()!;

    // Marks at the four corners of the deck.
    private static FreeboardDraft Typed(FreeboardDraft draft, string freeboard, string? last = null)
    {
        double[] corners = [0, 0, 10, 10];
        for (int i = 0; i < corners.Length; i++)
        {
            (draft.Marks[i].Forward, draft.Marks[i].ToPort, draft.Marks[i].Up, draft.Marks[i].Freeboard) = ($"{corners[i]}", i % 2 == 0 ? "1.5" : "-1.5", "1.8 m", i == 3 ? last ?? freeboard : freeboard);
        }

        return draft;
    }

    private static InclinationDraft Shifted(bool isByAngle, BoatModel? boat = null)
    {
        StabilityView view = Barge.View(boat ?? Barge.Boat);
        InclinationDraft draft = new(view, view.Conditions[0], Day, DisplayUnits.Metric, Culture) { IsByAngle = isByAngle, Pendulum = isByAngle ? "" : "2 m" };
        double[] moved = [1, 2, 1, 0, -1, -2, -1, 0];
        for (int i = 0; i < moved.Length; i++)
        {
            double tangent = 382.5 * moved[i] / (12_000 * 1.275);
            draft.Shifts[i].Mass = "382.5 kg";
            draft.Shifts[i].Moved = string.Create(Culture, $"{moved[i]} m");
            draft.Shifts[i].Heel = isByAngle ? string.Create(Culture, $"{Math.Atan(tangent) * 180 / Math.PI:R}°") : string.Create(Culture, $"{2 * tangent:R} m");
        }

        return draft;
    }

    private static FreeboardDraft Freeboards(BoatModel boat)
    {
        StabilityView view = Barge.View(boat);
        return new FreeboardDraft(view, view.Conditions[0], Day, DisplayUnits.Metric, Culture);
    }
}
