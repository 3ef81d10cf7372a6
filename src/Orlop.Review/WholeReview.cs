using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Readings;
using Orlop.Review.Stability;
using Orlop.Review.Ways;

namespace Orlop.Review;

/// <summary>The review with all its disciplines, in the order in which they are told.</summary>
public static class WholeReview
{
    /// <summary>An engine that has solved nothing yet.</summary>
    public static ReviewEngine NewEngine() => new([new ElectricsDiscipline(), new ReadingsDiscipline(), new StabilityDiscipline(), new EnergyDiscipline(), new WaysDiscipline()]);
}
