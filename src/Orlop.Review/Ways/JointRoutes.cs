using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Numerics.Graphs;

namespace Orlop.Review.Ways;

/// <summary>Several cables planned together, so that holes to be made and what must be opened are paid for once, and no conduit gets too full of them.</summary>
/// <param name="Routes">For each cable its way; what is paid once is shared alike by those that use it.</param>
/// <param name="ApartM">What they cost when each pays for itself, in dry metres along a way.</param>
/// <param name="TogetherM">What they cost together.</param>
/// <param name="LeastM">No plan along these ways costs less.</param>
public sealed record JointRoutes(ImmutableArray<(Cable Cable, CableRoute Route)> Routes, double ApartM, double TogetherM, double LeastM)
{
    /// <summary>Most cables that are planned together.</summary>
    public const int MostCableCount = SharedTrips.MostTripCount;

    // A difference that is round-off.
    private const double RoundOff = 1e-9;

    /// <summary>It is proved that no plan along these ways costs less.</summary>
    public bool IsProved => TogetherM - LeastM <= RoundOff * Math.Max(1, TogetherM);

    /// <summary>How far above the least they may be at most, as a share of the least; infinite where nothing is known of it.</summary>
    public double MostAboveFraction => IsProved ? 0 : LeastM > 0 ? (TogetherM - LeastM) / LeastM : double.PositiveInfinity;

    /// <summary>Holes that have to be made, each once.</summary>
    public ImmutableArray<PassedHole> NewHoles => [.. Routes.SelectMany(pair => pair.Route.Holes).Where(hole => !hole.Hole.IsMade).DistinctBy(SharedCharge.Hole)];

    /// <summary>What must be opened, each once.</summary>
    public ImmutableArray<Way> ToOpen => [.. Routes.SelectMany(pair => pair.Route.ToOpen).DistinctBy(way => way.Id)];

    /// <summary>Plans them; null where a cable has no way or something is missing, or there are more than <see cref="MostCableCount"/>. Remembered by the boat's content.</summary>
    public static JointRoutes? Plan(WaysView view, IReadOnlyList<Cable> cables)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(cables);
        CableRoute?[] apart = [.. cables.Select(cable => RouteFinder.Find(view, cable).Routes.FirstOrDefault())];
        return cables.Count is 0 or > MostCableCount || apart.Contains(null)
            ? null
            : view.Memo.Get((view.Boat, string.Join('\n', cables.Select(cable => cable.Id))), () => new Planned(new JointPlanner(view, cables).Plan(apart.Sum(route => route!.CostM)))).Routes;
    }

    private sealed record Planned(JointRoutes? Routes);
}
