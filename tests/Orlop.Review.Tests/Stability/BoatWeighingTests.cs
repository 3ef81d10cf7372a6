using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Review.Stability.Checks;
using Xunit;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;
using InclinationTest = Orlop.Boat.Things.InclinationTest;

namespace Orlop.Review.Tests.Stability;

/// <summary>A box of 10 × 4 m displaces 41 t a metre of draught in salt water: freeboards of 1.2 m at the deck edge are 32.8 t.</summary>
public sealed class BoatWeighingTests
{
    private static readonly AboardItem Chest = new("chest", 500, new Place(5, 0, 1));

    [Fact]
    public void BareBoatAlone_IsTheTotalAsTyped()
    {
        BoatWeight weight = Weigh(StableBoats.Bare());

        Assert.Equal((32_800, 2000), (weight.Total!.MassKg, weight.Total.MassDeviationKg));
        Assert.Null(weight.TestId);
    }

    // 32.8 t were measured with the chest aboard, so the list of bare boat and chest is 2.5 t short of the truth. 41 000 kg/m times 5 mm over root four marks is 102 kg, times the
    // two thirds of 5 mm that hog may hide at the ends 137 kg, together 171 kg.
    [Fact]
    public void Freeboards_PullTheMassToWhatTheyMeasured()
    {
        BoatWeight weight = Weigh(StableBoats.Bare(massKg: 29_800), StableBoats.Gear("chest", 500, Chest.Place), Survey());

        Assert.InRange(weight.Total!.MassKg, 32_760, 32_800);
        Assert.InRange(weight.Total.MassDeviationKg, 169, 172);
        Assert.Equal(5, weight.Total.Centre.XM, 0.002);
        Assert.Equal("survey", weight.TestId);
    }

    [Fact]
    public void Gear_TakenOffSinceTheSurvey_TakesItsMassAndMomentsOff()
    {
        WeightTotal with = StableBoats.Box(StableBoats.Bare(), StableBoats.Gear("chest", 500, Chest.Place), Survey()).Loaded().Total!;
        WeightTotal without = StableBoats.Box(StableBoats.Bare(), Survey()).Loaded().Total!;

        Assert.Equal(with.MassKg - 500, without.MassKg, 1e-8);
        Assert.Equal(((with.MassKg * with.Centre.ZM) - (500 * 1)) / without.MassKg, without.Centre.ZM, 1e-9);
    }

    [Fact]
    public void Gear_MovedSinceTheSurvey_KeepsTheMassAndItsDeviation()
    {
        WeightTotal before = StableBoats.Box(StableBoats.Bare(), StableBoats.Gear("chest", 500, Chest.Place), Survey()).Loaded().Total!;
        WeightTotal after = StableBoats.Box(StableBoats.Bare(), StableBoats.Gear("chest", 500, new Place(5, -1, 1)), Survey()).Loaded().Total!;

        Assert.Equal(before.MassKg, after.MassKg);
        Assert.Equal(before.MassDeviationKg, after.MassDeviationKg, 1e-9);
        Assert.Equal(before.Centre.YM - (500 / before.MassKg), after.Centre.YM, 1e-9);
    }

    [Fact]
    public void Survey_WithoutWhatWasAboard_IsNamedAndTellsNothing()
    {
        BoatWeight weight = Weigh(StableBoats.Bare(), Survey() with { Aboard = [] });

        TestTrouble trouble = Assert.Single(weight.Trouble);
        Assert.Equal(("survey", "what was aboard is not written down"), (trouble.TestId, trouble.Message));
        Assert.Equal(32_800, weight.Total!.MassKg);
    }

    [Fact]
    public void Survey_OfThreeMarks_IsNamedWithWhy()
    {
        FreeboardSurvey survey = Survey();
        BoatWeight weight = Weigh(StableBoats.Bare(), survey with { Marks = [.. survey.Marks.Take(3)] });

        Assert.Contains("at least 4", Assert.Single(weight.Trouble).Message, StringComparison.Ordinal);
    }

