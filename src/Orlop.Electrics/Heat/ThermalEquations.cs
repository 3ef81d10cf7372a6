using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>The balance of heat of every node that is sought, and how it changes with each temperature.</summary>
internal sealed class ThermalEquations
{
    private readonly ThermalNetwork _network;
    private readonly int[] _unknownOf;
    private readonly double[] _slopes;

    public ThermalEquations(ThermalNetwork network)
    {
        _network = network;
        _unknownOf = new int[network.Nodes.Length];
        NodeC = new double[network.Nodes.Length];
        int count = 0;
        for (int node = 0; node < network.Nodes.Length; node++)
        {
            _unknownOf[node] = network.Nodes[node].HeldC is null ? count++ : -1;
        }

        UnknownCount = count;
        LackW = new double[count];
        _slopes = new double[count * count];
        double warmest = network.Nodes.Select(node => node.HeldC).OfType<double>().DefaultIfEmpty(20).Max();
        for (int node = 0; node < network.Nodes.Length; node++)
        {
            NodeC[node] = network.Nodes[node].HeldC ?? (warmest + 1);
        }
    }

    public int UnknownCount { get; }

    /// <summary>Temperature of each node.</summary>
    public double[] NodeC { get; }

    /// <summary>Heat in less heat out of each node that is sought.</summary>
    public double[] LackW { get; }

    /// <summary>All heat that flows, each flow once.</summary>
    public double FlowW { get; private set; }

    /// <summary>What a step in time holds each node back with: capacity over the step, and the temperature it is held towards; null at rest.</summary>
    public (double WPerK, double TowardsC)[]? Held { get; set; }

    /// <summary>Fills <see cref="LackW"/> and gives back the greatest of them.</summary>
    public double Balance()
    {
        Array.Clear(LackW);
        double flow = 0;
        ImmutableArray<ThermalNode> nodes = _network.Nodes;
        for (int node = 0; node < nodes.Length; node++)
        {
            if (_unknownOf[node] is >= 0 and int unknown)
            {
                double heat = nodes[node].HeatAtW(NodeC[node]);
                double stored = Held is null ? 0 : Held[node].WPerK * (Held[node].TowardsC - NodeC[node]);
                LackW[unknown] += heat + stored;
                flow += Math.Abs(heat) + Math.Abs(stored);
            }
        }

        foreach (ThermalBranch branch in _network.Branches)
        {
            double heat = branch.HeatW(NodeC[branch.From], NodeC[branch.To]);
            flow += Math.Abs(heat);
            Add(branch.From, -heat);
            Add(branch.To, heat);
        }

        FlowW = flow;
        double worst = 0;
        foreach (double lack in LackW)
        {
            worst = Math.Max(worst, Math.Abs(lack));
        }

        return double.IsFinite(flow) ? worst : double.PositiveInfinity;
    }

    /// <summary>The change of every temperature that Newton's step asks for; null where there is none.</summary>
    public double[]? Step()
    {
        Array.Clear(_slopes);
        ImmutableArray<ThermalNode> nodes = _network.Nodes;
        for (int node = 0; node < nodes.Length; node++)
        {
            if (_unknownOf[node] is >= 0 and int unknown)
            {
                _slopes[(unknown * UnknownCount) + unknown] += (Held is null ? 0 : Held[node].WPerK) - (nodes[node].HeatW * nodes[node].RisePerK);
            }
        }

        foreach (ThermalBranch branch in _network.Branches)
        {
            int from = _unknownOf[branch.From], to = _unknownOf[branch.To];
            double fromC = NodeC[branch.From], toC = NodeC[branch.To];
            if (from >= 0)
            {
                Slope(from, to, branch.FromSlope(fromC, toC));
            }

            if (to >= 0)
            {
                Slope(to, from, branch.ToSlope(fromC, toC));
            }
        }

        double[] step = [.. LackW];
        return DenseSolution.Solve(_slopes, step) ? step : null;
    }

    public void Move(double[] step, double share)
    {
        for (int node = 0; node < NodeC.Length; node++)
        {
            if (_unknownOf[node] is >= 0 and int unknown)
            {
                NodeC[node] += share * step[unknown];
            }
        }
    }

    private void Add(int node, double heat)
    {
        if (_unknownOf[node] is >= 0 and int unknown)
        {
            LackW[unknown] += heat;
        }
    }

    // What leaves one node for each kelvin of its own comes to the other.
    private void Slope(int own, int other, double slope)
    {
        _slopes[(own * UnknownCount) + own] += slope;
        if (other >= 0)
        {
            _slopes[(other * UnknownCount) + own] -= slope;
        }
    }
}
