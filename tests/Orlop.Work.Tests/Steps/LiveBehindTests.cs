using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>
/// What lies behind what is opened is named and made dead first: before holes are drilled or screws driven, electricity that may be met there is off (common practice, no source). What is dead
/// is held against a plain walk of the wiring from the batteries.
/// </summary>
public class LiveBehindTests
{
    private const string Lining = "Upper lining of the house to port, twelve screws";

    [Fact]
    public void Open_FridgeRoutedWhereOtherCablesLie_NamesEachWithItsVoltageAndNotWhatIsToCome()
    {
        WorkStep open = FridgeStep($"Open or take off: {Lining}.");
        string[] lines = Lines(open, "Behind it now: ");
        string[] laid = [.. DemoBoat.Read().All<Cable>().Where(cable => cable.Run.Any(leg => leg.Way == "house-port")).Select(cable => cable.Title)];

        Assert.Equal(laid, lines.Select(line => laid.Single(title => line.StartsWith($"{title}, ", StringComparison.Ordinal))));
        Assert.Contains(lines, line => line.StartsWith($"{Title("kettle-cable")}, 230 V AC, dead by ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith($"{Title("panel-feed")}, 25.6 V DC, dead by ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith($"{Title("inverter-plus")}, 25.6 V DC, dead by ", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("Fridge", StringComparison.Ordinal));
        Assert.Contains("Opened for: Fridge feed.", open.Details.Select(detail => detail.ToString()));
    }

    [Fact]
    public void Open_EachCableCalledDead_IsReachedByNoBatteryPastWhatWasOpened()
    {
        WorkPack pack = Fridge.Value;
        BoatModel boat = DemoBoat.Read();
        HashSet<string> reached = FromBatteries(boat, [.. pack.Steps.Where(step => step.Kind == StepKind.Isolate && step.Key.StartsWith("isolate:", StringComparison.Ordinal)).Select(step => step.Key["isolate:".Length..])]);
        Cable[] dead = [.. boat.All<Cable>().Where(cable => pack.Steps.SelectMany(step => Lines(step, "Behind it now: ")).Any(line => line.StartsWith($"{cable.Title}, ", StringComparison.Ordinal) && line.Contains(", dead by ", StringComparison.Ordinal)))];

        Assert.Contains(dead, cable => cable.Id == "panel-feed");
        Assert.All(dead, cable => Assert.DoesNotContain(cable.Cores, core => reached.Contains(ElementIds.FromJoint(cable, core)) || reached.Contains(ElementIds.ToJoint(cable, core))));
        Assert.Contains(ElementIds.FromJoint(boat.Find<Cable>("panel-feed")!, boat.Find<Cable>("panel-feed")!.Cores[0]), FromBatteries(boat, []));
    }

    [Fact]
    public void Close_LiningOverLiveCables_NamesThemWithTheNewOneAndTakesThemAsLive()
    {
        WorkStep close = FridgeStep($"Close again: {Lining}.");

        string behind = Assert.Single(Lines(close, "Behind it now: "));
        Assert.Contains("Fridge feed (25.6 V DC)", behind, StringComparison.Ordinal);
        Assert.Contains($"{Title("kettle-cable")} (230 V AC)", behind, StringComparison.Ordinal);
        Assert.Contains(close.Cautions, caution => caution.Kind == CautionKind.StaysLive);
    }

    [Fact]
    public void Isolation_CableBehindThatTheWorkItselfDoesNotNeedDead_IsMadeDeadToo()
    {
        Assert.DoesNotContain(Plan(LampOut, Behind()).Steps, step => step.Key == "isolate:main-fuse");

        WorkPack pack = Plan(LampOut, Behind(Boats.Wire("radio-feed", "main-fuse.out", "radio.+", 4, 2, 6) with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] }));
        Assert.Contains(pack.Steps, step => step.Key == "isolate:main-fuse");
        Assert.Contains(pack.Steps, step => step.Key == "restore:main-fuse");
        Assert.Contains("radio-feed, 12 V DC, dead by Isolator and main fuse, proved at Isolator, in.", Lines(pack.Steps.Single(step => step.Key.StartsWith("open:", StringComparison.Ordinal)), "Behind it now: "));
    }

