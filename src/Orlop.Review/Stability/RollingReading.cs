namespace Orlop.Review.Stability;

/// <summary>A rolling test, as read.</summary>
/// <param name="PeriodS">Mean time of one whole roll, there and back.</param>
/// <param name="PeriodDeviationS">One standard deviation of that mean.</param>
/// <param name="RollingFactor">Coefficient f of T = f B / root GM that GM was read with.</param>
/// <param name="DeviationOfFactor">One standard deviation of f.</param>
/// <param name="GmM">GM by the period.</param>
/// <param name="GmDeviationM">One standard deviation of GM, from f and from the timing.</param>
public sealed record RollingReading(double PeriodS, double PeriodDeviationS, double RollingFactor, double DeviationOfFactor, double GmM, double GmDeviationM);
