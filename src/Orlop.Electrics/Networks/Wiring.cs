using System.Collections.Immutable;
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

    public Wiring(Network network)
    {
        Conductors = Sorted(network.Conductors, e => e.Id);
        Contacts = Sorted(network.Contacts, e => e.Id);
        Batteries = Sorted(network.Batteries, e => e.Id);
        LimitedSources = Sorted(network.LimitedSources, e => e.Id);
        Converters = Sorted(network.Converters, e => e.Id);
        Loads = Sorted(network.Loads, e => e.Id);
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

    private static T[] Sorted<T>(ImmutableArray<T> elements, Func<T, string> id)
    {
        var sorted = elements.AsSpan().ToArray();
        for (var k = 1; k < sorted.Length; k++)
        {
            if (string.CompareOrdinal(id(sorted[k - 1]), id(sorted[k])) > 0)
            {
                Array.Sort(sorted, (a, b) => string.CompareOrdinal(id(a), id(b)));
                return sorted;
            }
        }

        return sorted;
    }
}
