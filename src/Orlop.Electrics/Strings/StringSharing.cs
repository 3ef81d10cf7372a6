using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Strings;

/// <summary>What a string gives of the current of its group.</summary>
/// <param name="CurrentA">Out of its plus end at the operating point; negative while it is charged.</param>
/// <param name="CirculatingA">Out of its plus end with nothing on and no charger: what flows between strings of different voltage; they add up to 0.</param>
/// <param name="ShareFraction">Its share of what the group gives or takes, the circulating current taken off; negative where it flows against the others; null where the group gives and takes nothing.</param>
public sealed record StringShare(double CurrentA, double CirculatingA, double? ShareFraction);

/// <summary>How strings side by side share their current, from the solved network they are in.</summary>
public static class StringSharing
{
    // Below this share of the strings' own currents the sum of a group is round-off.
    private const double RoundingFraction = 1e-9;

    // And below this, in amperes, nothing is asked of it.
    private const double NothingA = 1e-6;

    /// <summary>The shares of a group, in the order of its strings; null where the network without loads and chargers has no answer.</summary>
    /// <param name="group">The group, found in the same wiring.</param>
    /// <param name="network">The network.</param>
    /// <param name="point">Its operating point.</param>
    /// <exception cref="ArgumentException">A battery of the group is not in the network.</exception>
    public static ImmutableArray<StringShare>? Of(StringGroup group, Network network, OperatingPoint point, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(point);
        if (group.Strings.SelectMany(each => each.Members).FirstOrDefault(member => !point.SourceA.ContainsKey(member.Id)) is { } stranger)
        {
            throw new ArgumentException($"Battery '{stranger.Id}' is not in the network.", nameof(group));
        }

        if (NetworkSolver.Solve(network with { Loads = [], LimitedSources = [], Converters = [] }, token).Point is not { } idle)
        {
            return null;
        }

        double[] running = [.. group.Strings.Select(each => OutOf(each, point))], circulating = [.. group.Strings.Select(each => OutOf(each, idle))];
        double[] asked = [.. running.Zip(circulating, (now, alone) => now - alone)];
        var sum = asked.Sum();
        var isNothing = Math.Abs(sum) <= Math.Max(NothingA, RoundingFraction * (running.Sum(Math.Abs) + circulating.Sum(Math.Abs)));
        return [.. running.Select((now, k) => new StringShare(now, circulating[k], isNothing ? null : asked[k] / sum))];
    }

    private static double OutOf(BatteryString each, OperatingPoint point) =>
        each.Members[0] is { IsReversed: true } turned ? -point.SourceA[turned.Id] : point.SourceA[each.Members[0].Id];
}
