using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

public class WorkStepTests
{
    private static readonly WorkPack Pack = Boats.PumpPack;

    [Fact]
    public void Plan_EveryEdit_IsBuiltByExactlyOneStep_OrTakenAsSaid()
    {
        IEnumerable<string> built = Pack.Steps.SelectMany(step => step.Builds);
        Assert.Equal(["at-anchor"], Pack.Assumed.Select(edit => edit.Id));
        Assert.Equal(Boats.Pump.Edits.Select(edit => edit.Id).Except(["at-anchor"]).Order(), built.Order());
    }

    [Fact]
    public void Plan_Keys_AreUnique() => Assert.Distinct(Pack.Steps.Select(step => step.Key));

    [Fact]
    public void Plan_Isolation_ComesBeforeAnythingIsTouched()
    {
        int lastIsolation = Pack.Steps.Select((step, index) => step.Kind is StepKind.Isolate or StepKind.ProveDead ? index : -1).Max();
        int firstHand = Pack.Steps.Select((step, index) => step.Kind is StepKind.Remove or StepKind.Fit or StepKind.Connect ? index : int.MaxValue).Min();
        Assert.InRange(lastIsolation, 0, firstHand - 1);
    }

    [Fact]
    public void Plan_Steps_ComeInTheOrderOfAVisit() => Assert.Equal(Pack.Steps.Select(step => step.Kind).Order(), Pack.Steps.Select(step => step.Kind));

    [Fact]
    public void Plan_WhatIsOpened_IsRestoredInReverse()
    {
        string[] opened = [.. Pack.Steps.Where(step => step.Kind == StepKind.Isolate && step.About.Length > 0 && step.Key.StartsWith("isolate:", StringComparison.Ordinal)).Select(step => step.Key.Split(':', 2)[1])];
        string[] restored = [.. Pack.Steps.Where(step => step.Key.StartsWith("restore:", StringComparison.Ordinal)).Select(step => step.Key.Split(':', 2)[1])];
        Assert.NotEmpty(opened);
        Assert.Equal(opened.Reverse(), restored);
    }

