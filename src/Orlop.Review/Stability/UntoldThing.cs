using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>Gear, a part or a cable of which nobody told whether it is what was aboard at a test: it counts with another mass than then, or was not in the list, and no alteration since brought it or gave it its mass.</summary>
/// <param name="Row">The thing as it is now.</param>
/// <param name="ThenKg">Its mass as it counts at the test; null where it was not in the list.</param>
internal sealed record UntoldThing(WeightRow Row, double? ThenKg)
{
    private const int MostNamed = 5;

    // Lists are stored with nine decimals.
    private const double RoundingKg = 1e-6;

    /// <summary>Those of a test, in the order of the list now; none where the test does not say what was aboard.</summary>
    public static ImmutableArray<UntoldThing> Of(BoatModel boat, BerthTest test, WeightLedger ledger)
    {
        if (!test.TellsAboard)
        {
            return [];
        }

        Dictionary<string, double> then = AboardThen.Of(boat, test).DistinctBy(item => item.Id).ToDictionary(item => item.Id, item => item.MassKg, StringComparer.Ordinal);
        return
        [
            .. ledger.Rows.Where(row => row.Kind is WeightKind.Gear or WeightKind.Part or WeightKind.Cable)
                .Select(row => new UntoldThing(row, then.TryGetValue(row.ThingId, out double kg) ? kg : null))
                .Where(thing => !(Math.Abs(thing.Row.MassKg - (thing.ThenKg ?? double.PositiveInfinity)) <= RoundingKg))
                .Where(thing => !AboardThen.MassEdits(boat, thing.Row.ThingId, test.On ?? DateOnly.MinValue).Any()),
        ];
    }

    /// <summary>"Engine (850 kg in its list, 1200 kg now) and Cooker (not in its list, 40 kg now)".</summary>
    public static Sentence Names(ImmutableArray<UntoldThing> things)
    {
        Sentence named = things[0].Named;
        foreach (int index in Enumerable.Range(1, Math.Min(things.Length, MostNamed) - 1))
        {
            named = Sentence.Of($"{named}{(index == things.Length - 1 ? " and " : ", ")}{things[index].Named}");
        }

        return things.Length <= MostNamed ? named : Sentence.Of($"{named} and {things.Length - MostNamed} more");
    }

    /// <summary>The test as it would be had these been aboard as they are now.</summary>
    public static BerthTest Corrected(BerthTest test, ImmutableArray<UntoldThing> things)
    {
        Dictionary<string, WeightRow> now = things.ToDictionary(thing => thing.Row.ThingId, thing => thing.Row, StringComparer.Ordinal);
        AboardItem[] listed = [.. test.Aboard.Select(item => now.TryGetValue(item.Id, out WeightRow? row) ? item with { MassKg = row.MassKg, DeviationKg = row.DeviationKg } : item)];
        AboardItem[] added = [.. things.Where(thing => thing.ThenKg is null).Select(thing => new AboardItem(thing.Row.ThingId, thing.Row.MassKg, thing.Row.Place, thing.Row.DeviationKg, thing.Row.PlaceDeviationM, IsCarried: false))];
        return test with { IsBare = test.IsBare && added.Length == 0, Aboard = [.. listed, .. added] };
    }

    private Sentence Named => ThenKg is { } then ? Sentence.Of($"{Row.Title} ({Kg(then)} in its list, {Kg(Row.MassKg)} now)") : Sentence.Of($"{Row.Title} (not in its list, {Kg(Row.MassKg)} now)");
}
