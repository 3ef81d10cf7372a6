using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Tests;

/// <summary>Boats for drawing: a small one made here, a many-circuit one, and the example.</summary>
internal static class SampleBoats
{
    /// <summary>Ten metres of hull, a battery, a fuse, a winch and a box of exactly one metre.</summary>
    internal static BoatModel Small { get; } = new()
    {
        Things =
        [
            new Particulars { Id = "particulars", Name = "Small & <sharp>", DraughtM = 0.9 },
            new HullOutline
            {
                Id = "hull",
                Sheer = [new(0, 1.4, 1.8), new(5, 1.6, 1.8), new(10, 0, 2.2)],
                Chine = [new(0, 1.2, 0.6), new(5, 1.4, 0.5), new(9.5, 0, 1.2)],
                Keel = [new(0, 0, 0.3), new(6, 0, 0), new(10, 0, 2.2)],
                Deckhouses = [new("House", 4, 7, 4.2, 6.5, 1, 1.8, 3.2)],
            },
            new Space { Id = "locker", Name = "After locker", Use = SpaceUse.Dry, From = new(0.2, -1.2, 0.5), To = new(2, 1.2, 1.7) },
            new Way { Id = "deckhead", Means = WayKind.Deckhead, Points = [new(1, 1, 1.6), new(6, 1, 1.6)] },
            new Gear { Id = "box", Name = "Box", MassKg = 40, Place = new(8, 0, 1), Size = new(1, 0.5, 0.5) },
            new BatteryBank { Id = "bank", Name = "Bank", Chemistry = BatteryChemistry.LithiumIronPhosphate, NominalV = 24, Place = new(1, 0.5, 1), Size = new(0.5, 0.4, 0.3) },
            new Protection { Id = "fuse", Name = "Fuse", Means = ProtectionMeans.Fuse, RatedA = 150, Place = new(1.5, 0.5, 1), Size = new(0.1, 0.1, 0.1) },
            new ElectricLoad { Id = "winch", Name = "Winch", Behaviour = LoadBehaviour.Power, NominalV = 24, RunningW = 1500, StartRatio = 5, Place = new(6.5, 0.8, 2), Size = new(0.4, 0.4, 0.4) },
            new Busbar { Id = "minus", Name = "Minus bar", Place = new(1.2, -0.5, 1) },
            new Link { Id = "post", From = new("bank", "+"), To = new("fuse", "in") },
            Cable("feed", new("fuse", "out"), new("winch", "+")),
            Cable("winch-minus", new("winch", "-"), new("minus", "bar")),
            Cable("bank-minus", new("bank", "-"), new("minus", "bar")),
        ],
    };

    /// <summary>One battery, one bar, and this many fused circuits.</summary>
    internal static BoatModel WithCircuits(int count) => Small.WithThings(
    [
        .. Small.Things.Where(thing => thing.Id is "particulars" or "hull" or "bank" or "minus" or "bank-minus"),
        new Busbar { Id = "plus", Name = "Plus bar", RatedA = 300 },
        Cable("bank-plus", new("bank", "+"), new("plus", "bar")),
        .. Enumerable.Range(1, count).SelectMany(index => new Thing[]
        {
            new Protection { Id = $"fuse-{index}", Name = $"Fuse of circuit {index}", Means = ProtectionMeans.Fuse, RatedA = 10 },
            new ElectricLoad { Id = $"load-{index}", Name = $"Load with a rather long name {index}", Behaviour = LoadBehaviour.Current, NominalV = 24, RunningA = 4 },
            new Link { Id = $"tap-{index}", From = new("plus", "bar"), To = new($"fuse-{index}", "in") },
            Cable($"cable-{index}", new($"fuse-{index}", "out"), new($"load-{index}", "+")),
            Cable($"return-{index}", new($"load-{index}", "-"), new("minus", "bar")),
        }),
    ]);

    internal static BoatModel Example { get; } = BoatJson.Read(File.ReadAllText(Path.Combine(Root(), "examples", "sandgrouse.json"))).Boat
        ?? throw new InvalidDataException("examples/sandgrouse.json has problems.");

    /// <summary>The example as built (null) and as each of its alterations would leave it.</summary>
    internal static IReadOnlyList<BoatModel?> ExampleDrafts { get; } =
        [null, .. Example.All<Alteration>().Where(alteration => alteration.Status == AlterationStatus.Draft).Select(alteration => AlteredBoat.Of(Example, alteration).Boat)];

    internal static Cable Cable(string id, Terminal from, Terminal to) => new()
    {
        Id = id,
        AreaMm2 = 16,
        LengthM = 5.2,
        Cores = [new Core { Id = "core", From = from, To = to }],
        Run = [new RunLeg { Way = "deckhead", LengthM = 5 }],
    };

    /// <summary>The folder of the whole project.</summary>
    internal static string Root()
    {
        string at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Orlop.slnx")))
        {
            at = Path.GetDirectoryName(at) ?? throw new InvalidDataException("Orlop.slnx is in no folder above the tests.");
        }

        return at;
    }
}
