namespace Orlop.Review.Readings;

/// <summary>How far a good hand-held meter may be off: common practice, no source; the figures of the meter in hand are in its manual.</summary>
public static class MeterAccuracy
{
    /// <summary>Share of a voltage reading.</summary>
    public const double VoltageFraction = 0.005;

    /// <summary>Share of a current reading with a DC clamp.</summary>
    public const double ClampFraction = 0.02;

    /// <summary>Offset left after zeroing a DC clamp, in amperes.</summary>
    public const double ClampA = 0.1;

    /// <summary>Error in volts at a voltage: the share and one digit of a meter that counts to 6000.</summary>
    public static double VoltageV(double voltageV) => (VoltageFraction * Math.Abs(voltageV)) + DigitV(voltageV);

    /// <summary>Error in amperes at a current.</summary>
    public static double CurrentA(double currentA) => (ClampFraction * Math.Abs(currentA)) + ClampA;

    /// <summary>What a meter may show, with either sign, of no voltage at all: a few digits of its finest range.</summary>
    public const double NothingV = 0.0005;

    /// <summary>A reading below this has no sign that can be trusted, in the reading's own unit.</summary>
    public static double Unsigned(double read, string suffix) => suffix == "A" ? CurrentA(read) : Math.Max(NothingV, VoltageV(read));

    /// <summary>One digit, in volts, of the range that holds a voltage.</summary>
    public static double DigitV(double voltageV) => Math.Abs(voltageV) switch
    {
        < 0.6 => 0.0001,
        < 6 => 0.001,
        < 60 => 0.01,
        _ => 0.1,
    };
}
