using System.Collections.Immutable;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Starts;

/// <summary>
/// A start in time: two-stage diagonally implicit Runge-Kutta of second order, L-stable and stiffly accurate (Alexander 1977), each stage one steady network. Equations and limits of use: docs/engines/starts.md.
/// </summary>
public sealed class StartStudy
{
    private const double Diagonal = 0.29289321881345247; // 1 − √½
    private const double LeastStepFraction = 1e-9;
    private const double MostStepFraction = 0.05;
    private const double FirstStepFraction = 0.02;

    private readonly StartInput _input;
    private readonly StoreCircuit _circuit;
    private readonly StartMeter _meter;
    private readonly CancellationToken _token;
    private readonly ImmutableArray<StartMoment>.Builder _moments = ImmutableArray.CreateBuilder<StartMoment>();
    private double[] _heldV;
    private double _timeS;

    private StartStudy(StartInput input, CancellationToken token)
    {
        _input = input;
        _token = token;
        _circuit = new StoreCircuit(input);
        _meter = new StartMeter(input.Stores);
        _heldV = [.. input.Stores.Select(store => store.InitialV)];
    }

    /// <summary>Goes through a start. A network with faults or without an operating point is a result that says so.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Horizon, tolerance, step or a starting current is outside its range.</exception>
    public static StartResult Run(StartInput input, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.HorizonS, 3600, "s", "start");
        Guard.Positive(input.ToleranceV, 1e3, "V", "start");
        Guard.Positive(input.StepS ?? 1, 3600, "s", "start");
        foreach (var current in input.Currents)
        {
            Guard.Positive(current.LastsS, 3600, "s", current.Id);
        }

        var before = NetworkSolver.Solve(input.Network, token);
        return before.Point is null
            ? new StartResult { Status = before.Status, Shortfall = before.Shortfall, Faults = before.Faults }
            : new StartStudy(input, token).Run() with { Before = before.Point };
    }

    private StartResult Run()
    {
        if (!_circuit.Faults.IsEmpty)
        {
            return new StartResult { Status = SolveStatus.FaultyNetwork, Faults = _circuit.Faults };
        }

        var ends = _input.Currents.Select(current => current.LastsS).Where(end => end < _input.HorizonS).Append(_input.HorizonS).Distinct().Order();
        var stepS = FirstStepS();
        foreach (var endS in ends)
        {
            var isOn = _input.Currents.Select(current => current.LastsS > _timeS).ToArray();
            var now = StoreStage.Solve(_circuit, _input.Stores, _heldV, 0, isOn, _token);
            if (now.Network.Point is null)
            {
                return Ended(now.Network);
            }

            _moments.Add(now.At(_timeS, _input.Stores));
            if (GoTo(endS, ref stepS, isOn) is { } failure)
            {
                return Ended(failure);
            }
        }

        return new StartResult { Status = SolveStatus.Converged, Moments = _moments.ToImmutable(), EndedS = _timeS, Energy = _meter.Read(_heldV) };
    }

    /// <summary>Steps to a time; the network that has no operating point where it cannot.</summary>
    private NetworkResult? GoTo(double endS, ref double stepS, bool[] isOn)
    {
        while (_timeS < endS)
        {
            var takenS = Math.Min(stepS, endS - _timeS);
            var first = StoreStage.Solve(_circuit, _input.Stores, _heldV, Diagonal * takenS, isOn, _token);
            var second = first.Network.Point is null ? first : Second(first, takenS, isOn);
            if (second.Network.Point is null)
            {
                if (_input.StepS is not null || takenS <= LeastStepFraction * _input.HorizonS)
                {
                    return second.Network;
                }

                stepS = takenS / 4;
                continue;
            }

            var errorV = ErrorV(first, second, takenS);
            if (_input.StepS is null && errorV > _input.ToleranceV && takenS > LeastStepFraction * _input.HorizonS)
            {
                stepS = takenS * Growth(errorV);
                continue;
            }

            Accept(first, second, takenS, endS);
            stepS = _input.StepS ?? Math.Min(MostStepFraction * _input.HorizonS, Math.Max(stepS, takenS) * Growth(errorV));
        }

        return null;
    }

    private StoreStage Second(StoreStage first, double stepS, bool[] isOn)
    {
        var baseV = new double[_heldV.Length];
        for (var k = 0; k < baseV.Length; k++)
        {
            baseV[k] = _heldV[k] + ((1 - Diagonal) * stepS * first.SlopeVPerS[k]);
        }

        return StoreStage.Solve(_circuit, _input.Stores, baseV, Diagonal * stepS, isOn, _token);
    }

    private void Accept(StoreStage first, StoreStage second, double stepS, double endS)
    {
        _meter.Add(first, (1 - Diagonal) * stepS);
        _meter.Add(second, Diagonal * stepS);
        _heldV = second.HeldV;
        _timeS = stepS >= endS - _timeS ? endS : _timeS + stepS;
        _moments.Add(second.At(_timeS, _input.Stores));
    }

    // Against the first-order step with the first stage's slope alone.
    private static double ErrorV(StoreStage first, StoreStage second, double stepS)
    {
        var most = 0.0;
        for (var k = 0; k < first.SlopeVPerS.Length; k++)
        {
            most = Math.Max(most, Diagonal * stepS * Math.Abs(second.SlopeVPerS[k] - first.SlopeVPerS[k]));
        }

        return most;
    }

    private double Growth(double errorV) => errorV == 0 ? 2.5 : Math.Clamp(0.9 * Math.Sqrt(_input.ToleranceV / errorV), 0.2, 2.5);

    private double FirstStepS() => _input.StepS ?? _input.Stores
        .Select(store => FirstStepFraction * store.SeriesOhm * store.CapacitanceF).Append(FirstStepFraction * _input.HorizonS).Min();

    private StartResult Ended(NetworkResult why) => new()
    {
        Status = why.Status,
        Shortfall = why.Shortfall,
        Faults = why.Faults,
        Moments = _moments.ToImmutable(),
        EndedS = _timeS,
    };
}
