using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Networks;

/// <summary>Equal content has an equal key; any other number, id or node has another.</summary>
public sealed class NetworkKeyTests
{
    private static Dictionary<string, Func<Network, Network>> ByName { get; } = new(StringComparer.Ordinal)
    {
        ["conductor id"] = network => network with { Conductors = [network.Conductors[0] with { Id = "other" }] },
        ["conductor node"] = network => network with { Conductors = [network.Conductors[0] with { B = "other" }] },
        ["conductor ends swapped"] = network => network with { Conductors = [network.Conductors[0] with { A = "b", B = "a" }] },
        ["letters moved between id and node"] = network => network with { Conductors = [network.Conductors[0] with { Id = "ca", A = "" }] },
        ["conductor resistance, last bit"] = network => network with { Conductors = [network.Conductors[0] with { ResistanceAt20Ohm = Math.BitIncrement(network.Conductors[0].ResistanceAt20Ohm) }] },
        ["no heating"] = network => network with { Conductors = [network.Conductors[0] with { Heating = null }] },
        ["ambient"] = network => network with { Conductors = [network.Conductors[0] with { Heating = network.Conductors[0].Heating! with { AmbientC = 31 } }] },
        ["rated temperature"] = network => network with { Conductors = [network.Conductors[0] with { Heating = network.Conductors[0].Heating! with { RatedC = 91 } }] },
        ["table ambient"] = network => network with { Conductors = [network.Conductors[0] with { Heating = network.Conductors[0].Heating! with { TableAmbientC = 31 } }] },
        ["table current"] = network => network with { Conductors = [network.Conductors[0] with { Heating = network.Conductors[0].Heating! with { RatedCurrentA = 41 } }] },
        ["no conductor"] = network => network with { Conductors = [] },
        ["contact resistance"] = network => network with { Contacts = [network.Contacts[0] with { ResistanceOhm = 0 }] },
        ["battery voltage"] = network => network with { Batteries = [network.Batteries[0] with { OpenCircuitV = 13 }] },
        ["battery resistance"] = network => network with { Batteries = [network.Batteries[0] with { InternalOhm = 0.02 }] },
        ["charger voltage"] = network => network with { LimitedSources = [network.LimitedSources[0] with { SetpointV = 14 }] },
        ["charger limit"] = network => network with { LimitedSources = [network.LimitedSources[0] with { LimitA = 31 }] },
        ["charger resistance"] = network => network with { LimitedSources = [network.LimitedSources[0] with { SourceOhm = 0.02 }] },
        ["converter output"] = network => network with { Converters = [network.Converters[0] with { OutputV = 6 }] },
        ["converter idle"] = network => network with { Converters = [network.Converters[0] with { IdleW = 2 }] },
        ["converter minus"] = network => network with { Converters = [network.Converters[0] with { IsSharedMinus = true }] },
        ["converter least input"] = network => network with { Converters = [network.Converters[0] with { LeastInputV = 9 }] },
        ["load kind"] = network => network with { Loads = [network.Loads[0] with { Kind = LoadKind.Power }] },
        ["load amount"] = network => network with { Loads = [network.Loads[0] with { Amount = 6 }] },
        ["load least voltage"] = network => network with { Loads = [network.Loads[0] with { LeastV = 9 }] },
        ["bond"] = network => network with { BondedNodes = ["b"] },
        ["no bond"] = network => network with { BondedNodes = [] },
    };

    public static TheoryData<string> Changes { get; } = [.. ByName.Keys];

    [Fact]
    public void SameContent_SameKey() => Assert.Equal(new NetworkKey(Network()), new NetworkKey(Network()));

    [Theory, MemberData(nameof(Changes))]
    public void OtherContent_OtherKey(string change) => Assert.NotEqual(new NetworkKey(Network()), new NetworkKey(ByName[change](Network())));

    [Fact]
    public void EqualThings_AreOneSet_AndOtherThingsAnother()
    {
        Memo memo = new();
        ThingSet one = ThingSet.Of(memo, [SmallBoat.Battery("bank"), SmallBoat.Lamp("lamp", 5)]);
        Assert.Same(one, ThingSet.Of(memo, [SmallBoat.Battery("bank"), SmallBoat.Lamp("lamp", 5)]));
        Assert.NotSame(one, ThingSet.Of(memo, [SmallBoat.Battery("bank"), SmallBoat.Lamp("lamp", 6)]));
        Assert.NotSame(one, ThingSet.Of(memo, [SmallBoat.Lamp("lamp", 5), SmallBoat.Battery("bank")]));
        Assert.NotSame(one, ThingSet.Of(memo, (Thing[])[SmallBoat.Battery("bank")]));
    }

    private static Network Network() => new()
    {
        Conductors = [new Conductor("c", "a", "b", 0.01, new ConductorHeating(30, 90, 30, 40))],
        Contacts = [new Contact("k", "b", "c", 0.001)],
        Batteries = [new Battery("bank", "a", "m", 12, 0.01)],
        LimitedSources = [new LimitedSource("charger", "a", "m", 14.2, 30, 0.01)],
        Converters = [new Converter("converter", "c", "m", "d", "m2", 5, 0.01, 1, 0.1, 0, 50, 8, false)],
        Loads = [new Load("lamp", "c", "m", LoadKind.Current, 5, 10)],
        BondedNodes = ["m"],
    };
}
