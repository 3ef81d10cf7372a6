using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>
/// The temperatures at which every node of a thermal network loses what it gets: Newton's steps, shortened until the balance gets better. Ends with a balance to
/// 1e-9 of the heat that flows, or says why there is none.
/// </summary>
public static class ThermalSolver
{
    /// <summary>Beyond this no law here is valid, and insulation is gone.</summary>
    public const double HottestC = 400;

    private const double WantedFraction = 1e-12;
    private const double AllowedFraction = 1e-9;
    // Less heat than this is nothing: what a balance lacks is told over no less.
    private const double LeastFlowW = 1e-3;
    private const double ColderK = 1e-6;
    private const double LongestStepK = 60;
    private const int MostSteps = 200;

    /// <summary>The steady state.</summary>
    /// <param name="startC">Temperatures to begin from, a node each; left out, a kelvin over the warmest that is held.</param>
    public static ThermalState Steady(ThermalNetwork network, ImmutableArray<double> startC = default)
    {
        ArgumentNullException.ThrowIfNull(network);
        if (network.Nodes.IsEmpty)
        {
            return new ThermalState([], null, 0, 0);
        }

        if (ThermalChecks.WhyNot(network) is { } why)
        {
            return ThermalState.None(why);
        }

        ThermalEquations equations = new(network);
        if (!startC.IsDefault)
        {
            for (int node = 0; node < equations.NodeC.Length; node++)
            {
                equations.NodeC[node] = network.Nodes[node].HeldC ?? startC[node];
            }
        }

        (bool isFound, double imbalance, int steps) = Search(equations);
        // What sets heat free is nowhere colder than all around it: such an answer is that of a loss which outgrew what carries it away.
        double coldest = network.Nodes.Select(node => node.HeldC).OfType<double>().DefaultIfEmpty(0).Min();
        if (!isFound || equations.NodeC.Min() < coldest - ColderK)
        {
            return ThermalState.None("it never comes to rest below 400 °C: more heat is set free than is lost", steps);
        }

        return equations.NodeC.Max() > HottestC
            ? ThermalState.None("it gets hotter than 400 °C, beyond what can be reckoned", steps)
            : new ThermalState([.. equations.NodeC], null, imbalance, steps);
    }

    /// <summary>Brings the equations to balance.</summary>
    internal static (bool IsFound, double ImbalanceFraction, int StepCount) Search(ThermalEquations equations)
    {
        double worst = equations.Balance();
        int steps = 0;
        while (steps < MostSteps && !IsBalanced(worst, equations, WantedFraction))
        {
            if (equations.Step() is not { } step)
            {
                break;
            }

            steps++;
            double longest = step.Max(Math.Abs);
            double share = longest > LongestStepK ? LongestStepK / longest : 1, before = worst;
            equations.Move(step, share);
            worst = equations.Balance();
            for (int halving = 0; halving < 30 && !(worst < before); halving++)
            {
                equations.Move(step, -share / 2);
                share /= 2;
                worst = equations.Balance();
            }

            if (!(worst < before) || equations.NodeC.Max() > 10 * HottestC)
            {
                break;
            }
        }

        return (IsBalanced(worst, equations, AllowedFraction), worst / Math.Max(LeastFlowW, equations.FlowW), steps);
    }

    private static bool IsBalanced(double worst, ThermalEquations equations, double fraction) => worst <= fraction * Math.Max(LeastFlowW, equations.FlowW);
}
