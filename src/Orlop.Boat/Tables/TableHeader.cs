using Orlop.Boat.Format;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Tables;

/// <summary>The header of a table: which column stands where. What is wrong with it becomes a problem.</summary>
internal sealed class TableHeader
{
    private readonly Dictionary<string, int> _cellOf = new(StringComparer.Ordinal);
    private readonly int _columnCount;
    private readonly ProblemList _problems;

    /// <param name="rows">All rows, the header first; at least one.</param>
    /// <param name="known">Names that a column may have.</param>
    /// <param name="told">Those of them that are worth telling where a name is none.</param>
    /// <param name="advice">What to say of a name that is none.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public TableHeader(List<string[]> rows, IReadOnlySet<string> known, IEnumerable<string> told, Func<string, string> advice, ProblemList problems)
    {
        (_columnCount, _problems) = (rows[0].Length, problems);
        for (int i = 0; i < rows[0].Length; i++)
        {
            string name = rows[0][i].Trim();
            if (name.Length == 0)
            {
                CheckNameless(rows, i);
            }
            else if (!known.Contains(name))
            {
                problems.Add(Spot.At(name), $"column '{FoundJson.Short(name)}'", string.Join(", ", told), advice(Camel(name)));
            }
            else if (!_cellOf.TryAdd(name, i))
            {
                problems.Add(Spot.At(name), $"column '{name}' twice", "it once", "A column is given more than once.");
            }
        }
    }

    /// <summary>Its place: row 1.</summary>
    public static Spot Spot { get; } = Spot.Row(1);

    /// <summary>The table has this column.</summary>
    public bool Has(string column) => _cellOf.ContainsKey(column);

    /// <summary>The cell of a column; blank where the table has none.</summary>
    public string Cell(string column, string[] cells) => _cellOf.TryGetValue(column, out int index) && index < cells.Length ? cells[index] : "";

    /// <summary>Tells of cells beyond the last column.</summary>
    public void CheckLength(string[] cells, Spot row)
    {
        if (cells.Length > _columnCount && cells.Skip(_columnCount).Any(cell => cell.Length > 0))
        {
            _problems.Add(row.At("row"), $"{cells.Length} cells", $"{_columnCount}, as in the header", "The row has more cells than the header.");
        }
    }

    private void CheckNameless(List<string[]> rows, int column)
    {
        if (rows.Any(cells => column < cells.Length && cells[column].Length > 0))
        {
            _problems.Add(Spot.At($"column {column + 1}"), "cells under no name", "a name in the header", "A column has no name.");
        }
    }

    private static string Camel(string name) =>
        string.Concat(name.Split('_').Select((word, index) => index == 0 || word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..]));
}
