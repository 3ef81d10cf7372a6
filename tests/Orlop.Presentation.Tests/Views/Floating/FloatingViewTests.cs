using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class FloatingViewTests
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private static readonly Gear Chest = new() { Id = "chest", Name = "Chest", MassKg = new Quantity(100, Knowledge.Measured, 1), Place = new Place(5, 1, 1) };

    // KB + BM - KG of a box: T/2 + B²/(12 T) - KG = 0.2 + 1.875 - 0.8 (BM = I/V).
    [Fact]
    public void Facts_OfABox_AreThoseWorkedByHand()
    {
        FloatingFacts facts = Barge.Facts(Barge.Boat);

        Assert.Equal(0.4, facts.Draughts[1].DraughtM, 1e-6);
        Assert.Equal(1.275, facts.Position!.MetacentricHeightM, 1e-6);
        Assert.Equal(0, facts.TrimM!.Value, 1e-6);
        // Draught by mass: 300 kg over 30 m² of water.
        Assert.Equal(0.01, facts.Deviations.DraughtM, 1e-5);
    }

    [Fact]
    public void Tiles_OfADraft_TellWhatWasAsBuilt()
    {
        BoatModel altered = Barge.Boat.With(Chest);
        StabilityView view = Barge.View(altered);
        FloatingView shown = FloatingView.Of(view, Barge.Facts(altered), Barge.Facts(Barge.Boat), DisplayUnits.Metric, Culture);
        Vital heel = shown.Tiles.Single(tile => tile.Name == "Heel");

        Assert.EndsWith("to port", heel.Value, StringComparison.Ordinal);
        Assert.Equal("upright", heel.Was);
        Assert.Equal(4, shown.Short.Count);
        Assert.All(shown.Tiles.Where(tile => tile.Name != "Range of stability"), tile => Assert.Null(tile.Verdict));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Range_WithoutAnOpening_SaysThatFloodingIsNotKnown(bool hasHatch)
    {
        BoatModel boat = hasHatch ? Barge.Boat.With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 1.9) }) : Barge.Boat;
        Vital range = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "Range of stability");

        Assert.Equal(!hasHatch, range.Of.Contains("no opening is listed", StringComparison.Ordinal));
        Assert.Equal(hasHatch ? null : Verdict.Unknown, range.Verdict);
    }

    // A door 0.6 m inside the starboard rail goes under long before stability vanishes to port: the shorter side stands in the box, in a draft and as built.
    [Fact]
    public void Range_IsThatOfTheShorterSide_WhicheverIsWeakerByItsLevers()
    {
        HullOpening door = new() { Id = "door", Name = "Side door", Use = OpeningUse.Door, Place = new Place(5, -1.0, 2.0) };
        BoatModel asBuilt = Barge.Boat.With(Chest, door), draft = asBuilt.Change<Gear>("chest", chest => chest with { MassKg = new Quantity(500, Knowledge.Measured, 1) });
        FloatingFacts facts = Barge.Facts(draft), was = Barge.Facts(asBuilt);
        Assert.True(facts.IsPortWeaker);
        Assert.True(Math.Abs(facts.Starboard!.RangeDeg!.Value) < Math.Abs(facts.Port!.RangeDeg!.Value));

        Vital range = FloatingView.Of(Barge.View(draft), facts, was, DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "Range of stability");
        Assert.Equal(FloatingWords.Degrees(facts.Starboard.RangeDeg.Value, DisplayUnits.Metric, Culture), range.Value);
        Assert.Equal(FloatingWords.Degrees(was.Starboard!.RangeDeg!.Value, DisplayUnits.Metric, Culture), range.Was);
        Assert.Contains("until Side door goes under", range.Of, StringComparison.Ordinal);
        Assert.Contains($"{FloatingWords.Degrees(facts.Port.RangeDeg.Value, DisplayUnits.Metric, Culture)} to port", range.Of, StringComparison.Ordinal);
    }

    // 1.5 t at 1.3 m to port lay her over by several degrees: GM there and GM upright are told apart.
    [Fact]
    public void Gm_AtAnotherHeelThanAsBuilt_SaysBothHeels()
    {
        BoatModel draft = Barge.Boat.With(Chest with { MassKg = new Quantity(1500, Knowledge.Measured, 1), Place = new Place(5, 1.3, 1) });
        FloatingFacts facts = Barge.Facts(draft);
        Assert.True(facts.Position!.Attitude.HeelDeg < -5);
        Vital gm = FloatingView.Of(Barge.View(draft), facts, Barge.Facts(Barge.Boat), DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "GM");
        Assert.EndsWith($"at {FloatingWords.Heel(facts.Position.Attitude.HeelDeg, DisplayUnits.Metric, Culture)}", gm.Of, StringComparison.Ordinal);
        Assert.EndsWith(", upright", gm.Was, StringComparison.Ordinal);
    }

    // Where water comes in: over the deck edge of an open boat, over the coaming of a well that is listed, else through what is listed.
    [Theory]
    [InlineData(DeckKind.Open, null, true)]
    [InlineData(DeckKind.PartlyOpen, null, true)]
    [InlineData(DeckKind.PartlyOpen, OpeningUse.Well, true)]
    [InlineData(DeckKind.Closed, OpeningUse.Well, true)]
    [InlineData(DeckKind.Closed, OpeningUse.Hatch, false)]
    public void Range_OfAnOpenBoat_EndsWhereTheDeckEdgeGoesUnder(DeckKind deck, OpeningUse? listed, bool isOverEdge)
    {
        BoatModel boat = Barge.Boat.Change<Particulars>("particulars", whole => whole with { Deck = deck });
        boat = listed is { } use ? boat.With(new HullOpening { Id = "listed", Name = "Listed", Use = use, Place = new Place(5, 0, 1.9) }) : boat;
        FloatingFacts facts = Barge.Facts(boat);
        Assert.Equal(isOverEdge, facts.Starboard!.DownfloodingOpening?.StartsWith("deck edge", StringComparison.Ordinal) == true);
        Vital range = FloatingView.Of(Barge.View(boat), facts, null, DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "Range of stability");
        Assert.Null(range.Verdict);
        Assert.Equal(isOverEdge, range.Of.Contains("until deck edge", StringComparison.Ordinal));
    }

    // A well's length and breadth are asked for, and once they are told it is said where its sides are taken to lie.
    [Fact]
    public void Well_WithoutItsSides_IsAskedForThem()
    {
        HullOpening well = new() { Id = "well", Name = "Well", Use = OpeningUse.Well, Place = new Place(5, 0, 1.9) };
        BoatModel point = Barge.Boat.Change<Particulars>("particulars", whole => whole with { Deck = DeckKind.PartlyOpen }).With(well), told = point.With(well with { ClearLengthM = 2, ClearBreadthM = 1.6 });
        FloatingView Shown(BoatModel boat) => FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.Equal(["clearLengthM", "clearBreadthM"], Shown(point).Missing.Where(field => field.ThingId == "well").Select(field => field.Field));
        Assert.Contains("Length and breadth of Well are not given", FloatingWords.Deck(point, DisplayUnits.Metric, Culture), StringComparison.Ordinal);
        Assert.DoesNotContain(Shown(told).Missing, field => field.ThingId == "well");
        Assert.Contains("Well from 0.8\u00A0m to starboard to 0.8\u00A0m to port", FloatingWords.Deck(told, DisplayUnits.Metric, Culture), StringComparison.Ordinal);
    }

    [Fact]
    public void Flooding_IsHintedAtWhereNoSpaceSaysHowMuchFills()
    {
        Space cuddy = new() { Id = "cuddy", Name = "Cuddy", Use = SpaceUse.Dry, From = new Place(6, -1, 0.2), To = new Place(8, 1, 1.5) };
        Assert.Equal("Say how much of Cuddy water can fill, to see her flooded", FloodHint.Of(Barge.Boat.With(cuddy))?.Text);
        Assert.Null(FloodHint.Of(Barge.Boat.With(cuddy with { PermeabilityFraction = 0.95 })));
        Assert.Null(FloodHint.Of(Barge.Boat));
    }

    [Fact]
    public void Range_WhereNobodySaidWhetherSheIsDecked_IsUnknownAndAsksForIt()
    {
        BoatModel boat = Barge.Boat.Change<Particulars>("particulars", whole => whole with { Deck = null }).With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 1.9) });
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);
        Assert.Equal(Verdict.Unknown, shown.Tiles.Single(tile => tile.Name == "Range of stability").Verdict);
        Assert.Contains(shown.Missing, field => field is { ThingId: "particulars", Field: "deck", IsThere: true });
        Assert.Contains("is not said", FloatingWords.Deck(boat, DisplayUnits.Metric, Culture), StringComparison.Ordinal);
    }

    // An open boat of the same form floods where the deck edge goes under: that far her range is known, whatever deck she has.
    [Fact]
    public void Range_PastTheDeckEdgeOfADeckThatNobodyTold_IsUnknown()
    {
        BoatModel told = Barge.Boat.With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 9) });
        BoatModel untold = told.Change<Particulars>("particulars", whole => whole with { Deck = null }), open = told.Change<Particulars>("particulars", whole => whole with { Deck = DeckKind.Open });
        Vital Range(BoatModel boat) => FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "Range of stability");

        Assert.Equal($"unknown past {Range(open).Value}", Range(untold).Value);
        Assert.DoesNotContain("any heel", Range(untold).Of, StringComparison.Ordinal);
        Assert.Contains("the deck edge goes under there", Range(untold).Of, StringComparison.Ordinal);
        Assert.DoesNotContain("unknown", Range(told).Value, StringComparison.Ordinal);
    }

    // She floats 0.4 m deep: a hatch 0.3 m up is 0.1 m under water.
    [Fact]
    public void HatchUnderWaterAtRest_IsToldAboveTheTiles_AsGraveAsACapsize()
    {
        BoatModel boat = Barge.Boat.With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 0.3) });
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.StartsWith("She fills: Hatch is 0.1\u00A0m under water where she comes to rest.", shown.Trouble, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fails, shown.TroubleVerdict);
        Assert.All(shown.Tiles, tile => Assert.Equal(Verdict.Fails, tile.Verdict));
        Assert.All(shown.Tiles.Where(tile => tile.Name is "GM" or "Range of stability"), tile => Assert.Equal("fills", tile.Value));
        Assert.Null(Barge.Facts(boat).GmM);
        Assert.Null(Barge.Facts(boat).Greatest);
        // 1.275 m as built, dry.
        Assert.Equal("1.275\u00A0m", FloatingView.Of(Barge.View(boat), Barge.Facts(boat), Barge.Facts(Barge.Boat), DisplayUnits.Metric, Culture).Tiles.Single(tile => tile.Name == "GM").Was);
    }

    // 300 kg over 30 m² of water: one deviation is 10 mm of draught. A hatch 10 mm over the water, or under it, is nearer than two.
    [Theory]
    [InlineData(0.41, "She may fill: Hatch is 0.01\u00A0m over the water where she comes to rest, and that may be 0.02\u00A0m more or less, so unsure is her weight.")]
    [InlineData(0.39, "She may fill: Hatch is 0.01\u00A0m under water where she comes to rest, and that may be 0.02\u00A0m more or less, so unsure is her weight.")]
    [InlineData(0.43, null)]
    public void HatchNearerToTheWaterThanItIsSure_MayLetHerFill(double heightM, string? trouble)
    {
        BoatModel boat = Barge.Boat.With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, heightM) });
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.Equal(trouble, shown.Trouble);
        Assert.All(shown.Tiles, tile => Assert.Equal(trouble is null ? null : Verdict.Unknown, tile.Verdict));
    }

    // Four marks 1.4 m over the water on sides of 1.8 m: 0.4 m deep, whatever her KG. A hatch 0.3 m up is under.
    [Fact]
    public void HatchUnderTheWaterlineOfASurvey_IsToldWithoutKg()
    {
        BoatModel boat = Barge.Boat.WithThings(Barge.Boat.Things.Where(thing => thing is not BareBoat)).With(new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0, 0.3) }).With(new FreeboardSurvey
        {
            Id = "survey",
            IsBare = true,
            Marks = [.. from x in new[] { 0.0, 10 } from y in new[] { 1.5, -1.5 } select new FreeboardMark($"{x}, {y}", new Place(x, y, 1.8), 1.4)],
        });
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.StartsWith("She fills: Hatch is 0.1\u00A0m under water where her freeboards float her.", shown.Trouble, StringComparison.Ordinal);
        Assert.Contains("Her stability is unknown", shown.Trouble, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fails, shown.TroubleVerdict);
        Assert.Equal("fills", shown.Tiles.Single(tile => tile.Name == "GM").Value);
    }

    // i = 2·1³/12 = 1/6 m⁴: 166.7 kg·m of fresh water on 12.5 t, 13 mm of GM. T = f B/√GM, so each roll is √((GM + 0.013)/GM) longer.
    [Fact]
    public void RollingTest_WithASlackTank_WarnsOfItWithWhatItTook()
    {
        Tank tank = new() { Id = "fuel", Name = "Fuel", From = new Place(4, -0.5, 0.1), To = new Place(6, 0.5, 0.6), LiquidKgPerM3 = 1000 };
        RollingTest rolls = new() { Id = "rolls", Name = "Rolls", Aboard = [new AboardItem("fuel", 500, new Place(5, 0, 0.2))], Runs = [new TimedRolls(10, 24)], RollingFactor = new Quantity(0.8, Knowledge.Measured, 0.04) };
        string? Remark(RollingTest test) => RollingReport.Of(Barge.View(Barge.Boat.With(tank).With(test)), test, DisplayUnits.Metric, Culture).Remark;
        // GM by the period: (0.8·3/2.4)² = 1 m.
        double ratio = Math.Sqrt(1 + (1000.0 / 6 / 12_500));

        Assert.StartsWith("Slack then: Fuel (50 % full). Taken as at rest on their level, their free surface took 0.013\u00A0m from GM, and made each roll ", Remark(rolls), StringComparison.Ordinal);
        Assert.Contains(string.Create(Culture, $"{100 * (ratio - 1):0.#} % longer"), Remark(rolls), StringComparison.Ordinal);
        Assert.Null(Remark(rolls with { Aboard = [new AboardItem("fuel", 1000, new Place(5, 0, 0.35))] }));
    }

    // A survey made in other water than the boat is floated in is told beside it.
    [Fact]
    public void Water_IsSaid_AndWhereItIsFrom()
    {
        BoatModel boat = Barge.Boat.Change<Particulars>("particulars", whole => whole with { WaterDensityKgPerM3 = null }).With(new FreeboardSurvey { Id = "survey", Name = "Freeboards in May", WaterDensityKgPerM3 = 1012 });
        Assert.Equal("Water: 1025\u00A0kg/m³, taken as sea water: none is given; Freeboards in May was made in 1012\u00A0kg/m³.", FloatingWords.Water(Barge.View(boat), DisplayUnits.Metric, Culture));
    }

    [Fact]
    public void Tiles_WithAMassMissing_AreMarkedUnknownAndSayWhere()
    {
        BoatModel boat = Barge.Boat.With(Chest with { MassKg = null });
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.All(shown.Tiles, tile => Assert.Equal(Verdict.Unknown, tile.Verdict));
        Assert.Equal(("chest", "massKg", true), (shown.Missing[0].ThingId, shown.Missing[0].Field, shown.Missing[0].IsThere));
    }

    [Theory]
    [InlineData("hull-lines")]
    [InlineData("bare-boat")]
    public void Tiles_WithoutHullOrWeight_AreUnknownAndSayWhatIsMissing(string gone)
    {
        BoatModel boat = Barge.Boat.WithThings(Barge.Boat.Things.Where(thing => thing.Id != gone));
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);

        Assert.NotNull(shown.Trouble);
        Assert.All(shown.Tiles, tile => Assert.Equal((QuantityText.Unknown, (Verdict?)Verdict.Unknown), (tile.Value, tile.Verdict)));
        Assert.Contains(shown.Missing, field => field.ThingId == gone && !field.IsThere);
    }

    // 1.4 m of freeboard on 1.8 m of side is 0.4 m of draught, 12 t of fresh water on 30 m² (closed form); nothing tells KG.
    [Fact]
    public void Tiles_OfASurveyAlone_TellDraughtAndTrim_AndNotGm()
    {
        FreeboardSurvey survey = new()
        {
            Id = "survey",
            IsBare = true,
            Marks = [.. new[] { (0.0, 1.5), (0, -1.5), (10, 1.5), (10, -1.5) }.Select((at, index) => new FreeboardMark($"mark {index}", new Place(at.Item1, at.Item2, 1.8), 1.4))],
        };
        BoatModel boat = Barge.Boat.WithThings([.. Barge.Boat.Things.Where(thing => thing is not BareBoat), survey]);
        FloatingView shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);
        Dictionary<string, string> tiles = shown.Tiles.ToDictionary(tile => tile.Name, tile => tile.Value);

        Assert.Equal("12000\u00A0kg", tiles["Displacement"]);
        Assert.Equal("0.4\u00A0m", tiles["Draught amidships"]);
        Assert.Equal("level", tiles["Trim"]);
        Assert.All(new[] { "Heel", "GM", "Range of stability" }, name => Assert.Equal(QuantityText.Unknown, tiles[name]));
        Assert.All(shown.Tiles, tile => Assert.Equal(Verdict.Unknown, tile.Verdict));
        Assert.Contains("(KG) is not known", shown.Trouble, StringComparison.Ordinal);
        // A spoilt test of her GM tells none of it, and why stands at the top.
        boat = boat.With(new InclinationTest
        {
            Id = "inclining",
            Name = "Inclining in May",
            IsBare = true,
            Readings = [.. new[] { 1.0, 2, 1, 0, -1, -2, -1, 0 }.Select((moved, i) => new InclinedReading($"Shift {i + 1}", 382.5, i == 4 ? -moved : moved, 2 * 382.5 * moved / (12_000 * 1.275), 2))],
        });
        shown = FloatingView.Of(Barge.View(boat), Barge.Facts(boat), null, DisplayUnits.Metric, Culture);
        Assert.All(new[] { "Heel", "GM", "Range of stability" }, name => Assert.Equal(QuantityText.Unknown, shown.Tiles.Single(tile => tile.Name == name).Value));
        Assert.Contains("Inclining in May does not count: Shift 5 is too far off the line", shown.Trouble, StringComparison.Ordinal);
    }

    // 3 t at 1.4 m to port of the centre line: their moment, 4200 kg m, is more than 15 t of a box of 3 m can bring back; she goes over to port.
    [Fact]
    public void Tiles_OfABoatThatCapsizes_HaveNoGmAndNoRange_AndSayTheSide()
    {
        BoatModel boat = Barge.Boat.With(new Gear { Id = "block", Name = "Block", MassKg = new Quantity(3000, Knowledge.Measured, 1), Place = new Place(5, 1.4, 5) });
        FloatingFacts facts = Barge.Facts(boat);
        FloatingView shown = FloatingView.Of(Barge.View(boat), facts, null, DisplayUnits.Metric, Culture);
        Dictionary<string, string> tiles = shown.Tiles.ToDictionary(tile => tile.Name, tile => tile.Value);

        Assert.True(facts.Capsizes);
        Assert.True(facts.IsPortWeaker);
        Assert.Null(facts.Position);
        Assert.Equal(Verdict.Fails, shown.TroubleVerdict);
        Assert.Contains("goes over to port", shown.Trouble, StringComparison.Ordinal);
        Assert.Equal((FloatingWords.None, FloatingWords.None), (tiles["GM"], tiles["Range of stability"]));
        Assert.EndsWith("to port", tiles["Heel"], StringComparison.Ordinal);
        Assert.Empty(facts.Draughts);
        Assert.All(shown.Tiles, tile => Assert.Equal(Verdict.Fails, tile.Verdict));
    }

    [Fact]
    public void Survey_OfFourMarksThatTwist_PaintsNone()
    {
        FreeboardSurvey survey = new()
        {
            Id = "survey",
            IsBare = true,
            Marks = [.. new[] { (0.0, 1.5, 1.46), (0, -1.5, 1.4), (10, 1.5, 1.4), (10, -1.5, 1.4) }.Select((at, index) => new FreeboardMark($"mark {index}", new Place(at.Item1, at.Item2, 1.8), at.Item3, 0.002))],
        };
        FreeboardReport report = FreeboardReport.Of(Barge.View(Barge.Boat), survey, DisplayUnits.Metric, Culture);

        Assert.Contains("four marks cannot say which", report.Refusal, StringComparison.Ordinal);
        Assert.Equal(4, report.Marks.Count);
        Assert.All(report.Marks, mark => Assert.Equal(0, mark.OffRatio));
    }

    [Fact]
    public void Missing_OfAThingThatIsNotThere_IsInWords() =>
        Assert.Equal(["centre of gravity, forward (LCG) of the bare boat"], MissingField.Of([new FindingInput("bare-boat", "lcgM", IsMissing: true)], Barge.Boat.WithThings([])).Select(field => field.Text));

    [Fact]
    public void Result_ThatIsRoundingOnly_IsNothing() => Assert.Equal("0\u00A0m", QuantityText.Result(-6.12e-18, "M", DisplayUnits.Metric, Culture));

    [Fact]
    public void Hydrostatics_OfABox_SinkByItsWaterplane()
    {
        HydrostaticView table = HydrostaticView.Of(Barge.View(Barge.Boat), DisplayUnits.Metric, Culture)!;
        int sinks = table.Heads.ToList().FindIndex(head => head.StartsWith("Sinks by", StringComparison.Ordinal));

        // 10 m by 3 m of fresh water: 300 kg for a centimetre, at every draught.
        Assert.Equal("Sinks by, kg/cm", table.Heads[sinks]);
        Assert.True(table.Rows.Count >= 10);
        Assert.All(table.Rows, row => Assert.Equal("300.0", row[sinks]));
    }

    [Fact]
    public void Righting_OfTheBarge_HasABandOnBothSidesAndTheCriteriaOfItsRules()
    {
        BoatModel boat = Barge.Boat.With(Chest, new StabilityBasis { Id = "stability-basis", Rules = [StabilityRule.GeneralIntact] });
        RightingView levers = RightingView.Of(Barge.View(boat), Barge.Facts(boat))!;

        // The chest stands to port: she is the weaker to port.
        Assert.True(levers.IsPortDrawn);
        Assert.Equal("To port: shorter range and smaller greatest lever", levers.Named(isPort: true));
        Assert.Equal("To starboard", levers.Named(isPort: false));
        Assert.Contains(levers.Port.Points, point => point.DeviationM > 0);
        Assert.Contains(levers.Starboard.Points, point => point.DeviationM > 0);
        Assert.Equal(["area-to-30", "area-30-to-40", "lever-at-30"], levers.Criteria.Select(criterion => criterion.Id));
        Assert.True(levers.Port.Points.Single(point => point.HeelDeg == -20).LeverM > 0);
    }
}
