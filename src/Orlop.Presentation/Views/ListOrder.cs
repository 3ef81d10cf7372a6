using Orlop.Boat.Things;

namespace Orlop.Presentation.Views;

/// <summary>The order in which items of a list are kept, where the boat asks for one: they may be typed in any.</summary>
public static class ListOrder
{
    /// <summary>Points of a battery's curve from empty to full, operating times by rising current; everything else as it stands.</summary>
    public static IReadOnlyList<object> Of(IReadOnlyList<object> items) => [.. items.OrderBy(Key)];

    private static double Key(object item) => item switch
    {
        ChargePoint point => point.ChargeFraction,
        OperatingTime time => time.RatingRatio,
        _ => 0,
    };
}
