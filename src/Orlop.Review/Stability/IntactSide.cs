using System.Collections.Immutable;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>
/// The general criteria on one side of a boat, and how each changes with her weight: with KG and TCG by dGZ/dKG = -sin φ and dGZ/dTCG = ± cos φ at the trim she has, with displacement and LCG by
/// differences of one standard deviation.
/// </summary>
internal sealed class IntactSide
{
    private const double RadPerDeg = Math.PI / 180;
    private const double LeastStepKg = 1;
    private const double LeastStepM = 0.001;
    private const double BendStepDeg = 2;

    private readonly LoadedBoat _loaded;
    private readonly RightingCurve _curve;
    private readonly int _side;
    private readonly double _flooding;
    private readonly double? _greatest;
    private readonly Lazy<ImmutableArray<(double PerMass, double PerLcg)>> _byDifferences;

    public IntactSide(LoadedBoat loaded, RightingCurve curve)
    {
        _loaded = loaded;
        _curve = curve;
        _side = curve.Input.ToDeg < 0 ? -1 : 1;
        RightingFeatures features = RightingReading.Read(curve);
        _flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity);
        _greatest = features.GreatestGzDeg is { } heel ? Math.Abs(heel) : null;
        Criteria = GeneralCriteria.Check(curve);
        _byDifferences = new(ByDifferences);
    }

    /// <summary>1 for starboard, -1 for port.</summary>
    public int Side => _side;

    /// <summary>The criteria, in the order of the code.</summary>
    public ImmutableArray<CriterionResult> Criteria { get; }

    /// <summary>How a criterion's value changes with the weight; not a number where a neighbouring boat has none.</summary>
    public WeightSlopes SlopesOf(int index)
    {
        (double perMass, double perLcg) = _byDifferences.Value[index];
        (double perTcg, double perKg) = ByCentre(Criteria[index].Id);
        return new WeightSlopes(perMass, perLcg, perTcg, perKg);
    }

    private (double PerTcg, double PerKg) ByCentre(string criterionId) => criterionId switch
    {
        "area-to-30" => Area(0, Math.Min(30, _flooding)),
        "area-to-40" => Area(0, Math.Min(40, _flooding)),
        "area-30-to-40" => Area(Math.Min(30, _flooding), Math.Min(40, _flooding)),
        "lever-at-30" => _flooding < 30 ? (0, 0) : Lever(LeverHeelDeg),
        "heel-of-greatest-lever" => _greatest is { } heel && heel < _flooding ? HeelOfGreatest(heel) : (0, 0),
        _ => (0, -1),
    };

    private (double PerTcg, double PerKg) Area(double fromDeg, double toDeg) =>
        (_side * (Math.Sin(toDeg * RadPerDeg) - Math.Sin(fromDeg * RadPerDeg)), Math.Cos(toDeg * RadPerDeg) - Math.Cos(fromDeg * RadPerDeg));

    private (double PerTcg, double PerKg) Lever(double heelDeg) => (_side * Math.Cos(heelDeg * RadPerDeg), -Math.Sin(heelDeg * RadPerDeg));

    // The greatest lever stands where the slope is 0: it moves by the change of slope over the bend.
    private (double PerTcg, double PerKg) HeelOfGreatest(double heelDeg) =>
        (_side * Math.Sin(heelDeg * RadPerDeg) / Bend(heelDeg) / RadPerDeg, Math.Cos(heelDeg * RadPerDeg) / Bend(heelDeg) / RadPerDeg);

    private ImmutableArray<(double PerMass, double PerLcg)> ByDifferences()
    {
        FloatingInput boat = _curve.Input.Boat;
        double kg = Math.Max(LeastStepKg, _loaded.Total!.MassDeviationKg), along = Math.Max(LeastStepM, _loaded.Total.LcgDeviationM);
        double[] heavier = With(boat with { MassKg = boat.MassKg + kg }), lighter = With(boat with { MassKg = boat.MassKg - kg }), forward = With(Moved(along)), aft = With(Moved(-along));
        return [.. Enumerable.Range(0, Criteria.Length).Select(i => ((heavier[i] - lighter[i]) / (2 * kg), (forward[i] - aft[i]) / (2 * along)))];

        FloatingInput Moved(double stepM) => boat with { CentreOfGravity = boat.CentreOfGravity + new Point3(stepM, 0, 0) };
    }

    // The same areas, lever and slope at the greatest lever as this boat's, at her own heels: the heels themselves move only in the second order, but for that of the greatest lever.
    private double[] With(FloatingInput boat)
    {
        double to30 = Math.Min(30, _flooding), to40 = Math.Min(40, _flooding), peak = _greatest ?? 0;
        RightingCurve near = Levers.To(_side, boat, [], Math.Min(Levers.LastDeg, Math.Max(40, peak) + BendStepDeg));
        return [.. Criteria.Select(criterion => criterion.Id switch
        {
            "area-to-30" => near.AreaMRad(0, _side * to30),
            "area-to-40" => near.AreaMRad(0, _side * to40),
            "area-30-to-40" => near.AreaMRad(_side * to30, _side * to40),
            "lever-at-30" => _flooding < 30 ? 0 : _side * near.At(_side * LeverHeelDeg)?.GzM,
            "heel-of-greatest-lever" => peak == 0 || peak >= _flooding ? 0 : -SlopeAt(near, peak) / Bend(peak) / RadPerDeg,
            _ => near.InitialGmM,
        }).Select(value => value ?? double.NaN)];
    }

    private double LeverHeelDeg => _greatest is { } peak && peak >= 30 && peak <= _flooding ? peak : 30;

    private double? SlopeAt(RightingCurve curve, double heelDeg) =>
        _side * (curve.At(_side * (heelDeg + BendStepDeg))?.GzM - curve.At(_side * (heelDeg - BendStepDeg))?.GzM) / (2 * BendStepDeg * RadPerDeg);

    private double Bend(double heelDeg) =>
        _side * (_curve.At(_side * (heelDeg + BendStepDeg))?.GzM + _curve.At(_side * (heelDeg - BendStepDeg))?.GzM - (2 * _curve.At(_side * heelDeg)?.GzM)) / Math.Pow(BendStepDeg * RadPerDeg, 2) is { } bend and < 0
            ? bend
            : double.NaN;
}
