using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Ways;
using Orlop.Work.Scope;

namespace Orlop.Work.Bring;

/// <summary>Where a cable that is not built yet goes, what it goes through, and what must be opened to get there.</summary>
/// <param name="CableId">The cable.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Legs">Ways and spaces in order, each with its length in metres.</param>
/// <param name="Holes">Holes and glands that it goes through.</param>
/// <param name="ToOpen">What must be opened.</param>
public sealed record CableWay(string CableId, string Title, ImmutableArray<(string Where, double LengthM)> Legs, ImmutableArray<PassedHole> Holes, ImmutableArray<string> ToOpen)
{
    /// <summary>The ways of the cables that are not built yet and whose run is given.</summary>
    internal static ImmutableArray<CableWay> Of(PackScope scope) =>
    [
        .. scope.Of(ChangeKind.Cable).Where(change => !change.IsBuilt).Select(change => (Cable)change.Thing).Where(cable => cable.Run.Count > 0).Select(cable => new CableWay(
            cable.Id,
            cable.Title,
            [.. cable.Run.Select(leg => (scope.Words.Title(leg.Way ?? leg.Space ?? "not given"), leg.LengthM))],
            [.. PassedHole.On(cable, scope.Whole)],
            [.. cable.Run.Select(leg => leg.Way is { } way ? scope.Whole.Find<Way>(way)?.Opened : null).OfType<string>().Distinct()])),
    ];
}
