using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class NetworkSolverTests
{
    private static Network OneLoad(double emfV, double internalOhm, double powerW) => new()
    {
        Batteries = [new Battery("bank", "plus", "minus", emfV, internalOhm)],
        Loads = [new Load("load", "plus", "minus", LoadKind.Power, powerW)],
    };

    [Fact]
    public void Solve_ConstantPowerBehindResistance_FindsUpperRoot()
    {
        var result = NetworkSolver.Solve(OneLoad(25.6, 0.020, 2000), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, result.Status);
        Assert.Equal(23.928342194594848, result.Point!.LoadV["load"], 1e-9);
        Assert.Equal(83.58289027025776, result.Point.LoadA["load"], 1e-8);
    }

    [Fact]
    public void Solve_LoadExactlyAtLimit_FindsDoubleRoot()
    {
        var result = NetworkSolver.Solve(OneLoad(24, 0.1, 1440), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, result.Status);
        Assert.Equal(12, result.Point!.LoadV["load"], 1e-4);
    }

    [Fact]
    public void Solve_LoadBeyondLimit_NamesItAndTheMostItCouldGet()
    {
        var result = NetworkSolver.Solve(OneLoad(24, 0.1, 1500), TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.NoOperatingPoint, result.Status);
        Assert.Null(result.Point);
        Assert.Equal("load", result.Shortfall!.LoadId);
        Assert.Equal(1500, result.Shortfall.AskedW);
        Assert.Equal(1440, result.Shortfall.MostW, 1e-6);
        Assert.Equal(12, result.Shortfall.VoltageAtMostV, 1e-3);
        Assert.Equal(new LimitingElement("bank", 1), Assert.Single(result.Shortfall.LimitingElements));
    }
}
