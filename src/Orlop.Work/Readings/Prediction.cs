namespace Orlop.Work.Readings;

/// <summary>What a reading should be, or why that cannot be said.</summary>
public sealed record Prediction(Band? Band, string? WhyNot);
