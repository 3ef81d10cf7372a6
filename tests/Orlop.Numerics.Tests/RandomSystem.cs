using MathNet.Numerics.LinearAlgebra;

namespace Orlop.Numerics.Tests;

/// <summary>A random sparse positive definite system, sparse and dense.</summary>
internal sealed record RandomSystem(SymmetricPattern Pattern, double[] Values, double[] Right, Matrix<double> Dense)
{
    public static RandomSystem Build(int order, int seed)
    {
        var random = new Random(seed);
        var count = order == 1 ? 0 : random.Next(3 * order);
        var first = Enumerable.Range(0, count).Select(_ => random.Next(order)).ToArray();
        var second = Enumerable.Range(0, count).Select(_ => random.Next(order)).ToArray();
        var slots = new int[count];
        var pattern = SymmetricPattern.FromPairs(order, first, second, slots);
        var values = new double[pattern.SlotCount];
        var dense = Matrix<double>.Build.Dense(order, order);
        for (var k = 0; k < order; k++)
        {
            values[k] = dense[k, k] = 0.1 + random.NextDouble();
        }

        for (var k = 0; k < count; k++)
        {
            var (i, j) = (first[k], second[k]);
            if (i == j)
            {
                continue;
            }

            var value = (2 * random.NextDouble()) - 1;
            values[slots[k]] += value;
            dense[i, j] += value;
            dense[j, i] += value;
            foreach (var diagonal in new[] { i, j })
            {
                values[diagonal] += Math.Abs(value);
                dense[diagonal, diagonal] += Math.Abs(value);
            }
        }

        var right = Enumerable.Range(0, order).Select(_ => random.NextDouble() - 0.5).ToArray();
        return new RandomSystem(pattern, values, right, dense);
    }
}
