using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Readings;
using Orlop.Review.Stability;
using Orlop.Review.Ways;

namespace Orlop.App.CommandLine;

/// <summary>The disciplines that this program reviews with.</summary>
internal static class Reviewing
{
    public static ReviewEngine NewEngine() => new([new ElectricsDiscipline(), new ReadingsDiscipline(), new StabilityDiscipline(), new EnergyDiscipline(), new WaysDiscipline()]);
}
