using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

internal enum BranchKind { Conductor, Contact, Battery, LimitedSource, ConverterOutput, Load, ConverterInput }

/// <summary>An element between two junctions; <c>Index</c> is its place among the elements of its kind, sorted by id.</summary>
internal readonly record struct Branch(BranchKind Kind, int Index, int A, int B)
{
    public bool IsSource => Kind is BranchKind.Battery or BranchKind.LimitedSource or BranchKind.ConverterOutput;
}

/// <summary>
/// The network with ids turned to numbers: elements sorted by id, nodes numbered as the sorted elements name them, and nodes joined
/// by contacts of zero resistance (or by a shared minus) merged into one junction.
/// </summary>
internal sealed class Wiring
{
    private readonly Dictionary<string, int> _nodeOf;
    private readonly List<string> _nodes;
    private readonly ElementOrder _order;

    public Wiring(Network network)
    {
        _order = ElementOrder.Of(network);
        Conductors = _order.Conductors.Sorted(network.Conductors);
        Contacts = _order.Contacts.Sorted(network.Contacts);
        Batteries = _order.Batteries.Sorted(network.Batteries);
        LimitedSources = _order.LimitedSources.Sorted(network.LimitedSources);
        Converters = _order.Converters.Sorted(network.Converters);
        Loads = _order.Loads.Sorted(network.Loads);
        var branchCount = Conductors.Length + Contacts.Length + Batteries.Length + LimitedSources.Length + (2 * Converters.Length) + Loads.Length;
        _nodeOf = new Dictionary<string, int>(branchCount, StringComparer.Ordinal);
        _nodes = new List<string>(branchCount);
        Branches = NumberedBranches(branchCount);
        BondedNodes = [.. network.BondedNodes.Order(StringComparer.Ordinal).Select(Node)];
        NodeBranches = [.. Branches];
        NodeNames = [.. _nodes];
        JunctionOfNode = MergeNodes();
        for (var k = 0; k < Branches.Length; k++)
        {
            Branches[k] = Branches[k] with { A = JunctionOfNode[Branches[k].A], B = JunctionOfNode[Branches[k].B] };
        }
    }

    private Wiring(Wiring same, Network network)
    {
        (_nodeOf, _nodes, _order) = (same._nodeOf, same._nodes, same._order);
        Conductors = _order.Conductors.Sorted(network.Conductors);
        Contacts = _order.Contacts.Sorted(network.Contacts);
        Batteries = _order.Batteries.Sorted(network.Batteries);
        LimitedSources = _order.LimitedSources.Sorted(network.LimitedSources);
        Converters = _order.Converters.Sorted(network.Converters);
        Loads = _order.Loads.Sorted(network.Loads);
        (Branches, NodeBranches, BondedNodes) = (same.Branches, same.NodeBranches, same.BondedNodes);
        (NodeNames, JunctionOfNode, JunctionCount) = (same.NodeNames, same.JunctionOfNode, same.JunctionCount);
    }

    public Conductor[] Conductors { get; }

    public Contact[] Contacts { get; }

    public Battery[] Batteries { get; }

    public LimitedSource[] LimitedSources { get; }

    public Converter[] Converters { get; }

    public Load[] Loads { get; }

    public string[] NodeNames { get; }

    public int[] BondedNodes { get; }

    /// <summary>Branches between nodes, before merging.</summary>
    public Branch[] NodeBranches { get; }

    /// <summary>Branches between junctions, in the order conductors, contacts, batteries, limited sources, converter outputs, loads, converter inputs.</summary>
    public Branch[] Branches { get; }

    public int[] JunctionOfNode { get; }

    public int JunctionCount { get; private set; }

    /// <summary>Where the branches of a kind start among <see cref="Branches"/>.</summary>
    public int Start(BranchKind kind) => kind switch
    {
        BranchKind.Conductor => 0,
        BranchKind.Contact => Conductors.Length,
        BranchKind.Battery => Start(BranchKind.Contact) + Contacts.Length,
        BranchKind.LimitedSource => Start(BranchKind.Battery) + Batteries.Length,
        BranchKind.ConverterOutput => Start(BranchKind.LimitedSource) + LimitedSources.Length,
        BranchKind.Load => Start(BranchKind.ConverterOutput) + Converters.Length,
        _ => Start(BranchKind.Load) + Loads.Length,
    };

    public string IdOf(Branch branch) => branch.Kind switch
    {
        BranchKind.Conductor => Conductors[branch.Index].Id,
        BranchKind.Contact => Contacts[branch.Index].Id,
        BranchKind.Battery => Batteries[branch.Index].Id,
        BranchKind.LimitedSource => LimitedSources[branch.Index].Id,
        BranchKind.Load => Loads[branch.Index].Id,
        _ => Converters[branch.Index].Id,
    };

