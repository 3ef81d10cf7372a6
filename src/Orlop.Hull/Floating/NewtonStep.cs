namespace Orlop.Hull.Floating;

/// <summary>
/// One downhill step of a shifted Newton method in up to three unknowns (draught, trim, heel): solves (H + shift·S)·step = -gradient by Cholesky, S a diagonal of the boat's size,
/// with the smallest shift in powers of ten that makes the matrix positive definite.
/// </summary>
internal static class NewtonStep
{
    private const double LeastPivotRatio = 1e-8;
    private const int MostShifts = 40;

    /// <summary>False when every shift failed, as with a gradient that is not finite.</summary>
    public static bool TryFind(ReadOnlySpan<double> hessian, ReadOnlySpan<double> gradient, ReadOnlySpan<double> sizes, Span<double> step)
    {
        var count = gradient.Length;
        Span<double> factor = stackalloc double[9];
        var shift = 0.0;
        for (var attempt = 0; attempt < MostShifts; attempt++)
        {
            if (Factorise(hessian, sizes, shift, count, factor))
            {
                Solve(factor, gradient, count, step);
                return true;
            }

            shift = shift > 0 ? 10 * shift : 1e-6;
        }

        return false;
    }

    /// <summary>Whether the matrix is positive definite, or short of it by no more than rounding.</summary>
    public static bool IsStable(ReadOnlySpan<double> hessian, ReadOnlySpan<double> sizes, int count)
    {
        Span<double> factor = stackalloc double[9];
        return Factorise(hessian, sizes, 2 * LeastPivotRatio, count, factor);
    }

    private static bool Factorise(ReadOnlySpan<double> hessian, ReadOnlySpan<double> sizes, double shift, int count, Span<double> factor)
    {
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var value = hessian[(3 * row) + column] + (row == column ? shift * sizes[row] : 0);
                for (var k = 0; k < column; k++)
                {
                    value -= factor[(3 * row) + k] * factor[(3 * column) + k];
                }

                if (row != column)
                {
                    factor[(3 * row) + column] = value / factor[(3 * column) + column];
                }
                else if (value > LeastPivotRatio * sizes[row])
                {
                    factor[(3 * row) + row] = Math.Sqrt(value);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static void Solve(ReadOnlySpan<double> factor, ReadOnlySpan<double> gradient, int count, Span<double> step)
    {
        for (var row = 0; row < count; row++)
        {
            var value = -gradient[row];
            for (var k = 0; k < row; k++)
            {
                value -= factor[(3 * row) + k] * step[k];
            }

            step[row] = value / factor[(3 * row) + row];
        }

        for (var row = count - 1; row >= 0; row--)
        {
            var value = step[row];
            for (var k = row + 1; k < count; k++)
            {
                value -= factor[(3 * k) + row] * step[k];
            }

            step[row] = value / factor[(3 * row) + row];
        }
    }
}
