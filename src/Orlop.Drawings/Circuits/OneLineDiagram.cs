using Orlop.Boat;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>The boat's wiring as a one-line diagram, laid out from the network: from left to right, sources at the left, bars upright, a row for each branch; or downwards, for a narrow window.</summary>
public sealed class OneLineDiagram
{
    private const double FootLinePx = 16;
    private const double LeastWidthPx = 240;
    private readonly SvgWriter _svg = new();
    private readonly OneLineOptions _options;
    private readonly CircuitGraph _graph;
    private readonly CircuitLayout _layout;
    private readonly CircuitMetrics _metrics;
    private readonly CircuitWording _wording;

    private OneLineDiagram(BoatModel asBuilt, BoatModel? altered, OneLineOptions options)
    {
        _options = options;
        _graph = CircuitGraph.Of(asBuilt, altered);
        _layout = CircuitLayout.Of(_graph);
        _wording = new(options.Units, options.Culture);
        _metrics = new(_graph, _layout, _wording, options.AreNamesWhole);
    }

    /// <summary>The diagram as SVG; with an alteration, what it adds or changes is blue, what it takes out dashed grey.</summary>
    public static string Draw(BoatModel asBuilt, BoatModel? altered, OneLineOptions options) =>
        new OneLineDiagram(asBuilt, altered, options).Draw(asBuilt.Particulars?.Title ?? "Boat", altered is not null);

    /// <summary>The room that parts and bars take, for tests of the layout.</summary>
    internal static IReadOnlyList<(string Id, Box Room)> RoomsOf(BoatModel boat, OneLineOptions options)
    {
        OneLineDiagram diagram = new(boat, null, options);
        return [.. diagram._graph.Nodes.Select(node => (node.Change.Id, diagram._metrics.RoomOf(node)))];
    }

    private string Draw(string boat, bool hasAlteration)
    {
        double width = _options.DownwardWidthPx ?? _metrics.Width;
        if (!(width >= LeastWidthPx) || !(_options.ScaleFactor > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(boat), width, "One-line diagram: width from 240 units, scale above 0.");
        }

        _svg.Text(12, 18, "Supply side", "strong");
        double y = _options.DownwardWidthPx is null ? Rightward() : new DownwardDiagram(_svg, _graph, _layout, _wording, _options, width).Draw(CircuitMetrics.TopPx);
        y = ReturnList.Draw(_svg, _graph.Returns, _options, width, y + 26);
        if (hasAlteration)
        {
            foreach (string line in TextSize.Wrapped("Heavy lines, bold names: added or changed. Dashed: taken out.", TextSize.Small, width - 24))
            {
                _svg.Text(12, y, line, "soft", size: TextSize.Small);
                y += FootLinePx;
            }
        }

        SvgWriter frame = new();
        string description = string.Create(_options.Culture, $"{_graph.Nodes.Count} parts and {_graph.Edges.Count} conductors of the supply side; {_graph.Returns.Count} parts of the return side.");
        DrawingFrame.Start(frame, new Frame(_options.Id, $"{boat}: one-line diagram", description, width, y, _options.IsInteractive, ScaleFactor: _options.ScaleFactor));
        return frame.Insert(_svg).End().ToString();
    }

    /// <summary>Draws it from left to right; returns how far down it reaches.</summary>
    private double Rightward()
    {
        foreach (CircuitEdge edge in _layout.Straight.OrderBy(edge => edge.Change.Kind == ChangeKind.Kept ? 0 : 1))
        {
            Straight(edge);
        }

        int lane = 0;
        foreach (CircuitEdge edge in _layout.Loops)
        {
            Loop(edge, lane++);
        }

        foreach (CircuitNode node in _graph.Nodes)
        {
            Node(node);
        }

        return _metrics.Bottom + (lane * CircuitMetrics.LanePx);
    }

