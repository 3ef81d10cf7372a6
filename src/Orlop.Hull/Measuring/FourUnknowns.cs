using System.Collections.Immutable;

namespace Orlop.Hull.Measuring;

/// <summary>Symmetric algebra in displacement, LCG, TCG and KG.</summary>
internal static class FourUnknowns
{
    private const int Count = 4;
    private const double Rounding = 1e-9;

    /// <summary>h·C·h.</summary>
    public static double Spread(double[,] covariance, double[] shares)
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                sum += shares[i] * covariance[i, j] * shares[j];
            }
        }

        return sum;
    }

    /// <summary>S·C·Sᵀ: a covariance carried to other numbers.</summary>
    public static double[,] Carried(double[,] slopes, double[,] covariance)
    {
        var (half, carried) = (new double[Count, Count], new double[Count, Count]);
        Multiply(half, (i, k) => slopes[i, k], (k, j) => covariance[k, j]);
        Multiply(carried, (i, k) => half[i, k], (k, j) => slopes[j, k]);
        return carried;
    }

    /// <summary>The inverse by Cholesky after scaling to a unit diagonal; or which unknown has nothing to rest on.</summary>
    public static (double[,]? Inverse, int Missing) Inverse(double[,] matrix)
    {
        var scale = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            if (!(matrix[i, i] > 0))
            {
                return (null, i);
            }

            scale[i] = 1 / Math.Sqrt(matrix[i, i]);
        }

        var factor = new double[Count, Count];
        for (var row = 0; row < Count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var value = matrix[row, column] * scale[row] * scale[column];
                for (var k = 0; k < column; k++)
                {
                    value -= factor[row, k] * factor[column, k];
                }

                if (row == column && !(value > 1e-12))
                {
                    return (null, row);
                }

                factor[row, column] = row == column ? Math.Sqrt(value) : value / factor[column, column];
            }
        }

        return (FromFactor(factor, scale), -1);
    }

    /// <summary>Lower triangular L with L·Lᵀ the covariance, given as four rows of four; what is known exactly has a row of zeros.</summary>
    public static double[,] Factor(ImmutableArray<double> covariance)
    {
        if (covariance.IsDefault || covariance.Length != Count * Count || covariance.Any(value => !double.IsFinite(value)))
        {
            throw new ArgumentException($"covariance: {(covariance.IsDefault ? 0 : covariance.Length)} numbers; {Count * Count} real ones are needed, four rows of four.", nameof(covariance));
        }

        var factor = new double[Count, Count];
        for (var row = 0; row < Count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var (given, mirrored) = (covariance[(row * Count) + column], covariance[(column * Count) + row]);
                var scale = Math.Sqrt(Math.Abs(covariance[row * (Count + 1)] * covariance[column * (Count + 1)]));
                var left = given;
                for (var k = 0; k < column; k++)
                {
                    left -= factor[row, k] * factor[column, k];
                }

                var isNothing = row == column ? Math.Abs(left) <= Rounding * scale : factor[column, column] == 0;
                if (Math.Abs(given - mirrored) > Rounding * scale || (row == column ? left < -Rounding * scale : isNothing && Math.Abs(left) > Rounding * scale))
                {
                    throw new ArgumentException(FormattableString.Invariant($"covariance: row {row + 1}, column {column + 1}: {given}; allowed a symmetric matrix in which no combination has a variance below 0."), nameof(covariance));
                }

                factor[row, column] = isNothing ? 0 : row == column ? Math.Sqrt(left) : left / factor[column, column];
            }
        }

        return factor;
    }

    private static void Multiply(double[,] product, Func<int, int, double> left, Func<int, int, double> right)
    {
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                for (var k = 0; k < Count; k++)
                {
                    product[i, j] += left(i, k) * right(k, j);
                }
            }
        }
    }

    private static double[,] FromFactor(double[,] factor, double[] scale)
    {
        var inverse = new double[Count, Count];
        for (var unit = 0; unit < Count; unit++)
        {
            var solution = new double[Count];
            for (var row = 0; row < Count; row++)
            {
                var value = row == unit ? 1.0 : 0;
                for (var k = 0; k < row; k++)
                {
                    value -= factor[row, k] * solution[k];
                }

                solution[row] = value / factor[row, row];
            }

            for (var row = Count - 1; row >= 0; row--)
            {
                for (var k = row + 1; k < Count; k++)
                {
                    solution[row] -= factor[k, row] * solution[k];
                }

                solution[row] /= factor[row, row];
                inverse[row, unit] = solution[row] * scale[row] * scale[unit];
            }
        }

        return inverse;
    }
}
