namespace Orlop.Review.Stability;

/// <summary>How much of what is allowed is used.</summary>
/// <param name="Asked">What is asked of her, or what she does.</param>
/// <param name="Allowed">What she has to give, or what she may do; above 0, in the same unit.</param>
internal readonly record struct UseOf(double Asked, double Allowed)
{
    /// <summary>Asked over allowed.</summary>
    public double Fraction => Asked / Allowed;
}
