using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>Puts sections into the columns of as many sheets as they need, one after the other; none begins without a row of it below.</summary>
internal sealed class SheetFlow
{
    private const double BetweenSectionsPx = 12;
    private readonly SheetPaper _paper;
    private readonly List<PlacedStretch> _placed = [];
    private int _column;
    private double _y;

    private SheetFlow(SheetPaper paper)
    {
        _paper = paper;
        _y = Column.Y;
    }

    internal static IReadOnlyList<PlacedStretch> Of(IEnumerable<MeasuredSection> sections, SheetPaper paper)
    {
        SheetFlow flow = new(paper);
        foreach (MeasuredSection section in sections)
        {
            flow.Put(section);
        }

        return flow._placed;
    }

    private Box Column => _paper.Columns[_column % _paper.Columns.Count];

    private int Sheet => (_column / _paper.Columns.Count) + 1;

    private bool IsFresh => _y <= Column.Y;

    private void Put(MeasuredSection section)
    {
        double whole = section.HeadHeight + section.BareHeight + section.Rows.Sum(row => row.Height + MeasuredSection.RowGapPx);
        double least = section.HeadHeight + section.Rows.Take(2).Sum(row => row.Height + MeasuredSection.RowGapPx) + PlacedStretch.MarkPx;
        if (!IsFresh && _y + Math.Min(whole, least) > Column.Bottom)
        {
            Next();
        }

        int first = 0;
        do
        {
            double head = first == 0 ? section.HeadHeight : PlacedStretch.MarkPx, y = _y + head + section.BareHeight;
            int count = 0;
            while (first + count < section.Rows.Count)
            {
                double height = section.Rows[first + count].Height + MeasuredSection.RowGapPx;
                double mark = first + count == section.Rows.Count - 1 ? 0 : PlacedStretch.MarkPx;
                if (count > 0 && y + height + mark > Column.Bottom)
                {
                    break;
                }

                y += height;
                count++;
            }

            bool goesOn = first + count < section.Rows.Count;
            y += goesOn ? PlacedStretch.MarkPx : 0;
            _placed.Add(new PlacedStretch(section, Sheet, new Box(Column.X, _y, Column.Width, y - _y), first, count));
            first += count;
            if (goesOn)
            {
                Next();
            }
            else
            {
                _y = y + BetweenSectionsPx;
            }
        }
        while (first < section.Rows.Count);
    }

    private void Next()
    {
        _column++;
        _y = Column.Y;
    }
}
