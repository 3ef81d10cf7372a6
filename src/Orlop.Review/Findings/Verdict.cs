namespace Orlop.Review.Findings;

/// <summary>How one check on one thing came out. The order is that of the screen: what matters first.</summary>
public enum Verdict
{
    /// <summary>An input is missing, or its uncertainty straddles the limit. The default: nothing becomes a pass by being left out.</summary>
    Unknown,

    /// <summary>Beyond the limit.</summary>
    Fails,

    /// <summary>Within a tenth of the limit.</summary>
    Tight,

    /// <summary>Within the limit by more than a tenth.</summary>
    Holds,
}

/// <summary>Makes verdicts of use.</summary>
public static class Verdicts
{
    /// <summary>Use from which a finding is tight.</summary>
    public const double TightFromFraction = 0.9;

    // 1.2 × 12 is a hair below 14.4 in binary: what stands at an edge as typed is at that edge.
    private const double RoundingFraction = 1e-9;

    /// <summary>Fails above 1, tight from 0.9, holds below; unknown when there is no number, or it is not finite or below 0.</summary>
    public static Verdict OfUse(double? useFraction) => useFraction switch
    {
        null => Verdict.Unknown,
        { } use when !double.IsFinite(use) || use < 0 => Verdict.Unknown,
        > 1 + RoundingFraction => Verdict.Fails,
        >= TightFromFraction - RoundingFraction => Verdict.Tight,
        _ => Verdict.Holds,
    };

    /// <summary>Of what is asked and what is allowed, in one unit: where nothing is allowed, anything asked fails. Unknown when one is not finite or below 0.</summary>
    public static Verdict Of(double asked, double allowed) => (asked, allowed) switch
    {
        _ when !(double.IsFinite(asked) && double.IsFinite(allowed) && asked >= 0 && allowed >= 0) => Verdict.Unknown,
        (0, _) => Verdict.Holds,
        _ when double.IsInfinity(asked / allowed) => Verdict.Fails,
        _ => OfUse(asked / allowed),
    };

    // What round-off leaves of nothing.
    private const double NothingFraction = 1e-9;

    /// <summary>What is asked over what is allowed; 0 when nothing is asked, null when the ratio is no number: something of nothing.</summary>
    public static double? UseOf(double asked, double allowed) =>
        asked == 0 && allowed >= 0 ? 0 : asked / allowed is >= 0 and < double.PositiveInfinity and var use ? use < NothingFraction ? 0 : use : null;

    /// <summary>How bad: fails 3, unknown 2, tight 1, holds 0.</summary>
    public static int Weight(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 3,
        Verdict.Unknown => 2,
        Verdict.Tight => 1,
        _ => 0,
    };

    /// <summary>What tells two findings of one verdict apart, the graver the greater: their use; what fails without one, something asked of nothing, is beyond any.</summary>
    internal static double GravityOf(Finding finding) =>
        finding.UseFraction ?? (finding.Verdict == Verdict.Fails ? double.PositiveInfinity : 0);

    /// <summary>The same among findings of one check on one thing, of which the number tells too: less freeboard is graver.</summary>
    internal static double GravityAmongAlike(Finding finding) => finding.UseFraction ?? finding.GravityRatio ?? GravityOf(finding);
}
