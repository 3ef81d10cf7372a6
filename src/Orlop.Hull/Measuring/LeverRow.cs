namespace Orlop.Hull.Measuring;

/// <summary>Righting levers of one weight to one side at every degree, with the areas under them and the height of each opening. What cannot be told is NaN.</summary>
internal readonly ref struct LeverRow
{
    private const double RadPerDeg = Math.PI / 180;
    private const double Nothing = 1e-9;

    private readonly ReadOnlySpan<double> _levers;
    private readonly ReadOnlySpan<double> _areas;
    private readonly double _gm;
    private readonly double _flooding;
    private readonly double _greatest;
    private readonly double _greatestLever;
    private readonly double _vanishing;

    public LeverRow(ReadOnlySpan<double> row, int heelCount, double gm)
    {
        _levers = row[..heelCount];
        _areas = row.Slice(heelCount, heelCount);
        _gm = gm;
        _flooding = double.PositiveInfinity;
        for (var at = 3 * heelCount; at < row.Length; at += heelCount)
        {
            _flooding = Math.Min(_flooding, FirstFall(row.Slice(at, heelCount), 0));
        }

        // As RightingReading has it: loll, vanishing, and the peak between them.
        var loll = _levers[0] > Nothing || (Math.Abs(_levers[0]) <= Nothing && _levers[1] > 0) ? 0 : 1;
        while (loll > 0 && loll < heelCount && !(_levers[loll] > 0))
        {
            loll++;
        }

        _vanishing = loll < heelCount ? FirstFall(_levers, Math.Max(loll, 1)) : 0;
        (_greatest, _greatestLever) = loll < heelCount ? Peak(loll, Math.Min(heelCount - 1, _vanishing)) : (0, double.NegativeInfinity);
    }

    public double Of(SampledQuantity quantity) => quantity switch
    {
        SampledQuantity.AreaTo30 => Area(Math.Min(30, _flooding)),
        SampledQuantity.AreaTo40 => Area(Math.Min(40, _flooding)),
        SampledQuantity.Area30To40 => Area(Math.Min(40, _flooding)) - Area(Math.Min(30, _flooding)),
        SampledQuantity.LeverFrom30 => LeverFrom30(),
        SampledQuantity.HeelOfGreatestLever => Math.Min(_greatest, _flooding) is var heel && (heel < _levers.Length - 1 || double.IsFinite(_vanishing)) ? heel : double.NaN,
        SampledQuantity.Vanishing => double.IsFinite(_vanishing) ? _vanishing : double.NaN,
        _ => _gm,
    };

    // Hermite's cubic on the areas, whose slopes are the levers.
    private double Area(double heel)
    {
        var i = Math.Min((int)heel, _levers.Length - 2);
        var t = heel - i;
        var (from, to) = (_levers[i] * RadPerDeg, _levers[i + 1] * RadPerDeg);
        var rise = _areas[i + 1] - _areas[i];
        return _areas[i] + (t * (from + (t * ((3 * rise) - (2 * from) - to + (t * (from + to - (2 * rise)))))));
    }

    private double LeverFrom30()
    {
        if (_flooding < 30)
        {
            return 0;
        }

        var most = _greatest >= 30 && _greatest <= _flooding ? _greatestLever : double.NegativeInfinity;
        for (var heel = 30; heel < _levers.Length && heel <= _flooding; heel++)
        {
            most = Math.Max(most, _levers[heel]);
        }

        return most;
    }

    private (double Heel, double Lever) Peak(int from, double to)
    {
        var top = from;
        for (var heel = from; heel <= to; heel++)
        {
            top = _levers[heel] > _levers[top] ? heel : top;
        }

        if (top == 0 || top == _levers.Length - 1)
        {
            return (top, _levers[top]);
        }

        var (before, at, after) = (_levers[top - 1], _levers[top], _levers[top + 1]);
        var bend = before - (2 * at) + after;
        var shift = bend < 0 ? Math.Clamp(0.5 * (before - after) / bend, -1, 1) : 0;
        return (top + shift, at - (0.25 * (before - after) * shift));
    }

    // First heel at which a value falls to nothing, straight between degrees; infinite when it does not.
    private static double FirstFall(ReadOnlySpan<double> values, int from)
    {
        for (var i = from; i < values.Length; i++)
        {
            if (values[i] <= 0)
            {
                return i == 0 || values[i - 1] <= 0 ? i : i - 1 + (values[i - 1] / (values[i - 1] - values[i]));
            }
        }

        return double.PositiveInfinity;
    }
}