    // A later survey that does not count, with other things aboard, is no reference: her weight and its errors are those without it.
    [Fact]
    public void SpoiltSurvey_ChangesNothing()
    {
        FreeboardSurvey good = Survey() with { On = new DateOnly(2026, 4, 1) };
        FreeboardSurvey spoilt = good with
        {
            Id = "later",
            On = new DateOnly(2026, 5, 1),
            Marks = [good.Marks[0] with { FreeboardM = 1.32 }, .. good.Marks.Skip(1)],
            Aboard = [Chest with { MassKg = 300, DeviationKg = 90 }, new AboardItem("stones", 2000, new Place(7, 0, 1)) { DeviationKg = 200 }],
        };
        LoadedBoat without = StableBoats.Box(StableBoats.Bare(), StableBoats.Gear("chest", 500, Chest.Place), good).Loaded(), with = StableBoats.Box(StableBoats.Bare(), StableBoats.Gear("chest", 500, Chest.Place), good, spoilt).Loaded();

        Assert.Equal(without.Total!.MassKg, with.Total!.MassKg, 1e-9);
        Assert.Equal(without.Total.MassDeviationKg, with.Total.MassDeviationKg, 1e-9);
        Assert.Equal(without.Total.LcgDeviationM, with.Total.LcgDeviationM, 1e-12);
        Assert.Equal("later", Assert.Single(Weigh(StableBoats.Bare(), good, spoilt).Trouble).TestId);
    }

    // One corner 60 mm off shares itself as 15 mm over all four: which one it is cannot be told (closed form: the residual of a plane through four corners is a quarter of the twist).
    [Fact]
    public void Survey_OfFourMarks_OneFarOff_NamesNone()
    {
        FreeboardSurvey survey = Survey();
        BoatWeight weight = Weigh(StableBoats.Bare(), survey with { Marks = [survey.Marks[0] with { FreeboardM = 1.32 }, .. survey.Marks.Skip(1)] });
        string why = Assert.Single(weight.Trouble).Message;

        Assert.Contains("four marks cannot say which: read all again, or add two", why, StringComparison.Ordinal);
        Assert.DoesNotContain("“", why, StringComparison.Ordinal);
    }

    [Fact]
    public void NoLinesAndNoBareBoat_TellWhatWouldTell()
    {
        BoatModel boat = StableBoats.Box(Survey()).Without("hull-lines");
        BoatWeight weight = boat.View().Weight;

        Assert.Null(weight.Total);
        Assert.Contains(new FindingInput("hull-lines", "stations", IsMissing: true), weight.Missing);
        Assert.Contains(new FindingInput("bare-boat", "massKg", IsMissing: true), weight.Missing);
        Assert.Null(boat.View().FloatingIn(boat.Find<Condition>("in-use")!));
    }

    // GM of the box at 0.8 m is 2.066667 - KG (closed form); T = 0.80 B / root GM as the test says, so the period tells KG 1.2 m, better than the list's ± 0.5.
    [Fact]
    public void Rolls_PullKgToWhatTheyMeasured()
    {
        BoatWeight weight = Weigh(StableBoats.Bare(kgM: 0.9, kgDeviationM: 0.5), StableBoats.Gear("chest", 500, Chest.Place), Survey(), Rolls(gmM: 2.066667 - 1.2));

        Assert.InRange(weight.Total!.Centre.ZM, 1.15, 1.2);
        Assert.InRange(weight.Total.KgDeviationM, 0.05, 0.2);
    }

    // The same box, nothing typed of the bare boat: the freeboards tell 32.8 t at 5 m, the period KG 1.2 m.
    [Fact]
    public void SurveyAndRolls_WithoutTheBareBoat_TellAllOfHer()
    {
        WeightTotal total = AssertAllTold(Survey(), Rolls(gmM: 2.066667 - 1.2));

        Assert.Equal(1.2, total.Centre.ZM, 0.001);
    }

