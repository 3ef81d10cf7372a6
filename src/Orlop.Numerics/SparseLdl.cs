namespace Orlop.Numerics;

/// <summary>
/// Direct solution of sparse symmetric positive definite systems by A = L·D·Lᵀ: the order of elimination and the shape of L are
/// found once, then any number of matrices of the same pattern are factored. Immutable, so safe from several threads.
/// </summary>
/// <remarks>
/// Davis, "Direct Methods for Sparse Linear Systems" (SIAM, 2006), sections 4.1 (elimination tree), 4.2 (row shapes) and 4.7
/// (up-looking factorisation), in the L·D·Lᵀ form of Davis, "Algorithm 849: a concise sparse Cholesky factorization package",
/// ACM Trans. Math. Softw. 31 (2005).
/// </remarks>
public sealed class SparseLdl
{
    private readonly int _order;
    private readonly int _slotCount;
    private readonly int[] _permutation;
    private readonly int[] _columnStart;
    private readonly int[] _rowStart;
    private readonly int[] _rowColumns;
    private readonly int[] _entryStart;
    private readonly int[] _entryRow;
    private readonly int[] _entrySlot;
    private readonly int[] _lowerRows;

    private SparseLdl(SymmetricPattern pattern, int[] permutation)
    {
        _order = pattern.Order;
        _slotCount = pattern.SlotCount;
        _permutation = permutation;
        (_entryStart, _entryRow, _entrySlot) = UpperEntries(pattern, permutation);
        (_rowStart, _rowColumns) = RowShapes();
        _columnStart = ColumnStarts();
        _lowerRows = LowerRows();
    }

    /// <summary>Number of unknowns.</summary>
    public int Order => _order;

    /// <summary>Number of entries of L below its diagonal.</summary>
    public int LowerCount => _rowColumns.Length;

    /// <summary>Finds a fill-reducing order of elimination and the shape of the factor.</summary>
    public static SparseLdl Analyse(SymmetricPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return new SparseLdl(pattern, MinimumDegree.Order(pattern));
    }

    /// <summary>Factors a matrix of this pattern. A pivot that is not above zero ends the work and is named in the result.</summary>
    /// <param name="values">Values by slot of the pattern.</param>
    /// <param name="reuse">A factor of this analysis whose memory may be overwritten, or null.</param>
    /// <param name="leastPivotRatio">A pivot at or below this part of the diagonal entry it came from counts as zero.</param>
    public LdlFactor Factor(ReadOnlySpan<double> values, LdlFactor? reuse = null, double leastPivotRatio = 0)
    {
        if (values.Length != _slotCount)
        {
            throw new ArgumentException($"{values.Length} values; the pattern has {_slotCount} slots.", nameof(values));
        }

        var factor = reuse ?? new LdlFactor(_permutation, _columnStart, _lowerRows);
        factor.FailedIndex = null;
        var (lower, inversePivots, row, filled) = (factor.Lower, factor.InversePivots, factor.Row, factor.Filled);
        var (columnStart, lowerRows) = (_columnStart, _lowerRows);
        Array.Copy(_columnStart, filled, _order);
        for (var k = 0; k < _order; k++)
        {
            for (var e = _entryStart[k]; e < _entryStart[k + 1]; e++)
            {
                row[_entryRow[e]] = values[_entrySlot[e]];
            }

            var diagonal = values[_permutation[k]];
            var pivot = diagonal;
            for (var r = _rowStart[k]; r < _rowStart[k + 1]; r++)
            {
                var column = _rowColumns[r];
                var value = row[column];
                row[column] = 0;
                var end = filled[column];
                for (var p = columnStart[column]; p < end; p++)
                {
                    row[lowerRows[p]] -= lower[p] * value;
                }

                var scaled = value * inversePivots[column];
                pivot -= scaled * value;
                lower[end] = scaled;
                filled[column] = end + 1;
            }

            if (!(pivot > leastPivotRatio * Math.Abs(diagonal)) || !double.IsFinite(pivot))
            {
                Array.Clear(row);
                factor.FailedIndex = _permutation[k];
                return factor;
            }

            inversePivots[k] = 1 / pivot;
        }

        return factor;
    }

    private static (int[] Start, int[] Row, int[] Slot) UpperEntries(SymmetricPattern pattern, int[] permutation)
    {
        var order = pattern.Order;
        var place = new int[order];
        for (var k = 0; k < order; k++)
        {
            place[permutation[k]] = k;
        }

        var start = new int[order + 1];
        var rows = new int[pattern.SlotCount - order];
        var slots = new int[pattern.SlotCount - order];
        var at = 0;
        for (var k = 0; k < order; k++)
        {
            var original = permutation[k];
            for (var e = pattern.Starts[original]; e < pattern.Starts[original + 1]; e++)
            {
                if (place[pattern.Neighbours[e]] < k)
                {
                    rows[at] = place[pattern.Neighbours[e]];
                    slots[at++] = pattern.Slots[e];
                }
            }

            start[k + 1] = at;
        }

        return (start, rows, slots);
    }

    /// <summary>The columns of each row of L, in an order in which the row can be computed (a path of the elimination tree is kept rising).</summary>
    private (int[] Start, int[] Columns) RowShapes()
    {
        var parent = new int[_order];
        var flag = new int[_order];
        var stack = new int[_order];
        var start = new int[_order + 1];
        var columns = new int[Math.Max(16, _entryRow.Length * 2)];
        var used = 0;
        for (var k = 0; k < _order; k++)
        {
            parent[k] = -1;
            flag[k] = k;
            var top = _order;
            for (var e = _entryStart[k]; e < _entryStart[k + 1]; e++)
            {
                var length = 0;
                for (var i = _entryRow[e]; flag[i] != k; i = parent[i])
                {
                    if (parent[i] < 0)
                    {
                        parent[i] = k;
                    }

                    stack[length++] = i;
                    flag[i] = k;
                }

                while (length > 0)
                {
                    stack[--top] = stack[--length];
                }
            }

            var count = _order - top;
            if (used + count > columns.Length)
            {
                Array.Resize(ref columns, Math.Max(columns.Length * 2, used + count));
            }

            Array.Copy(stack, top, columns, used, count);
            used += count;
            start[k + 1] = used;
        }

        Array.Resize(ref columns, used);
        return (start, columns);
    }

    private int[] ColumnStarts()
    {
        var starts = new int[_order + 1];
        foreach (var column in _rowColumns)
        {
            starts[column + 1]++;
        }

        for (var k = 0; k < _order; k++)
        {
            starts[k + 1] += starts[k];
        }

        return starts;
    }

    private int[] LowerRows()
    {
        var rows = new int[_rowColumns.Length];
        var filled = _columnStart.AsSpan(0, _order).ToArray();
        for (var k = 0; k < _order; k++)
        {
            for (var r = _rowStart[k]; r < _rowStart[k + 1]; r++)
            {
                rows[filled[_rowColumns[r]]++] = k;
            }
        }

        return rows;
    }
}
