namespace Orlop.Review.Stability;

/// <summary>A number beside her weight that a result rests on, its errors independent of those of the weight, and the berth test that tells it better.</summary>
/// <param name="Name">In a sentence: "rolling factor".</param>
/// <param name="Test">What tells it, before its ±: "a rolling test, with an inclining test's GM, that knows f".</param>
/// <param name="PerUnit">How the result changes with it, in the result's unit.</param>
/// <param name="Deviation">One standard deviation of the number.</param>
/// <param name="BestDeviation">The same, as such a test can know it at best.</param>
internal sealed record BesideWeight(string Name, string Test, double PerUnit, double Deviation, double BestDeviation)
{
    /// <summary>What it makes of the variance of the result.</summary>
    public double Variance => Math.Pow(PerUnit * Deviation, 2);
}
