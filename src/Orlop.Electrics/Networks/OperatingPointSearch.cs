namespace Orlop.Electrics.Networks;

/// <summary>
/// Finds the operating point on the stable upper branch, first in one go from the unloaded network, then by raising what the loads ask
/// step by step; a network that cannot deliver is told from one that was hard to solve.
/// </summary>
internal sealed class OperatingPointSearch
{
    private const double LeastPart = 1e-4;
    private const double DeadVoltageRatio = 1e-9;

    private readonly PreparedNetwork _network;
    private readonly NewtonIteration _newton;
    private readonly Sinks _sinks;
    private readonly IProgress<double>? _progress;
    private readonly double[] _unloaded;

    private OperatingPointSearch(PreparedNetwork network, NewtonIteration newton, Sinks sinks, IProgress<double>? progress)
    {
        _network = network;
        _newton = newton;
        _sinks = sinks;
        _progress = progress;
        _unloaded = new double[network.UnknownCount];
    }

    public static NetworkResult Run(PreparedNetwork network, Sinks sinks, CancellationToken token, IProgress<double>? progress)
    {
        var newton = network.Borrow();
        newton.Begin(token);
        var result = new OperatingPointSearch(network, newton, sinks, progress).Run();
        network.GiveBack(newton);
        return result;
    }

    private NetworkResult Run()
    {
        _newton.StartWithoutSinks(_unloaded, _sinks);
        if (_newton.Run(_unloaded, _sinks.Scaled(0), isSolved: true) != NewtonEnd.Converged)
        {
            return Ended(SolveStatus.NotConverged);
        }

        if (_newton.Equations.Molten() is { } unloaded)
        {
            return Ended(SolveStatus.NoOperatingPoint, Shortfalls().OfMolten(unloaded, _unloaded));
        }

        _progress?.Report(0.1);
        if (TakeSigns() is { } dead)
        {
            return Ended(SolveStatus.NoOperatingPoint, Shortfalls().Of(dead, _unloaded));
        }

        var potentials = (double[])_unloaded.Clone();
        var served = 1.0;
        var end = _newton.Run(potentials, _sinks);
        if (end != NewtonEnd.Converged)
        {
            (end, served) = RaiseStepByStep(potentials);
        }

        _progress?.Report(1);
        if (end == NewtonEnd.Converged && _newton.Equations.Molten() is { } conductor)
        {
            return Ended(SolveStatus.NoOperatingPoint, Shortfalls().OfMolten(conductor, potentials));
        }

        return end switch
        {
            NewtonEnd.Converged => Ended(SolveStatus.Converged) with { Point = new OperatingPointReport(_network, _newton.Equations, potentials).Build() },
            NewtonEnd.BeyondLimit when Shortfalls().AtLimit(potentials, served) is { } shortfall => Ended(SolveStatus.NoOperatingPoint, shortfall),
            _ => Ended(SolveStatus.NotConverged),
        };
    }

    /// <summary>Which way round each sink is wired; the first that has no voltage at all, if one has none.</summary>
    private int? TakeSigns()
    {
        var leastV = DeadVoltageRatio * _network.Laws.SourceV.DefaultIfEmpty(0).Max();
        for (var sink = 0; sink < _sinks.Signs.Length; sink++)
        {
            var voltageV = _newton.Equations.Across(_newton.Equations.FirstSink + sink, _unloaded);
            _sinks.Signs[sink] = voltageV < 0 ? -1 : 1;
            if (_sinks.Insists(sink) && Math.Abs(voltageV) <= leastV)
            {
                return sink;
            }
        }

        return null;
    }

    /// <summary>Continuation in the part of its demand that every load gets. The potentials end at the last part that could be served.</summary>
    private (NewtonEnd End, double ServedPart) RaiseStepByStep(double[] potentials)
    {
        var (served, increment) = (0.0, 0.5);
        var last = NewtonEnd.BeyondLimit;
        _unloaded.CopyTo(potentials, 0);
        while (served < 1)
        {
            var part = Math.Min(1, served + increment);
            var trial = (double[])potentials.Clone();
            var end = _newton.Run(trial, part < 1 ? _sinks.Scaled(part) : _sinks);
            if (end == NewtonEnd.Converged)
            {
                served = part;
                trial.CopyTo(potentials, 0);
                _progress?.Report(0.1 + (0.8 * served));
                continue;
            }

            last = end;
            increment /= 2;
            if (increment < LeastPart)
            {
                return (last, served);
            }
        }

        return (NewtonEnd.Converged, served);
    }

    private ShortfallSearch Shortfalls() => new(_network, _newton, _sinks, _unloaded);

    private NetworkResult Ended(SolveStatus status, Shortfall? shortfall = null) => new()
    {
        Status = status,
        Shortfall = shortfall,
        IterationCount = _newton.IterationCount,
        ResidualA = _newton.ResidualA,
        WorstNode = NameOf(_newton.WorstUnknown),
    };

    private string? NameOf(int unknown)
    {
        var junction = Array.IndexOf(_network.UnknownOfJunction, unknown);
        return junction < 0 ? null : _network.Wiring.NodeNames[Array.IndexOf(_network.Wiring.JunctionOfNode, junction)];
    }
}
