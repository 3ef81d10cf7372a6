using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace Orlop.Numerics.Tests;

public sealed class SparseLdlTests
{
    private static readonly Gen<(int Order, int Seed)> Sizes = Gen.Select(Gen.Int[1, 60], Gen.Int[0, 1_000_000]);

    [Fact]
    public void Solve_RandomPositiveDefinite_AgreesWithDenseLu() => Sizes.Sample((order, seed) =>
    {
        var system = RandomSystem.Build(order, seed);
        var x = new double[order];
        SparseLdl.Analyse(system.Pattern).Factor(system.Values).Solve(system.Right, x);
        var expected = system.Dense.LU().Solve(Vector<double>.Build.Dense(system.Right));
        for (var k = 0; k < order; k++)
        {
            Assert.Equal(expected[k], x[k], 1e-9);
        }
    });

    [Fact]
    public void Factor_SecondMatrixInReusedMemory_AgreesWithANewFactor() => Sizes.Sample((order, seed) =>
    {
        var system = RandomSystem.Build(order, seed);
        var elimination = SparseLdl.Analyse(system.Pattern);
        var doubled = system.Values.Select(v => 2 * v).ToArray();
        var (fresh, reused) = (new double[order], new double[order]);
        elimination.Factor(doubled).Solve(system.Right, fresh);
        elimination.Factor(doubled, elimination.Factor(system.Values)).Solve(system.Right, reused);
        Assert.Equal(fresh, reused);
    });

    [Fact]
    public void Factor_IndefiniteMatrix_SaysSoExactlyWhenDenseEigenvaluesDo() => Sizes.Sample((order, seed) =>
    {
        var system = RandomSystem.Build(order, seed);
        var least = system.Dense.Evd(Symmetricity.Symmetric).EigenValues.Min(e => e.Real);
        foreach (var shift in new[] { 0.5, 1.5 })
        {
            var values = (double[])system.Values.Clone();
            for (var k = 0; k < order; k++)
            {
                values[k] -= shift * least;
            }

            var factor = SparseLdl.Analyse(system.Pattern).Factor(values);
            Assert.Equal(shift < 1, factor.IsPositiveDefinite);
            if (factor.FailedIndex is { } failed)
            {
                Assert.InRange(failed, 0, order - 1);
            }
        }
    });

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Factor_BadPivot_NamesItsUnknownAndRefusesToSolve(double pivot)
    {
        var factor = SparseLdl.Analyse(SymmetricPattern.FromPairs(3, [], [], [])).Factor([1, pivot, 1]);
        Assert.Equal(1, factor.FailedIndex);
        Assert.False(factor.IsPositiveDefinite);
        Assert.Throws<InvalidOperationException>(() => factor.Solve([1, 1, 1], new double[3]));
    }

    [Fact]
    public void Factor_SingularByCancellation_IsCaughtByTheLeastPivotRatio()
    {
        var slots = new int[1];
        var elimination = SparseLdl.Analyse(SymmetricPattern.FromPairs(2, [0], [1], slots));
        Assert.False(elimination.Factor([1, 1 + 1e-15, -1], leastPivotRatio: 1e-13).IsPositiveDefinite);
    }

    [Fact]
    public void Factor_AfterAFailure_WorksInTheSameMemory()
    {
        var elimination = SparseLdl.Analyse(SymmetricPattern.FromPairs(2, [0], [1], new int[1]));
        var factor = elimination.Factor([1, 1, 2]);
        Assert.False(factor.IsPositiveDefinite);
        var x = new double[2];
        elimination.Factor([2, 2, 1], factor).Solve([3, 3], x);
        Assert.Equal([1, 1], x);
    }

    [Fact]
    public void FromPairs_PairNamedTwiceOrToNothing_SharesASlotOrGetsNone()
    {
        var slots = new int[5];
        var pattern = SymmetricPattern.FromPairs(3, [0, 1, -1, 2, 2], [1, 0, 2, 2, 1], slots);
        Assert.Equal([3, 3, -1, -1, 4], slots);
        Assert.Equal(5, pattern.SlotCount);
    }

    [Fact]
    public void FromPairs_IndexOutsideTheMatrix_IsRefused() =>
        Assert.Throws<ArgumentException>(() => SymmetricPattern.FromPairs(3, [0], [3], new int[1]));

    [Fact]
    public void Analyse_EmptyMatrix_SolvesNothing() =>
        SparseLdl.Analyse(SymmetricPattern.FromPairs(0, [], [], [])).Factor([]).Solve([], []);

    [Theory]
    [InlineData(10)]
    [InlineData(1000)]
    public void Analyse_Tree_HasNoFill(int order)
    {
        var random = new Random(order);
        var child = Enumerable.Range(1, order - 1).ToArray();
        var parent = child.Select(c => random.Next(c)).ToArray();
        Assert.Equal(order - 1, SparseLdl.Analyse(SymmetricPattern.FromPairs(order, child, parent, new int[order - 1])).LowerCount);
    }

    [Fact]
    public void Analyse_SquareGrid_KeepsFillNearTheOptimalOrder()
    {
        // Nested dissection of an n by n grid fills about 7.75 n² log2 n entries (George 1973); minimum degree is about as good at this size.
        const int Side = 60;
        var pairs = Enumerable.Range(0, Side * Side).SelectMany(k => new[] { (k, k + 1), (k, k + Side) })
            .Where(p => p.Item2 < Side * Side && (p.Item2 != p.Item1 + 1 || p.Item2 % Side != 0)).ToArray();
        var pattern = SymmetricPattern.FromPairs(Side * Side, [.. pairs.Select(p => p.Item1)], [.. pairs.Select(p => p.Item2)], new int[pairs.Length]);
        Assert.InRange(SparseLdl.Analyse(pattern).LowerCount, pairs.Length, (int)(7.75 * Side * Side * Math.Log2(Side)));
    }

    [Fact]
    public async Task Solve_OneFactorFromManyThreads_GivesEachTheSame()
    {
        var system = RandomSystem.Build(200, 3);
        var factor = SparseLdl.Analyse(system.Pattern).Factor(system.Values);
        var alone = new double[200];
        factor.Solve(system.Right, alone);
        var all = await Task.WhenAll(Enumerable.Range(0, 16).Select(_ => Task.Run(() =>
        {
            var x = new double[200];
            factor.Solve(system.Right, x);
            return x;
        })));
        Assert.All(all, x => Assert.Equal(alone, x));
    }
}
