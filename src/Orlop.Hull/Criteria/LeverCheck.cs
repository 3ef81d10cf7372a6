using System.Collections.Immutable;
using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>
/// What codes ask of a curve of righting levers, read to one side. Downflooding ends areas and levers; before 30° it fails the lever and heel asked for beyond it, which is more cautious
/// than most texts.
/// </summary>
internal sealed class LeverCheck
{
    private const double DegPerRad = 180 / Math.PI;

    private readonly RightingCurve _curve;
    private readonly RightingFeatures _features;
    private readonly string _prefix;
    private readonly string _source;
    private readonly int _side;
    private readonly ImmutableArray<string> _remarks;
    private readonly ImmutableArray<string> _early;

    public LeverCheck(RightingCurve curve, string prefix, string source, ImmutableArray<string> remarks = default)
    {
        ArgumentNullException.ThrowIfNull(curve);
        (_curve, _prefix, _source) = (curve, prefix, source);
        _features = curve.Features;
        _side = curve.Input.ToDeg < 0 ? -1 : 1;
        FloodingDeg = Math.Abs(_features.DownfloodingDeg ?? double.PositiveInfinity);
        _remarks = [.. remarks.IsDefault ? [] : remarks, .. curve.Status == FloatingStatus.Floats ? ImmutableArray<string>.Empty : [curve.Message]];
        _early = FloodingDeg < 30 ? [.. _remarks, FormattableString.Invariant($"{curve.Input.Openings.First(opening => opening.Id == _features.DownfloodingOpening).Title} goes under at {FloodingDeg:0.0}°, before 30°")] : _remarks;
    }

    /// <summary>First heel at which an opening goes under; infinite when none does.</summary>
    public double FloodingDeg { get; }

    /// <summary>Heel of the greatest lever, or of downflooding before it; 0 for a boat that never rights herself; null where the curve may end short of it.</summary>
    public double? GreatestDeg
    {
        get
        {
            if (_curve.Points.IsEmpty || _curve.Status != FloatingStatus.Floats)
            {
                return null;
            }

            var heel = _features.GreatestGzDeg is { } peak ? Math.Min(Math.Abs(peak), FloodingDeg) : 0;
            return heel < Math.Abs(_curve.Input.ToDeg) || _features.VanishingDeg is not null ? heel : null;
        }
    }

    public CriterionResult Area(string id, string subject, double fromDeg, double toDeg, double least, string clause, bool isInDegrees = false)
    {
        var area = double.IsFinite(toDeg) ? _curve.AreaMRad(_side * fromDeg, _side * toDeg) * (isInDegrees ? DegPerRad : 1) : null;
        return Asked(id, subject, area, least, isInDegrees ? "m deg" : "m rad", clause, _early, FormattableString.Invariant($"∫GZ dφ from {fromDeg:0.##}° to {toDeg:0.##}°"));
    }

    public CriterionResult LeverFrom30(double leastM, string clause) =>
        Asked("lever-at-30", "greatest lever at 30° or more", GreatestFrom30(), leastM, "m", clause, _early, "greatest GZ from 30° on");

    public CriterionResult HeelOfGreatest(double leastDeg, string clause) =>
        Asked("heel-of-greatest-lever", "heel of the greatest lever", GreatestDeg, leastDeg, "°", clause, _early, "heel of the greatest GZ");

    public CriterionResult Gm(double leastM, string clause) =>
        Asked("initial-gm", "initial GM, free surfaces taken off", _curve.InitialGmM, leastM, "m", clause, _remarks, "slope of GZ upright");

    /// <summary>Righting levers from upright on to a heel; none counts beyond downflooding.</summary>
    public CriterionResult RightingTo(double leastDeg, string clause)
    {
        var reached = _curve.Points.IsEmpty ? (double?)null : Math.Abs(_curve.Points[^1].HeelDeg);
        var to = _features.LollDeg is not 0 ? 0 : _features.VanishingDeg is { } vanishing ? Math.Abs(vanishing) : reached >= leastDeg ? reached : null;
        var dry = FloodingDeg < (to ?? double.PositiveInfinity) ? FloodingDeg : to;
        return Asked("righting-to", "heel to which the levers are righting", reached is null ? null : dry, leastDeg, "°", clause, _remarks, "heel at which GZ vanishes or the first opening goes under");
    }

    /// <summary>Openings that stay dry to a heel; unknown where none is given.</summary>
    public CriterionResult DryTo(double leastDeg, string clause)
    {
        var reached = _curve.Points.IsEmpty ? (double?)null : Math.Abs(_curve.Points[^1].HeelDeg);
        var dry = _curve.Input.Openings.IsDefaultOrEmpty ? null : double.IsFinite(FloodingDeg) ? FloodingDeg : reached >= leastDeg ? reached : null;
        return Asked("downflooding", "heel of downflooding", dry, leastDeg, "°", clause, _curve.Input.Openings.IsDefaultOrEmpty ? [.. _remarks, "no opening is given"] : _remarks, "first opening to go under");
    }

    private CriterionResult Asked(string id, string subject, double? value, double least, string unit, string clause, ImmutableArray<string> remarks, string expression) =>
        CriterionResult.AtLeast(_prefix + id, subject, value, least, unit, $"{_source} {clause}".TrimEnd(), remarks, expression);

    private double? GreatestFrom30()
    {
        if (FloodingDeg < 30 && !_curve.Points.IsEmpty)
        {
            return 0;
        }

        if (_curve.At(_side * 30) is not { } first)
        {
            return null;
        }

        var peak = _features.GreatestGzDeg is { } heel && Math.Abs(heel) >= 30 && Math.Abs(heel) <= FloodingDeg ? _features.GreatestGzM!.Value : double.NegativeInfinity;
        return _curve.Points.Where(point => Math.Abs(point.HeelDeg) >= 30 && Math.Abs(point.HeelDeg) <= FloodingDeg)
            .Select(point => _side * point.GzM).Append(_side * first.GzM).Append(peak).Max();
    }
}
