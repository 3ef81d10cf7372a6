using Orlop.Boat.Things;
using Orlop.Boat.Topology;

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
        bool isOnOne = false;
        foreach (string id in view.PathsIn(condition).TakersBehind(elementId))
        {
            if (view.Boat.Find<Part>(id) is not { } taker || !IsOnWay(view, elementId, taker, condition))
            {
                continue;
            }

            if (taker is not ElectricLoad { IsCrankingMotor: true })
            {
                return false;
            }

            isOnOne = true;
        }

        return isOnOne;
    }

    private static bool IsOnWay(ElectricsView view, string elementId, Part taker, Condition condition) =>
        Chain.Trace(view.Boat, view.Wiring, taker, condition.Id) is { } chain
        && chain.Out.Concat(chain.Back).Any(item => item.Edges.Any(edge => edge.Id == elementId));
}
