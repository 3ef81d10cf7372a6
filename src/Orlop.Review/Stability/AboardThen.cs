using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>
/// What was aboard at a berth test, as the engine takes it. A thing that is still listed is the same thing: what is known of its mass by now is used for then too, so that it cancels between the test and
/// a loading, unless an alteration gave it another mass since, in this draft or built after the test's day (then it is the thing before it), unless the test's own figure is the surer one, or the two masses are more than two deviations apart (then it was another, or not as much of it).
/// </summary>
internal static class AboardThen
{
    private const double BandFactor = 2;

    // Lists are stored with nine decimals.
    private const double Rounding = 1e-6;

    public static ImmutableArray<LedgerItem> Of(BoatModel boat, BerthTest test) => [.. test.Aboard.Select(item => Of(boat, item, test.On ?? DateOnly.MinValue))];

    private static LedgerItem Of(BoatModel boat, AboardItem item, DateOnly day)
    {
        LedgerItem then = new(item.Id, item.MassKg, item.DeviationKg, WeightLedger.At(item.Place), new Point3(item.PlaceDeviationM, item.PlaceDeviationM, item.PlaceDeviationM));
        Thing? thing = ThingOf(boat, item.Id, day);
        if (PieceOf(thing, boat) is not { MassKg: > 0 } piece)
        {
            return then;
        }

        int count = thing is Deadweight ? (int)Math.Clamp(Math.Round(then.MassKg / piece.MassKg), 1, 1000) : 1;
        LedgerItem now = WeightLedger.Item(piece with { MassKg = count * piece.MassKg, DeviationKg = count * piece.DeviationKg, PieceCount = count });
        bool isSame = then.MassDeviationKg >= now.MassDeviationKg - Rounding && Math.Abs(then.MassKg - now.MassKg) <= (BandFactor * Math.Sqrt(Square(then.MassDeviationKg) + Square(now.MassDeviationKg))) + Rounding;
        bool isThere = (then.Place - now.Place).LengthM <= Rounding && Math.Abs(then.PlaceDeviation.XM - now.PlaceDeviation.XM) <= Rounding;
        return (isSame, isThere) switch
        {
            (true, true) => now,
            (true, false) => now with { Place = then.Place, PlaceDeviation = then.PlaceDeviation },
            _ => then,
        };
    }

    // A mass that an alteration gave it since is another thing's: what is known of the one before is used. A mass typed into the boat as built is better known.
    private static Thing? ThingOf(BoatModel boat, string id, DateOnly day) =>
        MassEdits(boat, id, day).LastOrDefault() is { } oldest ? oldest.Was : boat.Find(id);

    /// <summary>The edits of alterations after a day that brought a thing, took it off or gave it another mass, the newest first.</summary>
    public static IEnumerable<Edit> MassEdits(BoatModel boat, string id, DateOnly day) =>
        EditsSince.Of(boat, id, day).Where(edit => PieceOf(edit.Was, boat)?.MassKg != PieceOf(edit.Becomes, boat)?.MassKg);

    // One piece of it as it is known now; null where its mass or its place is not given, or it is none of the list.
    private static WeightRow? PieceOf(Thing? thing, BoatModel boat) => thing switch
    {
        Gear gear => WeightLedger.Row(gear, WeightKind.Gear, gear.MassKg, gear.Place, 1, gear.PlaceDeviationM?.Value),
        Part part => WeightLedger.Row(part, WeightKind.Part, part.MassKg, part.Place, 1, null),
        Cable cable => CableWeight.Row(boat, cable),
        Deadweight deadweight => WeightLedger.Row(deadweight, WeightKind.Deadweight, deadweight.MassKg, deadweight.Place, 1, null),
        _ => null,
    };

    private static double Square(double value) => value * value;
}
