using Orlop.Boat.Values;

namespace Orlop.Work.Loading;

/// <summary>A freeboard to read after the work, with what it should be.</summary>
/// <param name="Name">What the mark is called.</param>
/// <param name="Mark">Where it is on the boat.</param>
/// <param name="NominalM">Height over the water with every weight at its value.</param>
/// <param name="LeastM">The lowest that is accepted: two standard deviations, of her weight and of the tape together.</param>
/// <param name="MostM">The highest that is accepted.</param>
public sealed record PredictedFreeboard(string Name, Place Mark, double NominalM, double LeastM, double MostM);
