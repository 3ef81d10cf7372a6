using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Diagnosis;
using Orlop.Review.Readings;
using Orlop.Work.Readings;
using Xunit;

namespace Orlop.Work.Tests.Readings;

public class ReadingTests
{
    private static readonly WorkPack Pack = Boats.PumpPack;

    [Fact]
    public void Bands_HoldTheirNominalValue() =>
        Assert.All(Pack.Readings, reading => Assert.True(reading.Expected!.Contains(reading.Expected.Nominal.Value), reading.Key));

    [Fact]
    public void Readings_OfThePump_AreSourceLoadCurrentAndEveryNewDrop()
    {
        string[] keys = [.. Pack.Readings.Select(reading => reading.Key)];
        Assert.Superset(
            new HashSet<string>(["at-anchor/supply/bank", "at-anchor/at/pump", "at-anchor/current/pump-cable.plus", "at-anchor/drop/pump-cable.plus", "at-anchor/drop/pump-cable.minus", "at-anchor/drop/pump-fuse"]),
            keys.ToHashSet());
        Assert.Distinct(keys);
    }

    /// <summary>By hand: 5 m of 4 mm² at 20 °C, class 5 tinned, is 5.09 mΩ/m (IEC 60228 table 3), two joints 0.4 mΩ: 25.9 mΩ; about 10 A: 0.25 V to 0.28 V with a warm core.</summary>
    [Fact]
    public void Drop_AlongThePumpCore_IsWhatAHandCalculationGives()
    {
        Band drop = Expected("at-anchor/drop/pump-cable.plus");
        double currentA = Expected("at-anchor/current/pump-cable.plus").Nominal.Value;
        Assert.InRange(drop.Nominal.Value / currentA, 0.0258, 0.0285);
        Assert.InRange(currentA, 9, 11);
    }

    /// <summary>Closed form: the posts stand at E − I R, so 2 σ of R more take 2 σ I off them, and the squares add up. The sun gives 5 A of it. The current follows the voltage a little: 3 %.</summary>
    [Theory]
    [InlineData(Knowledge.Guessed, 0.0025, 0.005)]
    [InlineData(Knowledge.Guessed, null, 0.005)]
    [InlineData(Knowledge.Estimated, null, 0.005)]
    [InlineData(Knowledge.Sheet, null, 0.001)]
    [InlineData(Knowledge.Measured, 0.0002, 0.0004)]
    public void Band_AtThePosts_IsWiderByWhatIsNotKnownOfTheBatterysResistance(Knowledge known, double? plusMinus, double moreOhm)
    {
        Band exact = Expected("at-anchor/supply/bank"), unsure = AtThePosts(new Quantity(0.005, known, plusMinus));
        double totalA = Expected("at-anchor/current/pump-cable.plus").Nominal.Value + (10 / 12.4) - 5;
        double widened = Math.Pow(Below(unsure), 2) - Math.Pow(Below(exact), 2);

        Assert.Equal(exact.Nominal.Value, unsure.Nominal.Value, 1e-12);
        Assert.Equal(totalA * moreOhm, Math.Sqrt(widened), 0.03 * totalA * moreOhm);
        Assert.Equal(Below(exact), Below(AtThePosts(new Quantity(0.005))), 1e-12);
        Assert.True(unsure.Most.Value > exact.Most.Value);
    }

