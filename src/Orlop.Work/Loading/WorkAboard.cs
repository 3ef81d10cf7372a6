using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Stability;
using Orlop.Work.Scope;

namespace Orlop.Work.Loading;

/// <summary>
/// Whether a berth test lists what the work put aboard, took off or moved as it is after the work. One that was typed in before the work was recorded lists it as it was: what is new is then taken for the
/// boat's own weight, and counted once more when it is recorded.
/// </summary>
internal sealed class WorkAboard
{
    // What is lighter than this is felt in no test (common practice, no source).
    private const double LeastKg = 1;

    private readonly ImmutableArray<(string Title, string Id, WeightRow? Was, WeightRow? Becomes, bool IsRecorded)> _changes;

    private WorkAboard(PackScope scope, Condition? condition)
    {
        Dictionary<string, WeightRow> before = Rows(scope.Before, condition), after = Rows(scope.AsAltered, condition);
        _changes =
        [
            .. scope.Edits.DistinctBy(edit => edit.Id).Select(edit => (
                (edit.Becomes ?? edit.Was)!.Title, edit.Id, before.GetValueOrDefault(edit.Id), after.GetValueOrDefault(edit.Id), scope.Edits.Where(other => other.Id == edit.Id).All(other => other.BuiltOn is not null)))
                .Where(change => IsFelt(change.Item3, change.Item4)),
        ];
    }

    /// <summary>What has weight and is not recorded as built yet, by its title.</summary>
    public ImmutableArray<string> Unrecorded => [.. _changes.Where(change => !change.IsRecorded).Select(change => change.Title)];

    public static WorkAboard Of(PackScope scope, Condition? condition) => new(scope, condition);

    /// <summary>What a test lists otherwise than as it is after the work, by its title; none where it lists all.</summary>
    public ImmutableArray<string> Unlike(BerthTest test) => [.. _changes.Where(change => !IsListed(test.Aboard.FirstOrDefault(item => item.Id == change.Id), change.Was, change.Becomes)).Select(change => change.Title)];

    /// <summary>A test lists something otherwise than it is that stands in her by now: recorded as built, or fitted by a ticked step. Of a test made with the work half done, what is still to come speaks against nothing.</summary>
    /// <param name="ticked">Ids of what the ticked steps build.</param>
    public bool IsUnlikeInPlace(BerthTest test, IReadOnlySet<string> ticked) => Unlike(test) is var unlike && _changes.Any(change => (change.IsRecorded || ticked.Contains(change.Id)) && unlike.Contains(change.Title));

    private static bool IsListed(AboardItem? item, WeightRow? was, WeightRow? becomes) => becomes is null ? item is null
        : item is not null && (was is null || (Math.Abs(item.MassKg - becomes.MassKg) <= Math.Abs(item.MassKg - was.MassKg) && Apart(item.Place, becomes.Place) <= Apart(item.Place, was.Place)));

    private static double Apart(Place one, Place other) => Math.Sqrt(Math.Pow(one.XM - other.XM, 2) + Math.Pow(one.YM - other.YM, 2) + Math.Pow(one.ZM - other.ZM, 2));

    private static bool IsFelt(WeightRow? was, WeightRow? becomes) => (was, becomes) switch
    {
        (null, null) => false,
        ({ } old, { } fresh) => Math.Abs(fresh.MassKg - old.MassKg) >= LeastKg || (old.Place != fresh.Place && Math.Max(old.MassKg, fresh.MassKg) >= LeastKg),
        _ => (was ?? becomes)!.MassKg >= LeastKg,
    };

    // Who and what is carried comes and goes with the condition.
    private static Dictionary<string, WeightRow> Rows(BoatModel boat, Condition? condition) => condition is null ? []
        : WeightLedger.Of(boat, condition).Rows.Where(row => row.Kind is not (WeightKind.Deadweight or WeightKind.Liquid)).DistinctBy(row => row.ThingId).ToDictionary(row => row.ThingId, StringComparer.Ordinal);
}
