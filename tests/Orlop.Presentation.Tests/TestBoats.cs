using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Presentation.Tests;

/// <summary>Small changes to a boat, for tests.</summary>
internal static class TestBoats
{
    public static BoatModel With(this BoatModel boat, params Thing[] things) =>
        boat.WithThings(boat.Things.Where(thing => things.All(added => added.Id != thing.Id)).Concat(things));

    public static BoatModel Change<T>(this BoatModel boat, string id, Func<T, T> change)
        where T : Thing => boat.WithThings(boat.Things.Select(thing => thing.Id == id ? change((T)thing) : thing));
}