    // Moment 200 kg · m on 32.8 t with GM 0.866667 m heels by 200/(32 800 · 0.866667) (closed form). Inclined a month before the survey, and listed after it.
    [Fact]
    public void SurveyAndInclining_WithoutTheBareBoat_TellAllOfHer_WhateverTheOrder()
    {
        WeightTotal total = AssertAllTold(Survey(), Inclines(gmM: 2.066667 - 1.2));
        WeightTotal other = AssertAllTold(Inclines(gmM: 2.066667 - 1.2) with { On = new DateOnly(2026, 11, 1) }, Survey());

        Assert.Equal(1.2, total.Centre.ZM, 0.001);
        Assert.Equal(total.Centre.ZM, other.Centre.ZM, 1e-9);
    }

    [Fact]
    public void SurveyAlone_WithoutTheBareBoat_TellsMassAndLcg_AndThatKgIsNotKnown()
    {
        StabilityView view = StableBoats.Box(Survey()).View();
        LoadedBoat loaded = view.LoadedIn(view.Conditions[0]);

        Assert.Empty(view.Weight.Trouble);
        Assert.Null(view.Weight.Total);
        Assert.Null(view.FloatingIn(view.Conditions[0]));
        Assert.Equal(32_800, view.Weight.WithoutKg!.MassKg, 1.0);
        Assert.Equal(5, view.Weight.WithoutKg.Centre.XM, 0.001);
        Assert.Equal(32_300, loaded.WithoutKg!.Total.MassKg, 1.0);
        Assert.Equal([new FindingInput("bare-boat", "kgM", IsMissing: true)], view.Weight.Missing);
        Assert.Contains("inclining or a rolling test", Assert.Single(new FloatsCheck().Run(view)).Headline.ToString(), StringComparison.Ordinal);
    }

    // The same man at the test and now: what he weighs cancels, however well it is known (closed form); the freeboards weighed them both.
    [Theory]
    [InlineData(80, 24)]
    [InlineData(80, 3)]
    [InlineData(95, 3)]
    public void SameManAtTheTestAndNow_Cancels(double massKg, double plusMinus)
    {
        WeightTotal total = Manned(massKg, plusMinus, new AboardItem("man", 80, new Place(5, 0, 1), 24, 0.05));

        Assert.Equal(32_800, total.MassKg, 2.0);
        Assert.InRange(total.MassDeviationKg, 169, 172);
    }

    // Two of him now, one then: one man's error comes on top, the known one's of 3 kg.
    [Fact]
    public void OneMoreOfTheSame_BringsTheErrorOfOne()
    {
        AboardItem then = new("man", 80, new Place(5, 0, 1), 24, 0.05);
        double one = Manned(82, 30, then with { DeviationKg = 30 }).MassDeviationKg, two = Manned(82, 30, then with { DeviationKg = 30 }, 2).MassDeviationKg;

        Assert.Equal((one * one) + (30 * 30), two * two, 1.0);
    }

    // What the test weighed itself stands, and so does what was so much less that it was not the same.
    [Theory]
    [InlineData(90, 24, 80, 1, 10)]
    [InlineData(80, 1, 20, 6, 60)]
    public void TestsOwnWeight_Stands(double massKg, double plusMinus, double thenKg, double thenDeviationKg, double cameKg)
    {
        WeightTotal total = Manned(massKg, plusMinus, new AboardItem("man", thenKg, new Place(5, 0, 1), thenDeviationKg, 0.05));

        Assert.Equal(32_800 + cameKg, total.MassKg, 2.0);
    }

    // Hung and let go, people listed and others in their place: what is taken off again leaves no error behind.
    [Fact]
    public void TakenOffAgain_LeavesNoError()
    {
        StabilityView view = ManBoat(80, 24, new AboardItem("chest", 500, Chest.Place), 1).View();
        LoadedBoat loaded = view.LoadedIn(view.Conditions[0]);
        LoadedBoat others = PeopleAboard.With(view, loaded, 300, at => at).Boat;

        Assert.True(loaded.Total!.MassDeviationKg > view.Weight.Total!.MassDeviationKg + 1);
        Assert.Equal(view.Weight.Total.MassDeviationKg, others.Total!.MassDeviationKg, 1e-9);
        Assert.Equal(loaded.Total.MassKg + 220, others.Total.MassKg, 1e-6);
    }

