namespace Orlop.Electrics.Networks;

/// <summary>
/// Which load pulls the network down, the most it could get, and what stands in the way. The load is turned into a fixed current,
/// which has no turning point: its power is greatest where its voltage equals its current times the slope of the network (eq. 10).
/// </summary>
internal sealed class ShortfallSearch(PreparedNetwork network, NewtonIteration newton, Sinks sinks, double[] unloaded)
{
    private const int MostTrials = 80;
    private const double Precision = 1e-10;
    private const double AlikeRatio = 1e-6;

    private readonly record struct Trial(bool IsFed, double VoltageV, double SlopeOhm);

    /// <summary>The shortfall of the load with the largest part in the collapse where the last part of the demand was served; null when it could be served after all.</summary>
    public Shortfall? AtLimit(double[] potentials, double servedPart)
    {
        var shortfall = Of(LargestPartInCollapse(potentials, servedPart), potentials);
        return shortfall.MostW < shortfall.AskedW ? shortfall : null;
    }

    /// <summary>The shortfall of the load that drives most current through a conductor hotter than melting copper; of the conductor itself when no load does.</summary>
    public Shortfall OfMolten(int conductor, double[] potentials)
    {
        var equations = newton.Equations;
        var ends = new double[potentials.Length];
        Inject(ends, conductor, 1);
        var response = new double[potentials.Length];
        newton.FactoredSlopes()?.Solve(ends, response);
        var (hottest, most) = (-1, 0.0);
        for (var sink = 0; sink < sinks.Signs.Length; sink++)
        {
            var branch = equations.FirstSink + sink;
            var driven = Math.Abs(equations.CurrentA[branch] * equations.Across(branch, response));
            if (driven > most * (1 + AlikeRatio))
            {
                (hottest, most) = (sink, driven);
            }
        }

        var id = network.Wiring.Conductors[conductor].Id;
        return hottest >= 0 ? Of(hottest, potentials) : new Shortfall(id, 0, 0, 0, [new LimitingElement(id, 1)]);
    }

    /// <summary>The shortfall of one load.</summary>
    public Shortfall Of(int sink, double[] potentials)
    {
        var id = network.Wiring.IdOf(network.Wiring.Branches[newton.Equations.FirstSink + sink]);
        var askedW = AskedW(sink, potentials);
        var (currentA, voltageV) = GreatestPower(sink);
        var at = (double[])potentials.Clone();
        if (!TryCurrent(sink, currentA, at).IsFed)
        {
            potentials.CopyTo(at, 0);
        }

        return new Shortfall(id, askedW, currentA * voltageV, voltageV, new WayToLoad(network, newton.Equations, sinks).Elements(sink, at));
    }

    private double AskedW(int sink, double[] potentials)
    {
        var unloadedV = Math.Abs(newton.Equations.Across(newton.Equations.FirstSink + sink, unloaded));
        if (sinks.FollowsConverter[sink])
        {
            return ConverterAskedW(sink, potentials);
        }

        return sinks.Kinds[sink] switch
        {
            LoadKind.Current => sinks.Amounts[sink] * unloadedV,
            LoadKind.Resistance => unloadedV * unloadedV / sinks.Amounts[sink],
            _ => sinks.Amounts[sink],
        };
    }

    /// <summary>What a converter's input asks with its output loaded in full; or as far as it was last served, when the others alone are too much.</summary>
    private double ConverterAskedW(int sink, double[] potentials)
    {
        var at = (double[])unloaded.Clone();
        if (!TryCurrent(sink, 0, at).IsFed)
        {
            at = potentials;
            newton.Equations.Evaluate(at, sinks);
        }

        var converter = sink - network.Wiring.Loads.Length;
        return BranchLaws.ConverterInputW(network.Wiring.Converters[converter], newton.Equations.ConverterOutputW(converter, at));
    }

    /// <summary>
    /// J loses its definiteness through the terms -P/u² of the loads; each load's part is P (Δu/u)², with Δu the fall when all ask more.
    /// </summary>
    private int LargestPartInCollapse(double[] potentials, double servedPart)
    {
        var equations = newton.Equations;
        equations.Evaluate(potentials, sinks.Scaled(servedPart));
        var demandA = new double[potentials.Length];
        var insisting = Enumerable.Range(0, sinks.Signs.Length).Where(sinks.Insists).ToArray();
        foreach (var sink in insisting)
        {
            Inject(demandA, equations.FirstSink + sink, equations.CurrentA[equations.FirstSink + sink]);
        }

        var fall = new double[potentials.Length];
        newton.FactoredSlopes()?.Solve(demandA, fall);
        return insisting.MaxBy(sink =>
        {
            var branch = equations.FirstSink + sink;
            var powerV = equations.Across(branch, sinks.Kinds[sink] == LoadKind.Current ? unloaded : potentials);
            var ratio = equations.Across(branch, fall) / equations.Across(branch, potentials);
            return Math.Abs(equations.CurrentA[branch] * powerV) * ratio * ratio;
        });
    }

    private (double CurrentA, double VoltageV) GreatestPower(int sink)
    {
        var at = (double[])unloaded.Clone();
        var (low, high) = (0.0, double.PositiveInfinity);
        var (bestA, bestV) = (0.0, 0.0);
        var currentA = 0.0;
        for (var count = 0; count < MostTrials; count++)
        {
            var start = (double[])at.Clone();
            var trial = TryCurrent(sink, currentA, start);
            var excessV = trial.VoltageV - (currentA * trial.SlopeOhm);
            if (trial.IsFed && currentA * trial.VoltageV >= bestA * bestV)
            {
                (bestA, bestV) = (currentA, trial.VoltageV);
            }

            if (!trial.IsFed && currentA == 0)
            {
                return (0, 0);
            }

            if (trial.IsFed && excessV >= 0)
            {
                low = currentA;
                start.CopyTo(at, 0);
            }
            else
            {
                high = currentA;
            }

            if ((trial.IsFed && Math.Abs(excessV) <= Precision * trial.VoltageV) || (double.IsFinite(high) && high - low <= Precision * high))
            {
                break;
            }

            var next = trial.IsFed ? currentA + (excessV / (2 * trial.SlopeOhm)) : double.NaN;
            currentA = next > low && next < high ? next : 0.5 * (low + high);
        }

        return (bestA, bestV);
    }

    private Trial TryCurrent(int sink, double currentA, double[] potentials)
    {
        var changed = sinks.WithCurrent(sink, currentA);
        if (newton.Run(potentials, changed) != NewtonEnd.Converged || newton.Equations.Molten() is not null || newton.FactoredSlopes() is not { } slopes)
        {
            return default;
        }

        var unit = new double[potentials.Length];
        Inject(unit, newton.Equations.FirstSink + sink, 1);
        var response = new double[potentials.Length];
        slopes.Solve(unit, response);
        var branch = newton.Equations.FirstSink + sink;
        return new Trial(true, Math.Abs(newton.Equations.Across(branch, potentials)), newton.Equations.Across(branch, response));
    }

    private void Inject(double[] currents, int branch, double currentA)
    {
        if (network.A[branch] >= 0)
        {
            currents[network.A[branch]] += currentA;
        }

        if (network.B[branch] >= 0)
        {
            currents[network.B[branch]] -= currentA;
        }
    }
}
