using Orlop.Electrics.Heat;

namespace Orlop.Electrics.Tests.Heat;

/// <summary>The same balance by another way: every node in turn is brought to balance by halving, its neighbours as they are, until none moves any more.</summary>
internal static class Relaxation
{
    public static double[] Steady(ThermalNetwork network)
    {
        double[] nodeC = [.. network.Nodes.Select(node => node.HeldC ?? 40)];
        for (int round = 0; round < 20_000; round++)
        {
            double moved = 0;
            for (int node = 0; node < nodeC.Length; node++)
            {
                if (network.Nodes[node].HeldC is null)
                {
                    double was = nodeC[node];
                    nodeC[node] = Balanced(network, nodeC, node);
                    moved = Math.Max(moved, Math.Abs(nodeC[node] - was));
                }
            }

            if (moved < 1e-9)
            {
                break;
            }
        }

        return nodeC;
    }

    private static double Balanced(ThermalNetwork network, double[] nodeC, int node)
    {
        double low = -100, high = 2000;
        for (int step = 0; step < 70; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = Gain(network, nodeC, node, middle) > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Gain(ThermalNetwork network, double[] nodeC, int node, double atC) =>
        network.Nodes[node].HeatAtW(atC)
        - network.Branches.Where(branch => branch.From == node).Sum(branch => branch.HeatW(atC, nodeC[branch.To]))
        + network.Branches.Where(branch => branch.To == node).Sum(branch => branch.HeatW(nodeC[branch.From], atC));
}
