namespace Orlop.Electrics.Networks;

/// <summary>Two nodes that are one inside a junction: a contact of zero resistance, or the shared minus of a converter (contact -1).</summary>
internal readonly record struct Tie(int Contact, int A, int B);

/// <summary>The branches whose current a result can tell, and the order in which ties inside junctions are peeled from their leaves.</summary>
internal sealed class KnownBranches
{
    public KnownBranches(Wiring wiring)
    {
        Peeling = PeelingOrder(wiring);
        var firstContact = wiring.Start(BranchKind.Contact);
        var isPeeled = new bool[wiring.Contacts.Length];
        foreach (var (tie, _) in Peeling)
        {
            if (tie.Contact >= 0)
            {
                isPeeled[tie.Contact] = true;
            }
        }

        Branches = [.. Enumerable.Range(0, wiring.Start(BranchKind.Battery))
            .Where(k => k < firstContact || wiring.Contacts[k - firstContact].ResistanceOhm > 0 || isPeeled[k - firstContact])];
        Index = new IdIndex([.. Branches.Select(k => wiring.IdOf(wiring.Branches[k]))]);
    }

    public int[] Branches { get; }

    public IdIndex Index { get; }

    public (Tie Tie, int Leaf)[] Peeling { get; }

    private static (Tie Tie, int Leaf)[] PeelingOrder(Wiring wiring)
    {
        var ties = Ties(wiring);
        if (ties.Count == 0)
        {
            return [];
        }

        var tiesOfNode = ties.SelectMany((tie, k) => new[] { (Node: tie.A, k), (Node: tie.B, k) }).ToLookup(t => t.Node, t => t.k);
        var left = tiesOfNode.ToDictionary(group => group.Key, group => group.Count());
        var isPeeled = new bool[ties.Count];
        var leaves = new Queue<int>(left.Where(n => n.Value == 1).Select(n => n.Key).Order());
        var order = new List<(Tie, int)>(ties.Count);
        while (leaves.TryDequeue(out var leaf))
        {
            if (left[leaf] != 1)
            {
                continue;
            }

            var k = tiesOfNode[leaf].First(t => !isPeeled[t]);
            isPeeled[k] = true;
            order.Add((ties[k], leaf));
            left[leaf]--;
            var other = ties[k].A == leaf ? ties[k].B : ties[k].A;
            if (--left[other] == 1)
            {
                leaves.Enqueue(other);
            }
        }

        return [.. order];
    }

    private static List<Tie> Ties(Wiring wiring)
    {
        var ties = new List<Tie>();
        var firstContact = wiring.Start(BranchKind.Contact);
        for (var k = 0; k < wiring.Contacts.Length; k++)
        {
            if (wiring.Contacts[k].ResistanceOhm == 0)
            {
                ties.Add(new Tie(k, wiring.NodeBranches[firstContact + k].A, wiring.NodeBranches[firstContact + k].B));
            }
        }

        for (var k = 0; k < wiring.Converters.Length; k++)
        {
            if (wiring.Converters[k].IsSharedMinus)
            {
                ties.Add(new Tie(-1, wiring.NodeBranches[wiring.Start(BranchKind.ConverterInput) + k].B, wiring.NodeBranches[wiring.Start(BranchKind.ConverterOutput) + k].B));
            }
        }

        return ties;
    }
}
