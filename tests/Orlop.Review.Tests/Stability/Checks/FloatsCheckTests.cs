using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class FloatsCheckTests
{
    // 9 t at a hook 3 m off the centre line: 27 t m, more than half the breadth of the whole 41.8 t can bring back (Δ·GM·sin φ stays under 41.8·0.3 t m).
    [Theory]
    [InlineData(3, "to port")]
    [InlineData(-3, "to starboard")]
    public void Capsize_IsOneFinding_WithSideLimitSourceAndLoading(double hookYM, string side)
    {
        BoatModel boat = Lifting(hookYM);
        Finding finding = boat.Only("floats-at-rest");
        string said = finding.Headline.ToString();

        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.StartsWith("At sea with sampler on the hook she capsizes", said, StringComparison.Ordinal);
        Assert.Contains($"capsizes {side} ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("allowed", said, StringComparison.Ordinal);
        Assert.DoesNotContain("-", said, StringComparison.Ordinal);
        Assert.Equal("sampler", finding.OtherSubjectId);
        Assert.Equal(90, finding.Number("Asked"));
        Assert.Equal("common practice, no source", finding.Working.Single(line => line.What == "Asked").Source);
        Assert.InRange(finding.Number("Comes to rest"), 90, 180);
        Assert.StartsWith("Nobody under the load", finding.Caution, StringComparison.Ordinal);
        Assert.Single(boat.Review().Findings.SelectMany(pair => pair.After!.All), other => other.Verdict == Verdict.Fails && other.Headline.ToString().Contains("capsizes", StringComparison.Ordinal));
    }

    // The owner's limits and the flooded space have no finding of their own of it; the limits are named in the one.
    [Fact]
    public void Capsize_NamesTheOwnersLimitsThatFallWithIt()
    {
        BoatModel boat = Lifting(3);
        Assert.Equal([4, 0.6], boat.Only("floats-at-rest").Working.Where(line => line.What == "Not kept either").Select(line => line.Value!.Value));
        Assert.All(new[] { "list", "least-gm", "one-space-flooded", "hung-weight" }, check => Assert.Empty(boat.Found(check)));
    }

    // Without the weight she is the box, upright.
    [Fact]
    public void Capsize_TellsHowSheLiesWithoutTheWeight() => Assert.Equal(0, Lifting(3).Only("floats-at-rest").Number("Without it"), 1e-6);

    // Alike on both sides and balanced upright with GM below 0: nothing says to which side.
    [Fact]
    public void Capsize_OfABoatThatBalancesUpright_IsToOneSideOrTheOther() => Assert.Contains(
        "capsizes to one side or the other", JudgedBox.Of(JudgedBox.Bare(kgM: 6)).Only("floats-at-rest").Headline.ToString(), StringComparison.Ordinal);

    // One of 80 kg aloft she bears; the 200 of the rules there put G above her metacentre: KG 3.4 m and more against KM 1.7 m.
    [Fact]
    public void MostPeopleOfTheRules_CapsizeHer_InOneFindingOfThatLoading()
    {
        BoatModel boat = JudgedBox.Of(
            JudgedBox.Rules(StabilityRule.SmallCraft) with { PeopleCount = 200 }, JudgedBox.Aboard("crew", DeadweightUse.People, 80, 5, 0, 12), Hold());
        Finding finding = boat.Only("floats-at-rest");

        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.StartsWith("At sea with 200 people aboard she capsizes", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Empty(boat.Found("people-to-one-side"));
        Assert.DoesNotContain("capsizes", boat.Only("one-space-flooded", "hold").Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ThroughHull_OfABoatThatCapsizes_SaysThatAndNotThatHerWeightIsUnknown()
    {
        string said = Lifting(3).With(new HullOpening { Id = "drain", Use = OpeningUse.ThroughHull, Place = new Place(2, 2, 0.3), HasSeacock = false }).Only("through-hull-shuts", "drain").Headline.ToString();
        Assert.Contains("capsizes to port", said, StringComparison.Ordinal);
        Assert.DoesNotContain("weight is not known", said, StringComparison.Ordinal);
    }

    // She floats 0.8 m deep: a sill 0.6 m up is 0.2 m under water. What rests on her floating dry holds with the sill at 1.5 m, and does not here.
    [Theory]
    [InlineData(0.6, Verdict.Fails)]
    [InlineData(1.5, Verdict.Holds)]
    public void OpeningUnderWaterAtRest_IsABoatThatFills(double sillM, Verdict verdict)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Rules(StabilityRule.GeneralIntact), JudgedBox.Own(LimitIds.LeastGmM, 0.3), Door(sillM));
        Finding finding = boat.Only("floats-at-rest");
        bool isDry = verdict == Verdict.Holds;

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(!isDry, finding.IsFlooding);
        Assert.Equal(isDry, finding.Headline.ToString().StartsWith("She floats", StringComparison.Ordinal));
        Assert.All(new[] { boat.Only("least-gm"), boat.Only("general-intact", "particulars.initial-gm") }, gm => Assert.Equal(isDry ? Verdict.Holds : Verdict.Unknown, gm.Verdict));
        Assert.Equal(isDry, boat.View().UnderAtRestIn(boat.All<Condition>().Single()) is null);
        if (!isDry)
        {
            Assert.StartsWith("At sea she fills: Wheelhouse door is ", finding.Headline.ToString(), StringComparison.Ordinal);
            Assert.Equal(0.2, finding.Number("Under water"), 1e-6);
            Assert.Contains("she fills", boat.Only("least-gm").Headline.ToString(), StringComparison.Ordinal);
            Assert.DoesNotContain(boat.Review().Findings.SelectMany(pair => pair.After!.All), other => other.Verdict is Verdict.Holds or Verdict.Tight && other.ConditionId is not null && other.CheckId.StartsWith("general", StringComparison.Ordinal));
        }
    }

    // dT/dm = 1/(ρ L B) = 1/41 000 m/kg: one deviation of 615 kg is 15 mm of draught, and the band ± 30 mm. She floats 0.8 m deep.
    [Theory]
    [InlineData(0.84, Verdict.Holds)]
    [InlineData(0.81, Verdict.Unknown)]
    [InlineData(0.79, Verdict.Unknown)]
    [InlineData(0.76, Verdict.Fails)]
    public void OpeningNearerToTheWaterThanHerDraughtIsSure_MayFill(double sillM, Verdict verdict)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastGmM, 0.3), JudgedBox.Bare(massPlusMinus: 615), Door(sillM));
        Finding finding = boat.Only("floats-at-rest");
        string said = finding.Headline.ToString();

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fails, finding.IsFlooding);
        Assert.Equal(verdict == Verdict.Holds ? Verdict.Holds : Verdict.Unknown, boat.Only("least-gm").Verdict);
        if (verdict == Verdict.Unknown)
        {
            Assert.StartsWith("At sea she may fill: Wheelhouse door is ", said, StringComparison.Ordinal);
            Assert.Equal(0.01, finding.Number(sillM > 0.8 ? "Over the water" : "Under water"), 1e-6);
            Assert.Equal(0.03, finding.Number("Band"), 1e-6);
            Assert.Contains("she may fill", boat.Only("least-gm").Headline.ToString(), StringComparison.Ordinal);
            // Two deviations of 10 mm are 410 kg: so well a survey must know her weight.
            Assert.Contains("a freeboard survey that knows her weight to ± 4", said, StringComparison.Ordinal);
            Assert.InRange(double.Parse(said.Split("knows her weight to ± ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 400, 410);
        }
    }

    // Nothing but four marks read to 30 mm and a roll tell of her: the mean of four is known to 15 mm, and hog of 5 mm, two thirds of which is at the ends, puts 3.3 mm on it; two deviations of both are 30.7 mm.
    [Theory]
    [InlineData(0.85, Verdict.Holds)]
    [InlineData(0.82, Verdict.Unknown)]
    [InlineData(0.78, Verdict.Unknown)]
    [InlineData(0.75, Verdict.Fails)]
    public void OpeningNearTheWaterOfASurvey_GoesByWhatItsMarksCanTell(double sillM, Verdict verdict)
    {
        FreeboardSurvey survey = new()
        {
            Id = "survey",
            IsBare = true,
            WaterDensityKgPerM3 = 1025,
            Marks = [.. from x in new[] { 0.0, 10 } from y in new[] { 2.0, -2 } select new FreeboardMark($"{x}, {y}", new Place(x, y, 2), 1.2, 0.03)],
        };
        RollingTest rolls = new() { Id = "rolls", IsBare = true, WaterDensityKgPerM3 = 1025, RollingFactor = JudgedBox.Sure(0.8, 0.04), Runs = [new TimedRolls(10, 10 * 0.8 * 4 / Math.Sqrt(JudgedBox.GmM))] };
        Finding finding = StableBoats.Box(survey, rolls, Door(sillM) with { Place = new Place(5, 0, sillM) }).Only("floats-at-rest");

        Assert.Equal(verdict, finding.Verdict);
        if (verdict != Verdict.Holds)
        {
            Assert.Equal(0.0307, finding.Number("Band"), 0.001);
        }
    }

    // The marks alone put the water 0.8 m up, whatever her KG, and that to ± 8.3 mm: four marks of 5 mm, with hog 4.2 mm for one deviation.
    [Theory]
    [InlineData(0.6, Verdict.Fails, "At sea she fills, whatever her KG: Wheelhouse door is ")]
    [InlineData(0.803, Verdict.Unknown, "and she may fill: Wheelhouse door is ")]
    [InlineData(1.5, Verdict.Unknown, null)]
    public void OpeningUnderTheWaterlineOfASurvey_IsToldWithoutKg(double sillM, Verdict verdict, string? told)
    {
        BoatModel boat = WithoutKg(0, Door(sillM));
        Finding finding = boat.Only("floats-at-rest");
        string said = finding.Headline.ToString();

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(told is not null, said.Contains("Wheelhouse door", StringComparison.Ordinal));
        Assert.Contains(told ?? "inclining or a rolling test", said, StringComparison.Ordinal);
        Assert.Equal(verdict == Verdict.Fails, finding.IsFlooding);
        Assert.Equal(told is not null, finding.Working.Any(line => line.What == "Band"));
        Assert.Contains(finding.Inputs, input => input is { Field: "kgM", IsMissing: true });
    }

    // Read 0.1 m lower to port, sin φ = 0.2/4: d = 2 cos φ − 1.2, and the door, 1.9 m out, stands 0.85 cos φ − 1.9·0.05 − d = 1.105 − 1.15 cos φ over the water. Only her list puts it under, and that goes by KG.
    [Fact]
    public void OpeningUnderOnlyByTheListOfASurvey_MayFill()
    {
        Finding finding = WithoutKg(0.1, Door(0.85) with { Place = new Place(5, 1.9, 0.85) }).Only("floats-at-rest");

        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("how far she heels goes by KG", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal((1.15 * Math.Sqrt(1 - (0.05 * 0.05))) - 1.105, finding.Number("Under water"), 1e-6);
    }

    // Shut tight in the condition it lets nothing in.
    [Fact]
    public void OpeningUnderWater_ShutTight_LetsNothingIn() =>
        Assert.Equal(Verdict.Holds, JudgedBox.Of(Door(0.6) with { IsTightWhenShut = true, ShutIn = ["at-sea"] }).Only("floats-at-rest").Verdict);

    // 61.5 t float 1.5 m deep: BML = L²/(12 T) = 5.56 m, GML = 0.75 + 5.56 − 1.2 = 5.11 m; G 0.6 m forward trims her by tan θ = 0.6/5.11, and the bow of the 2 m deep box goes 5·tan θ − 0.5 = 0.09 m under.
    [Theory]
    [InlineData(DeckKind.Open, Verdict.Fails)]
    [InlineData(null, Verdict.Unknown)]
    [InlineData(DeckKind.Closed, Verdict.Holds)]
    public void DeckEdgeUnderWaterAtRest_GoesByTheDeck(DeckKind? deck, Verdict verdict)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(massKg: 61_500, lcgM: 5.6)).Change<Particulars>("particulars", whole => whole with { Deck = deck });
        Finding finding = boat.Only("floats-at-rest");

        Assert.Equal(verdict, finding.Verdict);
        if (deck is null)
        {
            Assert.Contains("whether her deck is closed is not said", finding.Headline.ToString(), StringComparison.Ordinal);
            Assert.Contains(finding.Inputs, input => input is { ThingId: "particulars", Field: "deck", IsMissing: true });
        }

        if (deck != DeckKind.Closed)
        {
            Assert.InRange(finding.Number("Under water"), 0.05, 0.13);
        }
    }

    // A point on the centre line is dry, 0.1 m over the water; only the sides that nobody told, at the deck edge of a boat that lists, are under.
    [Fact]
    public void WellWithoutSides_UnderAtASideThatNobodyTold_IsUnknown()
    {
        HullOpening well = new() { Id = "well", Name = "Motor well", Use = OpeningUse.Well, Place = new Place(5, 0, 0.9) };
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(tcgM: 0.1), well);
        Finding finding = boat.Only("floats-at-rest");

        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("Motor well is ", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, boat.With(well with { ClearLengthM = 1, ClearBreadthM = 0.4 }).Only("floats-at-rest").Verdict);
    }

    private static BoatModel WithoutKg(double lowerToPortM, HullOpening door) => JudgedBox.Of(door, new FreeboardSurvey
    {
        Id = "survey",
        IsBare = true,
        Marks = [.. from x in new[] { 0.0, 10 } from y in new[] { 2.0, -2 } select new FreeboardMark($"{x}, {y}", new Place(x, y, 2), 1.2 - (Math.Sign(y) * lowerToPortM))],
    }).Without("bare-boat");

    private static HullOpening Door(double sillM) => new() { Id = "door", Name = "Wheelhouse door", Use = OpeningUse.Door, Place = new Place(5, 1, sillM) };

    private static BoatModel Lifting(double hookYM) => JudgedBox.Of(
        new PracticeChoice { Id = "practice", Basis = "owner", Own = [new OwnLimit(LimitIds.MostListDeg, 4, "as wanted"), new OwnLimit(LimitIds.LeastGmM, 0.6, "as wanted"), new OwnLimit(LimitIds.MostLiftingHeelDeg, 5, "as wanted")] },
        JudgedBox.Aboard("sampler", DeadweightUse.Hung, 9000, 5, hookYM, 4), Hold());

    private static Space Hold() => new() { Id = "hold", Use = SpaceUse.Dry, From = new Place(4, -2, 0), To = new Place(6, 2, 2), PermeabilityFraction = 0.95 };
}
