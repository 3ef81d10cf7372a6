using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>On which sheet and in which zone each head and each row's end is.</summary>
internal sealed class SheetPlaces
{
    private readonly IReadOnlyList<PlacedStretch> _placed;
    private readonly SheetPaper _paper;
    private readonly Dictionary<int, SheetSpot> _heads = [];
    private readonly Dictionary<CircuitEdge, SheetSpot> _ends = new(ReferenceEqualityComparer.Instance);

    internal SheetPlaces(IReadOnlyList<PlacedStretch> placed, SheetPaper paper)
    {
        (_placed, _paper) = (placed, paper);
        foreach (PlacedStretch stretch in placed)
        {
            if (stretch is { IsFirst: true, Measured.Section.Head: { } head })
            {
                _heads[head.Index] = StartOf(stretch);
            }

            for (int row = stretch.First; row < stretch.First + stretch.Count; row++)
            {
                if (stretch.Measured.Section.Rows[row].Onward is { } edge)
                {
                    RowLayout layout = stretch.Measured.Rows[row];
                    _ends[edge] = new SheetSpot(stretch.Sheet, paper.ZoneAt(StretchDrawing.EndOf(stretch, layout, stretch.TopOf(row))));
                }
            }
        }
    }

    /// <summary>Where a part that begins rows is drawn.</summary>
    internal SheetSpot HeadOf(int node) => _heads[node];

    /// <summary>Where the row ends that leads to it.</summary>
    internal SheetSpot EndOf(CircuitEdge edge) => _ends[edge];

    /// <summary>Where the rest of a section is.</summary>
    internal SheetSpot After(PlacedStretch stretch) => StartOf(_placed.First(other => ReferenceEquals(other.Measured, stretch.Measured) && other.First == stretch.First + stretch.Count));

    /// <summary>Where the rows of a section before these end.</summary>
    internal SheetSpot Before(PlacedStretch stretch)
    {
        PlacedStretch before = _placed.First(other => ReferenceEquals(other.Measured, stretch.Measured) && other.First + other.Count == stretch.First);
        return new SheetSpot(before.Sheet, _paper.ZoneAt(new Spot(before.Room.X, before.Room.Bottom)));
    }

    private SheetSpot StartOf(PlacedStretch stretch) => new(stretch.Sheet, _paper.ZoneAt(new Spot(stretch.Room.X, stretch.Room.Y)));
}
