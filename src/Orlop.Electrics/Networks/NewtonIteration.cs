using System.Numerics;
using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

internal enum NewtonEnd { Converged, BeyondLimit, IterationLimit }

/// <summary>
/// Newton's method on the balance of current, coming down from higher voltages. The matrix stays positive definite on the stable
/// branch, so a pivot that is not above zero shows that the iterate has no stable point below it.
/// </summary>
/// <remarks>
/// Ortega and Rheinboldt, "Iterative Solution of Nonlinear Equations in Several Variables" (1970), section 13.3 (monotone Newton
/// iterates for convex functions with an M-matrix slope).
/// </remarks>
internal sealed class NewtonIteration(PreparedNetwork network)
{
    private const int MostIterations = 80;
    private const double RelativeToleranceA = 1e-9;
    private const double RelativeStepV = 1e-6;
    private const double FarthestRatio = 100;
    private const double CollapsedRatio = 1e-6;
    private const double RoundOff = 1e-15;
    private const double LeastPivotRatio = 1e-13;

    private readonly double _sourceSumV = network.Laws.SourceV.Sum(Math.Abs);
    private readonly double[] _values = new double[network.Pattern.SlotCount];
    private readonly double[] _step = new double[network.UnknownCount];
    private readonly double[] _trial = new double[network.UnknownCount];
    private LdlFactor? _factor;
    private CancellationToken _token;

    public NetworkEquations Equations { get; } = new(network);

    /// <summary>Counted since <see cref="Begin"/>.</summary>
    public int IterationCount { get; private set; }

    public double ResidualA { get; private set; }

    public int WorstUnknown { get; private set; }

    /// <summary>Makes ready for another solve of the same network, in the memory of the last.</summary>
    public void Begin(CancellationToken token)
    {
        _token = token;
        IterationCount = 0;
    }

    /// <summary>Improves the potentials in place.</summary>
    /// <param name="isSolved">The potentials come from a direct solution, so that a balance met at once needs no step to confirm it.</param>
    public NewtonEnd Run(double[] potentials, Sinks sinks, bool isSolved = false)
    {
        Equations.Evaluate(potentials, sinks);
        var largestStepV = isSolved ? 0 : double.PositiveInfinity;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            _token.ThrowIfCancellationRequested();
            var isBalanced = MeasureResidual(potentials);
            if (isBalanced && (ResidualA == 0 || largestStepV <= RelativeStepV * _sourceSumV))
            {
                return IsEverySinkFed(potentials, sinks) ? NewtonEnd.Converged : NewtonEnd.BeyondLimit;
            }

            if (!TryFactor(out var isHolding))
            {
                // At the very limit the matrix is singular and the balance is met as well as it can be.
                return isBalanced && IsEverySinkFed(potentials, sinks) ? NewtonEnd.Converged : NewtonEnd.BeyondLimit;
            }

            IterationCount++;
            _factor!.Solve(Equations.ImbalanceA, _step);
            for (var k = 0; k < _step.Length; k++)
            {
                _step[k] = -_step[k];
            }

            var taken = new LineSearch(Equations, sinks, potentials, _step, _trial).Take(isBalanced, isHolding);
            if (!(taken > 0) || !(LargestOf(_trial) <= FarthestRatio * _sourceSumV) || IsAnySinkCollapsed(sinks))
            {
                return NewtonEnd.BeyondLimit;
            }

            _trial.CopyTo(potentials, 0);
            largestStepV = taken * LargestOf(_step);
        }

        return NewtonEnd.IterationLimit;
    }

    /// <summary>Voltages with sources holding and only resistances as loads: the start of everything.</summary>
    public void StartWithoutSinks(double[] potentials, Sinks sinks)
    {
        var none = sinks.Scaled(0);
        Equations.Evaluate(potentials, none);
        Equations.FillMatrix(_values);
        Equations.HoldAll(_values);
        _factor = network.Elimination.Factor(_values, _factor);
        if (!_factor.IsPositiveDefinite)
        {
            return;
        }

        var right = new double[potentials.Length];
        for (var source = 0; source < network.Laws.SourceV.Length; source++)
        {
            var branch = Equations.FirstSource + source;
            var nortonA = network.Laws.SourceV[source] * network.Laws.SourceS[source];
            if (network.A[branch] >= 0)
            {
                right[network.A[branch]] += nortonA;
            }

            if (network.B[branch] >= 0)
            {
                right[network.B[branch]] -= nortonA;
            }
        }

        _factor.Solve(right, potentials);
    }

    /// <summary>The factored matrix of slopes at the last potentials, or null when it is not positive definite.</summary>
    public LdlFactor? FactoredSlopes() => TryFactor(out _) ? _factor : null;

    /// <summary>
    /// Factors the slopes. Where that fails, sources at a limit in the failing part count as if they held their voltage, which makes
    /// steps short but never wrong in direction; a part that fails even so cannot carry its loads here.
    /// </summary>
    private bool TryFactor(out bool isHolding)
    {
        isHolding = false;
        Equations.FillMatrix(_values);
        _factor = network.Elimination.Factor(_values, _factor, LeastPivotRatio);
        while (_factor.FailedIndex is { } failed)
        {
            if (!Equations.TryHold(failed, _values))
            {
                return false;
            }

            isHolding = true;
            _factor = network.Elimination.Factor(_values, _factor, LeastPivotRatio);
        }

        return true;
    }

    private bool MeasureResidual(double[] potentials)
    {
        var largestA = LargestOf(Equations.CurrentA);
        WorstUnknown = 0;
        ResidualA = 0;
        for (var k = 0; k < potentials.Length; k++)
        {
            if (!(Math.Abs(Equations.ImbalanceA[k]) <= ResidualA))
            {
                ResidualA = Math.Abs(Equations.ImbalanceA[k]);
                WorstUnknown = k;
            }
        }

        var roundOffA = RoundOff * LargestOf(Equations.SlopeS) * LargestOf(potentials);
        return ResidualA <= Math.Max(RelativeToleranceA * Math.Max(1, largestA), roundOffA);
    }

    private bool IsEverySinkFed(double[] potentials, Sinks sinks)
    {
        for (var k = 0; k < sinks.Kinds.Length; k++)
        {
            if (sinks.Insists(k) && !(sinks.Signs[k] * Equations.Across(Equations.FirstSink + k, potentials) > 0))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsAnySinkCollapsed(Sinks sinks)
    {
        for (var k = 0; k < sinks.Kinds.Length; k++)
        {
            if (sinks.Kinds[k] == LoadKind.Power && sinks.Insists(k)
                && !(sinks.Signs[k] * Equations.Across(Equations.FirstSink + k, _trial) > CollapsedRatio * _sourceSumV))
            {
                return true;
            }
        }

        return false;
    }

    // A value that is no number makes the largest none either.
    private static double LargestOf(double[] values)
    {
        var largest = 0.0;
        var k = 0;
        if (values.Length >= Vector<double>.Count)
        {
            var lanes = Vector<double>.Zero;
            for (; k <= values.Length - Vector<double>.Count; k += Vector<double>.Count)
            {
                lanes = Vector.Max(lanes, Vector.Abs(new Vector<double>(values, k)));
            }

            for (var lane = 0; lane < Vector<double>.Count; lane++)
            {
                largest = Math.Max(largest, lanes[lane]);
            }
        }

        for (; k < values.Length; k++)
        {
            largest = Math.Max(largest, Math.Abs(values[k]));
        }

        return largest;
    }
}
