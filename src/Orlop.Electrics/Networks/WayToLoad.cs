using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>
/// Shares of the resistance between a load and its sources: a unit current through the load meets each element with its share of the loss (eq. 11).
/// </summary>
internal sealed class WayToLoad(PreparedNetwork network, NetworkEquations equations, Sinks sinks)
{
    private const double LeastFraction = 0.01;
    private const int MostElements = 8;

    public ImmutableArray<LimitingElement> Elements(int sink, double[] potentials)
    {
        equations.Evaluate(potentials, sinks);
        var values = new double[network.Pattern.SlotCount];
        var conductanceS = new double[network.A.Length];
        for (var k = 0; k < conductanceS.Length; k++)
        {
            conductanceS[k] = k == equations.FirstSink + sink ? 0 : ConductanceS(k, potentials);
            equations.Stamp(values, k, conductanceS[k]);
        }

        var factor = network.Elimination.Factor(values);
        if (!factor.IsPositiveDefinite)
        {
            return [];
        }

        var response = UnitCurrent(equations.FirstSink + sink);
        factor.Solve(response, response);
        var losses = new double[equations.FirstSink];
        for (var k = 0; k < losses.Length; k++)
        {
            var across = equations.Across(k, response);
            losses[k] = conductanceS[k] * across * across;
        }

        var total = losses.Sum();
        return !(total > 0)
            ? []
            : [.. losses.Select((loss, k) => new LimitingElement(network.Wiring.IdOf(network.Wiring.Branches[k]), loss / total))
                .Where(e => e.LossFraction >= LeastFraction)
                .OrderByDescending(e => e.LossFraction).ThenBy(e => e.Id, StringComparer.Ordinal)
                .Take(MostElements)];
    }

    private double[] UnitCurrent(int branch)
    {
        var unit = new double[network.UnknownCount];
        if (network.A[branch] >= 0)
        {
            unit[network.A[branch]] += 1;
        }

        if (network.B[branch] >= 0)
        {
            unit[network.B[branch]] -= 1;
        }

        return unit;
    }

    private double ConductanceS(int branch, double[] potentials)
    {
        if (branch < network.Wiring.Start(BranchKind.Contact))
        {
            var voltageV = equations.Across(branch, potentials);
            return voltageV == 0 ? 1 / network.Laws.ConductorOhm[branch] : equations.CurrentA[branch] / voltageV;
        }

        if (branch < equations.FirstSource)
        {
            return equations.SlopeS[branch];
        }

        if (branch < equations.FirstSink)
        {
            return network.Laws.SourceS[branch - equations.FirstSource];
        }

        var sink = branch - equations.FirstSink;
        return sinks.Kinds[sink] == LoadKind.Resistance ? 1 / sinks.Amounts[sink] : 0;
    }
}
