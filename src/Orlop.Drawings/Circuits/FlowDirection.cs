using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Circuits;

/// <summary>Directs conductors from sources to loads: by the terminals that can only give or take, then on through devices, then by nearness to a source.</summary>
internal static class FlowDirection
{
    internal static IReadOnlyList<CircuitEdge> Directed(IReadOnlyList<CircuitNode> nodes, IReadOnlyList<CircuitEdge> edges)
    {
        CircuitEdge?[] directed = [.. edges.Select(edge => ByTerminals(nodes, edge))];
        int[][] edgesOf = [.. nodes.Select(node => Enumerable.Range(0, edges.Count).Where(index => edges[index].From == node.Index || edges[index].To == node.Index).ToArray())];
        bool isChanged = true;
        while (isChanged)
        {
            isChanged = false;
            foreach (CircuitNode node in nodes.Where(node => edgesOf[node.Index].Length == 2 && !GivesOrTakes(node.Part)))
            {
                isChanged |= PassOn(edgesOf[node.Index], node.Index, edges, directed);
            }
        }

        foreach (CircuitNode node in nodes.Where(node => edgesOf[node.Index].Length == 2 && edgesOf[node.Index].All(index => directed[index]?.To == node.Index)))
        {
            ChargeBattery(edgesOf[node.Index], nodes, directed);
        }

        int[] distance = DistanceFromSource(nodes, edges);
        return [.. edges.Select((edge, index) => directed[index] ?? (distance[edge.From] <= distance[edge.To] ? edge : edge.Reversed()))];
    }

    /// <summary>A source from which diagrams start: the nearer to the front, the sooner.</summary>
    internal static int SourceRank(Part part) => part switch
    {
        BatteryBank => 0,
        ShoreInlet => 1,
        Charger => 2,
        Inverter or DcConverter => 3,
        ElectricLoad => 5,
        _ => 4,
    };

    private static CircuitEdge? ByTerminals(IReadOnlyList<CircuitNode> nodes, CircuitEdge edge)
    {
        int from = Flow(nodes[edge.From].Part, edge.FromTerminal), to = Flow(nodes[edge.To].Part, edge.ToTerminal);
        return from > to ? edge : from < to ? edge.Reversed() : null;
    }

    /// <summary>1 for a terminal that gives, −1 for one that takes, 0 for one that may do either.</summary>
    private static int Flow(Part part, Terminal terminal) => (part, terminal.Name) switch
    {
        (BatteryBank or Charger, TerminalNames.Plus) => 1,
        (Inverter or ShoreInlet, TerminalNames.Live) => 1,
        (DcConverter, TerminalNames.OutPlus) => 1,
        (Changeover, TerminalNames.Out) => 1,
        (ElectricLoad, _) => -1,
        (Charger, TerminalNames.Live) => -1,
        (Inverter or DcConverter, TerminalNames.InPlus) => -1,
        (Changeover, TerminalNames.A or TerminalNames.B) => -1,
        _ => 0,
    };

    private static bool GivesOrTakes(Part part) => part is BatteryBank or Charger or Inverter or ShoreInlet or DcConverter or ElectricLoad or Changeover;

    private static bool PassOn(int[] pair, int node, IReadOnlyList<CircuitEdge> edges, CircuitEdge?[] directed)
    {
        (int known, int open) = directed[pair[0]] is not null ? (pair[0], pair[1]) : (pair[1], pair[0]);
        if (directed[known] is not { } edge || directed[open] is not null)
        {
            return false;
        }

        bool flowsIn = edge.To == node;
        directed[open] = (edges[open].From == node) == flowsIn ? edges[open] : edges[open].Reversed();
        return true;
    }

    /// <summary>Between a charger and a battery the current flows into the battery.</summary>
    private static void ChargeBattery(int[] pair, IReadOnlyList<CircuitNode> nodes, CircuitEdge?[] directed)
    {
        int[] batteries = [.. pair.Where(index => nodes[directed[index]!.From].Part is BatteryBank)];
        if (batteries.Length == 1)
        {
            directed[batteries[0]] = directed[batteries[0]]!.Reversed();
        }
    }

    private static int[] DistanceFromSource(IReadOnlyList<CircuitNode> nodes, IReadOnlyList<CircuitEdge> edges)
    {
        int[] distance = [.. nodes.Select(node => node.Part is BatteryBank or ShoreInlet ? 0 : int.MaxValue)];
        Queue<int> open = new(nodes.Where(node => distance[node.Index] == 0).Select(node => node.Index));
        while (open.TryDequeue(out int at))
        {
            foreach (CircuitEdge edge in edges.Where(edge => edge.From == at || edge.To == at))
            {
                int next = edge.From == at ? edge.To : edge.From;
                if (distance[next] == int.MaxValue)
                {
                    distance[next] = distance[at] + 1;
                    open.Enqueue(next);
                }
            }
        }

        return distance;
    }
}
