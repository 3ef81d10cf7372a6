using Orlop.Boat.Things;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>Where columns and rows lie on the drawing, and the room each part takes with its words.</summary>
internal sealed class CircuitMetrics
{
    internal const double RowPx = 52;
    internal const double TopPx = 34;
    internal const double StubPx = 9;
    internal const double LanePx = 5;
    private const double LeftPx = 12;
    private const double CutTextPx = 132;
    private const double TextGapPx = 8;
    private const double LeastWidthPx = 320;
    private readonly CircuitGraph _graph;
    private readonly CircuitLayout _layout;
    private readonly CircuitWording _wording;
    private readonly double[] _centres;
    private readonly double _mostTextPx;

    internal CircuitMetrics(CircuitGraph graph, CircuitLayout layout, CircuitWording wording, bool areNamesWhole)
    {
        (_graph, _layout, _wording) = (graph, layout, wording);
        _mostTextPx = areNamesWhole ? double.PositiveInfinity : CutTextPx;
        int columns = layout.Column.Length == 0 ? 0 : layout.Column.Max() + 1;
        _centres = new double[columns];
        double lanes = layout.Loops.Count() * LanePx, text = 0;
        for (int column = 0; column < columns; column++)
        {
            double nextText = graph.Nodes.Where(node => layout.Column[node.Index] == column).Select(HalfWidth).DefaultIfEmpty(0).Max();
            double before = layout.Straight.Where(edge => layout.Column[edge.To] == column).Select(EdgeTextWidth).DefaultIfEmpty(0).Max();
            double conductor = (2 * CircuitSymbol.HalfWidth) + before + (2 * (StubPx + lanes)) + TextGapPx;
            _centres[column] = column == 0 ? LeftPx + lanes + nextText : _centres[column - 1] + Math.Max(text + nextText + TextGapPx, conductor);
            text = nextText;
        }

        double right = columns == 0 ? 0 : _centres[^1] + text + lanes + LeftPx;
        Width = Math.Max(right, LeastWidthPx);
    }

    internal double Width { get; }

    internal double Bottom => TopPx + (_layout.RowCount * RowPx);

    internal Spot At(int node) => new(_centres[_layout.Column[node]], Y(_layout.Row[node]));

    internal static double Y(int row) => TopPx + ((row + 0.5) * RowPx);

    internal double RightOf(int node) => _centres[_layout.Column[node]] + CircuitSymbol.HalfWidth;

    internal double LeftOf(int node) => _centres[_layout.Column[node]] - CircuitSymbol.HalfWidth;

    internal string Title(CircuitNode node) => TextSize.Fitted(node.Part.Title, TextSize.Small, _mostTextPx);

    internal string Rating(CircuitNode node) => TextSize.Fitted(_wording.Rating(node.Part), TextSize.Small, _mostTextPx);

    internal string EdgeText(CircuitEdge edge) => edge.Change.Shown is Cable cable
        ? _wording.Cable(cable, cable.Cores.First(core => (core.From == edge.FromTerminal && core.To == edge.ToTerminal) || (core.From == edge.ToTerminal && core.To == edge.FromTerminal)).Id)
        : "";

    /// <summary>The room of a part: symbol or bar, title above, rating below.</summary>
    internal Box RoomOf(CircuitNode node)
    {
        Spot at = At(node.Index);
        double half = HalfWidth(node), last = Y(_layout.LastRow[node.Index]);
        double bottom = node.IsBar ? last + 24 : at.Y + 24;
        return new(at.X - half, at.Y - 25, 2 * half, bottom - at.Y + 25);
    }

    private double HalfWidth(CircuitNode node) =>
        Math.Max(CircuitSymbol.HalfWidth, Math.Max(TextSize.BoldWidth(Title(node), TextSize.Small), TextSize.BoldWidth(Rating(node), TextSize.Small)) / 2) + 1;

    private double EdgeTextWidth(CircuitEdge edge) => TextSize.BoldWidth(EdgeText(edge), TextSize.Small);
}
