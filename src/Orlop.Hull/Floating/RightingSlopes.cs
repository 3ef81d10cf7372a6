using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>
/// How a righting lever and the rise of G over B change with the weight at a held heel, exactly: draught and trim follow by the implicit function theorem, [dd dt; dt tt]·q' = -∂(d, t)/∂p,
/// and the energy, being least in both, by its own change alone (envelope theorem). Not a number where the balance is not steady.
/// </summary>
internal readonly struct RightingSlopes
{
    private readonly EnergyAt _state;
    private readonly WaterPlane _plane;
    private readonly double _massKg;
    private readonly bool _isTrimFree;

    public RightingSlopes(in SearchEnd end, double massKg, bool isTrimFree)
    {
        _state = end.State;
        _plane = WaterPlane.OfRadians(end.Draught, end.Trim, end.Heel);
        _massKg = massKg;
        _isTrimFree = isTrimFree;
    }

    /// <summary>Of the lever.</summary>
    /// <param name="dryKg">Mass without tank liquids.</param>
    /// <param name="centre">Its centre.</param>
    public WeightSlopes Lever(double dryKg, Point3 centre)
    {
        var (along, across) = (_plane.Along, _plane.CosTrim * _plane.Across);
        var lever = _state.OfHeel / (_plane.CosTrim * _massKg);
        return new WeightSlopes(
            Lever(-1, along.Dot(centre), across.Dot(centre)) - (lever / _massKg),
            Lever(0, dryKg * along.XM, dryKg * across.XM),
            Lever(0, dryKg * along.YM, dryKg * across.YM),
            Lever(0, dryKg * along.ZM, dryKg * across.ZM));
    }

    /// <summary>Of the energy over gravity at this attitude.</summary>
    public WeightSlopes Energy(double dryKg, Point3 centre) =>
        new(_plane.Up.Dot(centre) - _plane.Draught, dryKg * _plane.Up.XM, dryKg * _plane.Up.YM, dryKg * _plane.Up.ZM);

    // The changes of the energy's slopes in draught, trim and heel at this attitude.
    private double Lever(double draughtSlope, double trimSlope, double heelSlope)
    {
        var (draught, trim) = Follow(draughtSlope, trimSlope);
        var turning = heelSlope + (_state.DraughtHeel * draught) + (_state.TrimHeel * trim);
        return (turning + (_state.OfHeel * _plane.SinTrim / _plane.CosTrim * trim)) / (_plane.CosTrim * _massKg);
    }

    private (double Draught, double Trim) Follow(double draughtSlope, double trimSlope)
    {
        if (!(_state.DraughtDraught > 0))
        {
            return (double.NaN, double.NaN);
        }

        if (!_isTrimFree)
        {
            return (-draughtSlope / _state.DraughtDraught, 0);
        }

        var determinant = (_state.DraughtDraught * _state.TrimTrim) - (_state.DraughtTrim * _state.DraughtTrim);
        return determinant > 0
            ? (((_state.DraughtTrim * trimSlope) - (_state.TrimTrim * draughtSlope)) / determinant, ((_state.DraughtTrim * draughtSlope) - (_state.DraughtDraught * trimSlope)) / determinant)
            : (double.NaN, double.NaN);
    }
}
