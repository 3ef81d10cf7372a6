using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

/// <summary>Networks with exact or closed-form answers (electrical-dc-network-cases.csv) and prospective fault currents worked by hand.</summary>
public sealed class NetworkReferenceTests
{
    private const string Table = "electrical-dc-network-cases.csv";

    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceCsv.Load(Table, expectedRows: 25);

    [Fact]
    public void N1_PowerBehindResistance_Agrees()
    {
        var point = Solved(OneLoad(25.6, 0.020, 2000));
        Agrees("N1", "V_load", point.LoadV["load"]);
        Agrees("N1", "I", point.LoadA["load"]);
        Assert.Equal(139.72, point.LossPowerW, 0.005);
        Agrees("N1", "P_max", NetworkSolver.Solve(OneLoad(25.6, 0.020, 9000), TestContext.Current.CancellationToken).Shortfall!.MostW);
    }

    [Fact]
    public void N2_PowerExactlyAtTheLimit_Agrees()
    {
        // A double root: the reference page accepts 1e-4 V.
        Row("N2", "V_load").Agrees(12, Solved(OneLoad(24, 0.1, 1440)).LoadV["load"], 1e-4);
        Agrees("N2", "P_max", NetworkSolver.Solve(OneLoad(24, 0.1, 1500), TestContext.Current.CancellationToken).Shortfall!.MostW);
    }

    [Fact]
    public void N3_PowerBeyondTheLimit_HasNoOperatingPoint()
    {
        var result = NetworkSolver.Solve(OneLoad(24, 0.1, 1500), TestContext.Current.CancellationToken);
        Agrees("N3", "solution_exists", result.Point is null ? 0 : 1);
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
    }

    [Fact]
    public void N4_TwoBatteriesInParallel_Agree()
    {
        var network = new Network
        {
            Batteries = [new Battery("1", "bus", "zero", 25.6, 0.010), new Battery("2", "bus", "zero", 25.2, 0.020)],
            Loads = [new Load("load", "bus", "zero", LoadKind.Resistance, 0.5)],
        };
        var point = Solved(network);
        Agrees("N4", "V_node", point.NodeV["bus"]);
        Agrees("N4", "I_battery_1", point.SourceA["1"]);
        Agrees("N4", "I_battery_2", point.SourceA["2"]);
        Agrees("N4", "I_circulating_no_load", Solved(network with { Loads = [] }).SourceA["1"]);
        Agrees("N4", "I_circulating_no_load", -Solved(network with { Loads = [] }).SourceA["2"]);
    }

    [Fact]
    public void N5_Bridge_Agrees()
    {
        // The source of the case has no resistance; a nano-ohm moves its current by less than 1e-6 A.
        var network = new Network
        {
            Batteries = [new Battery("source", "S", "0", 24, 1e-9)],
            Conductors = [new("sa", "S", "A", 0.1), new("sb", "S", "B", 0.2), new("a0", "A", "0", 0.4), new("b0", "B", "0", 0.1), new("ab", "A", "B", 0.5)],
        };
        var point = Solved(network);
        Agrees("N5", "V_A", point.NodeV["A"]);
        Agrees("N5", "V_B", point.NodeV["B"]);
        Agrees("N5", "I_source", point.BranchA["sa"] + point.BranchA["sb"]);
        Agrees("N5", "R_equivalent", 24 / (point.BranchA["sa"] + point.BranchA["sb"]));
        Assert.Equal(17.3195876, point.BranchA["ab"], 1e-6);
    }

    [Fact]
    public void N6_RingMain_Agrees()
    {
        var point = Solved(new Network
        {
            Batteries = [new Battery("source", "S", "0", 25, 1e-9)],
            Conductors = [new("s1", "S", "1", 0.010), new("12", "1", "2", 0.020), new("2s", "2", "S", 0.030)],
            Loads = [new Load("one", "1", "0", LoadKind.Current, 30), new Load("two", "2", "0", LoadKind.Current, 20)],
        });
        Agrees("N6", "V_1", point.NodeV["1"]);
        Agrees("N6", "V_2", point.NodeV["2"]);
        Agrees("N6", "I_S1", point.BranchA["s1"]);
        Agrees("N6", "I_S2", -point.BranchA["2s"]);
        Assert.Equal(5, point.BranchA["12"], 1e-6);
    }

