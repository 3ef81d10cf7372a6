using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>A piece that a route may take, between two stops.</summary>
/// <param name="From">Number of the stop it leaves.</param>
/// <param name="To">Number of the stop it reaches.</param>
/// <param name="Way">The way it is along or leads into; null where it is loose in a space.</param>
/// <param name="Space">The space it is loose in.</param>
/// <param name="Use">What it is like there.</param>
/// <param name="Line">Its points.</param>
/// <param name="LengthM">Its length with slack, in metres.</param>
/// <param name="Costs">What it costs.</param>
/// <param name="Holes">The holes it goes through.</param>
/// <param name="Opens">What must be opened for it; null for nothing.</param>
internal sealed record RouteArc(
    int From, int To, Way? Way, Space? Space, SpaceUse? Use, ImmutableArray<Place> Line, double LengthM, ImmutableArray<RouteCost> Costs, ImmutableArray<PassedHole> Holes, Way? Opens = null)
{
    public double CostM => Costs.Sum(cost => cost.WorthM);

    /// <summary>What of it is paid once, however many cables pass.</summary>
    public IEnumerable<string> Charges => (Opens is null ? [] : new[] { SharedCharge.Opening(Opens) }).Concat(Holes.Where(hole => !hole.Hole.IsMade).Select(SharedCharge.Hole));
}

/// <summary>What is paid once, however many cables pass: a hole to be made, a lining to be opened.</summary>
internal static class SharedCharge
{
    private const string OpeningPrefix = "open:";

    public static string Opening(Way way) => OpeningPrefix + way.Id;

    public static bool IsOpening(string charge) => charge.StartsWith(OpeningPrefix, StringComparison.Ordinal);

    public static string Hole(PassedHole hole) => $"hole:{hole.Way.Id}:{hole.Index}";
}