    private void Straight(CircuitEdge edge)
    {
        Spot from = _metrics.At(edge.From), to = _metrics.At(edge.To);
        CircuitNode source = _graph.Nodes[edge.From], target = _graph.Nodes[edge.To];
        double startX = source.IsBar ? from.X : from.X + CircuitSymbol.HalfWidth, endX = target.IsBar ? to.X : to.X - CircuitSymbol.HalfWidth;
        bool isBranch = from.Y < to.Y, isFeeder = from.Y > to.Y;
        double startY = source.IsBar && isBranch ? to.Y : from.Y, endY = target.IsBar && isFeeder ? from.Y : to.Y;
        double stub = isBranch ? _metrics.TurnRightOf(edge.From) : _metrics.TurnLeftOf(edge.To);
        Spot[] line = startY == endY
            ? [new(startX, startY), new(endX, endY)]
            : [new(startX, startY), new(stub, startY), new(stub, endY), new(endX, endY)];
        double textY = isBranch ? endY : startY;
        StartEdge(edge);
        _svg.Polyline(line, $"run {edge.Change.Style}".TrimEnd());
        double left = _metrics.TurnRightOf(edge.From), right = _metrics.TurnLeftOf(edge.To);
        string text = _metrics.EdgeText(edge);
        if (text.Length > 0)
        {
            _svg.Text((left + right) / 2, textY - 4, text, $"halo {(edge.Change.Kind == ChangeKind.Kept ? "soft" : edge.Change.Style)}", "middle", TextSize.Small);
        }

        _svg.End();
    }

    /// <summary>A conductor that closes a loop: down beside its source, along a lane below all rows, up beside its target.</summary>
    private void Loop(CircuitEdge edge, int lane)
    {
        Spot from = _metrics.At(edge.From), to = _metrics.At(edge.To);
        double shift = (lane + 1) * CircuitMetrics.LanePx, laneY = _metrics.Bottom + shift;
        double down = _metrics.TurnRightOf(edge.From) + shift, up = _metrics.TurnLeftOf(edge.To) - shift;
        double startX = _graph.Nodes[edge.From].IsBar ? from.X : from.X + CircuitSymbol.HalfWidth, endX = _graph.Nodes[edge.To].IsBar ? to.X : to.X - CircuitSymbol.HalfWidth;
        StartEdge(edge);
        _svg.Polyline([new(startX, from.Y), new(down, from.Y), new(down, laneY), new(up, laneY), new(up, to.Y), new(endX, to.Y)], $"run {edge.Change.Style}".TrimEnd());
        _svg.End();
    }

    private void StartEdge(CircuitEdge edge) =>
        _svg.StartThing(edge.Change.Id, CircuitWording.NameOf(edge, _metrics.EdgeText(edge)), _options.IsInteractive);

    private void Node(CircuitNode node)
    {
        Spot at = _metrics.At(node.Index);
        double last = _metrics.Y(_layout.LastRow[node.Index]);
        _svg.StartThing(node.Change.Id, _wording.NameOf(node), _options.IsInteractive);
        if (node.IsBar)
        {
            _svg.Line(at.X, at.Y - 9, at.X, last + 9, $"bar {node.Change.Style}".TrimEnd());
        }
        else
        {
            _svg.Rect(Box.Around(at, 2 * CircuitSymbol.HalfWidth, 2 * CircuitSymbol.HalfHeight), "hit");
            CircuitSymbol.Draw(_svg, node.Part, at, node.Change.Style);
        }

        string style = node.Change.Style;
        IReadOnlyList<string> title = _metrics.TitleLines(node);
        for (int line = 0; line < title.Count; line++)
        {
            _svg.Text(at.X, at.Y - CircuitMetrics.AboveOf(line, title.Count), title[line], $"label halo {style}".TrimEnd(), "middle", TextSize.Small);
        }

        _svg.Text(at.X, (node.IsBar ? last : at.Y) + CircuitMetrics.RatingPx, _metrics.Rating(node), $"halo {(style.Length == 0 ? "soft" : style)}", "middle", TextSize.Small);
        _svg.End();
    }
}
