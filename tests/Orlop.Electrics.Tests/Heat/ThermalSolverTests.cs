using MathNet.Numerics.LinearAlgebra;
using Orlop.Electrics.Heat;
using Xunit;

namespace Orlop.Electrics.Tests.Heat;

public sealed class ThermalSolverTests
{
    // Closed form: two nodes with P₁, P₂, joined by g, each to the air by G: T = T₀ + (P₁ (G₂ + g) + P₂ g)/(G₁ G₂ + g (G₁ + G₂)).
    [Fact]
    public void TwoCoupledNodes_AreTheClosedForm()
    {
        const double p1 = 7, p2 = 3, g1 = 0.5, g2 = 0.8, g = 0.3;
        ThermalState state = ThermalSolver.Steady(Two(p1, p2, g1, g2, g));
        double whole = (g1 * g2) + (g * (g1 + g2));
        Assert.Equal(20 + (((p1 * (g2 + g)) + (p2 * g)) / whole), state.NodeC[0], 1e-10);
        Assert.Equal(20 + (((p2 * (g1 + g)) + (p1 * g)) / whole), state.NodeC[1], 1e-10);
    }

    // Copper grows warmer, and its loss with it: P (1 + α (T - 20)) = G (T - T₀) has T in closed form, and none when P α ≥ G.
    [Fact]
    public void CopperLoss_GrowsInClosedForm_AndRunsAway()
    {
        const double loss = 40, rise = 0.00393, way = 1;
        ThermalNetwork One(double heat) => new("one", [new ThermalNode("copper", 0, heat, rise), new ThermalNode("air", HeldC: 30)], [new ConductionBranch(0, 1, way)]);
        Assert.Equal(((way * 30) + (loss * (1 - (20 * rise)))) / (way - (loss * rise)), ThermalSolver.Steady(One(loss)).NodeC[0], 1e-9);
        Assert.Contains("never comes to rest", ThermalSolver.Steady(One(way / rise * 1.01)).WhyNone, StringComparison.Ordinal);
    }

    // Another method: MathNet's dense solution of a random linear network.
    [Fact]
    public void LinearNetwork_AgreesWithADenseSolution()
    {
        Random random = new(7);
        const int count = 25;
        List<ThermalBranch> branches = [.. Enumerable.Range(0, count).Select(node => new ConductionBranch(node, count, 0.05 + random.NextDouble()))];
        for (int k = 0; k < 80; k++)
        {
            int one = random.Next(count), other = random.Next(count);
            if (one != other)
            {
                branches.Add(new ConductionBranch(one, other, random.NextDouble()));
            }
        }

        ThermalNode[] nodes = [.. Enumerable.Range(0, count).Select(node => new ThermalNode($"n{node}", 0, 10 * random.NextDouble()))];
        ThermalState state = ThermalSolver.Steady(new ThermalNetwork("random", [.. nodes, new ThermalNode("air", HeldC: 15)], [.. branches]));
        Matrix<double> matrix = Matrix<double>.Build.Dense(count, count);
        Vector<double> right = Vector<double>.Build.Dense(count, node => nodes[node].HeatW);
        foreach (ConductionBranch branch in branches.Cast<ConductionBranch>())
        {
            matrix[branch.From, branch.From] += branch.ConductanceWPerK;
            if (branch.To == count)
            {
                right[branch.From] += 15 * branch.ConductanceWPerK;
                continue;
            }

            matrix[branch.To, branch.To] += branch.ConductanceWPerK;
            matrix[branch.From, branch.To] -= branch.ConductanceWPerK;
            matrix[branch.To, branch.From] -= branch.ConductanceWPerK;
        }

        Vector<double> dense = matrix.Solve(right);
        Assert.All(Enumerable.Range(0, count), node => Assert.Equal(dense[node], state.NodeC[node], 1e-9));
    }

    // Closed form: a lump warms as 1 - e^(-t/τ), τ = C/G.
    [Theory]
    [InlineData(0.632120558828558)]
    [InlineData(0.95)]
    public void OneLump_WarmsInItsTimeConstant(double share)
    {
        ThermalNetwork lump = new("lump", [new ThermalNode("lump", 500, 20), new ThermalNode("air", HeldC: 20)], [new ConductionBranch(0, 1, 2)]);
        double time = ThermalResponse.From(lump, 20).TimeToS(0, share)!.Value;
        Assert.Equal(1, time / (-250 * Math.Log(1 - share)), 1e-3);
    }

    // Closed form: two lumps in a row, 1 and 1 J/K, 1 W/K between and 1 W/K out, have the time constants 2/(3 ± √5).
    [Fact]
    public void TwoLumps_FollowTheirTwoTimeConstants()
    {
        ThermalNetwork lumps = new("lumps", [new ThermalNode("in", 1, 1), new ThermalNode("out", 1), new ThermalNode("air", HeldC: 0)], [new ConductionBranch(0, 1, 1), new ConductionBranch(1, 2, 1)]);
        ThermalResponseResult response = ThermalResponse.From(lumps, 0);
        double slow = (3 - Math.Sqrt(5)) / 2, fast = (3 + Math.Sqrt(5)) / 2;
        // T₁ = 2 - a e^(-s t) - b e^(-f t) with T₁(0) = 0 and T₁'(0) = 1.
        double a = ((2 * fast) - 1) / (fast - slow), b = 2 - a;
        foreach (ThermalMoment moment in response.Moments)
        {
            Assert.Equal(2 - (a * Math.Exp(-slow * moment.TimeS)) - (b * Math.Exp(-fast * moment.TimeS)), moment.NodeC[0], 2e-3);
        }
    }

    [Fact]
    public void ShutNode_IsNamed()
    {
        ThermalNetwork shut = new("shut", [new ThermalNode("box", 0, 5), new ThermalNode("air", HeldC: 20)], [new ConductionBranch(0, 1, 0)]);
        Assert.Equal("no heat can leave box", ThermalSolver.Steady(shut).WhyNone);
        Assert.Empty(ThermalResponse.From(shut, 20).Moments);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void HeatThatIsNoNumber_IsRefused(double heat) => Assert.Throws<ArgumentOutOfRangeException>(() => ThermalSolver.Steady(Two(heat, 0, 1, 1, 1)));

    private static ThermalNetwork Two(double p1, double p2, double g1, double g2, double g) => new(
        "two",
        [new ThermalNode("one", 0, p1), new ThermalNode("other", 0, p2), new ThermalNode("air", HeldC: 20)],
        [new ConductionBranch(0, 1, g), new ConductionBranch(0, 2, g1), new ConductionBranch(1, 2, g2)]);
}
