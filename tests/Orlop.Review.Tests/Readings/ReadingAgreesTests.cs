using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Readings;
using Orlop.Review.Readings.Checks;
using Xunit;

namespace Orlop.Review.Tests.Readings;

/// <summary>A reading on record is held against the circuit. By hand: 2 m of 2.5 mm² at 20 °C, 7.98 to 8.21 mΩ/m (IEC 60228 class 5), two joints of 0.3 mΩ: about 17 mΩ, at 5 A about 0.085 V.</summary>
public sealed class ReadingAgreesTests
{
    private static readonly DateOnly Monday = new(2026, 11, 2);

    [Fact]
    public void DropAsWorkedOutByHand_Holds() => Assert.Equal(Verdict.Holds, Finding(Drop("drop", 0.085)).Verdict);

    [Fact]
    public void DropFarAbove_FailsWithBandAndHeat()
    {
        Finding finding = Finding(Drop("drop", 0.785));

        Assert.Equal((Verdict.Fails, "lamp-cable", "in-use"), (finding.Verdict, finding.OtherSubjectId, finding.ConditionId));
        Assert.Equal(0.785, Value(finding, "Read"));
        Assert.InRange(Value(finding, "Expected"), 0.08, 0.095);
        Assert.True(Value(finding, "Accepted from") < Value(finding, "Expected") && Value(finding, "Expected") < Value(finding, "Accepted up to"));
        // By hand: 0.7 V too much at 5 A is 3.5 W.
        Assert.InRange(Value(finding, "Turns to heat there"), 3.4, 3.6);
        Assert.StartsWith("Live and hot.", finding.Caution, StringComparison.Ordinal);
        Assert.Contains(finding.Inputs, input => input is { ThingId: "drop", Field: "voltageV" });
        Assert.InRange(finding.UseFraction!.Value, 1.0001, double.MaxValue);
    }

    [Fact]
    public void LampsVoltageTooLow_FailsWithoutHeat()
    {
        Finding finding = Finding(Between("low", "lamp.+", "lamp.-", 9));

        Assert.Equal((Verdict.Fails, "lamp"), (finding.Verdict, finding.OtherSubjectId));
        Assert.DoesNotContain(finding.Working, line => line.What.StartsWith("Turns", StringComparison.Ordinal));
    }

    [Fact]
    public void LaterReadingOfTheSame_TakesItsPlace_AndAnEarlierOneDoesNot()
    {
        Reading bad = Drop("bad", 0.785) with { On = Monday }, good = Drop("good", 0.085) with { On = Monday.AddDays(1) };

        Assert.Equal(["good"], Findings(Boat(good, bad)).Select(pair => pair.SubjectId));
        Assert.Equal(["bad"], Findings(Boat(bad, good with { On = Monday.AddDays(-1) })).Select(pair => pair.SubjectId));
        Assert.Equal(["second"], Findings(Boat(bad, good with { Id = "second", On = Monday })).Select(pair => pair.SubjectId));
    }

    [Fact]
    public void LengthOfTheCableMissing_IsUnknownAndAsksForIt()
    {
        BoatModel boat = Boat(Drop("drop", 0.085)).Change<Cable>("lamp-cable", cable => cable with { LengthM = null });

        Assert.Single(Findings(boat)).Shown.IsUnknownFor("lamp-cable", "lengthM");
    }

    [Fact]
    public void NotANumber_IsUnknown() => Assert.Equal(Verdict.Unknown, Finding(Drop("drop", double.NaN)).Verdict);

    /// <summary>What was right on its day stays right: a second lamp on the same cable draws it to twice the drop, and was built later.</summary>
    [Fact]
    public void BuiltLater_IsNotInTheBoatThatTheReadingIsHeldAgainst()
    {
        Edit edit = BoatEdits.Replace(SmallBoat.Lamp("lamp", 5), SmallBoat.Lamp("lamp", 10)) with { BuiltOn = Monday.AddDays(1) };
        BoatModel boat = SmallBoat.OneLamp(10).With(new Alteration { Id = "brighter", Status = AlterationStatus.Built, Edits = [edit] });

        Assert.Equal(Verdict.Holds, Assert.Single(Findings(boat.With(Drop("before", 0.085) with { On = Monday }))).Shown.Verdict);
        Assert.Equal(Verdict.Fails, Assert.Single(Findings(boat.With(Drop("after", 0.085) with { On = Monday.AddDays(1) }))).Shown.Verdict);
    }

