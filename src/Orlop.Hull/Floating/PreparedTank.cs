using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>A tank's liquid: its mass, and at any attitude its centre and what its free surface takes from stiffness.</summary>
internal sealed class PreparedTank
{
    private readonly TriangleMesh _shape;
    private readonly double _wholeVolume;
    private readonly double _volume;
    private readonly double _density;
    private readonly Point3 _wholeMoment;
    private readonly bool _isFull;

    public PreparedTank(Tank tank)
    {
        _shape = tank.Shape;
        _density = tank.LiquidKgPerM3;
        var everything = WaterPlane.Of(Attitude.Upright(_shape.Highest.ZM + 1));
        var whole = Immersion.Below(everything, _shape);
        _wholeVolume = whole.Volume;
        _wholeMoment = whole.Moment;
        _volume = tank.FillFraction * _wholeVolume;
        _isFull = tank.FillFraction > 1 - 1e-12;
        MassKg = _density * _volume;
        IsEmpty = tank.FillFraction < 1e-12;
    }

    public double MassKg { get; }

    public bool IsEmpty { get; }

    /// <summary>First moment of the liquid's mass, and density times the centroidal moments of its surface.</summary>
    public (Point3 MassMoment, PlaneMoments Surface) At(in WaterPlane directions)
    {
        if (_isFull)
        {
            return (_density * _wholeMoment, default);
        }

        var (level, below) = LiquidLevel.Find(directions, _shape, _volume, _wholeVolume);
        return (_density * below.Moment, _density * below.CutSurface(level).Centroidal());
    }
}
