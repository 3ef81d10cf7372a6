using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

/// <summary>The first branches of a wiring as fixed conductances with a voltage behind them; everything else left out.</summary>
internal sealed class LinearNetwork
{
    private readonly DisjointSets _parts;
    private readonly int[] _unknowns;
    private readonly int _unknownCount;
    private readonly LdlFactor _factor;

    public LinearNetwork(Wiring wiring, double[] conductanceS, double[] emfV)
    {
        var branches = wiring.Branches.AsSpan(0, conductanceS.Length);
        _parts = new DisjointSets(wiring.JunctionCount);
        foreach (var branch in branches)
        {
            _parts.Merge(branch.A, branch.B);
        }

        // The lowest junction of each part is its zero; only differences are used.
        _unknowns = new int[wiring.JunctionCount];
        for (var junction = 0; junction < _unknowns.Length; junction++)
        {
            _unknowns[junction] = _parts.Find(junction) == junction ? -1 : _unknownCount++;
        }

        var (a, b, slots) = (new int[branches.Length], new int[branches.Length], new int[branches.Length]);
        for (var k = 0; k < branches.Length; k++)
        {
            (a[k], b[k]) = (_unknowns[branches[k].A], _unknowns[branches[k].B]);
        }

        var pattern = SymmetricPattern.FromPairs(_unknownCount, a, b, slots);
        var values = new double[pattern.SlotCount];
        var right = new double[_unknownCount];
        for (var k = 0; k < branches.Length; k++)
        {
            if (branches[k].A != branches[k].B)
            {
                Add(values, a[k], conductanceS[k]);
                Add(values, b[k], conductanceS[k]);
                Add(values, slots[k], -conductanceS[k]);
                Add(right, a[k], emfV[k] * conductanceS[k]);
                Add(right, b[k], -emfV[k] * conductanceS[k]);
            }
        }

        _factor = SparseLdl.Analyse(pattern).Factor(values);
        OpenV = Potentials(right);
    }

    /// <summary>Potential of each junction against the zero of its part, nothing being drawn.</summary>
    public double[] OpenV { get; }

    public bool AreJoined(int first, int second) => _parts.Find(first) == _parts.Find(second);

    /// <summary>Potentials per ampere driven in at one junction and out at another, the voltages of the sources being nought.</summary>
    public double[] UnitResponse(int into, int outOf)
    {
        var right = new double[_unknownCount];
        Add(right, _unknowns[into], 1);
        Add(right, _unknowns[outOf], -1);
        return Potentials(right);
    }

    private double[] Potentials(double[] right)
    {
        _factor.Solve(right, right);
        return [.. _unknowns.Select(u => u < 0 ? 0 : right[u])];
    }

    private static void Add(double[] values, int at, double value)
    {
        if (at >= 0)
        {
            values[at] += value;
        }
    }
}
