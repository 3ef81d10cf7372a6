using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

/// <summary>Chooses the zero of potential of each galvanically connected part and numbers the other junctions as unknowns.</summary>
internal static class ZeroOfPotential
{
    private const int Zero = -1;

    /// <summary>The unknown of each junction; -1 where the junction is the zero of its part.</summary>
    public static int[] NumberUnknowns(Wiring wiring)
    {
        var parts = new DisjointSets(wiring.JunctionCount);
        foreach (var branch in wiring.Branches)
        {
            if (wiring.Conducts(branch))
            {
                parts.Merge(branch.A, branch.B);
            }
        }

        var hasZero = new bool[wiring.JunctionCount];
        var unknowns = new int[wiring.JunctionCount];
        foreach (var node in wiring.BondedNodes)
        {
            MakeZero(wiring.JunctionOfNode[node]);
        }

        foreach (var branch in wiring.Branches)
        {
            if (branch.IsSource)
            {
                MakeZero(branch.B);
            }
        }

        var next = 0;
        for (var junction = 0; junction < unknowns.Length; junction++)
        {
            MakeZero(junction);
            if (unknowns[junction] != Zero)
            {
                unknowns[junction] = next++;
            }
        }

        return unknowns;

        void MakeZero(int junction)
        {
            var part = parts.Find(junction);
            if (!hasZero[part])
            {
                hasZero[part] = true;
                unknowns[junction] = Zero;
            }
        }
    }

    /// <summary>The part of each unknown when sources with a limit join nothing.</summary>
    public static int[] SteadyParts(Wiring wiring, int[] unknownOfJunction, int unknownCount)
    {
        var parts = new DisjointSets(wiring.JunctionCount);
        foreach (var branch in wiring.Branches)
        {
            if (wiring.Conducts(branch) && branch.Kind is not (BranchKind.LimitedSource or BranchKind.ConverterOutput))
            {
                parts.Merge(branch.A, branch.B);
            }
        }

        var partOfUnknown = new int[unknownCount];
        for (var junction = 0; junction < unknownOfJunction.Length; junction++)
        {
            if (unknownOfJunction[junction] != Zero)
            {
                partOfUnknown[unknownOfJunction[junction]] = parts.Find(junction);
            }
        }

        return partOfUnknown;
    }
}
