namespace Orlop.Electrics.Networks;

/// <summary>
/// How far to go along a step: the whole of it unless a load's voltage would vanish or the imbalance along the step shows that a source
/// changed its way of working in between.
/// </summary>
internal sealed class LineSearch(NetworkEquations equations, Sinks sinks, double[] from, double[] step, double[] trial)
{
    private const double OvershootRatio = 0.3;
    private const double UndershootRatio = 0.3;
    private const double LeastVoltageRatio = 0.1;
    private const int MostTrials = 60;

    /// <summary>Evaluates the equations at the point chosen, which is left in the trial array; returns the part of the step taken.</summary>
    /// <param name="isBalanced">Whether the balance is met already, so that what is left along the step is round-off.</param>
    /// <param name="mayExtend">Whether the step is known to be short, so that it may be stretched.</param>
    public double Take(bool isBalanced, bool mayExtend)
    {
        var slopeAtStart = AlongStep();
        var most = MostWithinReach();
        var part = Math.Min(1, most);
        var slope = At(part);
        if (isBalanced)
        {
            return part;
        }

        var (low, high) = (0.0, double.PositiveInfinity);
        for (var trialCount = 0; trialCount < MostTrials; trialCount++)
        {
            if (slope > OvershootRatio * -slopeAtStart)
            {
                high = part;
                part = 0.5 * (low + high);
            }
            else if (mayExtend && slope < UndershootRatio * slopeAtStart && part < most)
            {
                low = part;
                part = double.IsPositiveInfinity(high) ? Math.Min(2 * part, most) : 0.5 * (low + high);
            }
            else
            {
                return part;
            }

            slope = At(part);
        }

        return part;
    }

    private double At(double part)
    {
        for (var k = 0; k < from.Length; k++)
        {
            trial[k] = from[k] + (part * step[k]);
        }

        equations.Evaluate(trial, sinks);
        return AlongStep();
    }

    private double AlongStep()
    {
        var sum = 0.0;
        for (var k = 0; k < step.Length; k++)
        {
            sum += equations.ImbalanceA[k] * step[k];
        }

        return sum;
    }

    /// <summary>The part of the step that leaves every load of constant power a tenth of its voltage.</summary>
    private double MostWithinReach()
    {
        var most = double.PositiveInfinity;
        for (var k = 0; k < sinks.Kinds.Length; k++)
        {
            if (sinks.Kinds[k] != LoadKind.Power || !(sinks.Amounts[k] > 0))
            {
                continue;
            }

            var before = sinks.Signs[k] * equations.Across(equations.FirstSink + k, from);
            var change = sinks.Signs[k] * equations.Across(equations.FirstSink + k, step);
            if (change < 0)
            {
                most = Math.Min(most, (1 - LeastVoltageRatio) * before / -change);
            }
        }

        return most;
    }
}
