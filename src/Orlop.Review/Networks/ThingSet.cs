using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Networks;

/// <summary>
/// A list of things known by identity: in one memo, equal lists are the same object, so that what is made from a list is found by
/// reference and the list is compared item by item only once a review.
/// </summary>
internal sealed class ThingSet
{
    private ThingSet(ValueList<Thing> things) => Things = things;

    public ValueList<Thing> Things { get; }

    public static ThingSet Of(Memo memo, IEnumerable<Thing> things)
    {
        ValueList<Thing> list = things.ToValueList();
        return memo.Get(list, () => new ThingSet(list));
    }
}
