namespace Orlop.Hull.Surfaces;

/// <summary>
/// A curve through points at given parameters: cubic pieces whose slope at a point is that of the parabola through it and its neighbours (Bessel), broken where a point is
/// sharp. Two points, or points on a line, give a straight line.
/// </summary>
internal sealed class SmoothCurve
{
    private readonly Point3[] _points;
    private readonly double[] _at;
    private readonly Point3[] _slopeBefore;
    private readonly Point3[] _slopeAfter;

    public SmoothCurve(Point3[] points, double[] at, bool[] isSharp)
    {
        _points = points;
        _at = at;
        var count = points.Length;
        _slopeBefore = new Point3[count];
        _slopeAfter = new Point3[count];
        for (var i = 0; i < count; i++)
        {
            var isFirst = i == 0 || isSharp[i];
            var isLast = i == count - 1 || isSharp[i];
            _slopeBefore[i] = i == 0 ? default : isLast ? EndSlope(i, i - 1, i - 2 >= 0 && !isSharp[i - 1] ? i - 2 : null) : MiddleSlope(i);
            _slopeAfter[i] = i == count - 1 ? default : isFirst ? EndSlope(i, i + 1, i + 2 < count && !isSharp[i + 1] ? i + 2 : null) : MiddleSlope(i);
        }
    }

    public Point3 At(double parameter)
    {
        var piece = Array.BinarySearch(_at, parameter);
        if (piece >= 0)
        {
            return _points[piece];
        }

        piece = Math.Clamp(~piece - 1, 0, _points.Length - 2);
        var width = _at[piece + 1] - _at[piece];
        var s = (parameter - _at[piece]) / width;
        var (t, s2) = (1 - s, s * s);
        var chord = (t * _points[piece]) + (s * _points[piece + 1]);
        var step = _points[piece + 1] - _points[piece];
        // Hermite's cubic as its chord and what the end slopes add to it.
        return chord + (s * t * t * ((width * _slopeAfter[piece]) - step)) - (s2 * t * ((width * _slopeBefore[piece + 1]) - step));
    }

    private Point3 MiddleSlope(int i)
    {
        var (before, after) = (_at[i] - _at[i - 1], _at[i + 1] - _at[i]);
        var share = after / (before + after);
        return (share * Chord(i - 1, i)) + ((1 - share) * Chord(i, i + 1));
    }

    private Point3 EndSlope(int i, int next, int? beyond)
    {
        var chord = Chord(i, next);
        if (beyond is not { } far)
        {
            return chord;
        }

        var share = (_at[i] - _at[next]) / (_at[i] - _at[far]);
        return chord + (share * (chord - Chord(next, far)));
    }

    private Point3 Chord(int i, int j) => (1 / (_at[j] - _at[i])) * (_points[j] - _points[i]);
}
