using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>Draws the supply side downwards: sources at the top, bars upright with their branches to the right, words beside each part.</summary>
internal sealed class DownwardDiagram
{
    private const double LeftPx = 26;
    private const double RightPx = 8;
    private const double MostStepPx = 26;
    private const double StepsShareRatio = 0.4;
    private const double BranchY = 7;
    private const double ConductorPx = 22;
    private const double BareConductorPx = 12;
    private const double SymbolPx = 2 * CircuitSymbol.HalfWidth;
    private const double LinePx = 15;
    private const double WordsPx = 18;
    private const double BetweenTreesPx = 16;
    private readonly SvgWriter _svg;
    private readonly CircuitWording _wording;
    private readonly OneLineOptions _options;
    private readonly double _width;
    private readonly double _stepPx;
    private readonly IReadOnlyList<DownwardRow> _rows;
    private readonly ILookup<int, CircuitEdge> _loops;
    private readonly CircuitGraph _graph;
    private readonly double[] _tops;

    internal DownwardDiagram(SvgWriter svg, CircuitGraph graph, CircuitLayout layout, CircuitWording wording, OneLineOptions options, double width)
    {
        (_svg, _graph, _wording, _options, _width) = (svg, graph, wording, options, width);
        _rows = DownwardRow.Of(graph, layout);
        _loops = layout.Loops.ToLookup(edge => edge.From);
        _stepPx = Math.Min(MostStepPx, width * StepsShareRatio / Math.Max(1, _rows.Select(row => row.Depth).DefaultIfEmpty(0).Max()));
        _tops = new double[_rows.Count];
    }

    /// <summary>Draws it from this height; returns how far down it reaches.</summary>
    internal double Draw(double y)
    {
        for (int index = 0; index < _rows.Count; index++)
        {
            y += index > 0 && _rows[index].Edge is null ? BetweenTreesPx : 0;
            _tops[index] = y;
            y += HeightOf(_rows[index]);
        }

        for (int index = 0; index < _rows.Count; index++)
        {
            Fan(index);
        }

        for (int index = 0; index < _rows.Count; index++)
        {
            Conductor(index);
            Part(index);
        }

        return y;
    }

    private double X(DownwardRow row) => LeftPx + (row.Depth * _stepPx);

    private double ConductorHeight(DownwardRow row) =>
        row.Edge is null ? 0 : row.FeedsIn || _wording.Conductor(row.Edge).Length > 0 ? ConductorPx : BareConductorPx;

    private double PartTop(int index) => _tops[index] + ConductorHeight(_rows[index]);

    private double HeightOf(DownwardRow row) => ConductorHeight(row) + Math.Max(SymbolPx, (WordsOf(row).Count * LinePx) + 4);

    private double RoomForWords(DownwardRow row) => _width - RightPx - X(row) - WordsPx;

    private List<(string Text, string Style)> WordsOf(DownwardRow row)
    {
        string style = row.Node.Change.Style, rating = _wording.Rating(row.Node.Part);
        List<(string, string)> words = [.. TextSize.Wrapped(row.Node.Part.Title, TextSize.Small, RoomForWords(row)).Select(line => (line, $"label {style}".TrimEnd()))];
        if (rating.Length > 0)
        {
            words.Add((TextSize.Fitted(rating, TextSize.Small, RoomForWords(row)), style.Length == 0 ? "soft" : style));
        }

        words.AddRange(_loops[row.Node.Index].Select(loop => (LoopText(row, loop), loop.Change.Style)));
        return words;
    }

    private string LoopText(DownwardRow row, CircuitEdge loop)
    {
        string conductor = _wording.Conductor(loop);
        return TextSize.Fitted($"also to {_graph.Nodes[loop.To].Part.Title}{(conductor.Length > 0 ? $", {conductor}" : "")}", TextSize.Small, RoomForWords(row));
    }

