namespace Orlop.Review.Mending;

/// <summary>What a cable is cut longer than its run.</summary>
/// <param name="EndTailM">At each end, in metres.</param>
/// <param name="ServiceLoopM">Once for each cable, in metres.</param>
/// <param name="StepM">Cut lengths are rounded up to this, in metres, above 0.</param>
public sealed record CutAllowance(double EndTailM, double ServiceLoopM, double StepM)
{
    // An estimated length is cut longer by this many of its standard deviations.
    private const double CautionRatio = 2;

    // A tenth of a millimetre is no reason to round up.
    private const double NothingM = 1e-4;

    /// <summary>What a length that is not well known is cut longer by, in metres.</summary>
    public static double UnsureM(double? deviationM) => CautionRatio * (deviationM ?? 0);

    /// <summary>What is added to a run whose length has this standard deviation, in metres.</summary>
    public double AllowanceM(double? deviationM) => (2 * EndTailM) + ServiceLoopM + UnsureM(deviationM);

    /// <summary>Length to cut for a run, in metres.</summary>
    public double CutM(double runM, double? deviationM) => RoundedUpM(runM + AllowanceM(deviationM), StepM);

    /// <summary>A length rounded up to the next step, both in metres, the step above 0.</summary>
    public static double RoundedUpM(double lengthM, double stepM) => Math.Round(Math.Ceiling((lengthM - NothingM) / stepM) * stepM, 6);
}
