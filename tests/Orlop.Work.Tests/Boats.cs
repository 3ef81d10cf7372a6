using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Work.Tests;

/// <summary>A small boat, 12 V, and an alteration that does one of each kind of thing.</summary>
internal static class Boats
{
    public static readonly DateOnly Day = new(2026, 11, 25);

    public static BoatModel Small { get; } = new()
    {
        Things =
        [
            new Particulars { Id = "particulars", Name = "Sandpiper" },
            new PracticeChoice { Id = "practice", Basis = "iso-small-craft" },
            new Space { Id = "locker", Name = "Locker", Use = SpaceUse.Dry, From = new(0, -1, 0), To = new(2, 1, 2), AmbientC = 25, LiningBurns = false },
            new Space { Id = "engine", Name = "Engine space", Use = SpaceUse.Engine, From = new(2, -1, 0), To = new(4, 1, 2), AmbientC = 30, EngineRunningC = 50 },
            new Way { Id = "tray", Name = "Tray", Means = WayKind.Tray, Space = "locker" },
            new Condition { Id = "at-anchor", Name = "At anchor", SunShines = true, ChargeFraction = new Quantity(0.8, Knowledge.Estimated, 0.05) },
            new BatteryBank
            {
                Id = "bank", Name = "Bank", Chemistry = BatteryChemistry.AbsorbedGlassMat, NominalV = 12, CapacityAh = 100, InternalResistanceOhm = 0.005, Space = "locker", MassKg = 28,
                OpenCircuit = [new(0, 11.6), new(0.5, 12.2), new(1, 12.8)],
            },
            new Charger { Id = "solar", Name = "Solar", Drive = ChargerDrive.Sun, LimitA = 5, SetpointV = 14.2 },
            new Protection { Id = "main-fuse", Name = "Main fuse", Means = ProtectionMeans.Fuse, RatedA = 100, ResistanceOhm = 0.0005 },
            new IsolatorSwitch { Id = "isolator", Name = "Isolator", RatedA = 100, ResistanceOhm = 0.0003 },
            new Busbar { Id = "plus", Name = "Plus bar" },
            new Busbar { Id = "minus", Name = "Minus bar", IsBonded = true },
            Wire("bank-fuse", "bank.+", "main-fuse.in", 25, 0.3, 8),
            Wire("fuse-isolator", "main-fuse.out", "isolator.in", 25, 0.3, 8),
            Wire("isolator-plus", "isolator.out", "plus.bar", 25, 0.3, 8),
            Wire("bank-minus", "bank.-", "minus.bar", 25, 0.5, 8),
            Wire("solar-plus", "solar.+", "plus.bar", 4, 2, 5),
            Wire("solar-minus", "solar.-", "minus.bar", 4, 2, 5),
            new ElectricLoad { Id = "lamp", Name = "Lamp", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 10, Uses = [new("at-anchor", 1)] },
            Pair("lamp-cable", "plus.bar", "lamp", 1.5, 3),
            new Gear { Id = "chest", Name = "Chest", MassKg = 40, Place = new(1, 0, 0), Space = "locker" },
            new Gear { Id = "old-shelf", Name = "Old shelf", Space = "locker" },
            new StockItem { Id = "reel-4", Name = "Reel 4", Use = StockUse.Cable, AreaMm2 = 4, CoreCount = 2, InsulationC = 90, Strands = StrandClass.FlexibleTinned5, LengthM = 20, Where = "home" },
            new StockItem { Id = "rings", Name = "Rings", Use = StockUse.Termination, AreaMm2 = 4, StudMm = 6, Means = TerminationMeans.Ring, PieceCount = 3, Where = "on board" },
            new StockItem { Id = "fuses", Name = "Fuses", Use = StockUse.Fuse, RatedA = 20, PieceCount = 5 },
            new Tool { Id = "crimper", Name = "Crimper", Use = ToolUse.Crimping, FromMm2 = 0.5, ToMm2 = 2.5 },
            new Tool { Id = "meter", Name = "Meter", Use = ToolUse.Measuring },
        ],
    };

    /// <summary>The pump's feed: minus first end 5.00 m of sheathed twin, exact.</summary>
    public static Cable PumpCable { get; } = Pair("pump-cable", "pump-fuse.out", "pump", 4, 5) with { Name = "Pump cable" };

    public static Alteration Pump { get; } = new()
    {
        Id = "pump-work",
        Name = "Pump",
        Purpose = "Wash the deck.",
        Edits =
        [
            BoatEdits.Add(new ElectricLoad { Id = "pump", Name = "Pump", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = new Quantity(120, Knowledge.Sheet), Uses = [new("at-anchor", 0.2)], Space = "engine", MassKg = 3 }),
            BoatEdits.Add(new Protection { Id = "pump-fuse", Name = "Pump fuse", Means = ProtectionMeans.Fuse, RatedA = 20, Space = "locker" }),
            BoatEdits.Add(new Link { Id = "pump-strap", Name = "Pump strap", From = Terminal.Parse("plus.bar"), To = Terminal.Parse("pump-fuse.in") }),
            BoatEdits.Add(PumpCable),
            BoatEdits.Replace(Small.Find("chest")!, Small.Find<Gear>("chest")! with { Place = new(1.5, 0, 0) }),
            BoatEdits.Remove(Small.Find("old-shelf")!),
            BoatEdits.Replace(Small.Find("lamp-cable")!, Small.Find<Cable>("lamp-cable")! with { AreaMm2 = 2.5 }),
            BoatEdits.Replace(Small.Find("main-fuse")!, Small.Find<Protection>("main-fuse")! with { RatedA = 80 }),
            BoatEdits.Replace(Small.Find("at-anchor")!, Small.Find<Condition>("at-anchor")! with { Note = "calm" }),
        ],
    };

    public static WorkPack PumpPack { get; } = Plan(Small, Pump);

    public static WorkPack Plan(BoatModel boat, Alteration alteration) => WorkPacks.Plan(boat, alteration);

    public static Cable Wire(string id, string from, string to, double areaMm2, double lengthM, double studMm) => new()
    {
        Id = id,
        AreaMm2 = areaMm2,
        LengthM = lengthM,
        InsulationC = 90,
        Cores = [Joined("one", from, to, studMm)],
        Run = [new RunLeg { Space = "locker", LengthM = lengthM }],
    };

    /// <summary>A sheathed twin from a plus terminal and the minus bar to a load.</summary>
    public static Cable Pair(string id, string from, string load, double areaMm2, double lengthM) => new()
    {
        Id = id,
        AreaMm2 = areaMm2,
        LengthM = lengthM,
        InsulationC = 90,
        IsSheathed = true,
        Cores = [Joined("plus", from, $"{load}.+", 6), Joined("minus", "minus.bar", $"{load}.-", 6)],
        Run = [new RunLeg { Way = "tray", LengthM = lengthM }],
    };

    private static Core Joined(string id, string from, string to, double studMm) => new()
    {
        Id = id,
        From = Terminal.Parse(from),
        To = Terminal.Parse(to),
        FromEnd = new Termination(TerminationMeans.Ring, studMm, new Quantity(0.0002, Knowledge.Estimated)),
        ToEnd = new Termination(TerminationMeans.Ring, studMm, new Quantity(0.0002, Knowledge.Estimated)),
    };
}
