namespace Orlop.Electrics.Networks;

/// <summary>
/// Currents of contacts of zero resistance: inside a junction they follow from the balance at each node, working inwards from the nodes
/// with one such contact. Contacts that close a ring inside a junction share the current in a way nothing fixes, and get none.
/// </summary>
internal sealed class JoinedContacts(PreparedNetwork network, double[] currentA)
{
    private readonly Wiring _wiring = network.Wiring;

    /// <summary>Currents of all conductors and contacts that have one, by id.</summary>
    public ValuesById<double> BranchCurrents()
    {
        var known = network.Ids.BranchesWithCurrent;
        var inner = Peel();
        var firstContact = _wiring.Start(BranchKind.Contact);
        var values = new double[known.Branches.Length];
        for (var k = 0; k < values.Length; k++)
        {
            var branch = known.Branches[k];
            values[k] = branch >= firstContact && _wiring.Contacts[branch - firstContact].ResistanceOhm == 0
                ? inner[branch - firstContact]
                : currentA[branch];
        }

        return new ValuesById<double>(known.Index, values);
    }

    private double[] Peel()
    {
        var inner = new double[_wiring.Contacts.Length];
        var steps = network.Ids.BranchesWithCurrent.Peeling;
        if (steps.Length == 0)
        {
            return inner;
        }

        var outA = new double[_wiring.NodeNames.Length];
        for (var k = 0; k < _wiring.NodeBranches.Length; k++)
        {
            outA[_wiring.NodeBranches[k].A] += currentA[k];
            outA[_wiring.NodeBranches[k].B] -= currentA[k];
        }

        foreach (var (tie, leaf) in steps)
        {
            // What leaves the leaf by everything else comes in by the tie.
            var intoLeaf = outA[leaf];
            outA[tie.A == leaf ? tie.B : tie.A] += intoLeaf;
            outA[leaf] = 0;
            if (tie.Contact >= 0)
            {
                inner[tie.Contact] = tie.B == leaf ? intoLeaf : 0 - intoLeaf;
            }
        }

        return inner;
    }
}
