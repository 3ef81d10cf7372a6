namespace Orlop.Numerics;

/// <summary>
/// Where a sparse symmetric matrix may be non-zero. Values are kept in one array: the diagonal first (slots 0 to
/// <see cref="Order"/> - 1), then one slot for each pair of coupled unknowns.
/// </summary>
public sealed class SymmetricPattern
{
    private SymmetricPattern(int order, int[] starts, int[] neighbours, int[] slots, int slotCount)
    {
        Order = order;
        Starts = starts;
        Neighbours = neighbours;
        Slots = slots;
        SlotCount = slotCount;
    }

    /// <summary>Number of unknowns.</summary>
    public int Order { get; }

    /// <summary>Length of the array of values.</summary>
    public int SlotCount { get; }

    internal int[] Starts { get; }

    internal int[] Neighbours { get; }

    internal int[] Slots { get; }

    /// <summary>Builds the pattern from coupled pairs and says which slot each pair got; a pair named twice shares a slot.</summary>
    /// <param name="order">Number of unknowns, 0 or more.</param>
    /// <param name="first">First index of each pair; a pair with an index below 0, or with two equal ones, couples nothing and gets slot -1.</param>
    /// <param name="second">Second index of each pair.</param>
    /// <param name="slotOfPair">Receives the slot of each pair.</param>
    public static SymmetricPattern FromPairs(int order, ReadOnlySpan<int> first, ReadOnlySpan<int> second, Span<int> slotOfPair)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(order);
        if (first.Length != second.Length || first.Length != slotOfPair.Length)
        {
            throw new ArgumentException($"{first.Length} first and {second.Length} second indices for {slotOfPair.Length} slots; all must be equal.");
        }

        var starts = CountOfEachUnknown(order, first, second);
        var neighbours = new int[starts[order]];
        var slots = new int[starts[order]];
        var filled = new int[order];
        var slotCount = order;
        for (var pair = 0; pair < first.Length; pair++)
        {
            var (i, j) = (first[pair], second[pair]);
            slotOfPair[pair] = -1;
            if (i < 0 || j < 0 || i == j)
            {
                continue;
            }

            var slot = SlotOf(i, j);
            if (slot < 0)
            {
                slot = slotCount++;
                Put(i, j, slot);
                Put(j, i, slot);
            }

            slotOfPair[pair] = slot;
        }

        return Packed(order, starts, filled, neighbours, slots, slotCount);

        int SlotOf(int i, int j)
        {
            if (filled[j] < filled[i])
            {
                (i, j) = (j, i);
            }

            var found = neighbours.AsSpan(starts[i], filled[i]).IndexOf(j);
            return found < 0 ? -1 : slots[starts[i] + found];
        }

        void Put(int i, int j, int slot)
        {
            var at = starts[i] + filled[i]++;
            neighbours[at] = j;
            slots[at] = slot;
        }
    }

    private static int[] CountOfEachUnknown(int order, ReadOnlySpan<int> first, ReadOnlySpan<int> second)
    {
        var starts = new int[order + 1];
        for (var pair = 0; pair < first.Length; pair++)
        {
            if (first[pair] >= order || second[pair] >= order)
            {
                throw new ArgumentException($"Pair {pair} couples {first[pair]} and {second[pair]}; the matrix has {order} unknowns.");
            }

            if (first[pair] >= 0 && second[pair] >= 0 && first[pair] != second[pair])
            {
                starts[first[pair] + 1]++;
                starts[second[pair] + 1]++;
            }
        }

        for (var i = 0; i < order; i++)
        {
            starts[i + 1] += starts[i];
        }

        return starts;
    }

    private static SymmetricPattern Packed(int order, int[] starts, int[] filled, int[] neighbours, int[] slots, int slotCount)
    {
        var packed = new int[order + 1];
        for (var i = 0; i < order; i++)
        {
            Array.Copy(neighbours, starts[i], neighbours, packed[i], filled[i]);
            Array.Copy(slots, starts[i], slots, packed[i], filled[i]);
            packed[i + 1] = packed[i] + filled[i];
        }

        return new SymmetricPattern(order, packed, neighbours, slots, slotCount);
    }
}
