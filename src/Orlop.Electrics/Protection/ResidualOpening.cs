using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>How late a residual-current device may open (IEC 61008-1 and 61009-1, devices without delay: 0.3 s at I∆n, 0.15 s at twice, 0.04 s from five times).</summary>
public static class ResidualOpening
{
    /// <summary>Longest time at the rated residual current.</summary>
    public const double AtRatedS = 0.3;

    /// <summary>Longest time at twice the rated residual current.</summary>
    public const double AtTwiceS = 0.15;

    /// <summary>Longest time from five times the rated residual current.</summary>
    public const double AtFiveTimesS = 0.04;

    public const string Source = "IEC 61008-1 and 61009-1, break times without delay: 0.3, 0.15 and 0.04 s at 1, 2 and 5 times the rated residual current, as testers by EN 61557-6 hold them";

    /// <summary>The longest it takes; null below its rated residual current, at which it need not open.</summary>
    /// <param name="currentA">Residual current, 0 to 1e6.</param>
    /// <param name="residualA">Its rated residual current, above 0 to 10.</param>
    /// <param name="ownS">The longest at its rated residual current by its own sheet, above 0 to 10: above 0.3 s it is delayed, and that time holds at any current. Null where its sheet says nothing.</param>
    public static double? LatestS(double currentA, double residualA, double? ownS = null)
    {
        Guard.InRange(currentA, 0, 1e6, "A", "residual current");
        Guard.Positive(residualA, 10, "A", "rated residual current");
        var own = Guard.Positive(ownS ?? AtRatedS, 10, "s", "residual opening time");
        return (currentA / residualA) switch
        {
            < 1 => null,
            _ when own > AtRatedS => own,
            >= 5 => Math.Min(own, AtFiveTimesS),
            >= 2 => Math.Min(own, AtTwiceS),
            _ => own,
        };
    }
}
