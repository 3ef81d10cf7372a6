using MathNet.Numerics.LinearAlgebra;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>Linear networks against a dense solve of another form: the currents of batteries are unknowns too, and nothing is merged or ordered.</summary>
public sealed class DenseAgreementTests
{
    [Fact]
    public void Solve_Ladder_AgreesWithDenseSolve() => AssertAgrees(new Network
    {
        Batteries = [new Battery("bank", "p0", "n0", 24, 0.005)],
        Conductors = [.. Enumerable.Range(1, 30).SelectMany(k => new[] { new Conductor($"p{k}", $"p{k - 1}", $"p{k}", 0.01 * k), new Conductor($"n{k}", $"n{k - 1}", $"n{k}", 0.02) })],
        Loads = [.. Enumerable.Range(1, 30).Select(k => new Load($"l{k}", $"p{k}", $"n{k}", LoadKind.Resistance, 30 + k))],
    });

    [Fact]
    public void Solve_BridgeWithTwoSources_AgreesWithDenseSolve() => AssertAgrees(new Network
    {
        Batteries = [new Battery("one", "s", "n0", 24, 0.02), new Battery("two", "b", "n0", 25, 0.05)],
        Conductors = [new("sa", "s", "a", 0.1), new("sb", "s", "b", 0.2), new("a0", "a", "n0", 0.4), new("b0", "b", "n0", 0.1), new("ab", "a", "b", 0.5)],
        Loads = [new Load("current", "a", "b", LoadKind.Current, 0.5)],
    });

    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 20)]
    [InlineData(3, 60)]
    [InlineData(4, 100)]
    public void Solve_RandomLinearNetwork_AgreesWithDenseSolve(int seed, int pointCount)
    {
        var network = RandomNetwork.Build(seed, pointCount);
        AssertAgrees(network with { Loads = [.. network.Loads.Where(l => l.Kind != LoadKind.Power)] });
    }

    private static void AssertAgrees(Network network)
    {
        var result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, result.Status);
        var (nodeV, batteryA) = Dense(network, "n0");
        foreach (var (node, voltageV) in nodeV)
        {
            Assert.Equal(voltageV, result.Point!.NodeV[node], 1e-8);
        }

        foreach (var (id, currentA) in batteryA)
        {
            Assert.Equal(currentA, result.Point!.SourceA[id], 1e-6);
        }
    }

    private static (Dictionary<string, double> NodeV, Dictionary<string, double> BatteryA) Dense(Network network, string zero)
    {
        var resistances = network.Conductors.Select(c => (c.A, c.B, Ohm: c.ResistanceAt20Ohm))
            .Concat(network.Contacts.Select(c => (c.A, c.B, Ohm: c.ResistanceOhm)))
            .Concat(network.Loads.Where(l => l.Kind == LoadKind.Resistance).Select(l => (A: l.Plus, B: l.Minus, Ohm: l.Amount))).ToArray();
        var nodes = resistances.SelectMany(r => new[] { r.A, r.B }).Concat(network.Batteries.SelectMany(b => new[] { b.Plus, b.Minus }))
            .Distinct().Where(n => n != zero).ToArray();
        var at = nodes.Select((name, k) => (name, k)).ToDictionary(n => n.name, n => n.k);
        var size = nodes.Length + network.Batteries.Length;
        var matrix = Matrix<double>.Build.Dense(size, size);
        var right = Vector<double>.Build.Dense(size);
        foreach (var (a, b, ohm) in resistances)
        {
            Couple(a, a, 1 / ohm);
            Couple(b, b, 1 / ohm);
            Couple(a, b, -1 / ohm);
            Couple(b, a, -1 / ohm);
        }

        foreach (var load in network.Loads.Where(l => l.Kind == LoadKind.Current))
        {
            Drive(load.Plus, -load.Amount);
            Drive(load.Minus, load.Amount);
        }

        for (var k = 0; k < network.Batteries.Length; k++)
        {
            // V(plus) - V(minus) + I · R = E, with I out of plus and into minus.
            var (battery, row) = (network.Batteries[k], nodes.Length + k);
            foreach (var (node, sign) in new[] { (battery.Plus, 1.0), (battery.Minus, -1.0) })
            {
                if (node != zero)
                {
                    matrix[row, at[node]] += sign;
                    matrix[at[node], row] -= sign;
                }
            }

            matrix[row, row] += battery.InternalOhm;
            right[row] = battery.OpenCircuitV;
        }

        var solution = matrix.LU().Solve(right);
        return (nodes.ToDictionary(n => n, n => solution[at[n]]), network.Batteries.Select((b, k) => (b.Id, k)).ToDictionary(b => b.Id, b => solution[nodes.Length + b.k]));

        void Couple(string a, string b, double value)
        {
            if (a != zero && b != zero)
            {
                matrix[at[a], at[b]] += value;
            }
        }

        void Drive(string node, double currentA)
        {
            if (node != zero)
            {
                right[at[node]] += currentA;
            }
        }
    }
}