    [Fact]
    public void Open_CableThatLightKeepsLive_SaysSoWithItsCaution()
    {
        BoatModel boat = Behind();
        WorkStep open = Opening(Plan(LampOut, boat.WithThings(boat.Things.Select(thing => thing is Cable { Id: "solar-plus" } solar ? solar with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] } : thing))));

        Assert.Contains("solar-plus, 12 V DC, live if light reaches the panels: keep them covered.", Lines(open, "Behind it now: "));
        Assert.Contains(open.Cautions, caution => caution.Kind == CautionKind.StaysLive && caution.Text.Contains("solar-plus", StringComparison.Ordinal));
    }

    [Fact]
    public void Open_CableBehindTheDeviceThatTheWorkTakesOut_StaysLiveAndSaysWhatMakesItDead()
    {
        BoatModel boat = Behind(
            new Busbar { Id = "stud", Name = "Stud" },
            new Link { Id = "strap", Name = "Strap", From = Terminal.Parse("bank.+"), To = Terminal.Parse("stud.bar") },
            Boats.Wire("radio-feed", "stud.bar", "radio.+", 4, 2, 6) with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] });
        WorkStep open = Opening(Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Remove(boat.Find("lamp-cable")!), BoatEdits.Remove(boat.Find("strap")!)] }));

        Assert.Contains("radio-feed, 12 V DC, stays live: made dead by Strap.", Lines(open, "Behind it now: "));
        Assert.Contains(open.Cautions, caution => caution.Kind == CautionKind.StaysLive && caution.Text.Contains("radio-feed", StringComparison.Ordinal));
    }

    [Fact]
    public void Open_CableWithoutAWay_CannotBeToldWhetherItLiesThere()
    {
        BoatModel boat = Behind();
        WorkStep open = Opening(Plan(LampOut, boat.WithThings(boat.Things.Select(thing => thing is Cable { Id: "bank-minus" } minus ? minus with { Run = [] } : thing))));

        Assert.Contains("Whether these lie here too cannot be told, as their ways are not: bank-minus. Take them as live.", open.Details.Select(detail => detail.ToString()));
    }

    [Fact]
    public void Open_CableThatNothingFeeds_IsTakenAsLive()
    {
        WorkStep open = Opening(Plan(LampOut, Behind(Boats.Wire("stray", "nowhere.a", "nowhere.b", 4, 2, 6) with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] })));

        Assert.Contains("stray, voltage cannot be told, whether it is live cannot be told: take it as live.", Lines(open, "Behind it now: "));
    }

    [Fact]
    public void Run_InAnOpenTray_NamesWhatLiesBesideIt()
    {
        BoatModel boat = Boats.Small;
        WorkPack pack = Boats.Plan(boat, new Alteration { Id = "work", Edits = [.. Boats.Pump.Edits.Where(edit => edit.Id is "pump" or "pump-fuse" or "pump-strap" or "pump-cable")] });

        Assert.Equal(["lamp-cable, 12 V DC, live if light reaches the panels: keep them covered."], Lines(pack.Steps.Single(step => step.Key == "run:pump-cable"), "Beside it: "));
    }

    internal static Lazy<WorkPack> Fridge { get; } = new(() =>
    {
        Cable feed = DemoBoat.Read().Find<Cable>("compressor-cable")! with { Id = "fridge-feed", Name = "Fridge feed", Run = [new RunLeg { Way = "dash-tray", LengthM = 1.9 }, new RunLeg { Way = "house-port", LengthM = 1.2 }] };
        return WorkPacks.Plan(DemoBoat.Read(), new Alteration { Id = "fridge-work", Edits = [BoatEdits.Add(feed)] });
    });

    private static WorkStep FridgeStep(string text) => Assert.Single(Fridge.Value.Steps, step => step.Text.ToString() == text);

    private static string Title(string id) => DemoBoat.Read().Find(id)!.Title;

    private static string[] Lines(WorkStep step, string start) => [.. step.Details.Select(detail => detail.ToString()).Where(text => text.StartsWith(start, StringComparison.Ordinal)).Select(text => text[start.Length..])];

    private static Alteration LampOut(BoatModel boat) => new() { Id = "work", Edits = [BoatEdits.Remove(boat.Find("lamp-cable")!)] };

    private static WorkPack Plan(Func<BoatModel, Alteration> work, BoatModel boat) => Boats.Plan(boat, work(boat));

    private static WorkStep Opening(WorkPack pack) => pack.Steps.Single(step => step.Key.StartsWith("open:", StringComparison.Ordinal));

    // The small boat with her tray behind a lining, and more in it.
    private static BoatModel Behind(params Thing[] more) => Boats.Small.WithThings(
    [
        .. Boats.Small.Things.Select(thing => thing is Way way ? way with { Opened = "Locker lining, six screws" } : thing),
        .. more,
        .. more.Length == 0 ? [] : new Thing[] { new ElectricLoad { Id = "radio", Name = "Radio", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 10 } },
    ]);

    // Every switch closed but what is opened by its id; nothing passes a bonded bar, a load or a converter.
    private static HashSet<string> FromBatteries(BoatModel boat, HashSet<string> opened)
    {
        Wiring wiring = Wiring.Of(boat);
        HashSet<string> bonded = [.. boat.All<Busbar>().Where(bar => bar.IsBonded).SelectMany(bar => bar.TerminalNames.Select(name => bar.At(name).ToString()))];
        HashSet<string> reached = [.. boat.All<BatteryBank>().Select(bank => $"{bank.Id}.+")];
        Queue<string> queue = new(reached);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in wiring.At(node).Where(edge => !opened.Contains(edge.Id) && !opened.Contains(edge.Owner.Id) && !bonded.Contains(edge.Other(node))))
            {
                if (reached.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return reached;
    }
}
