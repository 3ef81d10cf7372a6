using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class NetworkCheckTests
{
    private static readonly Network Sound = new()
    {
        Batteries = [new Battery("bank", "bank-plus", "bank-minus", 25.6, 0.004)],
        LimitedSources = [new LimitedSource("charger", "bank-plus", "bank-minus", 28, 40, 0.01)],
        Conductors =
        [
            new Conductor("feed", "bank-plus", "panel-plus", 0.002, new ConductorHeating(30, 105, 30, 120)),
            new Conductor("return", "bank-minus", "panel-minus", 0.002),
        ],
        Contacts = [new Contact("switch", "panel-plus", "lamp-plus", 0)],
        Converters = [new Converter("inverter", "panel-plus", "panel-minus", "line", "neutral", 230, 0.5, 20, 0.04, 1e-5, 3000, 21, false)],
        Loads =
        [
            new Load("lamp", "lamp-plus", "panel-minus", LoadKind.Power, 20),
            new Load("kettle", "line", "neutral", LoadKind.Resistance, 30),
        ],
    };

    public static TheoryData<string, string, Func<double, Network>> Values()
    {
        var data = new TheoryData<string, string, Func<double, Network>>();
        Conductor("above", "feed", (c, v) => c with { ResistanceAt20Ohm = v });
        Conductor("above", "feed", (c, v) => c with { Heating = c.Heating! with { RatedCurrentA = v } });
        Conductor("temperature", "feed", (c, v) => c with { Heating = c.Heating! with { AmbientC = v } });
        Conductor("temperature", "feed", (c, v) => c with { Heating = c.Heating! with { RatedC = v } });
        Conductor("temperature", "feed", (c, v) => c with { Heating = c.Heating! with { TableAmbientC = v } });
        data.Add("least", "switch", v => Sound with { Contacts = [Sound.Contacts[0] with { ResistanceOhm = v }] });
        Battery((b, v) => b with { OpenCircuitV = v });
        Battery((b, v) => b with { InternalOhm = v });
        Charger("above", (s, v) => s with { SetpointV = v });
        Charger("above", (s, v) => s with { SourceOhm = v });
        Charger("least", (s, v) => s with { LimitA = v });
        Inverter("above", (c, v) => c with { OutputV = v });
        Inverter("above", (c, v) => c with { OutputOhm = v });
        Inverter("above", (c, v) => c with { RatedW = v });
        Inverter("least", (c, v) => c with { IdleW = v });
        Inverter("least", (c, v) => c with { ProportionalLossFraction = v });
        Inverter("least", (c, v) => c with { OhmicLossPerW = v });
        Inverter("least", (c, v) => c with { LeastInputV = v });
        Lamp("least", (l, v) => l with { Amount = v });
        Lamp("least", (l, v) => l with { Kind = LoadKind.Current, Amount = v });
        Lamp("above", (l, v) => l with { Kind = LoadKind.Resistance, Amount = v });
        Lamp("least", (l, v) => l with { LeastV = v });
        return data;

        void Conductor(string range, string id, Func<Conductor, double, Conductor> change) =>
            data.Add(range, id, v => Sound with { Conductors = Sound.Conductors.SetItem(0, change(Sound.Conductors[0], v)) });
        void Battery(Func<Battery, double, Battery> change) => data.Add("above", "bank", v => Sound with { Batteries = [change(Sound.Batteries[0], v)] });
        void Charger(string range, Func<LimitedSource, double, LimitedSource> change) =>
            data.Add(range, "charger", v => Sound with { LimitedSources = [change(Sound.LimitedSources[0], v)] });
        void Inverter(string range, Func<Converter, double, Converter> change) =>
            data.Add(range, "inverter", v => Sound with { Converters = [change(Sound.Converters[0], v)] });
        void Lamp(string range, Func<Load, double, Load> change) =>
            data.Add(range, "lamp", v => Sound with { Loads = Sound.Loads.SetItem(0, change(Sound.Loads[0], v)) });
    }

    [Fact]
    public void FindFaults_SoundNetwork_FindsNone() => Assert.Empty(NetworkCheck.FindFaults(Sound));

    [Theory]
    [MemberData(nameof(Values))]
    public void FindFaults_ValueOutOfRange_NamesElementAndValue(string range, string id, Func<double, Network> withValue)
    {
        double[] bad = range switch
        {
            "above" => [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, 0, -0.0, 1e-320],
            "least" => [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, -1e-300],
            _ => [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -300, 1e6],
        };
        foreach (var value in bad)
        {
            var network = withValue(value);
            var fault = Assert.Single(NetworkCheck.FindFaults(network), f => f.Kind == NetworkFaultKind.BadValue && f.Message.Contains("allowed", StringComparison.Ordinal));
            Assert.Equal([id], fault.Ids);
            Assert.Contains($"'{id}'", fault.Message, StringComparison.Ordinal);
            var result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
            Assert.Equal(SolveStatus.FaultyNetwork, result.Status);
            Assert.Null(result.Point);
        }
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void FindFaults_ValueAtItsLeast_FindsNone(string range, string id, Func<double, Network> withValue)
    {
        Assert.NotEmpty(id);
        double? least = range switch { "above" => 1e-3, "least" => 0, _ => null };
        if (least is { } value)
        {
            Assert.Empty(NetworkCheck.FindFaults(withValue(value)));
        }
    }

    [Fact]
    public void FindFaults_UnknownKindOfLoad_IsABadValue()
    {
        var network = Sound with { Loads = Sound.Loads.SetItem(0, Sound.Loads[0] with { Kind = (LoadKind)7 }) };
        Assert.Contains(NetworkCheck.FindFaults(network), f => f.Kind == NetworkFaultKind.BadValue && f.Ids is ["lamp"]);
    }

    [Fact]
    public void FindFaults_ElementWithoutIdOrNode_IsABadValue()
    {
        Assert.Contains(NetworkCheck.FindFaults(Sound with { Contacts = [new Contact("", "a", "b", 1)] }), f => f.Kind == NetworkFaultKind.BadValue);
        Assert.Contains(NetworkCheck.FindFaults(Sound with { Contacts = [new Contact("link", "", "b", 1)] }), f => f.Ids is ["link"]);
        Assert.Contains(NetworkCheck.FindFaults(Sound with { Contacts = [new Contact("link", "a", null!, 1)] }), f => f.Ids is ["link"]);
        Assert.Contains(NetworkCheck.FindFaults(Sound with { BondedNodes = [""] }), f => f.Kind == NetworkFaultKind.BadValue);
    }

    [Fact]
    public void FindFaults_ConductorFromNodeToItself_IsABadValue() =>
        Assert.Contains(NetworkCheck.FindFaults(Sound with { Contacts = [new Contact("link", "line", "line", 1)] }), f => f.Ids is ["link"]);

    [Fact]
    public void FindFaults_IdOnTwoElements_IsNamedOnce()
    {
        var network = Sound with { Contacts = [.. Sound.Contacts, new Contact("lamp", "line", "spare", 0), new Contact("lamp", "line", "spare", 0)] };
        var fault = Assert.Single(NetworkCheck.FindFaults(network));
        Assert.Equal(NetworkFaultKind.DuplicateId, fault.Kind);
        Assert.Equal(["lamp"], fault.Ids);
    }

    [Fact]
    public void FindFaults_DeadTail_IsNoFault()
    {
        var network = Sound with { Conductors = Sound.Conductors.Add(new Conductor("tail", "panel-plus", "cut-end", 0.01)) };
        Assert.Empty(NetworkCheck.FindFaults(network));
        var result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
        Assert.Equal(0, result.Point!.BranchA["tail"], 1e-9);
        Assert.Equal(result.Point.NodeV["panel-plus"], result.Point.NodeV["cut-end"], 1e-9);
    }

    [Theory]
    [InlineData("nowhere", "panel-minus", LoadKind.Power)]
    [InlineData("panel-plus", "nowhere", LoadKind.Current)]
    [InlineData("nowhere", "elsewhere", LoadKind.Resistance)]
    [InlineData("panel-plus", "panel-plus", LoadKind.Power)]
    [InlineData("panel-plus", "lamp-plus", LoadKind.Resistance)]
    [InlineData("panel-plus", "bank-plus", LoadKind.Power)]
    [InlineData("line", "panel-minus", LoadKind.Power)]
    public void FindFaults_LoadWithoutClosedPath_Floats(string plus, string minus, LoadKind kind)
    {
        var network = Sound with { Loads = Sound.Loads.Add(new Load("pump", plus, minus, kind, 5)) };
        var fault = Assert.Single(NetworkCheck.FindFaults(network));
        Assert.Equal(NetworkFaultKind.Floating, fault.Kind);
        Assert.Equal(["pump"], fault.Ids);
        Assert.Contains("'pump'", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FindFaults_TwoResistancesInSeries_AreFed()
    {
        var network = Sound with { Loads = [new Load("upper", "panel-plus", "middle", LoadKind.Resistance, 5), new Load("lower", "middle", "panel-minus", LoadKind.Resistance, 5), .. Sound.Loads] };
        Assert.Empty(NetworkCheck.FindFaults(network));
    }

    [Fact]
    public void FindFaults_TwoPowersInSeries_Float()
    {
        var network = Sound with { Loads = [new Load("upper", "panel-plus", "middle", LoadKind.Power, 5), new Load("lower", "middle", "panel-minus", LoadKind.Power, 5), .. Sound.Loads] };
        Assert.Equal([["lower"], ["upper"]], NetworkCheck.FindFaults(network).Select(f => f.Ids));
    }

    [Fact]
    public void FindFaults_ConverterInputWithoutPath_Floats()
    {
        var network = Sound with { Conductors = Sound.Conductors.RemoveAt(1), Loads = [Sound.Loads[1]], Contacts = [] };
        Assert.Contains(NetworkCheck.FindFaults(network), f => f.Kind == NetworkFaultKind.Floating && f.Ids is ["inverter"]);
    }

    [Theory]
    [InlineData("bank-plus", "bank-minus", "bank", "charger")]
    [InlineData("line", "neutral", "inverter")]
    public void FindFaults_SourceShortedByContact_IsNamed(string a, string b, params string[] sources)
    {
        var network = Sound with { Contacts = Sound.Contacts.Add(new Contact("dropped-spanner", a, b, 0)) };
        var shorts = NetworkCheck.FindFaults(network).Where(f => f.Kind == NetworkFaultKind.Short).ToArray();
        Assert.Equal(sources, shorts.Select(f => f.Ids[0]));
        Assert.All(shorts, f => Assert.Contains("no resistance", f.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void FindFaults_SourceOnOneNode_IsShorted() =>
        Assert.Contains(NetworkCheck.FindFaults(Sound with { Batteries = [Sound.Batteries[0] with { Minus = "bank-plus" }] }), f => f.Kind == NetworkFaultKind.Short);

    [Fact]
    public void FindFaults_SourcesOfDifferentVoltageWithoutResistance_AreNamedTogether()
    {
        var network = Sound with { Batteries = [new Battery("one", "bank-plus", "bank-minus", 25.6, 0), new Battery("two", "bank-plus", "bank-minus", 25.2, 0)] };
        var fault = Assert.Single(NetworkCheck.FindFaults(network), f => f.Kind == NetworkFaultKind.SourceLoop);
        Assert.Equal(["one", "two"], fault.Ids);
    }

    [Fact]
    public void FindFaults_ConverterOnItsOwnOutput_IsAnEnergyLoop()
    {
        var network = Sound with { Contacts = [.. Sound.Contacts, new Contact("a", "line", "panel-plus", 0.001), new Contact("b", "neutral", "panel-minus", 0.001)] };
        var fault = Assert.Single(NetworkCheck.FindFaults(network));
        Assert.Equal(NetworkFaultKind.EnergyLoop, fault.Kind);
        Assert.Equal(["inverter"], fault.Ids);
    }

    [Fact]
    public void FindFaults_InverterFeedingTheChargerOfItsBattery_IsAnEnergyLoop()
    {
        var network = Sound with { Converters = Sound.Converters.Add(new Converter("mains-charger", "line", "neutral", "bank-plus", "bank-minus", 28, 0.01, 5, 0.1, 0, 1000, 180, false)) };
        var fault = Assert.Single(NetworkCheck.FindFaults(network));
        Assert.Equal(NetworkFaultKind.EnergyLoop, fault.Kind);
        Assert.Equal(["inverter", "mains-charger"], fault.Ids);
    }

    [Fact]
    public void FindFaults_ConvertersInAChainOnOneMinus_AreNoEnergyLoop()
    {
        var network = Sound with
        {
            Converters =
            [
                new Converter("down", "panel-plus", "panel-minus", "twelve", "panel-minus", 12, 0.02, 1, 0.1, 0, 200, 18, false),
                new Converter("usb", "twelve", "panel-minus", "five", "panel-minus", 5, 0.02, 0.1, 0.1, 0, 20, 9, false),
            ],
            Loads = [new Load("phone", "five", "panel-minus", LoadKind.Power, 10)],
        };
        Assert.Empty(NetworkCheck.FindFaults(network));
    }
}
