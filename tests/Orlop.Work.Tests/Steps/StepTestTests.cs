using Orlop.Boat.Things;
using Orlop.Review.Isolation;
using Orlop.Work.Paper;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>What is typed in a step is held against what its test accepts; limits are common practice, no source, where none is named.</summary>
public sealed class StepTestTests
{
    private static readonly DateOnly Day = Boats.Day;

    // Joined below 0.5 ohm, insulation at least 100 kohm, a dead point at most 0.5 V, 12 V between 10.2 V and 14.5 V, its charger set to 14.2 V and 2 % over it: as the steps say them; mV, kΩ and MΩ by the SI.
    [Theory]
    [InlineData("test:continuity", "0.3", TestStanding.Passed)]
    [InlineData("test:continuity", "0,3; 0,2", TestStanding.Passed)]
    [InlineData("test:continuity", "300 mΩ", TestStanding.Passed)]
    [InlineData("test:continuity", "200 Ω", TestStanding.Outside)]
    [InlineData("test:continuity", "200", TestStanding.Outside)]
    [InlineData("test:continuity", "0.2, 0.3, 200", TestStanding.Outside)]
    [InlineData("test:continuity", "OL", TestStanding.Outside)]
    [InlineData("test:continuity", "-12", TestStanding.Outside)]
    [InlineData("test:continuity", "> 0.2", TestStanding.Outside)]
    [InlineData("test:continuity", "fine", TestStanding.Unreadable)]
    [InlineData("test:continuity", "0.3 V", TestStanding.Unreadable)]
    [InlineData("test:insulation", "100", TestStanding.Passed)]
    [InlineData("test:insulation", "20 MΩ", TestStanding.Passed)]
    [InlineData("test:insulation", "OL", TestStanding.Passed)]
    [InlineData("test:insulation", "> 200 kohm", TestStanding.Passed)]
    [InlineData("test:insulation", "20 kΩ", TestStanding.Outside)]
    [InlineData("test:insulation", "20", TestStanding.Outside)]
    [InlineData("test:insulation", "200 Ω", TestStanding.Outside)]
    [InlineData("test:insulation", "< 200", TestStanding.Outside)]
    [InlineData("switch-on:pump-fuse", "12.6", TestStanding.Passed)]
    [InlineData("switch-on:pump-fuse", "12600 mV", TestStanding.Passed)]
    [InlineData("switch-on:pump-fuse", "1.2", TestStanding.Outside)]
    [InlineData("switch-on:pump-fuse", "−12.4 V", TestStanding.Outside)]
    [InlineData("switch-on:pump-fuse", "14.4", TestStanding.Passed)]
    [InlineData("switch-on:pump-fuse", "15", TestStanding.Outside)]
    [InlineData("switch-on:pump-fuse", "24.8", TestStanding.Outside)]
    [InlineData("switch-on:pump-fuse", "OL", TestStanding.Unreadable)]
    [InlineData("switch-on:pump-fuse", "12 A", TestStanding.Unreadable)]
    [InlineData("read-before:all", "12.7; covered; 12.6; 12.6", TestStanding.Passed)]
    [InlineData("read-before:all", "12.7; covered; 12.6", TestStanding.TooFew)]
    [InlineData("read-before:all", "12.7; 0.0", TestStanding.Outside)]
    public void Of_WhatIsTyped_IsHeldAgainstWhatTheStepAccepts(string key, string note, TestStanding standing) => Assert.Equal(standing, StepTest.Of(Step(key), note)!.Standing);

    [Fact]
    public void Of_Outside_SaysWhatWasReadWhatIsAcceptedAndWhatItMayMean()
    {
        Assert.Matches("^200 Ω is more than 0.5 Ω: the core is not joined", StepTest.Of(Step("test:continuity"), "200")!.Words);
        Assert.Matches("^20 kΩ is less than 100 kΩ: something still joins them", StepTest.Of(Step("test:insulation"), "20")!.Words);
        Assert.Matches("^1.2 V is less than 10.2 V: the circuit is open", StepTest.Of(Step("switch-on:pump-fuse"), "1,2")!.Words);
        Assert.Matches("^−12.4 V has the wrong sign, 10.2 V to 14.5 V is accepted: plus and minus are exchanged", StepTest.Of(Step("switch-on:pump-fuse"), "-12.4")!.Words);
        Assert.Equal("0.1 V; 300 mV", StepTest.Of(Boats.PumpPack.Steps.First(step => step.Key.StartsWith("prove-dead:", StringComparison.Ordinal)), "0,1; 300 mV")!.Shown);
    }

