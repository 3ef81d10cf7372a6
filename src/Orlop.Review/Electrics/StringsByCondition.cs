using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Strings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>The strings that a boat's batteries stand in, by condition, found when first asked for. Safe from several threads.</summary>
internal sealed class StringsByCondition(BoatModel boat, Wiring wiring, ImmutableArray<Condition> conditions, ElectricThings things, Memo memo)
{
    private readonly ConcurrentDictionary<string, BoatStrings> _strings = new(StringComparer.Ordinal);
    private BoatStrings? _inAny;

    private sealed record Shares(ImmutableArray<StringShare>? Of);

    /// <summary>The strings in any condition, those that are the same once.</summary>
    public BoatStrings InAny => _inAny ??= BoatStrings.Together(conditions.IsEmpty ? [BoatStrings.Of(boat, wiring, null)] : conditions.Select(In));

    /// <summary>The strings in a condition.</summary>
    public BoatStrings In(Condition condition) => _strings.TryGetValue(condition.Id, out BoatStrings? known) ? known : _strings.GetOrAdd(condition.Id, memo.Get(
        (things.ShapeIn(wiring, condition.Id), BoatStrings.NumbersOf(boat, wiring)), () => BoatStrings.Of(boat, wiring, condition.Id)));

    /// <summary>How strings side by side share their current in a case; null where it has no answer.</summary>
    public ImmutableArray<StringShare>? SharesOf(StringGroup group, SolvedNetwork solved) =>
        solved.GroupOf(group.Strings[0].Members[0].Id) is { Result.Point: { } point } own ? memo.Get((own.Network, group.Strings[0].Members[0].Id), () => new Shares(StringSharing.Of(group, own.Network, point))).Of : null;
}