    private static Band AtThePosts(Quantity ohm) => Boats.Plan(
        Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is BatteryBank bank ? bank with { InternalResistanceOhm = ohm } : thing)), Boats.Pump)
        .Readings.Single(reading => reading.Key == "at-anchor/supply/bank").Expected!;

    // The meter's error on top taken off: 0.5 % and one digit of 6000 counts on a 60 V range.
    private static double Below(Band band) => band.Nominal.Value - ((band.Least.Value + 0.01) / 0.995);

    [Fact]
    public void Readings_LengthOfThePumpCableMissing_AreUnknownAndSayWhy()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with
        {
            Edits = Boats.Pump.Edits.Select(edit => edit.Id == "pump-cable" ? BoatEdits.Add(Boats.PumpCable with { LengthM = null }) : edit).ToValueList(),
        });
        PredictedReading drop = pack.Readings.Single(reading => reading.Key == "at-anchor/drop/pump-cable.plus");
        Assert.Null(drop.Expected);
        Assert.Contains("length of Pump cable", drop.WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_SolutionItself_IsWithin_AndATenthOfAnOhmMoreIsAbove()
    {
        double dropV = Expected("at-anchor/drop/pump-cable.plus").Nominal.Value;
        Assert.Equal(ReadingStanding.Within, Compare(Drop("good", "pump-fuse.out", "pump.+", dropV)).Standing);
        Assert.Equal(ReadingStanding.Above, Compare(Drop("bad", "pump-fuse.out", "pump.+", dropV + 0.5)).Standing);
        Assert.Equal(ReadingStanding.Below, Compare(Drop("low", "pump-fuse.out", "pump.+", dropV - 0.2)).Standing);
    }

    [Fact]
    public void Compare_ClampOrLeadsTurnedRound_DoNotAgree()
    {
        double currentA = Expected("at-anchor/current/pump-cable.plus").Nominal.Value, dropV = Expected("at-anchor/drop/pump-cable.plus").Nominal.Value;
        Assert.Equal(ReadingStanding.Within, Compare(Clamp("pump-cable.plus", currentA)).Standing);
        Assert.Equal(ReadingStanding.Turned, Compare(Clamp("pump-cable.plus", -currentA)).Standing);
        Assert.Equal(ReadingStanding.Turned, Compare(Drop("swapped", "pump-fuse.out", "pump.+", -dropV)).Standing);
        Assert.Equal(ReadingStanding.Turned, Compare(Drop("swapped-supply", "bank.+", "bank.-", -12.4)).Standing);
    }

    [Fact]
    public void Compare_SignTurned_SaysWhatCanTurnIt()
    {
        static string Why(Reading reading) => Compare(reading).WhyNot!;
        Assert.EndsWith("leads swapped, or current flows the other way", Why(Drop("drop", "pump-fuse.out", "pump.+", -Expected("at-anchor/drop/pump-cable.plus").Nominal.Value)), StringComparison.Ordinal);
        Assert.EndsWith("clamp the other way round, or current flows the other way", Why(Clamp("pump-cable.plus", -10)), StringComparison.Ordinal);
        Assert.All(["bank", "pump"], part => Assert.EndsWith("leads swapped; if they are not, plus and minus are crossed: switch off and look", Why(Drop("poles", $"{part}.+", $"{part}.-", -12)), StringComparison.Ordinal));
    }

    [Fact]
    public void Compare_TinyVoltageWithAMinus_IsTheMetersOwn() =>
        Assert.Equal(ReadingStanding.Below, Compare(Drop("noise", "pump-fuse.out", "pump.+", -0.000227)).Standing);

    [Theory]
    [InlineData(0.001)]
    [InlineData(1000)]
    public void Compare_OneUnitForAnother_SaysWhatWasMeant(double factor)
    {
        double dropV = Expected("at-anchor/drop/pump-cable.plus").Nominal.Value, currentA = Expected("at-anchor/current/pump-cable.plus").Nominal.Value;
        Assert.Equal(dropV, Compare(Drop("drop", "pump-fuse.out", "pump.+", dropV * factor)).Meant!.Value, 1e-9);
        Assert.Equal(currentA, Compare(Clamp("pump-cable.plus", currentA * factor)).Meant!.Value, 1e-9);
        Assert.Null(Compare(Drop("bad", "pump-fuse.out", "pump.+", dropV * 2)).Meant);
        Assert.Null(Compare(Drop("nothing", "pump-fuse.out", "pump.+", 0)).Meant);
    }

    [Fact]
    public void Diagnose_AThousandthOfWhatIsExpected_IsLeftOut_AndAThousandTimesIsNot()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = Taken(drawn);
        FaultReport report = Assert.Single(FaultFinding.Diagnose(
            drawn, [.. taken, taken[2] with { Id = "milli", VoltageV = taken[2].VoltageV!.Value / 1000 }, taken[2] with { Id = "kilo", VoltageV = taken[2].VoltageV!.Value * 1000 }], TestContext.Current.CancellationToken));
        Assert.Equal(("milli", "a thousand times as much would agree: was one unit taken for another?"), (Assert.Single(report.LeftOut).ReadingId, report.LeftOut[0].Why));
    }

    /// <summary>A meter that shows nothing may show it with either sign: a dead circuit, not swapped leads.</summary>
    [Fact]
    public void Compare_NothingWithAMinus_IsBelow() => Assert.Equal(ReadingStanding.Below, Compare(Clamp("pump-cable.plus", -0.05)).Standing);

    /// <summary>The way back flows from the pump to the bar, against its core's own direction or along it: expected and read as positive.</summary>
    [Theory]
    [InlineData("pump-cable.plus")]
    [InlineData("pump-cable.minus")]
    public void Compare_CurrentOnEitherCore_IsExpectedPositive(string core)
    {
        Assert.True(Compare(Clamp(core, 10)).Expected!.Nominal.Value > 0);
        Assert.Equal((ReadingStanding.Within, ReadingStanding.Turned), (Compare(Clamp(core, 10)).Standing, Compare(Clamp(core, -10)).Standing));
    }

    [Fact]
    public void Readings_OfACurrent_SayWhichWayTheClampPoints() =>
        Assert.EndsWith("its arrow towards Pump, plus", Pack.Readings.Single(reading => reading.Key == "at-anchor/current/pump-cable.plus").Where, StringComparison.Ordinal);

    [Fact]
    public void Diagnose_LeadsSwappedOnOneReading_LeavesItOutAndNamesIt()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = Taken(WithBadCrimp(drawn, 0.03));
        FaultReport sound = Assert.Single(FaultFinding.Diagnose(drawn, taken, TestContext.Current.CancellationToken));
        FaultReport report = Assert.Single(FaultFinding.Diagnose(
            drawn, [.. taken, taken[4] with { Id = "swapped", VoltageV = -taken[4].VoltageV!.Value }, Clamp("pump-cable.plus", -10)], TestContext.Current.CancellationToken));

        Assert.Equal(["swapped", "clamp"], report.LeftOut.Select(left => left.ReadingId));
        Assert.All(report.LeftOut, left => Assert.StartsWith("the sign is against the prediction", left.Why, StringComparison.Ordinal));
        Assert.Equal((sound.Status, sound.Suspects[0]), (report.Status, report.Suspects[0]));
    }

    [Theory]
    [MemberData(nameof(Incomparable))]
    public void Compare_WhatCannotBeCompared_SaysWhy(Reading reading)
    {
        ComparedReading compared = Compare(reading);
        Assert.Equal(ReadingStanding.CannotCompare, compared.Standing);
        Assert.False(string.IsNullOrWhiteSpace(compared.WhyNot));
    }

    public static TheoryData<Reading> Incomparable() =>
    [
        new Reading { Id = "no-condition", Condition = "at-sea", Through = "pump-cable.plus", CurrentA = 1 },
        new Reading { Id = "no-probe", Condition = "at-anchor", Plus = Terminal.Parse("pump.+"), VoltageV = 12 },
        new Reading { Id = "not-a-number", Condition = "at-anchor", Through = "pump-cable.plus", CurrentA = double.NaN },
        new Reading { Id = "no-such-node", Condition = "at-anchor", Plus = Terminal.Parse("kite.+"), Minus = Terminal.Parse("pump.-"), VoltageV = 12 },
    ];

    [Fact]
    public void Diagnose_PlantedBadCrimp_IsFoundWithItsResistance()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, Taken(WithBadCrimp(drawn, 0.03)), TestContext.Current.CancellationToken));
        Assert.Equal(DiagnosisStatus.Found, report.Status);
        Assert.Equal("pump-cable.minus@to", report.Suspects[0].ElementId);
        Assert.Equal(0.03, report.Suspects[0].ExtraOhm, 0.004);
        Assert.Contains("Pump cable", report.Suspects[0].Where, StringComparison.Ordinal);
        Assert.EndsWith("Make it dead first and prove it dead; then open it and look.", report.Headline.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("If one joint or conductor is bad, and the rest is as drawn, it is most likely", report.Headline.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing else", report.Headline.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The voltage at the pump alone: any joint of its way would do, and the next reading is said.</summary>
    [Fact]
    public void Diagnose_SeveralPlacesWouldDo_SaysWhichReadingTells()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = Taken(WithBadCrimp(drawn, 0.1), [("pump.+", "pump.-")]);
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, taken, TestContext.Current.CancellationToken));

        Assert.Equal(DiagnosisStatus.NotToldApart, report.Status);
        Assert.StartsWith("If one joint or conductor is bad, and the rest is as drawn, about", report.Headline.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("the next one would.", report.Headline.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("Measure across ", report.Next!.Text.ToString(), StringComparison.Ordinal);
        // The caution beside it says to switch off and let cool: the clips go on while it is off.
        Assert.Contains("let it cool, and put the meter's clips on while it is off", report.Next.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(report.Suspects, suspect => report.Next.Text.ToString().Contains($"across {suspect.Where}, ", StringComparison.Ordinal));
        Assert.Contains("made dead and proved dead", report.Caution!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnose_SoundBoat_SeesNothingWrong()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, Taken(drawn), TestContext.Current.CancellationToken));
        Assert.Equal(DiagnosisStatus.NothingWrongSeen, report.Status);
        Assert.Empty(report.Suspects);
    }

    [Fact]
    public void Diagnose_ReadingsThatContradict_AreToBeMeasuredAgainAndNoJointIsBlamed()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = Taken(WithBadCrimp(drawn, 0.1));
        // A tenth of an ohm at ten amperes: the pump cannot still have what it has without it.
        taken[1] = taken[1] with { VoltageV = Taken(drawn)[1].VoltageV!.Value };
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, taken, TestContext.Current.CancellationToken));
        Assert.Equal(DiagnosisStatus.NotExplained, report.Status);
        Assert.Empty(report.Suspects);
        Assert.Equal("r1", report.MeasureAgainId);
        Assert.Contains("do not fit together; measure again", report.Headline.ToString(), StringComparison.Ordinal);
    }

    /// <summary>
    /// Kirchhoff's voltage law: what bank and pump differ by is lost between them. A third of a volt read too much at one joint is no bad joint while the pump
    /// has what it has without it, though each of the two voltages alone agrees; the error of two meters at 12 V is 0.1 V.
    /// </summary>
    [Fact]
    public void Diagnose_DropsThatAddUpToMoreThanTheVoltagesDiffer_DoNotFitAndNameTheLoop()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = [.. Taken(drawn).Select(reading => reading with { Name = $"Reading {reading.Id}" })];
        taken[4] = taken[4] with { VoltageV = taken[4].VoltageV!.Value + 0.35 };
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, taken, TestContext.Current.CancellationToken));

        Assert.Equal((DiagnosisStatus.NotExplained, "r4"), (report.Status, report.MeasureAgainId));
        Assert.Empty(report.Suspects);
        Assert.Contains("“Reading r0” and “Reading r1” are", report.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("(Reading r2; Reading r4; Reading r3)", report.Headline.ToString(), StringComparison.Ordinal);
    }

    /// <summary>With the bad joint there in truth the same drop fits: the pump's voltage is lower by as much.</summary>
    [Fact]
    public void Diagnose_DropsThatAddUpToWhatTheVoltagesDiffer_AreExplained() => Assert.Equal(
        DiagnosisStatus.Found, Assert.Single(FaultFinding.Diagnose(
            BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat, Taken(WithBadCrimp(BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat, 0.03)), TestContext.Current.CancellationToken)).Status);

    [Fact]
    public void Diagnose_TypedWithoutAnError_SaysWhichItAssumes()
    {
        BoatModel drawn = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        Reading[] taken = Taken(drawn);
        taken[0] = taken[0] with { VoltageV = new Quantity(taken[0].VoltageV!.Value, Knowledge.Measured, 0.02) };
        List<double> told = [];
        FaultReport report = Assert.Single(FaultFinding.Diagnose(drawn, taken, TestContext.Current.CancellationToken, new Told(told)));
        Assert.Equal(taken.Length - 1, report.Assumptions.Count(assumption => assumption.Contains("typed without a ±", StringComparison.Ordinal)));
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1], 1e-9);
    }

    private sealed class Told(List<double> values) : IProgress<double>
    {
        public void Report(double value) => values.Add(value);
    }

    [Fact]
    public void Diagnose_NothingUsable_SaysSo()
    {
        FaultReport report = Assert.Single(FaultFinding.Diagnose(Boats.Small, [new Reading { Id = "r", Condition = "at-anchor" }], TestContext.Current.CancellationToken));
        Assert.Equal(DiagnosisStatus.NotSolvable, report.Status);
        Assert.Equal("r", Assert.Single(report.LeftOut).ReadingId);
    }

    // The crimp is bad between the bar of the network inside it and its terminal: both sides of it are read.
    private static Reading[] Taken(BoatModel boat) => Taken(boat,
        [("bank.+", "bank.-"), ("pump.+", "pump.-"), ("pump-fuse.out", "pump.+"), ("pump-cable.minus@to", "minus.bar"), ("pump.-", "pump-cable.minus@to")]);

    private static Reading[] Taken(BoatModel boat, IReadOnlyList<(string Plus, string Minus)> probes)
    {
        ConditionPrediction truth = ConditionPrediction.Of(boat, Orlop.Boat.Topology.Wiring.Of(boat), null, boat.Find<Condition>("at-anchor")!, new Review.Memo(), default);
        return [.. probes.Select((probe, index) => Drop($"r{index}", probe.Plus, probe.Minus, truth.Nominal.BetweenV(probe.Plus, probe.Minus)!.Value))];
    }

    private static BoatModel WithBadCrimp(BoatModel boat, double extraOhm) => boat.WithThings(boat.Things.Select(thing => thing.Id == "pump-cable"
        ? Boats.PumpCable with
        {
            Cores = Boats.PumpCable.Cores.Select(core => core.Id == "minus" ? core with { ToEnd = core.ToEnd! with { ResistanceOhm = 0.0002 + extraOhm } } : core).ToValueList(),
        }
        : thing));

    private static Band Expected(string key) => Pack.Readings.Single(reading => reading.Key == key).Expected!;

    private static ComparedReading Compare(Reading reading) => Assert.Single(ReadingComparison.Compare(BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat, [reading]));

    private static Reading Clamp(string through, double currentA) => new() { Id = "clamp", Condition = "at-anchor", Through = through, CurrentA = currentA };

    private static Reading Drop(string id, string plus, string minus, double voltageV) =>
        new() { Id = id, Condition = "at-anchor", Plus = Terminal.Parse(plus), Minus = Terminal.Parse(minus), VoltageV = voltageV };
}
