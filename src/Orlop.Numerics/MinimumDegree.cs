namespace Orlop.Numerics;

/// <summary>
/// An order of elimination that keeps the factor of a sparse symmetric matrix sparse: approximate minimum degree on a quotient graph.
/// </summary>
/// <remarks>
/// Amestoy, Davis and Duff, "An approximate minimum degree ordering algorithm", SIAM J. Matrix Anal. Appl. 17 (1996), sections 2 to 4;
/// Davis, "Direct Methods for Sparse Linear Systems" (SIAM, 2006), section 7.1. Without the merging of indistinguishable unknowns.
/// Ties are broken by index, so the order is repeatable.
/// </remarks>
internal sealed class MinimumDegree
{
    private readonly int _order;
    private readonly int[] _adjacent;
    private readonly int[] _start;
    private readonly int[] _elementCount;
    private readonly int[] _variableCount;
    private readonly int[] _degree;
    private readonly int[] _mark;
    private readonly int[] _outside;
    private readonly int[] _outsideMark;
    private readonly bool[] _absorbed;
    private readonly int[] _memberStart;
    private readonly int[] _memberCount;
    private readonly DegreeBuckets _buckets;
    private int[] _members;
    private int _membersUsed;

    private MinimumDegree(SymmetricPattern pattern)
    {
        _order = pattern.Order;
        _start = pattern.Starts;
        _adjacent = pattern.Neighbours.AsSpan(0, pattern.Starts[_order]).ToArray();
        _elementCount = new int[_order];
        _variableCount = new int[_order];
        _degree = new int[_order];
        _mark = new int[_order];
        _outside = new int[_order];
        _outsideMark = new int[_order];
        _absorbed = new bool[_order];
        _memberStart = new int[_order];
        _memberCount = new int[_order];
        _members = new int[Math.Max(16, _adjacent.Length * 2)];
        _buckets = new DegreeBuckets(_order);
        Array.Fill(_mark, -1);
        Array.Fill(_outsideMark, -1);
        for (var i = _order - 1; i >= 0; i--)
        {
            _degree[i] = _variableCount[i] = _start[i + 1] - _start[i];
            _buckets.Add(i, _degree[i]);
        }
    }

    /// <summary>The unknowns in their order of elimination.</summary>
    public static int[] Order(SymmetricPattern pattern) => new MinimumDegree(pattern).Run();

    private int[] Run()
    {
        var order = new int[_order];
        for (var step = 0; step < _order; step++)
        {
            var pivot = _buckets.TakeLeast();
            order[step] = pivot;
            GatherElement(pivot);
            MeasureOverlaps(pivot);
            var left = _order - step - 1;
            for (var k = 0; k < _memberCount[pivot]; k++)
            {
                Update(_members[_memberStart[pivot] + k], pivot, left);
            }
        }

        return order;
    }

    /// <summary>The element of a pivot: the unknowns it couples when eliminated. Elements it touches are absorbed in it.</summary>
    private void GatherElement(int pivot)
    {
        var from = _membersUsed;
        _mark[pivot] = pivot;
        var at = _start[pivot];
        for (var k = 0; k < _elementCount[pivot]; k++)
        {
            var element = _adjacent[at + k];
            if (!_absorbed[element])
            {
                _absorbed[element] = true;
                Gather(_members, _memberStart[element], _memberCount[element], pivot);
            }
        }

        Gather(_adjacent, at + _elementCount[pivot], _variableCount[pivot], pivot);
        _memberStart[pivot] = from;
        _memberCount[pivot] = _membersUsed - from;
    }

    private void Gather(int[] list, int from, int count, int pivot)
    {
        if (_membersUsed + count > _members.Length)
        {
            Array.Resize(ref _members, Math.Max(_members.Length * 2, _membersUsed + count));
        }

        for (var k = from; k < from + count; k++)
        {
            var i = list[k];
            if (_mark[i] != pivot && !_buckets.IsTaken(i))
            {
                _mark[i] = pivot;
                _members[_membersUsed++] = i;
            }
        }
    }

    /// <summary>For every element near the pivot, how many of its unknowns lie outside the pivot's element.</summary>
    private void MeasureOverlaps(int pivot)
    {
        for (var k = 0; k < _memberCount[pivot]; k++)
        {
            var i = _members[_memberStart[pivot] + k];
            for (var e = _start[i]; e < _start[i] + _elementCount[i]; e++)
            {
                var element = _adjacent[e];
                if (_absorbed[element])
                {
                    continue;
                }

                if (_outsideMark[element] != pivot)
                {
                    _outsideMark[element] = pivot;
                    _outside[element] = LiveCount(element);
                }

                _outside[element]--;
            }
        }
    }

    private int LiveCount(int element)
    {
        var write = _memberStart[element];
        var end = write + _memberCount[element];
        for (var k = write; k < end; k++)
        {
            if (!_buckets.IsTaken(_members[k]))
            {
                _members[write++] = _members[k];
            }
        }

        return _memberCount[element] = write - _memberStart[element];
    }

    private void Update(int i, int pivot, int left)
    {
        var start = _start[i];
        var variables = start + _elementCount[i];
        var variablesEnd = variables + _variableCount[i];
        var write = start;
        var degree = 0;
        for (var e = start; e < variables; e++)
        {
            var element = _adjacent[e];
            if (_absorbed[element] || _outside[element] == 0)
            {
                _absorbed[element] = true;
                continue;
            }

            degree += _outside[element];
            _adjacent[write++] = element;
        }

        // The pivot takes the place of itself among the unknowns, or of an element it absorbed, so there is always room.
        var elementCount = write - start;
        var kept = variables;
        for (var v = variables; v < variablesEnd; v++)
        {
            var other = _adjacent[v];
            if (_mark[other] != pivot && !_buckets.IsTaken(other))
            {
                _adjacent[kept++] = other;
            }
        }

        var variableCount = kept - variables;
        _adjacent.AsSpan(variables, variableCount).CopyTo(_adjacent.AsSpan(write + 1));
        _adjacent[write] = pivot;
        _elementCount[i] = elementCount + 1;
        _variableCount[i] = variableCount;
        var bound = Math.Min(degree + variableCount + _memberCount[pivot] - 1, _degree[i] + _memberCount[pivot] - 1);
        _degree[i] = Math.Min(bound, left - 1);
        _buckets.Move(i, _degree[i]);
    }
}
