using CsCheck;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class NetworkSolverTests
{
    private static readonly Gen<(double EmfV, double Ohm, double Part)> OneLoadCases = Gen.Select(Gen.Double[6, 240], Gen.Double[0.001, 2], Gen.Double[0, 1]);

    [Fact]
    public void Solve_PowerBelowTheLimit_FindsTheUpperRoot() => OneLoadCases.Sample((emfV, ohm, part) =>
    {
        var powerW = 0.9999 * part * emfV * emfV / (4 * ohm);
        var point = Solved(OneLoad(emfV, ohm, powerW));
        var expectedV = (emfV + Math.Sqrt((emfV * emfV) - (4 * powerW * ohm))) / 2;
        Assert.Equal(expectedV, point.LoadV["load"], 1e-7 * emfV);
    });

    [Fact]
    public void Solve_PowerAboveTheLimit_NamesTheLoadAndTheMostItCouldGet() => OneLoadCases.Sample((emfV, ohm, part) =>
    {
        var mostW = emfV * emfV / (4 * ohm);
        var result = NetworkSolver.Solve(OneLoad(emfV, ohm, mostW * (1.00001 + (9 * part))));
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
        Assert.Null(result.Point);
        Assert.Equal("load", result.Shortfall!.LoadId);
        Assert.Equal(1, result.Shortfall.MostW / mostW, 1e-9);
        Assert.Equal(emfV / 2, result.Shortfall.VoltageAtMostV, 1e-4 * emfV);
    });

    [Fact]
    public void Solve_LoadBeyondTheLimit_NamesTheLargestResistancesOnTheWay()
    {
        var network = new Network
        {
            Batteries = [new Battery("bank", "plus", "minus", 24, 0.01)],
            Conductors = [new Conductor("thin", "plus", "far-plus", 0.07), new Conductor("thick", "minus", "far-minus", 0.02), new Conductor("elsewhere", "plus", "other", 5)],
            Loads = [new Load("winch", "far-plus", "far-minus", LoadKind.Power, 1500), new Load("lamp", "plus", "minus", LoadKind.Power, 10)],
        };
        var shortfall = NetworkSolver.Solve(network, TestContext.Current.CancellationToken).Shortfall!;
        Assert.Equal("winch", shortfall.LoadId);
        Assert.InRange(shortfall.MostW, 1430, 1440);
        Assert.Equal(["thin", "thick", "bank"], shortfall.LimitingElements.Select(e => e.Id));
        Assert.Equal([0.7, 0.2, 0.1], shortfall.LimitingElements.Select(e => Math.Round(e.LossFraction, 9)));
    }

    [Fact]
    public void Solve_OthersAloneAreTooMuch_GivesTheNamedLoadNothing()
    {
        var network = OneLoad(24, 0.1, 1500) with
        {
            Loads = [new Load("small", "plus", "minus", LoadKind.Power, 1470), new Load("large", "plus", "minus", LoadKind.Power, 1500)],
        };
        var shortfall = NetworkSolver.Solve(network, TestContext.Current.CancellationToken).Shortfall!;
        Assert.Equal("large", shortfall.LoadId);
        Assert.Equal(0, shortfall.MostW);
    }

    [Fact]
    public void Solve_LargeLoadWithALampFurtherOn_NamesTheLargeLoad()
    {
        var network = OneLoad(24, 0.1, 1500) with
        {
            Conductors = [new Conductor("tail", "plus", "masthead", 0.5)],
            Loads = [new Load("winch", "plus", "minus", LoadKind.Power, 1500), new Load("lamp", "masthead", "minus", LoadKind.Power, 5)],
        };
        Assert.Equal("winch", NetworkSolver.Solve(network, TestContext.Current.CancellationToken).Shortfall!.LoadId);
    }

    [Fact]
    public void Solve_InverterBeyondItsBattery_NamesItWithWhatItsOutputAsks()
    {
        var network = OneLoad(24, 0.1, 0) with
        {
            Converters = [new Converter("inverter", "plus", "minus", "line", "neutral", 230, 0.5, 20, 0.05, 0, 3000, 21, false)],
            Loads = [new Load("kettle", "line", "neutral", LoadKind.Power, 2000)],
        };
        var shortfall = NetworkSolver.Solve(network, TestContext.Current.CancellationToken).Shortfall!;
        Assert.Equal("inverter", shortfall.LoadId);
        Assert.Equal(2120, shortfall.AskedW, 1e-6);
        Assert.Equal(1440, shortfall.MostW, 1e-6);
    }

    [Fact]
    public void Solve_CurrentBeyondWhatTheBatteryCanDrive_HasNoOperatingPoint()
    {
        var network = OneLoad(24, 0.1, 0) with { Loads = [new Load("load", "plus", "minus", LoadKind.Current, 241)] };
        Assert.Equal(SolveStatus.NoOperatingPoint, NetworkSolver.Solve(network, TestContext.Current.CancellationToken).Status);
    }

    [Fact]
    public void Solve_ChargerAloneBelowItsLimit_HoldsItsVoltage()
    {
        var point = Solved(ChargerAlone(1000));
        Assert.Equal(SourceMode.HoldingVoltage, point.SourceModes["charger"]);
        Assert.InRange(point.LoadV["load"], 27.9, 28);
    }

    [Fact]
    public void Solve_ChargerAloneBeyondItsLimit_HasNoOperatingPoint()
    {
        var result = NetworkSolver.Solve(ChargerAlone(1200), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
        Assert.Equal(40 * (28 - 0.04), result.Shortfall!.MostW, 1e-3);
    }

    [Fact]
    public void Solve_TwoChargersWithoutBattery_LetsTheLowerComeIn()
    {
        var network = new Network
        {
            LimitedSources = [new LimitedSource("high", "plus", "minus", 28, 40, 0.001), new LimitedSource("low", "plus", "minus", 27, 100, 0.001)],
            Loads = [new Load("load", "plus", "minus", LoadKind.Current, 60)],
        };
        var point = Solved(network);
        Assert.Equal(40, point.SourceA["high"], 1e-9);
        Assert.Equal(20, point.SourceA["low"], 1e-9);
        Assert.Equal(26.98, point.LoadV["load"], 1e-9);
    }

    [Fact]
    public void Solve_SourcePushedHigher_IsOff()
    {
        var network = OneLoad(25.6, 0.01, 100) with { LimitedSources = [new LimitedSource("sun", "plus", "minus", 24, 10, 0.01)] };
        var point = Solved(network);
        Assert.Equal(SourceMode.Off, point.SourceModes["sun"]);
        Assert.Equal(0, point.SourceA["sun"]);
    }

    [Fact]
    public void Solve_Converters_DrawTheirOutputAndLosses()
    {
        var network = OneLoad(25.6, 0.004, 0) with
        {
            Converters =
            [
                new Converter("inverter", "plus", "minus", "line", "neutral", 230, 0.5, 20, 0.04, 1e-5, 3000, 21, false),
                new Converter("mains-to-12", "line", "neutral", "twelve", "zero", 13.8, 0.02, 3, 0.1, 1e-4, 200, 180, false),
            ],
            Loads = [new Load("drill", "line", "neutral", LoadKind.Power, 700), new Load("radio", "twelve", "zero", LoadKind.Power, 60)],
        };
        var point = Solved(network);
        Assert.Equal(60, point.ConverterOutputW["mains-to-12"], 1e-8);
        Assert.Equal(60 + 3 + 6 + 0.36, point.LoadA["mains-to-12"] * point.LoadV["mains-to-12"], 1e-8);
        var outputW = 700 + 69.36;
        Assert.Equal(outputW, point.ConverterOutputW["inverter"], 1e-7);
        Assert.Equal(outputW + 20 + (0.04 * outputW) + (1e-5 * outputW * outputW), point.LoadA["inverter"] * point.LoadV["inverter"], 1e-7);
        Assert.Equal(760, point.LoadPowerW, 1e-7);
        Assert.Equal(point.SourcePowerW, point.LoadPowerW + point.LossPowerW, 1e-8);
    }

    [Fact]
    public void Solve_ConverterWithBothMinusesWired_IsSolved()
    {
        var network = OneLoad(25.6, 0.004, 0) with
        {
            Conductors = [new Conductor("in-minus", "minus", "v-in", 0.01), new Conductor("out-minus", "minus", "v-out", 0.01), new Conductor("return", "minus", "far", 0.02)],
            Converters = [new Converter("down", "plus", "v-in", "twelve", "v-out", 12, 0.02, 1, 0.1, 0, 200, 18, true)],
            Loads = [new Load("radio", "twelve", "far", LoadKind.Power, 60)],
        };
        var point = Solved(network);
        Assert.Equal(60 / point.LoadV["radio"], -point.BranchA["return"], 1e-8);
        Assert.Equal(point.SourcePowerW, point.LoadPowerW + point.LossPowerW, 1e-8);
    }

    [Fact]
    public void Solve_LoadWiredTheWrongWayRound_ShowsNegativeVoltage()
    {
        var network = OneLoad(24, 0.1, 0) with { Loads = [new Load("pump", "minus", "plus", LoadKind.Power, 100)] };
        var point = Solved(network);
        Assert.InRange(point.LoadV["pump"], -24, -23);
        Assert.Equal(100, point.LoadA["pump"] * point.LoadV["pump"], 1e-9);
    }

    [Fact]
    public void Solve_FuseWithoutResistanceInALine_StillHasItsCurrent()
    {
        var network = OneLoad(24, 0.1, 0) with
        {
            Contacts = [new Contact("fuse", "plus", "after-fuse", 0), new Contact("switch", "after-fuse", "after-switch", 0), new Contact("ring-a", "x", "y", 0), new Contact("ring-b", "y", "x", 0)],
            Loads = [new Load("one", "after-fuse", "minus", LoadKind.Current, 3), new Load("two", "after-switch", "minus", LoadKind.Current, 4)],
        };
        var point = Solved(network);
        Assert.Equal(7, point.BranchA["fuse"], 1e-12);
        Assert.Equal(4, point.BranchA["switch"], 1e-12);
        Assert.False(point.BranchA.ContainsKey("ring-a"));
        Assert.Equal(point.NodeV["plus"], point.NodeV["after-switch"]);
    }

    [Fact]
    public void Solve_BondedNode_IsTheZeroOfItsPart()
    {
        var point = Solved(OneLoad(24, 0.1, 100) with { BondedNodes = ["plus", "not-wired"] });
        Assert.Equal(0, point.NodeV["plus"]);
        Assert.InRange(point.NodeV["minus"], -24, -23);
    }

    [Fact]
    public void Solve_Empty_HasAnEmptyPoint() => Assert.Empty(Solved(new Network()).NodeV);

    [Fact]
    public void Solve_Cancelled_Throws() =>
        Assert.Throws<OperationCanceledException>(() => NetworkSolver.Solve(OneLoad(24, 0.1, 100), new CancellationToken(canceled: true)));

    [Fact]
    public void Solve_LargeNetwork_IsFarFasterThanAHeartbeat()
    {
        // Takes about 20 ms on one core of 2020; the margin is for a busy machine.
        var network = RandomNetwork.Build(1, 4300);
        Solved(network);
        var watch = System.Diagnostics.Stopwatch.StartNew();
        Solved(network);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 1);
    }

    [Fact]
    public void Solve_PreparedOnceFromManyThreads_GivesTheSame()
    {
        var prepared = PreparedNetwork.Of(RandomNetwork.Build(3, 80, new RandomNetworkKind { IsHeated = true, HasConverters = true, HasLimitedSources = true }));
        var alone = prepared.Solve(TestContext.Current.CancellationToken).Point!.NodeV.ToArray();
        Parallel.For(0, 32, _ => Assert.Equal(alone, prepared.Solve().Point!.NodeV));
    }

    [Fact]
    public void SolveWith_OtherAmounts_EqualsANetworkWithThem()
    {
        var network = RandomNetwork.Build(8, 40);
        var motor = network.Loads.First(l => l.Kind == LoadKind.Power);
        var started = network with { Loads = network.Loads.Replace(motor, motor with { Amount = 6 * motor.Amount }) };
        var result = PreparedNetwork.Of(network).SolveWith(new Dictionary<string, double> { [motor.Id] = 6 * motor.Amount }, TestContext.Current.CancellationToken);
        Assert.Equal(Solved(started).NodeV, result.Point!.NodeV);
    }

    [Theory]
    [InlineData("load", double.NaN)]
    [InlineData("load", -1)]
    [InlineData("load", double.PositiveInfinity)]
    [InlineData("bank", 1)]
    public void SolveWith_BadAmountOrNoLoad_IsRefusedByName(string id, double amount)
    {
        var prepared = PreparedNetwork.Of(OneLoad(24, 0.1, 100));
        var refusal = Assert.Throws<ArgumentException>(() => prepared.SolveWith(new Dictionary<string, double> { [id] = amount }, TestContext.Current.CancellationToken));
        Assert.Contains($"'{id}'", refusal.Message, StringComparison.Ordinal);
    }

    private static Network OneLoad(double openCircuitV, double internalOhm, double powerW) => new()
    {
        Batteries = [new Battery("bank", "plus", "minus", openCircuitV, internalOhm)],
        Loads = [new Load("load", "plus", "minus", LoadKind.Power, powerW)],
    };

    private static Network ChargerAlone(double powerW) => new()
    {
        LimitedSources = [new LimitedSource("charger", "plus", "minus", 28, 40, 0.001)],
        Loads = [new Load("load", "plus", "minus", LoadKind.Power, powerW)],
    };

    private static OperatingPoint Solved(Network network)
    {
        var result = NetworkSolver.Solve(network);
        Assert.True(result.Status == SolveStatus.Converged, $"{result.Status}: {result.Shortfall} {string.Join(' ', result.Faults.Select(f => f.Message))}");
        return result.Point!;
    }
}
