using System.Collections.Immutable;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>
/// The general criteria on one side of a boat, and how each changes with her weight: areas and levers by their own exact slopes, the heel of the greatest lever by the change of the slope there over the
/// bend, and GM by differences of one standard deviation.
/// </summary>
internal sealed class IntactSide
{
    private const double RadPerDeg = Math.PI / 180;
    private const double BendStepDeg = 0.25;

    private static readonly WeightSlopes None = new(0, 0, 0, 0);

    private readonly LoadedBoat _loaded;
    private readonly RightingCurve _curve;
    private readonly int _side;
    private readonly double _flooding;
    private readonly double? _greatest;

    public IntactSide(LoadedBoat loaded, RightingCurve curve)
    {
        _loaded = loaded;
        _curve = curve;
        _side = curve.Input.ToDeg < 0 ? -1 : 1;
        _flooding = Math.Abs(curve.Features.DownfloodingDeg ?? double.PositiveInfinity);
        _greatest = curve.Features.GreatestGzDeg is { } heel ? Math.Abs(heel) : null;
        Criteria = GeneralCriteria.Check(curve);
    }

    /// <summary>1 for starboard, -1 for port.</summary>
    public int Side => _side;

    /// <summary>The criteria, in the order of the code.</summary>
    public ImmutableArray<CriterionResult> Criteria { get; }

    /// <summary>How a criterion's value changes with the weight; not a number where the curve has none.</summary>
    public WeightSlopes SlopesOf(int index) => Criteria[index].Id switch
    {
        "area-to-30" => Area(0, Math.Min(30, _flooding)),
        "area-to-40" => Area(0, Math.Min(40, _flooding)),
        "area-30-to-40" => Area(Math.Min(30, _flooding), Math.Min(40, _flooding)),
        "lever-at-30" => _flooding < 30 ? None : At(LeverHeelDeg) is { } point ? _side * point.GzSlopes : WeightSlopes.Untold,
        "heel-of-greatest-lever" => _greatest is { } heel && heel < _flooding ? HeelOfGreatest(heel) : None,
        _ => ResultDeviation.SlopesOf(_loaded, boat => RightingCurve.Calculate(_curve.Input with { Boat = boat, ToDeg = 0 }).InitialGmM) ?? WeightSlopes.Untold,
    };

    private double LeverHeelDeg => _greatest is { } peak && peak >= 30 && peak <= _flooding ? peak : 30;

    private WeightSlopes Area(double fromDeg, double toDeg) => _curve.AreaSlopes(_side * fromDeg, _side * toDeg) ?? WeightSlopes.Untold;

    // The greatest lever stands where the slope is 0: it moves by the change of slope over the bend.
    private WeightSlopes HeelOfGreatest(double heelDeg)
    {
        if (At(heelDeg - BendStepDeg) is not { } before || At(heelDeg) is not { } peak || At(heelDeg + BendStepDeg) is not { } after)
        {
            return WeightSlopes.Untold;
        }

        double step = BendStepDeg * RadPerDeg;
        double bend = _side * (after.GzM + before.GzM - (2 * peak.GzM)) / (step * step);
        return bend < 0 ? -_side / (2 * step * bend * RadPerDeg) * (after.GzSlopes - before.GzSlopes) : WeightSlopes.Untold;
    }

    private RightingPoint? At(double heelDeg) => _curve.At(_side * heelDeg);
}
