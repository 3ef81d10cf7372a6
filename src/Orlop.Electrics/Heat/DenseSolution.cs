namespace Orlop.Electrics.Heat;

/// <summary>A small dense system by Gauss with row exchange: a bundle has some dozens of nodes.</summary>
internal static class DenseSolution
{
    /// <summary>Solves in place, <paramref name="rows"/> row by row. False where a row is nothing but others.</summary>
    public static bool Solve(double[] rows, double[] right)
    {
        int count = right.Length;
        for (int pivot = 0; pivot < count; pivot++)
        {
            int best = pivot;
            for (int row = pivot + 1; row < count; row++)
            {
                best = Math.Abs(rows[(row * count) + pivot]) > Math.Abs(rows[(best * count) + pivot]) ? row : best;
            }

            if (best != pivot)
            {
                Exchange(rows, pivot, best, count);
                (right[pivot], right[best]) = (right[best], right[pivot]);
            }

            double lead = rows[(pivot * count) + pivot];
            if (!(Math.Abs(lead) > 0) || !double.IsFinite(lead))
            {
                return false;
            }

            Eliminate(rows, right, pivot, lead, count);
        }

        for (int row = count - 1; row >= 0; row--)
        {
            double sum = right[row];
            for (int column = row + 1; column < count; column++)
            {
                sum -= rows[(row * count) + column] * right[column];
            }

            right[row] = sum / rows[(row * count) + row];
        }

        return true;
    }

    private static void Eliminate(double[] rows, double[] right, int pivot, double lead, int count)
    {
        ReadOnlySpan<double> top = rows.AsSpan(pivot * count, count);
        for (int row = pivot + 1; row < count; row++)
        {
            Span<double> below = rows.AsSpan(row * count, count);
            double share = below[pivot] / lead;
            if (share == 0)
            {
                continue;
            }

            for (int column = pivot; column < count; column++)
            {
                below[column] -= share * top[column];
            }

            right[row] -= share * right[pivot];
        }
    }

    private static void Exchange(double[] rows, int one, int other, int count)
    {
        for (int column = 0; column < count; column++)
        {
            (rows[(one * count) + column], rows[(other * count) + column]) = (rows[(other * count) + column], rows[(one * count) + column]);
        }
    }
}