    [Fact]
    public void Plan_MainFuseExchanged_LeadComesOffTheBatteryWithItsCaution()
    {
        WorkStep step = Assert.Single(Pack.Steps, step => step.Key == "isolate:bank-fuse.one@from");
        Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.Battery);
    }

    [Fact]
    public void Plan_SolarWithoutAnyDevice_IsToldAsNotDead()
    {
        Assert.Contains(Pack.Steps.Where(step => step.Kind == StepKind.ProveDead).SelectMany(step => step.Cautions), caution => caution.Kind == CautionKind.NotDead && caution.Text.Contains("light falls", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_HeavyChest_IsCautioned() =>
        Assert.Contains(Pack.Steps.Single(step => step.Key == "move:chest").Cautions, caution => caution.Kind == CautionKind.Lifting);

    [Fact]
    public void Plan_MassNotGiven_IsCautionedToo() =>
        Assert.Contains(Pack.Steps.Single(step => step.Key == "remove:old-shelf").Cautions, caution => caution is { Kind: CautionKind.Lifting } && caution.Text.StartsWith("Mass of Old shelf not given", StringComparison.Ordinal));

    [Fact]
    public void Plan_EngineSpaceWhoseLiningNobodyNamed_WarnsOfHeatDrillingAndHotWork()
    {
        IEnumerable<CautionKind> kinds = Pack.Steps.Single(step => step.Key == "fit:pump").Cautions.Select(caution => caution.Kind);
        Assert.Equal([CautionKind.HotSurface, CautionKind.Drilling, CautionKind.HotWork], kinds);
    }

    [Fact]
    public void Plan_InverterAdded_IsForALicensedPerson()
    {
        Alteration inverter = new() { Id = "inv", Edits = [BoatEdits.Add(new Inverter { Id = "inverter", RatedW = 1000, OutputV = 230 }), BoatEdits.Add(Boats.Wire("inv-plus", "plus.bar", "inverter.in+", 35, 1, 8))] };
        WorkPack pack = Boats.Plan(Boats.Small, inverter);
        Assert.Contains(pack.Steps.Single(step => step.Key == "connect:inv-plus").Cautions, caution => caution.Kind == CautionKind.Mains);
        Assert.Contains(pack.Steps.Single(step => step.Key == "connect:inv-plus").Cautions, caution => caution.Kind == CautionKind.StoredCharge);
    }

    // The inverter's fuse stays in while the bar is worked on, so its capacitors stay on the bar.
    [Fact]
    public void Plan_BarThatAnInverterStaysOn_HasTheCautionOfStoredChargeAtEveryStepThere()
    {
        WorkStep[] steps = [.. DemoBoat.Pack("sampling-winch-second").Steps.Where(step => step.Key is "prove-dead:main-plus" or "connect:winch-strap")];
        Assert.Equal(2, steps.Length);
        Assert.All(steps, step => Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.StoredCharge && caution.Text.Contains("inverter", StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Plan_SameInput_GivesTheSamePack()
    {
        WorkPack again = Boats.Plan(Boats.Small, Boats.Pump);
        Assert.Equal(Orlop.Work.Paper.PackJson.Write(Pack, new(Boats.Day, "1")), Orlop.Work.Paper.PackJson.Write(again, new(Boats.Day, "1")));
    }

    [Fact]
    public void Plan_HalfBuilt_KeepsKeysAndTicks()
    {
        IReadOnlyList<Edit> done = AlteredBoat.Build(Boats.Small.WithThings([.. Boats.Small.Things, Boats.Pump]), Boats.Pump, ["pump", "pump-fuse"], Boats.Day);
        BoatModel halfBuilt = BoatEdits.Apply(Boats.Small.WithThings([.. Boats.Small.Things, Boats.Pump]), done).Boat;
        Alteration recorded = halfBuilt.Find<Alteration>("pump-work")! with { Ticks = [new StepTick("run:pump-cable", Boats.Day)] };
        WorkPack pack = Boats.Plan(halfBuilt, recorded);
        Assert.Equal(Pack.Steps.Select(step => step.Key), pack.Steps.Select(step => step.Key));
        // Nobody has ticked that the pump and its fuse were fitted.
        Assert.Equal(["run:pump-cable"], pack.Steps.Where(step => step.IsDoneOn(Boats.Day)).Select(step => step.Key));
        Assert.Equal(["fit:pump", "fit:pump-fuse"], pack.Steps.Where(step => step.BuiltOn is not null).Select(step => step.Key).Order());
        Assert.Contains("recorded as built 2026-11-25, not ticked", Orlop.Work.Paper.WorkPackHtml.Render(pack, new(Boats.Day, "1")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    public void Plan_EverythingRecordedAsBuilt_KeepsItsStepsAndTheirNumbers(string id)
    {
        BoatModel drawn = DemoBoat.Read();
        Alteration draft = drawn.Find<Alteration>(id)!;
        BoatModel built = BoatEdits.Apply(drawn, AlteredBoat.Build(drawn, draft, [.. draft.Edits.Select(edit => edit.Id).Distinct()], Boats.Day)).Boat;
        WorkPack before = Boats.Plan(drawn, draft), after = Boats.Plan(built, built.Find<Alteration>(id)!);

        Assert.Equal(before.Steps.Select(step => step.Key), after.Steps.Select(step => step.Key));
        Assert.Contains("weigh:all", after.Steps.Select(step => step.Key));
        Assert.Contains("freeboards:after", after.Steps.Select(step => step.Key));
        Assert.DoesNotContain(after.Steps, step => step.IsDoneOn(Boats.Day));
    }

    /// <summary>The winch's readings are taken with something on the hook.</summary>
    [Fact]
    public void Plan_ReadingsWithALoadOnTheHook_SayHowItIsLoadedAndForHowLong()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch-second");
        WorkStep step = pack.Steps.Single(step => step.Key == "commission:lifting");
        string details = string.Join('\n', step.Details);

        Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.Lifting && caution.Text.Contains("a hand's breadth, with nobody under it", StringComparison.Ordinal));
        Assert.Contains("130", details, StringComparison.Ordinal);
        Assert.Contains("While Winch starts", details, StringComparison.Ordinal);
        Assert.Contains("is worked out. It is made for 21 V and more.", details, StringComparison.Ordinal);
        Assert.Contains(CommissionSteps.RunLimit, details, StringComparison.Ordinal);
        string html = Orlop.Work.Paper.WorkPackHtml.Render(pack, new(Boats.Day, "1"));
        Assert.DoesNotContain("do not leave it running", html, StringComparison.Ordinal);
        Assert.Contains(CommissionSteps.RunLimit, html, StringComparison.Ordinal);
        Assert.DoesNotContain(Pack.Steps.Single(one => one.Key == "commission:at-anchor").Cautions, caution => caution.Kind == CautionKind.Lifting);
    }

    /// <summary>How she floats with the work in her is measured before anything hangs from a hook; the step that lifts says what the review holds against it, and the heel that hydrostatics give.</summary>
    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    public void Plan_WeightOnTheHook_ComesAfterFreeboardsAndInclining_AndTellsHowSheStands(string id)
    {
        WorkPack pack = DemoBoat.Pack(id);
        List<string> keys = [.. pack.Steps.Select(step => step.Key)];
        int lift = keys.IndexOf("commission:lifting");
        Assert.InRange(keys.IndexOf("freeboards:after"), 0, lift - 1);
        Assert.All(keys.Index().Where(one => one.Item == "incline:after"), one => Assert.True(one.Index < lift));

        string details = string.Join('\n', pack.Steps[lift].Details);
        Condition condition = pack.AsAltered.Find<Condition>("lifting")!;
        Finding[] found = [.. new StabilityDiscipline().Review(pack.AsAltered, Practice.Of(pack.AsAltered, new Memo()), new Memo(), TestContext.Current.CancellationToken).Where(finding => finding.ConditionId == condition.Id)];
        Assert.All(found.Where(finding => finding.Verdict == Verdict.Fails), finding => Assert.Contains($"Fails: {finding.Headline}.", details, StringComparison.Ordinal));
        Assert.Equal(found.Any(finding => finding.Verdict == Verdict.Fails), details.Contains("Lift nothing of this mass", StringComparison.Ordinal));
        Assert.Equal(found.Any(finding => finding.Verdict == Verdict.Unknown), details.Contains("annot be told", StringComparison.Ordinal));
        Assert.Contains("Begin with a smaller load", details, StringComparison.OrdinalIgnoreCase);
        // While something fails the readings wait, as the trial lift does.
        Assert.Equal(found.Any(finding => finding.Verdict == Verdict.Fails) || details.Contains("it is not lifted", StringComparison.Ordinal), pack.Steps[lift].Text.ToString().StartsWith("Not yet, as what stands below fails: leave them until it is settled.", StringComparison.Ordinal));
        Assert.Equal(2, pack.Steps[lift].PeopleCount);
        StabilityView view = new(pack.AsAltered, null, new Memo());
        if (view.LoadedIn(condition).Missing.IsEmpty && view.FloatingIn(condition)?.Rest is { Status: FloatingStatus.Floats, Position: { IsStable: true, IsLoll: false } at })
        {
            Assert.Contains(pack.Steps[lift].Details.SelectMany(detail => detail.Parts), part => part.Amount is { Suffix: "Deg" } heel && Math.Abs(heel.Value - Math.Abs(at.Attitude.HeelDeg)) <= 0.05);
        }
        else
        {
            Assert.Matches("cannot be told: what is not known|it is not lifted", details);
        }
    }

    /// <summary>Whatever puts a lead onto a battery's post that was there before, minus posts that are bare apart, is known as what makes it live.</summary>
    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    public void Plan_LeadOntoABatterysPost_IsKnownAsOntoLive(string id)
    {
        WorkPack pack = DemoBoat.Pack(id);
        string[] plusPosts = [.. pack.AsBuilt.All<BatteryBank>().Select(bank => $"{bank.Id}.+")];
        foreach (WorkStep step in pack.Steps.Where(step => step.Kind == StepKind.Connect))
        {
            IReadOnlyList<string> nodes = pack.AsAltered.Find(step.Builds[0]) switch
            {
                Cable cable => [.. cable.Cores.SelectMany(core => new[] { core.From.ToString(), core.To.ToString() })],
                Link link => [link.From.ToString(), link.To.ToString()],
                _ => [],
            };
            if (nodes.Any(plusPosts.Contains))
            {
                Assert.True(step.IsOntoLive, step.Key);
            }

            Assert.Equal(step.IsOntoLive, step.Details.Any(detail => detail.ToString().Contains("stays live: what is connected here", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Plan_LeadOntoNoPost_IsNotOntoLive() => Assert.False(Pack.Steps.Single(step => step.Key == "connect:pump-cable").IsOntoLive);

    [Fact]
    public void Plan_IsolationTickedOnAnEarlierVisit_IsNotDoneToday()
    {
        Alteration ticked = Boats.Pump with { Ticks = [.. Pack.Steps.Select(step => new StepTick(step.Key, Boats.Day, step.IsForOneDay ? Read(step) : null))] };
        WorkPack pack = Boats.Plan(Boats.Small, ticked);
        Assert.All(pack.Steps.Where(step => step.Kind != StepKind.Weigh), step => Assert.True(step.IsDoneOn(Boats.Day)));
        StepKind[] undone = [.. pack.Steps.Where(step => !step.IsDoneOn(Boats.Day.AddDays(1))).Select(step => step.Kind).Distinct()];
        Assert.Equal([StepKind.Weigh, StepKind.Isolate, StepKind.ProveDead, StepKind.Energise], undone);
        string html = Orlop.Work.Paper.WorkPackHtml.Render(pack, new(Boats.Day.AddDays(1), "1"));
        Assert.Contains("ticked 2026-11-25: do it again", html, StringComparison.Ordinal);
    }

    // A reading within what each point of a step accepts, in V; null where nothing is read.
    private static string? Read(WorkStep step) => step.WriteDown is { } write ? string.Join("; ", write.Accepts.Select(accepted => FormattableString.Invariant($"{accepted.Example:0.##}"))) : null;

    [Fact]
    public void Plan_SunCharger_PanelsAreCoveredBeforeAnythingIsOpenedAndUncoveredLast()
    {
        string[] isolation = [.. Pack.Steps.Where(step => step.Kind == StepKind.Isolate).Select(step => step.Key)];
        Assert.Equal(["isolate:loads-off", "isolate:panels"], isolation[..2]);
        WorkStep cover = Pack.Steps.Single(step => step.Key == "isolate:panels");
        Assert.Contains("First cover or disconnect the solar panels that feed", cover.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(cover.Details, detail => detail.ToString().Contains("controller's own sheet", StringComparison.Ordinal));
        Assert.Equal("restore:panels", Pack.Steps.Last(step => step.Kind == StepKind.Energise).Key);
    }

    [Fact]
    public void Plan_PanelsKeepTheirBattery_AreLeftAlone()
    {
        Assert.DoesNotContain(DemoBoat.Pack("drying-locker").Steps, step => step.Key.EndsWith(":panels", StringComparison.Ordinal));
        Assert.Contains(DemoBoat.Pack("sampling-winch-second").Steps, step => step.Key == "isolate:panels");
        // A ring goes onto the bank's own post, and every other ring there is loose meanwhile.
        Assert.Contains(DemoBoat.Pack("sampling-winch").Steps, step => step.Key == "isolate:panels");
    }

    [Fact]
    public void Plan_ControllerIsFittedAnew_ItsPanelsAreCovered()
    {
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(new Charger { Id = "second", Name = "Second controller", Drive = ChargerDrive.Sun, LimitA = 5, SetpointV = 14.2 }), BoatEdits.Add(Boats.Wire("second-plus", "second.+", "plus.bar", 4, 1, 5))] };
        Assert.Contains("Second controller", Boats.Plan(Boats.Small, work).Steps.Single(step => step.Key == "isolate:panels").Text.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_StoppedEngine_RunsAgainOnlyWhenTheNewDevicesAreIn()
    {
        string[] keys = [.. DemoBoat.Pack("sampling-winch-second").Steps.Select(step => step.Key)];
        Assert.InRange(Array.IndexOf(keys, "restore:dc-charger"), Array.FindLastIndex(keys, key => key.StartsWith("switch-on:", StringComparison.Ordinal)) + 1, Array.IndexOf(keys, "restore:panels") - 1);
    }

    /// <summary>Her cables lie behind no lining here: what is behind one is made dead with the work, and what feeds it from the stud too.</summary>
    [Fact]
    public void Plan_StaysLive_NamesWhatIsFedPastTheIsolator()
    {
        Alteration work = DemoBoat.Read().Find<Alteration>("sampling-winch-second")!;
        Alteration inTheOpen = work with { Edits = [.. work.Edits.Select(edit => edit.Becomes is Cable cable ? edit with { Becomes = cable with { Run = [new RunLeg { Space = "after-locker", LengthM = 3 }] } } : edit)] };
        Assert.Contains(
            Boats.Plan(DemoBoat.Read(), inTheOpen).Steps.SelectMany(step => step.Cautions),
            caution => caution.Kind == CautionKind.StaysLive && caution.Text.Contains("It still feeds: Always-live stud;", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_BoatWithoutSun_SaysNothingOfPanels()
    {
        BoatModel dark = Boats.Small.WithThings(Boats.Small.Things.Where(thing => !thing.Id.StartsWith("solar", StringComparison.Ordinal)));
        Assert.DoesNotContain(Boats.Plan(dark, Boats.Pump).Steps, step => step.Key.EndsWith(":panels", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_FuseInTheWay_IsPulledOnlyWithItsLoadOff()
    {
        BoatModel boat = Boats.Small.WithThings(Boats.Small.Things.Where(thing => thing.Id != "isolator" && !thing.Id.StartsWith("solar", StringComparison.Ordinal))
            .Select(thing => thing.Id == "fuse-isolator" ? Boats.Wire("fuse-isolator", "main-fuse.out", "plus.bar", 25, 0.3, 8) : thing).Where(thing => thing.Id != "isolator-plus"));
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Remove(boat.Find("lamp-cable")!)] };
        WorkStep pull = Boats.Plan(boat, work).Steps.Single(step => step.Key == "isolate:main-fuse");
        Assert.Contains("only with its load off", pull.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(pull.Details, detail => detail.ToString().Contains("Never under load", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_AtABatteryPost_SaysItStaysLiveAndNeverToProveItDead()
    {
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(Boats.Wire("winch-plus", "bank.+", "plus.bar", 35, 1, 8)), BoatEdits.Add(Boats.Wire("winch-minus", "bank.-", "minus.bar", 35, 1, 8))] };
        WorkPack pack = Boats.Plan(Boats.Small, work);
        Assert.DoesNotContain(pack.Steps, step => step.Key == "prove-dead:bank");
        WorkStep live = pack.Steps.Single(step => step.Key == "stays-live:bank");
        Assert.DoesNotContain(live.Details, detail => detail.ToString().Contains("0 V, at most", StringComparison.Ordinal));
        foreach (WorkStep step in new[] { live, pack.Steps.Single(step => step.Key == "connect:winch-plus"), pack.Steps.Single(step => step.Key == "connect:winch-minus") })
        {
            Caution caution = step.Cautions.First(caution => caution.Kind == CautionKind.Battery);
            Assert.All(["stay live", "Rings", "insulated tools", "One lead at a time", "other post covered", "minus lead comes off first and goes on last"], words => Assert.Contains(words, caution.Text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Plan_NewBattery_ItsLeadsGoOnWhenItIsSwitchedOn()
    {
        BatteryBank second = Boats.Small.Find<BatteryBank>("bank")! with { Id = "second", Name = "Second bank" };
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(second), BoatEdits.Add(Boats.Wire("second-plus", "second.+", "plus.bar", 25, 1, 8)), BoatEdits.Add(Boats.Wire("second-minus", "second.-", "minus.bar", 25, 1, 8))] };
        WorkPack pack = Boats.Plan(Boats.Small, work);
        Assert.Contains(pack.Steps.Single(step => step.Key == "connect:second-plus").Details, detail => detail.ToString().Contains("not on its post yet", StringComparison.Ordinal));
        WorkStep leads = pack.Steps.Single(step => step.Key == "switch-on:second");
        Assert.Contains(leads.Cautions, caution => caution.Kind == CautionKind.Battery);
        Assert.DoesNotContain(pack.Steps.SelectMany(step => step.Cautions), caution => caution.Kind == CautionKind.NotDead && caution.Text.Contains("Second bank", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_ThingEditedAgainAfterItWasBuilt_KeepsKeysApart()
    {
        Gear chest = Boats.Small.Find<Gear>("chest")!, there = chest with { Place = new(1.5, 0, 0) };
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Replace(chest, there) with { BuiltOn = Boats.Day }, BoatEdits.Replace(there, chest)] };
        WorkPack pack = Boats.Plan(BoatEdits.Apply(Boats.Small, [work.Edits[0]]).Boat, work);
        Assert.Equal(["move:chest", "move:chest/2"], pack.Steps.Where(step => step.Builds.Contains("chest")).Select(step => step.Key));
    }

    [Fact]
    public void Plan_BoatHasMovedOn_SaysWhichEditsClash()
    {
        BoatModel moved = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing.Id == "chest" ? (Gear)thing with { MassKg = 50 } : thing));
        Assert.Equal("chest", Assert.Single(Boats.Plan(moved, Boats.Pump).Clashes).Id);
    }

    [Fact]
    public void Plan_BoatWithoutAnySource_IsNeverTakenAsDead()
    {
        BoatModel bare = new() { Things = [new Busbar { Id = "bar" }] };
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(new Link { Id = "strap", From = Terminal.Parse("bar.bar"), To = Terminal.Parse("bar.bar") })] };
        WorkStep first = Boats.Plan(bare, work).Steps[0];
        Assert.Equal("isolate:unknown", first.Key);
        Assert.Equal(CautionKind.NotDead, first.Cautions[0].Kind);
    }
}
