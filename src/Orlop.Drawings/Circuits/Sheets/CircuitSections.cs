namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>A part in a row, the conductor that leads to it, and what is told of it besides.</summary>
internal sealed record SheetItem(CircuitNode Node, CircuitEdge? Before, string Note = "");

/// <summary>Parts one after the other without a branch, and the conductor that leads on to a part drawn elsewhere.</summary>
internal sealed record SheetChain(IReadOnlyList<SheetItem> Items, CircuitEdge? Onward);

/// <summary>A bar or branching part with the rows that leave it; or rows of their own under a heading, where there is no such part.</summary>
internal sealed record SheetSection(CircuitNode? Head, string Heading, IReadOnlyList<SheetChain> Rows);

/// <summary>
/// Cuts the network at its bars and branching parts: each is drawn once with the rows that leave it, and a row that comes to another refers to it.
/// Every part and every conductor is in exactly one place.
/// </summary>
internal sealed class CircuitSections
{
    private readonly CircuitGraph _graph;
    private readonly ILookup<int, CircuitEdge> _out;
    private readonly ILookup<int, CircuitEdge> _in;
    private readonly HashSet<int> _heads;
    private readonly HashSet<int> _drawn = [];
    private readonly Queue<int> _reached = new();
    private readonly List<SheetSection> _sections = [];

    private CircuitSections(CircuitGraph graph)
    {
        _graph = graph;
        _out = graph.Edges.ToLookup(edge => edge.From);
        _in = graph.Edges.ToLookup(edge => edge.To);
        _heads = [.. graph.Nodes.Where(node => node.IsBar || _in[node.Index].Count() > 1 || _out[node.Index].Count() > 1).Select(node => node.Index)];
    }

    /// <summary>Sources first, then each bar after the one that feeds it, then what is joined to nothing and the return side.</summary>
    internal static IReadOnlyList<SheetSection> Of(CircuitGraph graph)
    {
        CircuitSections sections = new(graph);
        sections.Build();
        return sections._sections;
    }

    private void Build()
    {
        CircuitNode[] starts = [.. _graph.Nodes.Where(node => !_heads.Contains(node.Index) && !_in[node.Index].Any()).OrderBy(node => FlowDirection.SourceRank(node.Part)).ThenBy(node => node.Index)];
        Add(null, "Sources", starts.Where(node => _out[node.Index].Any()).Select(node => Follow([new SheetItem(node, null)])));
        Heads(_graph.Nodes.Where(node => _heads.Contains(node.Index)).OrderBy(node => _in[node.Index].Count()).ThenBy(node => FlowDirection.SourceRank(node.Part)).ThenBy(node => node.Index));

        // What is left goes round in a ring without a branch: its first part begins it.
        foreach (CircuitNode node in _graph.Nodes.Where(node => _in[node.Index].Any()))
        {
            if (!_drawn.Contains(node.Index))
            {
                _heads.Add(node.Index);
                Heads([node]);
            }
        }

        Add(null, "Joined to nothing", starts.Where(node => !_out[node.Index].Any()).Select(node => Follow([new SheetItem(node, null)])));
        Add(null, "Return side", _graph.Returns.Select(part => new SheetChain([new SheetItem(new CircuitNode(-1, part.Change), null, part.ConductorCount == 1 ? "1 conductor" : FormattableString.Invariant($"{part.ConductorCount} conductors"))], null)));
    }

    private void Heads(IEnumerable<CircuitNode> inOrder)
    {
        foreach (CircuitNode first in inOrder.ToArray())
        {
            Reached();
            Head(first.Index);
        }

        Reached();
    }

    private void Reached()
    {
        while (_reached.TryDequeue(out int next))
        {
            Head(next);
        }
    }

    private void Head(int head)
    {
        if (_drawn.Add(head))
        {
            SheetChain[] rows = [.. _out[head].Select(edge => _heads.Contains(edge.To) || _drawn.Contains(edge.To) ? new SheetChain([], Reach(edge)) : Follow([new SheetItem(_graph.Nodes[edge.To], edge)]))];
            _sections.Add(new SheetSection(_graph.Nodes[head], _graph.Nodes[head].Part.Title, rows));
        }
    }

    private void Add(CircuitNode? head, string heading, IEnumerable<SheetChain> rows)
    {
        if (rows.ToArray() is { Length: > 0 } all)
        {
            _sections.Add(new SheetSection(head, heading, all));
        }
    }

    private SheetChain Follow(List<SheetItem> items)
    {
        _drawn.Add(items[^1].Node.Index);
        while (_out[items[^1].Node.Index].FirstOrDefault() is { } edge)
        {
            if (_heads.Contains(edge.To))
            {
                return new SheetChain(items, Reach(edge));
            }

            items.Add(new SheetItem(_graph.Nodes[edge.To], edge));
            _drawn.Add(edge.To);
        }

        return new SheetChain(items, null);
    }

    private CircuitEdge Reach(CircuitEdge edge)
    {
        _reached.Enqueue(edge.To);
        return edge;
    }
}