    /// <summary>A point that is not read may be live: a proof of several points is none until each is read, ticked or not.</summary>
    [Theory]
    [InlineData(null, TestStanding.NotTyped, 0)]
    [InlineData("0", TestStanding.TooFew, 1)]
    [InlineData("0; 0", TestStanding.TooFew, 2)]
    [InlineData("0; ; 0", TestStanding.TooFew, 2)]
    [InlineData("; ; 12.6", TestStanding.Outside, 1)]
    [InlineData("0; 0; 0", TestStanding.Passed, 3)]
    public void ProveDead_OfThreePoints_StaysOpenUntilEachIsRead(string? note, TestStanding standing, int readCount)
    {
        WorkStep proof = DemoBoat.Pack("sampling-winch").Steps.First(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 3 });
        WorkStep seen = proof with { Tick = new StepTick(proof.Key, Day, note) };
        StepTest test = seen.TestOn(Day)!;

        Assert.Equal((standing, readCount, 3), (test.Standing, test.ReadCount, test.AskedCount));
        Assert.Equal(standing == TestStanding.Passed, seen.IsDoneOn(Day));
        Assert.Equal(standing == TestStanding.Passed, seen.AgainstOn(Day) is null);
        if (standing == TestStanding.TooFew)
        {
            Assert.Equal($"{readCount} of 3 read", test.Said);
            Assert.Contains(proof.WriteDown!.Accepts[readCount == 1 ? 2 : note == "0; 0" ? 2 : 1].Name!, test.Words, StringComparison.Ordinal);
            Assert.Null((proof with { Remark = new StepRemark(proof.Key, Day, note!) }).AgainstOn(Day));
        }
    }

    [Fact]
    public void Of_NothingTypedOrNothingTested_IsNoTest()
    {
        Assert.Null(StepTest.Of(Step("test:continuity"), "  "));
        Assert.Null(StepTest.Of(Step("fit:pump"), "4 screws"));
    }

    /// <summary>
    /// Eight cells of lithium iron phosphate, 25.6 V, take 3.65 V a cell at most (from memory): a charger set to 28.4 V gives 29.0 V with 2 % over it; without one the full end of the curve, 27.2 V, and 5 %.
    /// Where neither is told nothing above the least can be judged.
    /// </summary>
    [Theory]
    [InlineData(28.4, true, "28.5", TestStanding.Passed)]
    [InlineData(28.4, true, "29.1", TestStanding.Outside)]
    [InlineData(28.4, true, "32", TestStanding.Outside)]
    [InlineData(28.4, false, "32", TestStanding.Outside)]
    [InlineData(null, true, "28.5", TestStanding.Passed)]
    [InlineData(null, true, "28.7", TestStanding.Outside)]
    [InlineData(null, false, "26", TestStanding.NotTold)]
    [InlineData(null, false, "60", TestStanding.NotTold)]
    [InlineData(null, false, "20", TestStanding.Outside)]
    public void LiveVoltage_IsBoundedByWhatCanFeedThePoint(double? setpointV, bool hasCurve, string typed, TestStanding standing)
    {
        BatteryBank bank = new() { Id = "bank", Name = "Bank", Chemistry = BatteryChemistry.LithiumIronPhosphate, NominalV = 25.6, CapacityAh = 100, OpenCircuit = hasCurve ? [new(0, 20), new(0.5, 26.4), new(1, 27.2)] : [] };
        Part[] sources = setpointV is { } set ? [bank, new Charger { Id = "solar", Name = "Solar", Drive = ChargerDrive.Sun, LimitA = 5, SetpointV = set }] : [bank];
        AcceptedReading accepted = LiveVoltage.Of(new PointVoltage(false, 25.6, [.. sources], new HashSet<string>()));
        StepTest test = StepTest.Of(Step("fit:pump") with { WriteDown = new WriteDown("V") { Accepts = [accepted] } }, typed)!;

        Assert.Equal(standing, test.Standing);
        if (typed == "32")
        {
            Assert.Contains("solar, at what it is set to, gives no more", test.Words, StringComparison.Ordinal);
        }
    }

    /// <summary>The example of what can be typed is one that would pass, and not the most that is accepted: (10.2 V + 14.5 V) ÷ 2 = 12.35 V.</summary>
    [Theory]
    [InlineData("switch-on:pump-fuse", "such as 12.")]
    [InlineData("test:insulation", "such as 200 kΩ;")]
    [InlineData("test:continuity", "such as 0 Ω;")]
    public void Of_Unreadable_ShowsAnExampleWithinTheBand(string key, string words) => Assert.Contains(words, StepTest.Of(Step(key), "fine")!.Words, StringComparison.Ordinal);

    [Fact]
    public void Of_NobodyCanTellWhatIsAccepted_IsNotJudged() => Assert.Equal(
        TestStanding.NotTold,
        StepTest.Of(Step("fit:pump") with { WriteDown = new WriteDown("V") { Accepts = [LiveVoltage.Of(null, false, null)] } }, "12.6")!.Standing);

    /// <summary>Readings of different limits are each held against their own; where one is missing nothing tells which is which.</summary>
    [Fact]
    public void Of_ReadingsOfDifferentLimits_AreTakenInTheirOrder()
    {
        WorkStep step = Step("fit:pump") with
        {
            WriteDown = new WriteDown("Ω")
            {
                Accepts = [new AcceptedReading("Ohm", "Ω") { Name = "Earth", Most = 0.2 }, new AcceptedReading("Ohm", "MΩ") { Name = "Insulation", Least = 1e6, WhenBelow = "wet." }],
            },
        };
        Assert.Equal(TestStanding.Passed, StepTest.Of(step, "0.1; 500")!.Standing);
        Assert.Equal("Insulation: 0.5 MΩ is less than 1 MΩ: wet.", StepTest.Of(step, "0.1; 0.5")!.Words);
        Assert.Equal(TestStanding.TooFew, StepTest.Of(step, "0.1")!.Standing);
        Assert.Equal(TestStanding.TooFew, StepTest.Of(step, "; 500")!.Standing);
        Assert.Equal(TestStanding.Outside, StepTest.Of(step, "; 0.5")!.Standing);
        Assert.Equal(TestStanding.Unreadable, StepTest.Of(step, "0.1; 500; 500")!.Standing);
    }

    /// <summary>Every reading that a step takes in itself is tested, but what a point reads that stays live: nothing is to be proved there.</summary>
    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    public void Plan_StepThatIsRead_SaysWhatItAccepts(string id) => Assert.All(
        DemoBoat.Pack(id).Steps.Where(step => step.WriteDown is { Into: null } && step.Kind != StepKind.Weigh && !step.Key.StartsWith("stays-live:", StringComparison.Ordinal)),
        step => Assert.Contains(step.WriteDown!.Accepts, accepted => accepted.HasLimit));

    /// <summary>A point that read live is not proved dead by a tick; the mark stays until another reading is typed.</summary>
    [Fact]
    public void Failed_TickedAllTheSame_IsNotDone_AndPaperAndRecordSaySo()
    {
        WorkStep proof = Boats.PumpPack.Steps.First(step => step.Key.StartsWith("prove-dead:", StringComparison.Ordinal));
        Alteration ticked = StepRemarks.Ticked(StepRemarks.Noted(Boats.Pump, proof, "12,6", Day), proof, Day);
        WorkPack pack = Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, ticked]), ticked);
        WorkStep seen = pack.Steps.Single(step => step.Key == proof.Key);

        Assert.True(seen.IsTickedOn(Day));
        Assert.False(seen.IsDoneOn(Day));
        Assert.Equal("12.6 V", seen.Failed!.Shown);
        Assert.Equal([seen], pack.FailedTests);
        string html = System.Net.WebUtility.HtmlDecode(WorkPackHtml.Render(pack, new PaperOptions(Day))).Replace('\u00a0', ' '), json = PackJson.Write(pack, new PaperOptions(Day));
        Assert.Contains("■ Test not passed, outside what is accepted.", html, StringComparison.Ordinal);
        Assert.Contains("ticked 2026-11-25, read 12.6 V: not passed, do it again", html, StringComparison.Ordinal);
        Assert.Contains("1 with a test that did not pass", html, StringComparison.Ordinal);
        Assert.Equal("outside", (string?)System.Text.Json.Nodes.JsonNode.Parse(json)!["steps"]![pack.Steps.IndexOf(seen)]!["failedTest"]!["standing"]);

        // It stands on the next day, too, until the point is proved anew.
        Assert.NotNull(seen.Failed);
        Alteration again = StepRemarks.Noted(ticked, proof, "0.0", Day.AddDays(1));
        Assert.Null(StepRemarks.Of([proof], again)[0].Failed);
    }

    private static WorkStep Step(string key) => Boats.PumpPack.Steps.Single(step => step.Key == key);
}
