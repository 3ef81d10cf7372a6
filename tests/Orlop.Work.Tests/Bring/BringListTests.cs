using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Ways;
using Orlop.Work.Bring;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Bring;

public class BringListTests
{
    // The pump cable is 5 m, exact: with two tails of 0.15 m and a loop of 0.2 m it is cut to 5.5 m.
    [Fact]
    public void Lengths_SayWhichIsMeant_InListCutStepAndReading()
    {
        WorkPack pack = Boats.PumpPack;
        BringItem cable = pack.Bring.Single(item => item.Key.StartsWith("cable:4:", StringComparison.Ordinal));
        Assert.Equal(5.5, cable.Needed!.Value);
        Assert.Contains("As cut, with tails and a loop; 5 M from terminal to terminal.", cable.Remarks.Select(remark => remark.ToString()));
        Assert.Contains("Cut 5.5 M for Pump cable, with tails and a loop; 5 M from terminal to terminal.", pack.Steps.Single(step => step.Key == "run:pump-cable").Details.Select(detail => detail.ToString()));
        Assert.Equal("Voltage lost along Pump cable, plus core, reckoned with 5 M from terminal to terminal", pack.Readings.Single(reading => reading.Key == "at-anchor/drop/pump-cable.plus").What.ToString());
        string html = WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1"));
        Assert.Contains("Cut to, with tails and a loop", html, StringComparison.Ordinal);
        Assert.Contains("From terminal to terminal + ", html, StringComparison.Ordinal);
        Assert.Contains("Where it goes, from terminal to terminal", html, StringComparison.Ordinal);
    }

    // The pump cable's four ends, the lamp cable's four, pump, pump fuse and main fuse; half of it built, and with the pump cable edited twice.
    [Fact]
    public void Labels_AreCountedAlikeInListAndStep_AlsoHalfBuilt()
    {
        (double? Listed, string Step) Counted(Alteration work)
        {
            WorkPack pack = Boats.Plan(Boats.Small, work);
            return (pack.Bring.Single(item => item.Key == "label").Needed!.Value, pack.Steps.Single(step => step.Key == "label:all").Text.ToString());
        }

        Alteration half = Boats.Pump with { Edits = [.. Boats.Pump.Edits.Select(edit => edit.Id is "pump-cable" or "pump" ? edit with { BuiltOn = Boats.Day } : edit)] };
        Assert.Equal((11, "Label both ends of every core and every device: 11 labels, on the label sheet."), Counted(Boats.Pump));
        Assert.Equal((6, "Label both ends of every core and every device: 6 labels still to make of the 11 on the label sheet; the others are of what is recorded as built."), Counted(half));
        Alteration twice = Boats.Pump with { Edits = [.. Boats.Pump.Edits, BoatEdits.Replace(Boats.PumpCable, Boats.PumpCable with { AreaMm2 = 6 })] };
        Assert.Equal(11, Counted(twice).Listed);
    }

    private static readonly WorkPack Pack = Boats.PumpPack;

    [Fact]
    public void Cuts_SheathedTwin_IsOneLengthOfRunTailsAndLoop()
    {
        CableCut cut = Assert.Single(Pack.Cuts, cut => cut.CableId == "pump-cable");
        Assert.Equal(5, cut.RunM);
        Assert.Equal((2 * RouteRules.Of(Pack.AsBuilt).TailM) + RouteRules.Of(Pack.AsBuilt).LoopM, cut.AllowanceM, 9);
        Assert.Equal(5.5, cut.CutM!.Value, 9);
        Assert.Equal("reel-4", cut.StockId);
    }

    [Theory]
    [InlineData(5.0, 5.5)]
    [InlineData(5.01, 5.6)]
    [InlineData(5.1, 5.6)]
    [InlineData(0.05, 0.6)]
    public void Cuts_AnyLength_IsRoundedUpToATenth(double lengthM, double cutM) => Assert.Equal(cutM, CutOf(cable => cable with { LengthM = lengthM, Run = [] }).CutM!.Value, 9);

    [Fact]
    public void Cuts_LengthKnownToTwentyCentimetres_IsCutFortyLonger() =>
        Assert.Equal(5.9, CutOf(cable => cable with { LengthM = new Quantity(5, Knowledge.Estimated, 0.2) }).CutM!.Value, 9);

    [Fact]
    public void Cuts_RunLongerThanTheLength_GoesByTheRun() =>
        Assert.Equal(7, CutOf(cable => cable with { Run = [new RunLeg { Way = "tray", LengthM = 7 }] }).RunM);

    [Fact]
    public void Cuts_NoLengthAndNoRun_IsUnknownAndNotInStock()
    {
        CableCut cut = CutOf(cable => cable with { LengthM = null, Run = [] });
        Assert.Null(cut.CutM);
        Assert.Null(cut.StockId);
        Assert.NotNull(cut.Remark);
    }

