using Orlop.Electrics.Working;

namespace Orlop.Electrics.Heat;

/// <summary>Refuses impossible networks, and finds nodes that no heat can leave.</summary>
internal static class ThermalChecks
{
    public static string? WhyNot(ThermalNetwork network)
    {
        foreach (ThermalNode node in network.Nodes)
        {
            Guard.InRange(node.HeatW, 0, 1e6, "W", network.Subject);
            Guard.InRange(node.RisePerK, 0, 0.1, "1/K", network.Subject);
            Guard.InRange(node.CapacityJPerK, 0, 1e12, "J/K", network.Subject);
            if (node.HeldC is { } held)
            {
                Guard.InRange(held, -100, ThermalSolver.HottestC, "°C", network.Subject);
            }
        }

        bool[] canLeave = [.. network.Nodes.Select(node => node.HeldC is not null)];
        for (bool isMore = true; isMore;)
        {
            isMore = false;
            foreach (ThermalBranch branch in network.Branches)
            {
                if (branch.IsOpen && canLeave[branch.From] != canLeave[branch.To])
                {
                    canLeave[branch.From] = canLeave[branch.To] = isMore = true;
                }
            }
        }

        int shut = Array.IndexOf(canLeave, false);
        return shut < 0 ? null : $"no heat can leave {network.Nodes[shut].Id}";
    }
}
