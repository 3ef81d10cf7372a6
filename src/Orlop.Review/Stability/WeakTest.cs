using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>An inclining test that counts, and is a weak one.</summary>
/// <param name="TestId">Which.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Why">Why: too small a heel, too few shifts, a line that fits badly.</param>
/// <param name="KgShareFraction">How much of what is known of KG rests on it: what of KG's variance without it it takes away, 0 to 1; 1 where nothing else tells KG.</param>
public sealed record WeakTest(string TestId, string Title, string Why, double KgShareFraction)
{
    private const double NearlyAll = 0.995;

    /// <summary>"it makes 12 % of what is known of KG".</summary>
    public string Share => KgShareFraction >= NearlyAll ? "all that is known of KG rests on it, and is no better than it" : FormattableString.Invariant($"it makes {100 * KgShareFraction:0} % of what is known of KG");

    /// <summary>The same as a line of working.</summary>
    public WorkingLine Line => new(Title, $"weak: {Why}; {Share}", null, "how much surer KG is with it than without it; weighted least squares");
}
