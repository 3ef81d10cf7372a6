using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Drawings.Tests.Circuits;

/// <summary>A boat with forty-four circuits: two sources and a charger on a main bar, two panels and a converter's bar behind it, one circuit with a switch, a plug and a breaker before its load.</summary>
internal static class ManyCircuits
{
    private static readonly string[] Port =
    [
        "Bow light", "Port navigation light", "Starboard navigation light", "Stern light", "Masthead light", "Anchor light", "Deck floodlights", "Foredeck hatch light", "Cabin lights, port",
        "Cabin lights, starboard", "Galley strip light", "Chart table lamp", "Heads light", "Engine space light", "After locker light", "Fresh water pump", "Shower sump pump", "Bilge pump, forward",
        "Bilge pump, engine space", "Bilge pump, after", "High water alarm", "Deck wash pump",
    ];

    private static readonly string[] Starboard =
    [
        "Refrigerator", "Diesel heater", "Cabin fan, forward", "Cabin fan, after", "Engine space blower", "Windscreen wiper, port", "Windscreen wiper, starboard", "Windscreen washer", "Horn", "Autopilot drive",
        "Fuel transfer pump", "Gas detector and solenoid valve", "Sockets for small chargers, saloon", "Sockets for small chargers, wheelhouse", "Trim tabs", "Waste pump",
    ];

    private static readonly string[] Electronics = ["Radio", "Plotter", "Echo sounder", "Radar", "Identification transponder", "Navigation sensors"];

    public const int CircuitCount = 44;

    public static BoatModel Boat { get; } = new BoatModel().WithThings(
    [
        new Particulars { Id = "particulars", Name = "Forty circuits" },
        new BatteryBank { Id = "house", Name = "House battery", Chemistry = BatteryChemistry.LithiumIronPhosphate, NominalV = 24, CapacityAh = 400 },
        new Protection { Id = "house-fuse", Name = "House battery fuse", Means = ProtectionMeans.Fuse, RatedA = 250 },
        new IsolatorSwitch { Id = "house-switch", Name = "House battery switch", RatedA = 300 },
        Cable("house-cable", 70, 0.6, "house", "+", "house-fuse", "in"), Cable("house-cable-2", 70, 0.9, "house-fuse", "out", "house-switch", "in"), Cable("house-cable-3", 70, 1.1, "house-switch", "out", "main", "bar"),
        new Charger { Id = "sun", Name = "Solar controller", Drive = ChargerDrive.Sun, SetpointV = 28.4, LimitA = 30 },
        new Protection { Id = "sun-fuse", Name = "Solar fuse", Means = ProtectionMeans.Fuse, RatedA = 40 },
        Cable("sun-cable", 10, 4.2, "sun", "+", "sun-fuse", "in"), Cable("sun-cable-2", 10, 0.4, "sun-fuse", "out", "main", "bar"),
        new Charger { Id = "alternator", Name = "Alternator", Drive = ChargerDrive.Engine, SetpointV = 28.2, LimitA = 80 },
        Cable("alternator-cable", 35, 3.8, "alternator", "+", "main", "bar"),
        new Busbar { Id = "main", Name = "Main bar, plus", RatedA = 300 },
        new Busbar { Id = "port", Name = "Port panel bar", RatedA = 100 }, new Busbar { Id = "starboard", Name = "Starboard panel bar", RatedA = 100 }, new Busbar { Id = "electronics", Name = "Electronics bar", RatedA = 40 },
        new Protection { Id = "port-fuse", Name = "Port panel fuse", Means = ProtectionMeans.Fuse, RatedA = 80 }, new Protection { Id = "starboard-fuse", Name = "Starboard panel fuse", Means = ProtectionMeans.Fuse, RatedA = 80 },
        Link("port-tap", "main", "bar", "port-fuse", "in"), Link("starboard-tap", "main", "bar", "starboard-fuse", "in"),
        Cable("port-feed", 25, 5.1, "port-fuse", "out", "port", "bar"), Cable("starboard-feed", 25, 6.4, "starboard-fuse", "out", "starboard", "bar"),
        new Protection { Id = "converter-fuse", Name = "Converter fuse", Means = ProtectionMeans.Fuse, RatedA = 20 },
        new DcConverter { Id = "converter", Name = "Electronics converter", OutputV = 13.2, RatedA = 20 },
        Link("converter-tap", "main", "bar", "converter-fuse", "in"), Cable("converter-feed", 6, 2.2, "converter-fuse", "out", "converter", "in+"), Cable("electronics-feed", 6, 0.7, "converter", "out+", "electronics", "bar"),
        .. Port.SelectMany((name, index) => Circuit("port", index, name)), .. Starboard.SelectMany((name, index) => Circuit("starboard", index, name)), .. Electronics.SelectMany((name, index) => Circuit("electronics", index, name)),
    ]);

    private static Thing[] Circuit(string bar, int index, string name)
    {
        string id = $"{bar}-{index + 1}";
        Protection breaker = new() { Id = $"{id}-breaker", Name = $"{name} breaker", Means = ProtectionMeans.Breaker, RatedA = 5 + (index % 4 * 5) };
        ElectricLoad load = new() { Id = $"{id}-load", Name = name, Behaviour = LoadBehaviour.Current, NominalV = 24, RunningA = 1.5 + index };
        Link tap = Link($"{id}-tap", bar, "bar", breaker.Id, "in");
        if (name != "Deck wash pump")
        {
            return [breaker, load, tap, Cable($"{id}-cable", 2.5, 3 + index, breaker.Id, "out", load.Id, "+")];
        }

        return
        [
            breaker, load, tap, new IsolatorSwitch { Id = $"{id}-switch", Name = "Deck wash switch", RatedA = 20 }, new PlugAndSocket { Id = $"{id}-plug", Name = "Deck wash plug and socket", RatedA = 16 },
            Cable($"{id}-cable", 2.5, 3, breaker.Id, "out", $"{id}-switch", "in"), Cable($"{id}-cable-2", 2.5, 4, $"{id}-switch", "out", $"{id}-plug", "a"), Cable($"{id}-cable-3", 2.5, 1.5, $"{id}-plug", "b", load.Id, "+"),
        ];
    }

    private static Link Link(string id, string from, string fromTerminal, string to, string toTerminal) => new() { Id = id, From = new(from, fromTerminal), To = new(to, toTerminal) };

    private static Cable Cable(string id, double areaMm2, double lengthM, string from, string fromTerminal, string to, string toTerminal) => new()
    {
        Id = id,
        AreaMm2 = areaMm2,
        LengthM = lengthM,
        Cores = [new Core { Id = "core", From = new(from, fromTerminal), To = new(to, toTerminal) }],
    };
}
