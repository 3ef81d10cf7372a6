using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Words;

namespace Orlop.Drawings.Circuits;

/// <summary>The boat's wiring as a one-line diagram, laid out from the network: sources at the left, bars upright, a row for each branch.</summary>
public sealed class OneLineDiagram
{
    private const double FootLinePx = 15;
    private readonly SvgWriter _svg = new();
    private readonly OneLineOptions _options;
    private readonly CircuitGraph _graph;
    private readonly CircuitLayout _layout;
    private readonly CircuitMetrics _metrics;

    private OneLineDiagram(BoatModel asBuilt, BoatModel? altered, OneLineOptions options)
    {
        _options = options;
        _graph = CircuitGraph.Of(asBuilt, altered);
        _layout = CircuitLayout.Of(_graph);
        _metrics = new(_graph, _layout, new CircuitWording(options.Units, options.Culture), options.AreNamesWhole);
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
        _svg.Text(12, 18, "Supply side", "strong");
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

        double y = Returns(_metrics.Bottom + (lane * CircuitMetrics.LanePx) + 22);
        if (hasAlteration)
        {
            _svg.Text(12, y, "Heavy lines, bold names: added or changed. Dashed: taken out.", "soft", size: TextSize.Small);
            y += FootLinePx;
        }

        SvgWriter frame = new();
        string description = string.Create(_options.Culture, $"{_graph.Nodes.Count} parts and {_graph.Edges.Count} conductors of the supply side; {_graph.Returns.Count} parts of the return side.");
        DrawingFrame.Start(frame, new Frame(_options.Id, $"{boat}: one-line diagram", description, _metrics.Width, y, _options.IsInteractive));
        return frame.Insert(_svg).End().ToString();
    }

    private void Straight(CircuitEdge edge)
    {
        Spot from = _metrics.At(edge.From), to = _metrics.At(edge.To);
        CircuitNode source = _graph.Nodes[edge.From], target = _graph.Nodes[edge.To];
        double startX = source.IsBar ? from.X : from.X + CircuitSymbol.HalfWidth, endX = target.IsBar ? to.X : to.X - CircuitSymbol.HalfWidth;
        bool isBranch = from.Y < to.Y, isFeeder = from.Y > to.Y;
        double startY = source.IsBar && isBranch ? to.Y : from.Y, endY = target.IsBar && isFeeder ? from.Y : to.Y;
        double stub = isBranch ? _metrics.RightOf(edge.From) + CircuitMetrics.StubPx : _metrics.LeftOf(edge.To) - CircuitMetrics.StubPx;
        Spot[] line = startY == endY
            ? [new(startX, startY), new(endX, endY)]
            : [new(startX, startY), new(stub, startY), new(stub, endY), new(endX, endY)];
        double textY = isBranch ? endY : startY;
        StartEdge(edge);
        _svg.Polyline(line, $"run {edge.Change.Style}".TrimEnd());
        double left = _metrics.RightOf(edge.From), right = _metrics.LeftOf(edge.To);
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
        double down = _metrics.RightOf(edge.From) + CircuitMetrics.StubPx + shift, up = _metrics.LeftOf(edge.To) - CircuitMetrics.StubPx - shift;
        double startX = _graph.Nodes[edge.From].IsBar ? from.X : from.X + CircuitSymbol.HalfWidth, endX = _graph.Nodes[edge.To].IsBar ? to.X : to.X - CircuitSymbol.HalfWidth;
        StartEdge(edge);
        _svg.Polyline([new(startX, from.Y), new(down, from.Y), new(down, laneY), new(up, laneY), new(up, to.Y), new(endX, to.Y)], $"run {edge.Change.Style}".TrimEnd());
        _svg.End();
    }

    private void StartEdge(CircuitEdge edge)
    {
        string name = $"{Wording.NameWithKind(edge.Change.Shown)}, {_metrics.EdgeText(edge)}{edge.Change.Remark}";
        _svg.StartThing(edge.Change.Id, name.Replace(", ,", ",", StringComparison.Ordinal).TrimEnd(' ', ','), _options.IsInteractive);
    }

    private void Node(CircuitNode node)
    {
        Spot at = _metrics.At(node.Index);
        double last = CircuitMetrics.Y(_layout.LastRow[node.Index]);
        _svg.StartThing(node.Change.Id, $"{Wording.NameWithKind(node.Part)}{node.Change.Remark}", _options.IsInteractive);
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
        _svg.Text(at.X, at.Y - 15, _metrics.Title(node), $"label halo {style}".TrimEnd(), "middle", TextSize.Small);
        _svg.Text(at.X, (node.IsBar ? last : at.Y) + 22, _metrics.Rating(node), $"halo {(style.Length == 0 ? "soft" : style)}", "middle", TextSize.Small);
        _svg.End();
    }

    private double Returns(double y)
    {
        if (_graph.Returns.Count == 0)
        {
            return y;
        }

        _svg.Text(12, y, "Return side", "strong");
        double x = 12;
        y += 22;
        foreach (ReturnPart part in _graph.Returns)
        {
            string text = string.Create(CultureInfo.InvariantCulture, $"{part.Change.Shown.Title}: {part.ConductorCount} {(part.ConductorCount == 1 ? "conductor" : "conductors")}");
            double width = TextSize.Width(text, TextSize.Small) + 54;
            if (x > 12 && x + width > _metrics.Width)
            {
                x = 12;
                y += 26;
            }

            _svg.StartThing(part.Change.Id, $"{text}{part.Change.Remark}", _options.IsInteractive);
            if (part.Change.Shown is Busbar)
            {
                _svg.Line(x + 2, y - 4, x + 30, y - 4, $"bar {part.Change.Style}".TrimEnd());
            }
            else
            {
                CircuitSymbol.Draw(_svg, (Part)part.Change.Shown, new(x + 16, y - 4), part.Change.Style);
            }

            _svg.Text(x + 38, y, text, part.Change.Style, size: TextSize.Small).End();
            x += width;
        }

        return y + 26;
    }
}
