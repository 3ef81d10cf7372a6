using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>Temperatures at a moment.</summary>
/// <param name="TimeS">From the beginning.</param>
/// <param name="NodeC">Of each node.</param>
public sealed record ThermalMoment(double TimeS, ImmutableArray<double> NodeC);

/// <summary>How a network warms from one state to its rest.</summary>
/// <param name="Moments">From the beginning until every node is within a thousandth of its rise.</param>
/// <param name="Rest">The steady state.</param>
public sealed record ThermalResponseResult(ImmutableArray<ThermalMoment> Moments, ThermalState Rest)
{
    /// <summary>How long a node takes for a share of its way; null where it has no way to go, or time ran out.</summary>
    public double? TimeToS(int node, double shareFraction)
    {
        if (Moments.IsEmpty)
        {
            return null;
        }

        double from = Moments[0].NodeC[node], wanted = from + (shareFraction * (Rest.NodeC[node] - from));
        for (int k = 1; k < Moments.Length; k++)
        {
            double before = Moments[k - 1].NodeC[node], after = Moments[k].NodeC[node];
            if (after != before && (after - wanted) * (wanted - before) >= 0)
            {
                return Moments[k - 1].TimeS + ((wanted - before) / (after - before) * (Moments[k].TimeS - Moments[k - 1].TimeS));
            }
        }

        return null;
    }
}

/// <summary>
/// The way to rest in time: two implicit stages a step (Alexander 1977, order 2, L-stable), steps as long as no node takes more than a hundredth of its way in one.
/// Nodes that store nothing follow at once.
/// </summary>
public static class ThermalResponse
{
    // 1 - 1/√2.
    private static readonly double Stage = 1 - Math.Sqrt(0.5);

    private const double MostChangeFraction = 0.01;
    private const double RestFraction = 1e-3;
    private const int MostSteps = 4000;

    /// <summary>From all nodes at one temperature to rest.</summary>
    /// <returns>No moments where there is no rest.</returns>
    public static ThermalResponseResult From(ThermalNetwork network, double startC)
    {
        ThermalState rest = ThermalSolver.Steady(network);
        if (!rest.IsFound)
        {
            return new ThermalResponseResult([], rest);
        }

        int count = network.Nodes.Length;
        double[] now = [.. network.Nodes.Select(node => node.HeldC ?? startC)];
        double[] way = [.. Enumerable.Range(0, count).Select(node => Math.Abs(rest.NodeC[node] - now[node]))];
        double longest = Math.Max(way.Max(), 1e-9);
        ThermalEquations equations = new(network);
        double step = FirstStep(network, longest);
        ImmutableArray<ThermalMoment>.Builder moments = ImmutableArray.CreateBuilder<ThermalMoment>();
        moments.Add(new ThermalMoment(0, [.. now]));
        double time = 0;
        for (int k = 0; k < MostSteps && Enumerable.Range(0, count).Any(node => Math.Abs(rest.NodeC[node] - now[node]) > RestFraction * longest); k++)
        {
            double[]? next = Advance(network, equations, now, step);
            double change = next is null ? double.PositiveInfinity : Stores(network).Max(node => Math.Abs(next[node] - now[node])) / longest;
            if (change > MostChangeFraction)
            {
                step /= 2;
                continue;
            }

            time += step;
            now = next!;
            moments.Add(new ThermalMoment(time, [.. now]));
            step *= change < MostChangeFraction / 2 ? 1.6 : 1;
        }

        return new ThermalResponseResult(moments.ToImmutable(), rest);
    }

    private static IEnumerable<int> Stores(ThermalNetwork network) => Enumerable.Range(0, network.Nodes.Length).Where(node => network.Nodes[node] is { HeldC: null, CapacityJPerK: > 0 }).DefaultIfEmpty(0);

    // As long as the heat of the fastest node needs for a thousandth of the way; a second where nothing is set free.
    private static double FirstStep(ThermalNetwork network, double wayK)
    {
        double fastest = network.Nodes.Where(node => node is { HeldC: null, CapacityJPerK: > 0, HeatW: > 0 }).Select(node => node.CapacityJPerK / node.HeatW).DefaultIfEmpty(1000 / wayK).Min();
        return Math.Max(1e-6, 1e-3 * wayK * fastest);
    }

    private static double[]? Advance(ThermalNetwork network, ThermalEquations equations, double[] now, double step)
    {
        double[] towards = [.. now];
        for (int stage = 0; stage < 2; stage++)
        {
            equations.Held = [.. network.Nodes.Select((node, k) => (node.CapacityJPerK / (Stage * step), towards[k]))];
            for (int node = 0; node < now.Length; node++)
            {
                equations.NodeC[node] = network.Nodes[node].HeldC ?? (stage == 0 ? now[node] : equations.NodeC[node]);
            }

            if (!ThermalSolver.Search(equations).IsFound)
            {
                return null;
            }

            if (stage == 0)
            {
                for (int node = 0; node < now.Length; node++)
                {
                    towards[node] = now[node] + ((1 - Stage) / Stage * (equations.NodeC[node] - now[node]));
                }
            }
        }

        return [.. equations.NodeC];
    }
}