    private static WeightTotal Manned(double massKg, double plusMinus, AboardItem then, int count = 1) => ManBoat(massKg, plusMinus, then, count).Loaded().Total!;

    private static BoatModel ManBoat(double massKg, double plusMinus, AboardItem then, int count) => StableBoats.Box(
        StableBoats.Bare(),
        Survey() with { Aboard = [then] },
        new Deadweight { Id = "man", Use = DeadweightUse.People, MassKg = StableBoats.Known(massKg, plusMinus), Place = new Place(5, 0, 1), Aboard = [new DeadweightCount("in-use", count)] });

    private static WeightTotal AssertAllTold(params Thing[] tests)
    {
        StabilityView view = StableBoats.Box([StableBoats.Gear("chest", 500, Chest.Place), .. tests]).View();

        Assert.Empty(view.Weight.Trouble);
        Assert.Empty(view.Weight.Missing);
        WeightTotal total = view.Weight.Total!;
        Assert.Equal(32_800, total.MassKg, 10.0);
        Assert.Equal(5, total.Centre.XM, 0.001);
        Assert.Equal(0, total.Centre.YM, 0.001);
        Assert.Equal(2.066667 - 1.2, view.FloatingIn(view.Conditions[0])!.Rest.Position!.MetacentricHeightM, 0.002);
        return total;
    }

    // A slack tank of 4 × 3 m of fresh water takes 1000 · 4 · 27/12 / 32 800 = 0.2744 m off the GM that is rolled with.
    [Fact]
    public void Rolls_WithASlackTank_AreReadWithItsFreeSurface()
    {
        Tank tank = new() { Id = "water", From = new Place(3, -1.5, 0.1), To = new Place(7, 1.5, 1.1), LiquidKgPerM3 = 1000 };
        AboardItem half = new("water", 6000, new Place(5, 0, 0.35));
        Thing[] with = [StableBoats.Bare(massKg: 26_300, kgM: 1.3, kgDeviationM: 0.5), tank, StableBoats.Gear("chest", 500, Chest.Place), Survey() with { Aboard = [Chest, half] }];

        double Kg(double gm) => Weigh([.. with, Rolls(gm) with { Aboard = [Chest, half] }]).Total!.Centre.ZM;

        Assert.InRange(Kg(2.066667 - 1.2 - 0.2744), 1.18, 1.22);
    }

    private static BoatWeight Weigh(params Thing[] more) => StableBoats.Box(more).View().Weight;

    private static FreeboardSurvey Survey() => new()
    {
        Id = "survey",
        On = new DateOnly(2026, 10, 1),
        Aboard = [Chest],
        WaterDensityKgPerM3 = 1025,
        Marks =
        [
            new FreeboardMark("aft, port", new Place(0, 2, 2), 1.2), new FreeboardMark("aft, starboard", new Place(0, -2, 2), 1.2),
            new FreeboardMark("fore, port", new Place(10, 2, 2), 1.2), new FreeboardMark("fore, starboard", new Place(10, -2, 2), 1.2),
        ],
    };

    private static InclinationTest Inclines(double gmM) => new()
    {
        Id = "inclines",
        On = new DateOnly(2026, 9, 1),
        Aboard = [Chest],
        WaterDensityKgPerM3 = 1025,
        Readings =
        [
            .. new[] { -2.0, -1, 1, 2, 0 }.Select((metres, index) => new InclinedReading($"shift {index}", 500, metres, DeflectionM: 2 * 500 * metres / (32_800 * gmM), PendulumM: 2)),
        ],
    };

    private static RollingTest Rolls(double gmM) => new()
    {
        Id = "rolls",
        On = new DateOnly(2026, 10, 1),
        Aboard = [Chest],
        WaterDensityKgPerM3 = 1025,
        RollingFactor = new Quantity(0.80, Knowledge.Measured, 0.04),
        Runs = [new TimedRolls(10, 10 * 0.80 * 4 / Math.Sqrt(gmM))],
    };
}