    /// <summary>The upright on which a bar's or a fork's branches hang.</summary>
    private void Fan(int index)
    {
        DownwardRow row = _rows[index];
        int last = Enumerable.Range(index + 1, _rows.Count - index - 1).LastOrDefault(other => _rows[other].IsBranch && _rows[other].Fan == index, -1);
        if (!row.Node.IsBar && last >= 0)
        {
            _svg.Line(X(row), PartTop(index) + SymbolPx, X(row), _tops[last] + BranchY, "run");
        }
        else if (row.Node.IsBar)
        {
            double bottom = last < 0 ? PartTop(index) + SymbolPx : _tops[last] + BranchY + 4;
            _svg.StartThing(row.Node.Change.Id, _wording.NameOf(row.Node), isInteractive: false);
            _svg.Line(X(row), PartTop(index) + 4, X(row), bottom, $"bar {row.Node.Change.Style}".TrimEnd()).End();
        }
    }

    private void Conductor(int index)
    {
        DownwardRow row = _rows[index];
        if (row.Edge is not { } edge)
        {
            return;
        }

        double x = X(row), top = _tops[index], end = PartTop(index) + (row.Node.IsBar ? 4 : 0);
        Spot[] line = row.IsBranch ? [new(X(_rows[row.Fan]), top + BranchY), new(x, top + BranchY), new(x, end)] : [new(x, top - LeadAbove(index)), new(x, end)];
        string text = $"{(row.FeedsIn && row.IsBranch ? "feeds in" : "")}{(row.FeedsIn && row.IsBranch && _wording.Conductor(edge).Length > 0 ? ", " : "")}{_wording.Conductor(edge)}";
        _svg.StartThing(edge.Change.Id, CircuitWording.NameOf(edge, text), _options.IsInteractive);
        _svg.Rect(new Box(x - 6, top, 12 + WordsPx, ConductorHeight(row)), "hit");
        _svg.Polyline(line, $"run {edge.Change.Style}".TrimEnd());
        if (row.FeedsIn && row.IsBranch)
        {
            double tip = line[0].X + 4;
            _svg.Polyline([new(tip, top + BranchY), new(tip + 7, top + BranchY - 4), new(tip + 7, top + BranchY + 4)], "solid", isClosed: true);
        }

        if (text.Length > 0)
        {
            _svg.Text(x + 8, top + BranchY + 9, TextSize.Fitted(text, TextSize.Small, _width - RightPx - x - 8), edge.Change.Style.Length == 0 ? "soft" : edge.Change.Style, size: TextSize.Small);
        }

        _svg.End();
    }

    /// <summary>From the foot of the symbol above to this row: words may make its row higher than the symbol.</summary>
    private double LeadAbove(int index) => _rows[index - 1].Node.IsBar ? 0 : _tops[index] - PartTop(index - 1) - SymbolPx;

    private void Part(int index)
    {
        DownwardRow row = _rows[index];
        double x = X(row), top = PartTop(index);
        List<(string Text, string Style)> words = WordsOf(row);
        CircuitEdge[] loops = [.. _loops[row.Node.Index]];
        _svg.StartThing(row.Node.Change.Id, _wording.NameOf(row.Node), _options.IsInteractive);
        _svg.Rect(new Box(x - CircuitSymbol.HalfHeight, top, _width - RightPx - x + CircuitSymbol.HalfHeight, (words.Count - loops.Length) * LinePx), "hit");
        if (!row.Node.IsBar)
        {
            CircuitSymbol.Draw(_svg, row.Node.Part, new(x, top + CircuitSymbol.HalfWidth), row.Node.Change.Style, isDownward: true);
        }

        double y = top + (words.Count == 1 ? 18 : 12);
        for (int line = 0; line < words.Count; line++)
        {
            int loop = line - (words.Count - loops.Length);
            if (loop == 0)
            {
                _svg.End();
            }

            if (loop >= 0)
            {
                _svg.StartThing(loops[loop].Change.Id, CircuitWording.NameOf(loops[loop], words[line].Text.TrimEnd('…')), _options.IsInteractive);
                _svg.Rect(new Box(x + WordsPx, y - 12, RoomForWords(row), LinePx), "hit");
            }

            _svg.Text(x + WordsPx, y, words[line].Text, words[line].Style, size: TextSize.Small);
            if (loop >= 0)
            {
                _svg.End();
            }

            y += LinePx;
        }

        if (loops.Length == 0)
        {
            _svg.End();
        }
    }
}
