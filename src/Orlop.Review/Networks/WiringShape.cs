using Orlop.Boat.Values;

namespace Orlop.Review.Networks;

/// <summary>The shape of a boat's wiring in a condition, known by identity: in one memo, equal shapes are the same object, compared item by item only once a review.</summary>
internal sealed class WiringShape
{
    private WiringShape()
    {
    }

    public static WiringShape Of(Memo memo, IEnumerable<string> items) => memo.Get(items.ToValueList(), () => new WiringShape());
}
