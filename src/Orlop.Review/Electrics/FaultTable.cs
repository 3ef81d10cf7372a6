using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Faults at the far end of a conductor that a battery feeds.</summary>
/// <param name="ConductorId">Id of the conductor: <c>cable.core</c>.</param>
/// <param name="Title">Its name.</param>
/// <param name="WeakestA">Lowest battery, hot conductors, joints as they are; null where it cannot be told.</param>
/// <param name="GreatestA">Full battery, every source, cold conductors, joints as nothing, by whichever return lets most through: its own, a battery's post or the hull; null where it cannot be told.</param>
/// <param name="ToHullA">The greatest between the conductor and a hull of metal that the minus is bonded to; null where it is not bonded, or it cannot be told.</param>
/// <param name="Device">What opens first on the weakest fault; null where nothing does, or it cannot be told.</param>
/// <param name="LatestS">The longest that it takes.</param>
/// <param name="BearsS">How long the conductor bears it, losing heat; infinite where for ever; null where it cannot be told.</param>
public sealed record FaultRow(string ConductorId, string Title, double? WeakestA, double? GreatestA, double? ToHullA, Protection? Device, double? LatestS, double? BearsS);

/// <summary>The faults at every far end in a condition, weakest and greatest.</summary>
public static class FaultTable
{
    /// <summary>A row for each conductor, in the order of what they feed.</summary>
    public static ImmutableArray<FaultRow> Of(ElectricsView view, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(view);
        SolvedNetwork lowest = view.Solve(condition, ChargeCase.Lowest), full = view.Solve(condition, ChargeCase.Full);
        FarEnd[] ends = [.. view.FarEndsIn(condition).All];
        Dictionary<string, (double? GreatestA, double? ToHullA)> greatest = new(StringComparer.Ordinal);
        foreach (IGrouping<Network?, FarEnd> group in ends.GroupBy(end => full.NetworkOf(end.Edge.Id)).Where(group => group.Key is not null))
        {
            AddGreatest(view, full, group.Key!, [.. group], greatest);
        }

        return [.. ends.Select(end => Row(view, lowest, end, condition, greatest.GetValueOrDefault(end.Edge.Id)))];
    }

    private static FaultRow Row(ElectricsView view, SolvedNetwork lowest, FarEnd end, Condition condition, (double? GreatestA, double? ToHullA) most)
    {
        FaultRow row = new(end.Edge.Id, $"{end.Cable.Title}, {end.Edge.Core!.Id}", null, most.GreatestA, most.ToHullA, null, null, null);
        if (end.Fault is null || !MissingInputs.OfWay(view, lowest, condition, end).IsEmpty)
        {
            return row;
        }

        row = row with { WeakestA = Math.Abs(end.Fault.Fault.CurrentA) };
        if (FaultedConductor.Of(view, end.Cable, condition, end.ThroughA(end.Edge.Id)) is not { } conductor || FarEndClearing.Each(view, end, conductor) is not [var best, ..])
        {
            return row;
        }

        return row with { Device = best.Result.LatestOpeningS is null ? null : best.Device, LatestS = best.Result.LatestOpeningS, BearsS = best.Result.BearsS };
    }

    private static void AddGreatest(ElectricsView view, SolvedNetwork full, Network network, FarEnd[] ends, Dictionary<string, (double? GreatestA, double? ToHullA)> greatest)
    {
        HashSet<string> sources = [.. network.Batteries.Select(battery => battery.Id), .. network.LimitedSources.Select(source => source.Id)];
        if (full.Built.Gaps.Keys.Any(sources.Contains))
        {
            return;
        }

        string? hull = network.Batteries.Select(battery => battery.Minus).Concat(network.Contacts.SelectMany(contact => new[] { contact.A, contact.B })).FirstOrDefault(view.Grounding.IsGrounded);
        string[] returns = [.. network.Batteries.Select(battery => battery.Minus).Concat(hull is null ? [] : [hull]).Distinct()];
        ImmutableArray<FaultCurrentResult?> faults = view.Faults.GreatestBetween(network, [.. ends.SelectMany(end => returns.Append(end.MinusNode).Select(minus => (end.PlusNode, minus)))]);
        for (int k = 0; k < ends.Length; k++)
        {
            // A length that is not given counts as nothing: the current is then no more than that.
            if (!faults.IsEmpty && !ends[k].WayIds.Any(full.Built.Gaps.ContainsKey))
            {
                ImmutableArray<FaultCurrentResult?> own = faults.Slice(k * (returns.Length + 1), returns.Length + 1);
                greatest[ends[k].Edge.Id] = (own.Max(Size), hull is null ? null : Size(own[Array.IndexOf(returns, hull)]));
            }
        }
    }

    private static double? Size(FaultCurrentResult? fault) => fault is null ? null : Math.Abs(fault.CurrentA);
}
