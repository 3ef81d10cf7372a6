namespace Orlop.Electrics.Energy;

/// <summary>A plane's normal, ready for many positions of the sun.</summary>
internal readonly struct PlaneFace
{
    private readonly double _east;
    private readonly double _north;
    private readonly double _sinTilt;
    private readonly bool _isSwinging;

    public PlaneFace(double tiltDeg, double? azimuthDeg)
    {
        (_sinTilt, CosTilt) = Math.SinCos(Math.PI / 180 * tiltDeg);
        _isSwinging = azimuthDeg is null && tiltDeg > 0;
        (double sinA, double cosA) = Math.SinCos(Math.PI / 180 * (azimuthDeg ?? 0));
        (_east, _north) = (_sinTilt * sinA, _sinTilt * cosA);
    }

    public double CosTilt { get; }

    public double Cosine((double East, double North, double Up) sun)
    {
        if (!_isSwinging)
        {
            return (_east * sun.East) + (_north * sun.North) + (CosTilt * sun.Up);
        }

        // Mean over all headings of the part of a + b cos h above 0, in closed form.
        double a = CosTilt * sun.Up, b = _sinTilt * Math.Sqrt((sun.East * sun.East) + (sun.North * sun.North));
        if (a >= b)
        {
            return a;
        }

        if (a <= -b)
        {
            return 0;
        }

        double half = Math.Acos(-a / b);
        return ((a * half) + (b * Math.Sin(half))) / Math.PI;
    }
}