    /// <summary>
    /// Read at the end of the work and recorded later, or not yet: it is held against the work, as its pack does. A lamp of 10 A on the same cable draws it to twice the drop. A draft is not worked on.
    /// </summary>
    [Theory]
    [InlineData(AlterationStatus.Accepted, null, Verdict.Holds)]
    [InlineData(AlterationStatus.UnderWay, null, Verdict.Holds)]
    [InlineData(AlterationStatus.Built, 0, Verdict.Holds)]
    [InlineData(AlterationStatus.Built, 3, Verdict.Holds)]
    [InlineData(AlterationStatus.Draft, null, Verdict.Fails)]
    [InlineData(AlterationStatus.Dropped, null, Verdict.Fails)]
    public void TakenForAnAlteration_IsHeldAgainstTheBoatWithAllOfItInHer(AlterationStatus status, int? builtAfterDays, Verdict expected)
    {
        Edit edit = BoatEdits.Replace(SmallBoat.Lamp("lamp", 5), SmallBoat.Lamp("lamp", 10)) with { BuiltOn = builtAfterDays is { } days ? Monday.AddDays(days) : null };
        BoatModel boat = SmallBoat.OneLamp(builtAfterDays is null ? 5 : 10).With(new Alteration { Id = "brighter", Status = status, Edits = [edit] }, Drop("drop", 0.17) with { On = Monday, Alteration = "brighter" });

        Assert.Equal(expected, Assert.Single(Findings(boat)).Shown.Verdict);
    }

    [Fact]
    public void ThingIsGone_ItsReadingIsNotJudged() => Assert.Empty(Findings(Boat(Drop("drop", 0.785)).Without("lamp-cable").Without("lamp")));

    /// <summary>A draft is not built: it makes no reading of the boat as built better or worse.</summary>
    [Fact]
    public void Draft_ChangesNoFindingOfAReading()
    {
        Alteration draft = new() { Id = "brighter", Edits = [BoatEdits.Replace(SmallBoat.Lamp("lamp", 5), SmallBoat.Lamp("lamp", 10))] };
        PairedFinding pair = Assert.Single(new ReviewEngine([new ReadingsDiscipline()]).Review(Boat(Drop("drop", 0.085)), draft, TestContext.Current.CancellationToken).Findings);

        Assert.Equal((Change.Holds, Verdict.Holds, 0.085), (pair.Change, pair.After!.Worst.Verdict, Value(pair.After.Worst, "Read")));
        Assert.Equal(Value(pair.Before!.Worst, "Expected"), Value(pair.After.Worst, "Expected"));
    }

    [Fact]
    public void WritingDownAReading_JudgesNoCircuit()
    {
        ReviewEngine engine = new([new Review.Electrics.ElectricsDiscipline()]);
        engine.Review(Boat(Drop("drop", 0.085)), TestContext.Current.CancellationToken);
        long computed = engine.Memo.ComputedCount;
        engine.Review(Boat(Drop("drop", 0.785)), TestContext.Current.CancellationToken);

        Assert.Equal(computed, engine.Memo.ComputedCount);
    }

    private static BoatModel Boat(params Thing[] readings) => SmallBoat.OneLamp().With(readings);

    private static IReadOnlyList<PairedFinding> Findings(BoatModel boat) => new ReviewEngine([new ReadingsDiscipline()]).Review(boat, TestContext.Current.CancellationToken).Findings;

    private static Finding Finding(Reading reading)
    {
        PairedFinding pair = Assert.Single(Findings(Boat(reading)));
        Assert.Equal((ReadingAgreesCheck.Id, reading.Id), (pair.CheckId, pair.SubjectId));
        return pair.Shown;
    }

    private static double Value(Finding finding, string what) => finding.Working.Single(line => line.What == what).Value!.Value;

    private static Reading Drop(string id, double voltageV) => Between(id, "fuse.out", "lamp.+", voltageV);

    private static Reading Between(string id, string plus, string minus, double voltageV) =>
        new() { Id = id, Condition = "in-use", Plus = Terminal.Parse(plus), Minus = Terminal.Parse(minus), VoltageV = voltageV };
}