    /// <summary>Whether current can pass the branch whatever its load does: everything but loads of constant power or current.</summary>
    public bool Conducts(Branch branch) => branch.Kind switch
    {
        BranchKind.Load => Loads[branch.Index].Kind == LoadKind.Resistance,
        BranchKind.ConverterInput => false,
        _ => true,
    };

    /// <summary>The number of a node by its name, or null when no element names it.</summary>
    public int? Find(string node) => _nodeOf.TryGetValue(node, out var number) ? number : null;

    /// <summary>
    /// The same elements between the same nodes with the values of another network; null where anything but values differs: what is joined with no
    /// resistance and which loads are resistances count as part of the wiring.
    /// </summary>
    public Wiring? With(Network network)
    {
        if (!_order.Fits(network))
        {
            return null;
        }

        var other = new Wiring(this, network);
        return Same(Conductors, other.Conductors, (a, b) => a.Id == b.Id && a.A == b.A && a.B == b.B)
            && Same(Contacts, other.Contacts, (a, b) => a.Id == b.Id && a.A == b.A && a.B == b.B && a.ResistanceOhm == 0 == (b.ResistanceOhm == 0))
            && Same(Batteries, other.Batteries, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus)
            && Same(LimitedSources, other.LimitedSources, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus)
            && Same(Converters, other.Converters, (a, b) => a.Id == b.Id && a.InPlus == b.InPlus && a.InMinus == b.InMinus
                && a.OutPlus == b.OutPlus && a.OutMinus == b.OutMinus && a.IsSharedMinus == b.IsSharedMinus)
            && Same(Loads, other.Loads, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus && a.Kind == b.Kind)
            ? other : null;
    }

    private static bool Same<T>(T[] these, T[] those, Func<T, T, bool> isSame)
    {
        for (var k = 0; k < these.Length; k++)
        {
            if (!isSame(these[k], those[k]))
            {
                return false;
            }
        }

        return true;
    }

    private Branch[] NumberedBranches(int count)
    {
        var branches = new Branch[count];
        var at = 0;
        for (var k = 0; k < Conductors.Length; k++)
        {
            Add(BranchKind.Conductor, k, Conductors[k].A, Conductors[k].B);
        }

        for (var k = 0; k < Contacts.Length; k++)
        {
            Add(BranchKind.Contact, k, Contacts[k].A, Contacts[k].B);
        }

        for (var k = 0; k < Batteries.Length; k++)
        {
            Add(BranchKind.Battery, k, Batteries[k].Plus, Batteries[k].Minus);
        }

        for (var k = 0; k < LimitedSources.Length; k++)
        {
            Add(BranchKind.LimitedSource, k, LimitedSources[k].Plus, LimitedSources[k].Minus);
        }

        for (var k = 0; k < Converters.Length; k++)
        {
            Add(BranchKind.ConverterOutput, k, Converters[k].OutPlus, Converters[k].OutMinus);
        }

        for (var k = 0; k < Loads.Length; k++)
        {
            Add(BranchKind.Load, k, Loads[k].Plus, Loads[k].Minus);
        }

        for (var k = 0; k < Converters.Length; k++)
        {
            Add(BranchKind.ConverterInput, k, Converters[k].InPlus, Converters[k].InMinus);
        }

        return branches;

        void Add(BranchKind kind, int index, string a, string b) => branches[at++] = new Branch(kind, index, Node(a), Node(b));
    }

    private int Node(string name)
    {
        if (!_nodeOf.TryGetValue(name, out var number))
        {
            number = _nodes.Count;
            _nodeOf.Add(name, number);
            _nodes.Add(name);
        }

        return number;
    }

    private int[] MergeNodes()
    {
        var sets = new DisjointSets(NodeNames.Length);
        for (var k = 0; k < Contacts.Length; k++)
        {
            if (Contacts[k].ResistanceOhm == 0)
            {
                var branch = Branches[Start(BranchKind.Contact) + k];
                sets.Merge(branch.A, branch.B);
            }
        }

        for (var k = 0; k < Converters.Length; k++)
        {
            if (Converters[k].IsSharedMinus)
            {
                sets.Merge(Branches[Start(BranchKind.ConverterInput) + k].B, Branches[Start(BranchKind.ConverterOutput) + k].B);
            }
        }

        var junctions = new int[NodeNames.Length];
        for (var node = 0; node < junctions.Length; node++)
        {
            var first = sets.Find(node);
            junctions[node] = first == node ? JunctionCount++ : junctions[first];
        }

        return junctions;
    }
}
