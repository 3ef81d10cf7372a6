using Orlop.Boat.Things;

namespace Orlop.Review.Electrics;

/// <summary>
/// Which conductors and devices serve a cranking motor alone, which practices exempt from protection: they lie on the way to its own
/// battery and on the way to nothing else. A charger's lead that ends at the motor's stud is not one.
/// </summary>
internal static class CrankingWay
{
    /// <summary>An element lies on the way to a cranking motor in a condition and on the way to no other taker.</summary>
    public static bool IsOnlyThat(ElectricsView view, string elementId, Condition condition)
    {
        IReadOnlySet<string> behind = view.PathsIn(condition).TakersBehind(elementId);
        if (!view.CrankingMotors.Any(motor => behind.Contains(motor.Id)))
        {
            return false;
        }

        Part[] takers = [.. behind.Select(view.Boat.Find<Part>).OfType<Part>()];
        return takers.Where(taker => view.WayTo(taker, condition).Holds(elementId)).ToArray() is { Length: > 0 } served
            && served.All(IsCrankingMotor);
    }

    private static bool IsCrankingMotor(Part taker) => taker is ElectricLoad { IsCrankingMotor: true };
}
