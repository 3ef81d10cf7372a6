using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>
/// What was aboard at a berth test, as the engine takes it. A thing that is still listed is the same thing: what is known of its mass by now is used for then too, so that it cancels between the test and
/// a loading, unless the test's own figure is the surer one, or the two masses are more than two deviations apart (then it was another, or not as much of it).
/// </summary>
internal static class AboardThen
{
    private const double BandFactor = 2;

    // Lists are stored with nine decimals.
    private const double Rounding = 1e-6;

    public static ImmutableArray<LedgerItem> Of(BoatModel boat, BerthTest test) => [.. test.Aboard.Select(item => Of(boat, item))];

    private static LedgerItem Of(BoatModel boat, AboardItem item)
    {
        LedgerItem then = new(item.Id, item.MassKg, item.DeviationKg, WeightLedger.At(item.Place), new Point3(item.PlaceDeviationM, item.PlaceDeviationM, item.PlaceDeviationM));
        if (PieceOf(boat.Find(item.Id), boat) is not { MassKg: > 0 } piece)
        {
            return then;
        }

        int count = boat.Find(item.Id) is Deadweight ? (int)Math.Clamp(Math.Round(then.MassKg / piece.MassKg), 1, 1000) : 1;
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
