using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class FaultCurrentTests
{
    private static readonly Network TwoBanks = new()
    {
        Batteries = [new Battery("one", "bus", "zero", 25.6, 0.010), new Battery("two", "bus", "zero", 25.2, 0.020)],
        Conductors = [new Conductor("feed", "bus", "far", 0.005, new ConductorHeating(30, 90, 30, 100)), new Conductor("return", "far-minus", "zero", 0.005)],
        Loads = [new Load("lamp", "far", "far-minus", LoadKind.Power, 50), new Load("adrift", "far", "nowhere", LoadKind.Power, 50)],
    };

    [Fact]
    public void At_TwoBatteriesAndACable_IsTheirTheveninCurrent()
    {
        // By hand: E = (25.6/10 + 25.2/20)/(1/10 + 1/20) = 25.46667 V, R = 6.66667 + 10 milliohm.
        var fault = FaultCurrent.At(TwoBanks, "far", "far-minus");
        Assert.Equal(76.4 / 3, fault.OpenCircuitV, 1e-10);
        Assert.Equal(0.05 / 3, fault.SourceOhm, 1e-14);
        Assert.Equal(1528, fault.CurrentA, 1e-8);
        Assert.Equal(0, fault.LimitedA);
    }

    [Fact]
    public void At_HotConductors_CountsTheirResistanceAtRatedTemperature()
    {
        var fault = FaultCurrent.At(TwoBanks, "far", "far-minus", FaultConditions.Least);
        Assert.Equal((0.02 / 3) + (0.005 * (1 + (70 / 254.5))) + 0.005, fault.SourceOhm, 1e-14);
    }

    [Fact]
    public void At_ChargerOnTheBus_AddsItsLimitAsTheBatteriesShareIt()
    {
        // By hand: 40 A into 6.66667 milliohm of batteries beside 10 milliohm of faulted cable.
        var network = TwoBanks with { LimitedSources = [new LimitedSource("charger", "bus", "zero", 28.8, 40, 0.01)] };
        Assert.Equal(16, FaultCurrent.At(network, "far", "far-minus").LimitedA, 1e-10);
        Assert.Equal(1544, FaultCurrent.At(network, "far", "far-minus").CurrentA, 1e-8);
        Assert.Equal(0, FaultCurrent.At(network, "far", "far-minus", FaultConditions.Least).LimitedA);
    }

    [Fact]
    public void At_ChargerOnTheBus_IsWhatTheSolverFindsWithTheFaultAsAContact()
    {
        var network = TwoBanks with { LimitedSources = [new LimitedSource("charger", "bus", "zero", 28.8, 40, 0.01)] };
        var faulted = network with
        {
            Loads = [],
            Contacts = [new Contact("fault", "far", "far-minus", 1e-9)],
            Conductors = [.. network.Conductors.Select(c => c with { Heating = null })],
        };
        var solved = NetworkSolver.Solve(faulted, TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, solved.Status);
        Assert.Equal(solved.Point!.BranchA["fault"], FaultCurrent.At(network, "far", "far-minus").CurrentA, 1e-3);
    }

    [Fact]
    public void At_InverterAlone_GivesItsLimitAndNotItsSourceResistance()
    {
        var network = TwoBanks with
        {
            Converters = [new Converter("inverter", "bus", "zero", "line", "neutral", 230, 0.5, 20, 0.04, 0, 2300, 21, false)],
            Conductors = [.. TwoBanks.Conductors, new Conductor("line-cable", "line", "socket", 0.1), new Conductor("neutral-cable", "neutral", "socket-n", 0.1)],
        };
        var fault = FaultCurrent.At(network, "socket", "socket-n");
        Assert.Equal(10, fault.CurrentA, 1e-10);
        Assert.Equal(230, fault.OpenCircuitV, 1e-10);
        Assert.Equal(0.7, fault.SourceOhm, 1e-10);
        Assert.Equal(0, FaultCurrent.At(network, "socket", "socket-n", FaultConditions.Least).CurrentA);
    }

    [Fact]
    public void At_NodesInSeparateParts_HasNoCurrent()
    {
        var fault = FaultCurrent.At(TwoBanks, "far", "nowhere");
        Assert.Equal(0, fault.CurrentA);
        Assert.Equal(double.PositiveInfinity, fault.SourceOhm);
    }

    [Fact]
    public void At_NodesExchanged_ChangesTheSign() =>
        Assert.Equal(-FaultCurrent.At(TwoBanks, "far", "far-minus").CurrentA, FaultCurrent.At(TwoBanks, "far-minus", "far").CurrentA, 1e-9);

    [Fact]
    public void AtEach_ManyNodes_EqualsOneByOne()
    {
        var network = RandomNetwork.Build(5, 60, new RandomNetworkKind { HasLimitedSources = true, HasConverters = true });
        var pairs = Enumerable.Range(1, 59).Select(k => ($"p{k}", $"n{k}")).ToArray();
        Assert.Equal(pairs.Select(p => FaultCurrent.At(network, p.Item1, p.Item2)), FaultCurrent.AtEach(network, pairs));
    }

    [Fact]
    public void At_UnknownOrJoinedNodes_IsRefusedByName()
    {
        Assert.Contains("'atlantis'", Assert.Throws<ArgumentException>(() => FaultCurrent.At(TwoBanks, "atlantis", "zero")).Message, StringComparison.Ordinal);
        Assert.Contains("'far'", Assert.Throws<ArgumentException>(() => FaultCurrent.At(TwoBanks, "far", "far")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void At_BadValue_IsRefused()
    {
        var network = TwoBanks with { Batteries = [new Battery("one", "bus", "zero", double.NaN, 0.010)] };
        Assert.Contains("'one'", Assert.Throws<ArgumentException>(() => FaultCurrent.At(network, "far", "zero")).Message, StringComparison.Ordinal);
    }
}