    [Fact]
    public void Cuts_LongerThanAnyReel_AreBought()
    {
        WorkPack pack = With(cable => cable with { LengthM = 25 });
        BringItem line = Assert.Single(pack.Bring, item => item.Kind == BringKind.Cable && item.For.Contains("pump-cable"));
        Assert.Equal(StockState.ToBuy, line.State);
        Assert.Equal(25.5, line.ToBuy!.Value, 9);
    }

    [Fact]
    public void Terminations_FourASpareAndATestCrimp_ThreeInStock_ThreeAreBought()
    {
        BringItem rings = Assert.Single(Pack.Bring, item => item.Kind == BringKind.Termination && item.For.Contains("pump-cable"));
        Assert.Equal(6, rings.Needed!.Value);
        Assert.Equal(3, rings.ToBuy!.Value);
        Assert.Equal(StockState.Partly, rings.State);
    }

    [Fact]
    public void Terminations_AnotherStud_IsNotTakenFromStock()
    {
        WorkPack pack = With(cable => cable with { Cores = cable.Cores.Select(core => core with { FromEnd = core.FromEnd! with { StudMm = 8 }, ToEnd = core.ToEnd! with { StudMm = 8 } }).ToValueList() });
        Assert.Equal(StockState.ToBuy, pack.Bring.Single(item => item.Kind == BringKind.Termination && item.For.Contains("pump-cable")).State);
    }

    [Fact]
    public void Terminations_NotSaidHow_AreNeverCovered()
    {
        WorkPack pack = With(cable => cable with { Cores = cable.Cores.Select(core => core with { FromEnd = null, ToEnd = null }).ToValueList() });
        BringItem ends = pack.Bring.Single(item => item.Kind == BringKind.Termination && item.For.Contains("pump-cable"));
        Assert.Equal((StockState.Look, null), (ends.State, ends.ToBuy));
        Assert.Contains("Say it before the visit", ends.Remarks[0].ToString(), StringComparison.Ordinal);
        string html = WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1"));
        Assert.Contains("Kind of end not given: say it before the visit", html, StringComparison.Ordinal);
        Assert.DoesNotContain("until it clicks", html, StringComparison.Ordinal);
        Assert.DoesNotContain("barrel<", html, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheStepsMeasureWith_IsBrought()
    {
        string[] keys = [.. DemoBoat.Pack("sampling-winch-second").Bring.Select(item => item.Key)];
        Assert.Superset(new HashSet<string> { "safety:scale", "safety:hydrometer", "safety:lifejackets", "safety:long-lead", "safety:test-pull" }, keys.ToHashSet());
        Assert.DoesNotContain("safety:hydrometer", Pack.Bring.Select(item => item.Key));
    }

    [Fact]
    public void Fuses_OneAndASpare_AreInStock()
    {
        BringItem fuse = Assert.Single(Pack.Bring, item => item.Key == "part:fuse:20");
        Assert.Equal(2, fuse.Needed!.Value);
        Assert.Equal(StockState.InStock, fuse.State);
    }

    // What one reads off the piece in the shop stands in the list, in the shopping list and in the step.
    [Fact]
    public void Fuses_KindVoltageAndBreakingCapacity_AreSaid()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with
        {
            Edits = [.. Boats.Pump.Edits.Select(edit => edit.Becomes is Protection { Id: "pump-fuse" } fuse ? edit with { Becomes = fuse with { Gates = "link-gg", RatedV = 58, BreakingA = 20000 } } : edit)],
        });
        string what = Assert.Single(pack.Bring, item => item.For.Contains("pump-fuse") && item.Kind == BringKind.Fuse).What.ToString();
        string step = string.Join(' ', pack.Steps.Single(one => one.Builds.Contains("pump-fuse")).Details);
        Assert.All(["Fuse-link gG", "58 V", "2E+04 A"], said =>
        {
            Assert.Contains(said, what, StringComparison.Ordinal);
            Assert.Contains(said, step, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("Two-pole 50A housing grey", StockState.InStock)]
    [InlineData("two-pole 50 A housing, red", StockState.ToBuy)]
    [InlineData(null, StockState.ToBuy)]
    public void Plug_IsTakenFromStockOnlyWhereItsKeyIsTheSame(string? keying, StockState state)
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things, new StockItem { Id = "housings", Name = "Housings", Use = StockUse.Plug, RatedA = 50, PieceCount = 2, Keying = keying }]);
        PlugAndSocket plug = new() { Id = "pump-plug", RatedA = 50, Keying = "two-pole 50 A housing, grey", Space = "locker" };
        WorkPack pack = Boats.Plan(boat, Boats.Pump with { Edits = [.. Boats.Pump.Edits, BoatEdits.Add(plug)] });
        BringItem item = Assert.Single(pack.Bring, item => item.Kind == BringKind.Plug);
        Assert.Equal(state, item.State);
        Assert.Equal(state == StockState.ToBuy, item.Remarks.Any(remark => remark.ToString().StartsWith("Not counted: Housings", StringComparison.Ordinal)));
    }

