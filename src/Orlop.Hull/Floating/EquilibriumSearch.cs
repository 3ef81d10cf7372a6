using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Floating;

/// <summary>Where a search ended: draught in m, trim and heel in rad.</summary>
internal readonly record struct SearchEnd(bool IsFound, bool IsStable, double Draught, double Trim, double Heel, EnergyAt State, int StepCount, double Residual);

/// <summary>
/// Finds a floating position by going downhill on the energy: Newton with exact second derivatives, shifted where the boat is not stable, steps bounded and halved until the
/// energy falls. What it finds is where the boat would come to rest, never a balance on a point; a boat that starts in such a balance is nudged to starboard.
/// </summary>
internal sealed class EquilibriumSearch
{
    /// <summary>Greatest residual, as a share of the mass, and of the mass times length or breadth.</summary>
    private const double Tolerance = 1e-11;

    /// <summary>Accepted when rounding leaves nothing to gain.</summary>
    private const double NearTolerance = 1e-8;

    private const int MostSteps = 200;
    private const int MostHalvings = 30;
    private const double Nudge = 0.01;
    private const double MostTurn = 0.15;
    private const double MostTrim = 1.5;

    private readonly FloatingEnergy _energy;
    private readonly double _length;
    private readonly double _breadth;
    private readonly double _height;

    public EquilibriumSearch(FloatingEnergy energy)
    {
        _energy = energy;
        _length = energy.Size.XM;
        _breadth = energy.Size.YM;
        _height = energy.Size.ZM;
    }

    public SearchEnd From(double draught, double trim, double heel, Freedom freedom)
    {
        var count = (int)freedom;
        Span<double> gradient = stackalloc double[3];
        Span<double> hessian = stackalloc double[9];
        Span<double> step = stackalloc double[3];
        Span<double> sizes = stackalloc double[3];
        var area = Math.Max(_length * _breadth, 1e-12) * _energy.WaterKgPerM3;
        sizes[0] = area;
        sizes[1] = area * _length * _length / 12;
        sizes[2] = area * _breadth * _breadth / 12;
        var state = _energy.At(WaterPlane.OfRadians(draught, trim, heel));
        var nudges = 0;
        for (var stepCount = 0; ; stepCount++)
        {
            Fill(state, gradient, hessian);
            var residual = Residual(gradient[..count]);
            var isThere = residual <= Tolerance;
            if (isThere && nudges < 3 && count > 1 && !NewtonStep.IsStable(hessian, sizes, count))
            {
                nudges++;
                heel += count == 3 ? Nudge : 0;
                trim += count == 3 ? 0 : Nudge / 10;
                state = _energy.At(WaterPlane.OfRadians(draught, trim, heel));
                continue;
            }

            if (isThere || stepCount >= MostSteps || !double.IsFinite(residual) || Math.Abs(trim) > MostTrim
                || !NewtonStep.TryFind(hessian, gradient[..count], sizes, step)
                || !Descend(ref draught, ref trim, ref heel, ref state, gradient[..count], step))
            {
                var isNear = residual <= NearTolerance;
                return new SearchEnd(isNear, isNear && NewtonStep.IsStable(hessian, sizes, count), draught, trim, heel, state, stepCount, residual);
            }
        }
    }

    // False when no lower energy can be told apart from rounding.
    private bool Descend(ref double draught, ref double trim, ref double heel, ref EnergyAt state, ReadOnlySpan<double> gradient, ReadOnlySpan<double> step)
    {
        var count = gradient.Length;
        var (stepTrim, stepHeel) = (count > 1 ? step[1] : 0, count > 2 ? step[2] : 0);
        var share = Math.Min(1, 1 / Math.Max(Math.Abs(step[0]) / (0.25 * _height), Math.Max(Math.Abs(stepTrim), Math.Abs(stepHeel)) / MostTurn));
        var slope = 0.0;
        for (var i = 0; i < count; i++)
        {
            slope += gradient[i] * step[i];
        }

        var rounding = 1e-14 * _energy.MassKg * (_height + _breadth + Math.Abs(draught));
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            var (nextDraught, nextTrim, nextHeel) = (draught + (share * step[0]), trim + (share * stepTrim), heel + (share * stepHeel));
            var next = _energy.At(WaterPlane.OfRadians(nextDraught, nextTrim, nextHeel));
            if (next.Energy <= state.Energy + (1e-4 * share * slope) + rounding)
            {
                (draught, trim, heel, state) = (nextDraught, nextTrim, nextHeel, next);
                return true;
            }

            share *= 0.5;
        }

        return false;
    }

    private double Residual(ReadOnlySpan<double> gradient)
    {
        var mass = _energy.MassKg;
        var residual = Math.Abs(gradient[0]) / mass;
        if (gradient.Length > 1)
        {
            residual = Math.Max(residual, Math.Abs(gradient[1]) / (mass * _length));
        }

        return gradient.Length > 2 ? Math.Max(residual, Math.Abs(gradient[2]) / (mass * _breadth)) : residual;
    }

    private static void Fill(in EnergyAt state, Span<double> gradient, Span<double> hessian)
    {
        gradient[0] = state.OfDraught;
        gradient[1] = state.OfTrim;
        gradient[2] = state.OfHeel;
        hessian[0] = state.DraughtDraught;
        hessian[3] = state.DraughtTrim;
        hessian[4] = state.TrimTrim;
        hessian[6] = state.DraughtHeel;
        hessian[7] = state.TrimHeel;
        hessian[8] = state.HeelHeel;
    }
}
