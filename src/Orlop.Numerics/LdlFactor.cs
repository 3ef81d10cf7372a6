namespace Orlop.Numerics;

/// <summary>
/// A matrix factored by <see cref="SparseLdl"/>. Solving only reads it, so several threads may solve with one factor at a time;
/// factoring into it again must be done by one thread alone.
/// </summary>
public sealed class LdlFactor
{
    // Small systems are solved without a heap allocation.
    private const int MostOnStack = 256;

    private readonly int[] _permutation;
    private readonly int[] _columnStart;
    private readonly int[] _lowerRows;

    internal LdlFactor(int[] permutation, int[] columnStart, int[] lowerRows)
    {
        _permutation = permutation;
        _columnStart = columnStart;
        _lowerRows = lowerRows;
        Lower = new double[lowerRows.Length];
        InversePivots = new double[permutation.Length];
        Row = new double[permutation.Length];
        Filled = new int[permutation.Length];
    }

    /// <summary>The unknown whose pivot was not above zero, or null when the matrix is positive definite.</summary>
    public int? FailedIndex { get; internal set; }

    /// <summary>Whether every pivot was above zero.</summary>
    public bool IsPositiveDefinite => FailedIndex is null;

    internal double[] Lower { get; }

    /// <summary>1 over each pivot: multiplying is faster than dividing, and each is used many times.</summary>
    internal double[] InversePivots { get; }

    internal double[] Row { get; }

    internal int[] Filled { get; }

    /// <summary>Solves A·x = b. <paramref name="x"/> may be the same memory as <paramref name="b"/>.</summary>
    /// <exception cref="InvalidOperationException">The matrix was not positive definite.</exception>
    public void Solve(ReadOnlySpan<double> b, Span<double> x)
    {
        if (FailedIndex is { } failed)
        {
            throw new InvalidOperationException($"The factor is not usable: the pivot of unknown {failed} was not above zero.");
        }

        var order = _permutation.Length;
        if (b.Length != order || x.Length != order)
        {
            throw new ArgumentException($"Right side of {b.Length} and solution of {x.Length}; the matrix has {order} unknowns.");
        }

        var work = order <= MostOnStack ? stackalloc double[MostOnStack] : new double[order];
        for (var k = 0; k < order; k++)
        {
            work[k] = b[_permutation[k]];
        }

        var (starts, rows, lower, inversePivots) = (_columnStart, _lowerRows, Lower, InversePivots);
        for (var column = 0; column < order; column++)
        {
            var value = work[column];
            for (var p = starts[column]; p < starts[column + 1]; p++)
            {
                work[rows[p]] -= lower[p] * value;
            }
        }

        for (var column = order - 1; column >= 0; column--)
        {
            var value = work[column] * inversePivots[column];
            for (var p = starts[column]; p < starts[column + 1]; p++)
            {
                value -= lower[p] * work[rows[p]];
            }

            work[column] = value;
        }

        for (var k = 0; k < order; k++)
        {
            x[_permutation[k]] = work[k];
        }
    }
}