    [Fact]
    public void Exchange_NoteOfThePieceThatGoes_IsNotRepeated()
    {
        BoatModel noted = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing.Id == "main-fuse" ? thing with { Note = "Two spares in the locker." } : thing));
        Thing was = noted.Find("main-fuse")!;
        WorkPack pack = Boats.Plan(noted, Boats.Pump with { Edits = [BoatEdits.Replace(was, (Protection)was with { RatedA = 80 })] });
        Assert.DoesNotContain(pack.Steps.Single(step => step.Builds.Contains("main-fuse")).Details, detail => detail.ToString().Contains("spares", StringComparison.Ordinal));
    }

    [Fact]
    public void Tools_CrimperTooSmallForFour_IsMissingForFourAndThereForTwoAndAHalf()
    {
        Assert.Equal(StockState.ToBuy, Pack.Bring.Single(item => item.Key == "tool:crimping:4").State);
        Assert.Equal(StockState.InStock, Pack.Bring.Single(item => item.Key == "tool:crimping:crimper").State);
    }

    [Fact]
    public void Fuses_NewOne_WantsAHolderThatStockNamesOrThatIsBought()
    {
        Assert.Equal(StockState.ToBuy, Pack.Bring.Single(item => item.Key == "holder:20").State);
        BoatModel stocked = Boats.Small.WithThings([.. Boats.Small.Things, new StockItem { Id = "holders", Name = "Fuse holders 30 A", Use = StockUse.Device, RatedA = 30, PieceCount = 2 }]);
        Assert.Equal(StockState.InStock, Boats.Plan(stocked, Boats.Pump).Bring.Single(item => item.Key == "holder:20").State);
        // The main fuse is exchanged: its holder is there.
        Assert.DoesNotContain(Pack.Bring, item => item.Key == "holder:80");
    }

    [Theory]
    [InlineData("safety:lock-and-tag")]
    [InlineData("safety:eye-protection")]
    [InlineData("safety:extinguisher")]
    public void Safety_WorkAtWiringThatDrillsAndCrimps_BringsIt(string key) => Assert.Single(Pack.Bring, item => item.Key == key);

    [Fact]
    public void Safety_OnlyAChestIsMoved_BringsEyeProtectionAndNoLock()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with { Edits = [Boats.Pump.Edits.Single(edit => edit.Id == "chest")] });
        Assert.DoesNotContain(pack.Bring, item => item.Key == "safety:lock-and-tag");
        Assert.Single(pack.Bring, item => item.Key == "safety:eye-protection");
    }

    [Fact]
    public void Consumables_ListOnlyStockThatSaysItIsOne()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch-second");
        Assert.Equal(["cable-clips"], pack.Bring.Single(item => item.Key == "clips").Takes.Select(take => take.StockId));
        Assert.Equal(["heat-shrink"], pack.Bring.Single(item => item.Key == "heat-shrink").Takes.Select(take => take.StockId));
        Assert.Empty(pack.Bring.Single(item => item.Key == "ties").Takes);
        Assert.Contains("gloves-visor", pack.Bring.Single(item => item.Key == "safety:eye-protection").Takes.Select(take => take.StockId));
    }

    [Fact]
    public void Bring_AllBuilt_IsEmpty()
    {
        Alteration built = Boats.Pump with { Edits = Boats.Pump.Edits.Select(edit => edit with { BuiltOn = Boats.Day }).ToValueList() };
        BoatModel boat = BoatEdits.Apply(Boats.Small, Boats.Pump.Edits).Boat;
        WorkPack pack = Boats.Plan(boat, built);
        Assert.Empty(pack.Bring);
        Assert.Empty(pack.Cuts);
        Assert.Equal(Pack.Steps.Select(step => step.Key), pack.Steps.Select(step => step.Key));
    }

    private static CableCut CutOf(Func<Cable, Cable> change) => With(change).Cuts.Single(cut => cut.CableId == "pump-cable");

    private static WorkPack With(Func<Cable, Cable> change) => Boats.Plan(Boats.Small, Boats.Pump with
    {
        Edits = Boats.Pump.Edits.Select(edit => edit.Id == "pump-cable" ? BoatEdits.Add(change(Boats.PumpCable)) : edit).ToValueList(),
    });
}
