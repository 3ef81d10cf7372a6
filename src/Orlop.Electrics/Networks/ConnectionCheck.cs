using System.Globalization;

namespace Orlop.Electrics.Networks;

/// <summary>Finds loads without a closed path to a source, shorted sources, and sources joined with no resistance.</summary>
internal static class ConnectionCheck
{
    public static IEnumerable<NetworkFault> FindFaults(Wiring wiring) =>
        [.. Shorts(wiring), .. SourceLoops(wiring), .. Floating(wiring)];

    private static IEnumerable<NetworkFault> Shorts(Wiring wiring)
    {
        for (var k = 0; k < wiring.Branches.Length; k++)
        {
            var branch = wiring.Branches[k];
            if (branch.IsSource && branch.A == branch.B)
            {
                var id = wiring.IdOf(branch);
                var ends = wiring.NodeBranches[k];
                var between = ends.A == ends.B
                    ? $"both are node '{wiring.NodeNames[ends.A]}'"
                    : $"nodes '{wiring.NodeNames[ends.A]}' and '{wiring.NodeNames[ends.B]}' are joined with no resistance";
                yield return new NetworkFault(NetworkFaultKind.Short, [id], $"The terminals of source '{id}' are shorted: {between}.");
            }
        }
    }

    private static IEnumerable<NetworkFault> SourceLoops(Wiring wiring)
    {
        var stiff = wiring.Branches.Where(b => b.IsSource && Source(wiring, b).ResistanceOhm == 0 && b.A != b.B);
        foreach (var group in stiff.GroupBy(b => (Math.Min(b.A, b.B), Math.Max(b.A, b.B))))
        {
            var sources = group.ToArray();
            for (var k = 1; k < sources.Length; k++)
            {
                var (first, other) = (Source(wiring, sources[0]), Source(wiring, sources[k]));
                if (first.VoltageV != other.VoltageV || sources[0].A != sources[k].A)
                {
                    yield return new NetworkFault(NetworkFaultKind.SourceLoop, [first.Id, other.Id], string.Create(
                        CultureInfo.InvariantCulture,
                        $"Sources '{first.Id}' ({first.VoltageV} V) and '{other.Id}' ({other.VoltageV} V) are joined with no resistance between them."));
                }
            }
        }
    }

    private static IEnumerable<NetworkFault> Floating(Wiring wiring)
    {
        var blocks = new Blocks(wiring);
        for (var k = wiring.Start(BranchKind.Load); k < wiring.Branches.Length; k++)
        {
            if (blocks.IsFed(k))
            {
                continue;
            }

            var branch = wiring.Branches[k];
            var id = wiring.IdOf(branch);
            var what = branch.Kind == BranchKind.Load ? "Load" : "The input of converter";
            var ends = wiring.NodeBranches[k];
            var why = branch.A == branch.B
                ? "both of its terminals are on one node"
                : $"between its terminals '{wiring.NodeNames[ends.A]}' and '{wiring.NodeNames[ends.B]}' there is none";
            yield return new NetworkFault(NetworkFaultKind.Floating, [id], $"{what} '{id}' has no closed path to a source: {why}.");
        }
    }

    private static (string Id, double VoltageV, double ResistanceOhm) Source(Wiring wiring, Branch branch) => branch.Kind switch
    {
        BranchKind.Battery => (wiring.IdOf(branch), wiring.Batteries[branch.Index].OpenCircuitV, wiring.Batteries[branch.Index].InternalOhm),
        BranchKind.LimitedSource => (wiring.IdOf(branch), wiring.LimitedSources[branch.Index].SetpointV, wiring.LimitedSources[branch.Index].SourceOhm),
        _ => (wiring.IdOf(branch), wiring.Converters[branch.Index].OutputV, wiring.Converters[branch.Index].OutputOhm),
    };
}
