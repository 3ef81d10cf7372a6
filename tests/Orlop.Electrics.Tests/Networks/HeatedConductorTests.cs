using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class HeatedConductorTests
{
    private static Network Carrying(double currentA, ConductorHeating heating) => new()
    {
        Batteries = [new Battery("bank", "plus", "minus", 240, 0.01)],
        Conductors = [new Conductor("cable", "plus", "far", 0.01, heating)],
        Loads = [new Load("load", "far", "minus", LoadKind.Current, currentA)],
    };

    [Theory]
    [InlineData(30, 105)]
    [InlineData(50, 125)]
    public void Solve_RatedCurrentInTheTablesAmbient_ReachesTheRatedTemperature(double tableAmbientC, double ratedC)
    {
        var point = Solved(Carrying(100, new ConductorHeating(tableAmbientC, ratedC, tableAmbientC, 100)));
        Assert.Equal(ratedC, point.ConductorC["cable"], 1e-9);
        Assert.Equal(100 * 0.01 * (1 + ((ratedC - 20) / 254.5)), point.NodeV["plus"] - point.NodeV["far"], 1e-9);
    }

    [Fact]
    public void Solve_NoCurrent_StaysAtAmbient() =>
        Assert.Equal(-12.5, Solved(Carrying(0, new ConductorHeating(-12.5, 105, 30, 100))).ConductorC["cable"], 1e-9);

    [Fact]
    public void Solve_CurrentPastRunaway_HasNoOperatingPoint()
    {
        // Heat rises with the resistance it makes: no steady temperature from I² = r(T_rated) · I_rated² / (75 K / 254.5 K) on, here 212.8 A.
        var heating = new ConductorHeating(30, 105, 30, 100);
        Assert.Equal(SolveStatus.Converged, NetworkSolver.Solve(Carrying(150, heating), TestContext.Current.CancellationToken).Status);
        var result = NetworkSolver.Solve(Carrying(214, heating), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
        Assert.Equal("load", result.Shortfall!.LoadId);
        Assert.Equal("cable", result.Shortfall.LimitingElements[0].Id);
    }

    [Fact]
    public void Solve_ConductorPastTheMeltingPointOfCopper_HasNoOperatingPoint()
    {
        // 205 A is below the runaway of 212.8 A, but the balance of heat would lie at 3460 °C, above the 1084.62 °C of melting copper.
        var heating = new ConductorHeating(30, 105, 30, 100);
        var result = NetworkSolver.Solve(Carrying(205, heating), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
        Assert.Equal("cable", result.Shortfall!.LimitingElements[0].Id);
        Assert.InRange(result.Shortfall.MostW, 1, 205 * 240);
    }

    private static OperatingPoint Solved(Network network)
    {
        var result = NetworkSolver.Solve(network);
        Assert.Equal(SolveStatus.Converged, result.Status);
        return result.Point!;
    }
}
