using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>How a result changes per kg of displacement and per metre of LCG, TCG and KG.</summary>
internal readonly record struct WeightSlopes(double PerMass, double PerLcg, double PerTcg, double PerKg)
{
    /// <summary>One standard deviation of the result for a weight as well known as this.</summary>
    public double Deviation(WeightTotal total) => total.Deviation(PerMass, PerLcg, PerTcg, PerKg);
}
