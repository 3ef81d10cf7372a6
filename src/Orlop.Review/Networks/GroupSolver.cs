using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>Splits networks and solves their groups, each remembered by its content: equal groups are solved once, whoever asks.</summary>
internal sealed class GroupSolver(Memo memo, CancellationToken token)
{
    private sealed record Analysed(PreparedNetwork? Network);

    /// <summary>The grouping of a network. Those that differ only in numbers are split in the same way.</summary>
    public NetworkGrouping Grouping(Network network) => memo.Get(new NetworkShape(network), () => NetworkGrouping.Of(network));

    /// <summary>A group, solved. The same object is found by reference; another of the same content by its key.</summary>
    public SolvedGroup Solve(Network group) => memo.Get(group, () => new SolvedGroup(group, memo.Get(new NetworkKey(group), () =>
    {
        token.ThrowIfCancellationRequested();
        return Prepared(group)?.Solve(token) ?? NetworkSolver.Solve(group, token);
    })));

    // Networks of the same elements between the same nodes are analysed once. Null when that analysis does not fit, or the network has faults.
    private PreparedNetwork? Prepared(Network group) => memo.Get(
        new NetworkShape(group), () => new Analysed(NetworkCheck.FindFaults(group).IsEmpty ? PreparedNetwork.Of(group) : null)).Network?.With(group);
}
