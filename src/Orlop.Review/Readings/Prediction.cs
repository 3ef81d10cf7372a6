using Orlop.Review.Findings;

namespace Orlop.Review.Readings;

/// <summary>What a reading should be, or why that cannot be said.</summary>
/// <param name="Missing">The input that it waits for; null where it waits for none.</param>
public sealed record Prediction(Band? Band, string? WhyNot, FindingInput? Missing = null);
