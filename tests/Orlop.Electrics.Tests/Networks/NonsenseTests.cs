using System.Collections.Immutable;
using CsCheck;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>Whatever is thrown at the solver, it answers: a finite operating point, or a status that says why there is none.</summary>
public sealed class NonsenseTests
{
    private static readonly double[] Values = [0, 1e-9, 0.001, 0.05, 1, 24, 25.6, 230, 1e5, -1, double.NaN, double.PositiveInfinity];

    [Fact]
    public void Solve_NonsenseOfAnyValues_EndsWithAnAnswer() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed => AssertAnswers(Build(new Random(seed), Values)), iter: 2000);

    [Fact]
    public void Solve_NonsenseOfAllowedValues_EndsWithAnAnswer() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed => AssertAnswers(Build(new Random(seed), Values[2..8])), iter: 2000);

    private static Network Build(Random random, double[] values)
    {
        var nodeCount = random.Next(1, 9);
        return new Network
        {
            Conductors = Some(8, k => new Conductor($"c{k}", Node(), Node(), Value(), random.Next(2) == 0 ? null : new ConductorHeating(20, 105, 30, Value()))),
            Contacts = Some(4, k => new Contact($"t{k}", Node(), Node(), random.Next(3) == 0 ? Value() : 0)),
            Batteries = Some(3, k => new Battery($"b{k}", Node(), Node(), Value(), Value())),
            LimitedSources = Some(3, k => new LimitedSource($"s{k}", Node(), Node(), Value(), Value(), Value())),
            Converters = Some(3, k => new Converter($"v{k}", Node(), Node(), Node(), Node(), Value(), Value(), Value(), Value(), Value(), Value(), Value(), random.Next(2) == 0)),
            Loads = Some(5, k => new Load($"l{k}", Node(), Node(), (LoadKind)random.Next(3), Value())),
            BondedNodes = Some(3, _ => Node()),
        };

        string Node() => $"n{random.Next(nodeCount)}";

        double Value() => values[random.Next(values.Length)];

        ImmutableArray<T> Some<T>(int most, Func<int, T> make) => [.. Enumerable.Range(0, random.Next(most)).Select(make)];
    }

    private static void AssertAnswers(Network network)
    {
        var result = NetworkSolver.Solve(network);
        Assert.Equal(result.Status == SolveStatus.Converged, result.Point is not null);
        Assert.Equal(result.Status == SolveStatus.NoOperatingPoint, result.Shortfall is not null);
        Assert.Equal(result.Status == SolveStatus.FaultyNetwork, !result.Faults.IsEmpty);
        if (result.Point is { } point)
        {
            double[] powers = [point.SourcePowerW, point.LoadPowerW, point.LossPowerW];
            Assert.All(point.NodeV.Values.Concat(point.BranchA.Values).Concat(point.ConductorC.Values).Concat(point.SourceA.Values)
                .Concat(point.LoadA.Values).Concat(point.LoadV.Values).Concat(powers), v => Assert.True(double.IsFinite(v), $"{v}"));
        }

        if (result.Shortfall is { } shortfall)
        {
            Assert.True(shortfall.AskedW >= 0 && shortfall.MostW >= 0 && shortfall.VoltageAtMostV >= 0, $"{shortfall}");
            Assert.All(shortfall.LimitingElements, e => Assert.InRange(e.LossFraction, 0, 1));
        }
    }
}
