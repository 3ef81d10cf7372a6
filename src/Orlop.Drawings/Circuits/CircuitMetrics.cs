using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>Where columns and rows lie on the drawing, and the room each part takes with its words.</summary>
internal sealed class CircuitMetrics
{
    internal const double TopPx = 34;
    internal const double StubPx = 9;
    internal const double LanePx = 5;
    internal const double TitlePx = 21;
    internal const double RatingPx = 24;
    private const double LeftPx = 12;
    private const double MostTextPx = 118;
    private const int MostTitleLines = 2;
    private const double WiderRatio = 1.35;
    private const double LinePx = 13;
    private const double RowPx = 59;
    private const double TextGapPx = 8;
    private const double LeastWidthPx = 320;
    private readonly CircuitGraph _graph;
    private readonly CircuitLayout _layout;
    private readonly CircuitWording _wording;
    private readonly double[] _centres;
    private readonly double _mostTextPx;
    private readonly int _titleLines;
    private readonly HashSet<int> _forks;
    private readonly HashSet<int> _joins;

    internal CircuitMetrics(CircuitGraph graph, CircuitLayout layout, CircuitWording wording, bool areNamesWhole)
    {
        (_graph, _layout, _wording) = (graph, layout, wording);
        _mostTextPx = areNamesWhole ? double.PositiveInfinity : MostTextPx;
        _titleLines = graph.Nodes.Select(node => TitleLines(node).Count).DefaultIfEmpty(1).Max();
        _forks = [.. graph.Edges.CountBy(edge => edge.From).Where(pair => pair.Value > 1).Select(pair => pair.Key)];
        _joins = [.. graph.Edges.CountBy(edge => edge.To).Where(pair => pair.Value > 1).Select(pair => pair.Key)];
        int columns = layout.Column.Length == 0 ? 0 : layout.Column.Max() + 1;
        _centres = new double[columns];
        double lanes = layout.Loops.Count() * LanePx, text = 0;
        for (int column = 0; column < columns; column++)
        {
            double nextText = graph.Nodes.Where(node => layout.Column[node.Index] == column).Select(HalfWidth).DefaultIfEmpty(0).Max();
            double before = layout.Straight.Where(edge => layout.Column[edge.To] == column).Select(EdgeTextWidth).DefaultIfEmpty(0).Max();
            double turns = layout.Straight.Where(edge => layout.Column[edge.To] == column).Select(edge => Reach(edge.From, _forks) + Reach(edge.To, _joins)).DefaultIfEmpty(0).Max();
            double conductor = (2 * CircuitSymbol.HalfWidth) + before + turns + (2 * (StubPx + lanes)) + TextGapPx;
            _centres[column] = column == 0 ? LeftPx + lanes + nextText : _centres[column - 1] + Math.Max(text + nextText + TextGapPx, conductor);
            text = nextText;
        }

        double right = columns == 0 ? 0 : _centres[^1] + text + lanes + LeftPx;
        Width = Math.Max(right, LeastWidthPx);
    }

    internal double Width { get; }

    internal double Bottom => TopPx + (_layout.RowCount * RowHeight);

    private double RowHeight => RowPx + ((_titleLines - 1) * LinePx);

    internal Spot At(int node) => new(_centres[_layout.Column[node]], Y(_layout.Row[node]));

    internal double Y(int row) => TopPx + ((row + 0.5) * RowHeight) + ((_titleLines - 1) * LinePx / 2);

    internal double RightOf(int node) => _centres[_layout.Column[node]] + CircuitSymbol.HalfWidth;

    internal double LeftOf(int node) => _centres[_layout.Column[node]] - CircuitSymbol.HalfWidth;

    /// <summary>Where a conductor leaves a part's row: right of the words below it.</summary>
    internal double TurnRightOf(int node) => RightOf(node) + Reach(node, _forks) + StubPx;

    /// <summary>Where a conductor comes into a part's row: left of the words below it.</summary>
    internal double TurnLeftOf(int node) => LeftOf(node) - Reach(node, _joins) - StubPx;

    /// <summary>The title in one or two lines, wider where it needs it, and cut where it needs more than that.</summary>
    internal IReadOnlyList<string> TitleLines(CircuitNode node)
    {
        string[] lines = [.. TextSize.Wrapped(node.Part.Title, TextSize.Small, _mostTextPx)];
        if (lines.Length > MostTitleLines)
        {
            lines = [.. TextSize.Wrapped(node.Part.Title, TextSize.Small, _mostTextPx * WiderRatio)];
        }

        return lines.Length <= MostTitleLines ? lines : [.. lines.Take(MostTitleLines - 1), TextSize.Fitted($"{lines[MostTitleLines - 1]}…", TextSize.Small, _mostTextPx * WiderRatio)];
    }

    /// <summary>How far above the part's middle a line of its title stands.</summary>
    internal static double AboveOf(int line, int lineCount) => TitlePx + ((lineCount - 1 - line) * LinePx);

    internal string Rating(CircuitNode node) => TextSize.Fitted(_wording.Rating(node.Part), TextSize.Small, _mostTextPx * MostTitleLines);

    internal string EdgeText(CircuitEdge edge) => _wording.Conductor(edge);

    /// <summary>The room of a part: symbol or bar, title above, rating below.</summary>
    internal Box RoomOf(CircuitNode node)
    {
        Spot at = At(node.Index);
        double half = HalfWidth(node), last = Y(_layout.LastRow[node.Index]);
        double above = AboveOf(0, TitleLines(node).Count) + 10, bottom = (node.IsBar ? last : at.Y) + RatingPx + 2;
        return new(at.X - half, at.Y - above, 2 * half, bottom - at.Y + above);
    }

    private double HalfWidth(CircuitNode node) =>
        Math.Max(CircuitSymbol.HalfWidth, TitleLines(node).Append(Rating(node)).Max(text => TextSize.BoldWidth(text, TextSize.Small)) / 2) + 1;

    /// <summary>How far the words below a part stand out beside its symbol, where conductors must pass them.</summary>
    private double Reach(int node, HashSet<int> passed) => _graph.Nodes[node].IsBar || !passed.Contains(node)
        ? 0
        : Math.Max(0, (TextSize.BoldWidth(Rating(_graph.Nodes[node]), TextSize.Small) / 2) - CircuitSymbol.HalfWidth);

    private double EdgeTextWidth(CircuitEdge edge) => TextSize.BoldWidth(EdgeText(edge), TextSize.Small);
}