    [Fact]
    public void N7_ChainOfTwoPowers_Agrees()
    {
        var point = Solved(new Network
        {
            Batteries = [new Battery("source", "S", "0", 24.5, 0.010)],
            Conductors = [new("first", "S", "1", 0.010), new("second", "1", "2", 0.025)],
            Loads = [new Load("one", "1", "0", LoadKind.Power, 705), new Load("two", "2", "0", LoadKind.Power, 460)],
        });
        Agrees("N7", "V_1", point.NodeV["1"]);
        Agrees("N7", "V_2", point.NodeV["2"]);
        Agrees("N7", "I_source", point.SourceA["source"]);
        Assert.Equal(20, point.BranchA["second"], 1e-6);
    }

    [Fact]
    public void N8_ChargerAtItsLimitBesideABattery_Agrees()
    {
        var point = Solved(new Network
        {
            Batteries = [new Battery("bank", "bus", "0", 25.6, 0.010)],
            LimitedSources = [new LimitedSource("charger", "bus", "0", 28.8, 40, 0.005)],
            Loads = [new Load("load", "bus", "0", LoadKind.Power, 1000)],
        });
        Agrees("N8", "V_node", point.NodeV["bus"]);
        Agrees("N8", "I_battery_charging_positive", -point.SourceA["bank"]);
        Assert.Equal(39.0479788, point.LoadA["load"], 1e-6);
        Assert.Equal(SourceMode.AtLimit, point.SourceModes["charger"]);
    }

    [Theory]
    [InlineData("V_inverter_20c", 20)]
    [InlineData("V_inverter_70c", 70)]
    public void N9_InverterAtTheEndOfACable_Agrees(string quantity, double conductorC)
    {
        // eta 0.90 of 1500 W as a loss in proportion to the output; the resistance of the output takes nothing from the input.
        var cableOhm = 0.012 * 0.780 * ((234.5 + conductorC) / 254.5);
        var point = Solved(new Network
        {
            Batteries = [new Battery("bank", "plus", "minus", 25.4, 0.004)],
            Conductors = [new("out", "plus", "inverter-plus", cableOhm / 2), new("back", "minus", "inverter-minus", cableOhm / 2)],
            Converters = [new Converter("inverter", "inverter-plus", "inverter-minus", "line", "neutral", 230, 0.1, 0, (1 / 0.9) - 1, 0, 3000, 21, false)],
            Loads = [new Load("drill", "line", "neutral", LoadKind.Power, 1500)],
        });
        Agrees("N9", quantity, point.LoadV["inverter"]);
    }

    /// <summary>Cases SC3 to SC5: reckoned by hand from cable data of IEC 60228 class 5 at 20 °C.</summary>
    [Theory]
    [InlineData(25.4, 0.006, 4, 0.386, 3366.9)]
    [InlineData(26.6, 0.003, 4, 0.386, 5853.9)]
    [InlineData(26.6, 0.003, 12, 3.30, 624.4)]
    public void Sc3To5_BoltedFaultAtTheEndOfACable_Agree(double openCircuitV, double internalOhm, double lengthM, double ohmPerKm, double publishedA)
    {
        var half = lengthM / 2 * ohmPerKm / 1000;
        var network = new Network
        {
            Batteries = [new Battery("bank", "plus", "minus", openCircuitV, internalOhm)],
            Conductors = [new("out", "plus", "far-plus", half, new ConductorHeating(40, 105, 30, 50)), new("back", "minus", "far-minus", half)],
        };
        Assert.Equal(publishedA, FaultCurrent.At(network, "far-plus", "far-minus").CurrentA, 0.05);
        Assert.Equal(openCircuitV / internalOhm, FaultCurrent.At(network, "plus", "minus").CurrentA, 1e-9);
    }

    private static Network OneLoad(double openCircuitV, double internalOhm, double powerW) => new()
    {
        Batteries = [new Battery("bank", "plus", "minus", openCircuitV, internalOhm)],
        Loads = [new Load("load", "plus", "minus", LoadKind.Power, powerW)],
    };

    private static OperatingPoint Solved(Network network)
    {
        var result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, result.Status);
        return result.Point!;
    }

    private static ReferenceRow Row(string id, string quantity) => Rows.Single(r => r.Text("id") == id && r.Text("quantity") == quantity);

    private static void Agrees(string id, string quantity, double computed)
    {
        var row = Row(id, quantity);
        row.Agrees(row.Number("value"), computed, row.Number("tolerance"));
    }
}
