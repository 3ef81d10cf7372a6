using nietras.SeparatedValues;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Tables;

/// <summary>Reads the rows of a table into things, as far as it goes; what does not fit becomes a problem of its cell.</summary>
internal sealed class TableReading(BoatModel boat, RecordSchema schema, ProblemList problems, Func<string, bool>? isTaken)
{
    private static readonly char[] Separators = [',', ';', '\t'];
    private readonly CellReading _cells = new(problems);
    private readonly IReadOnlyList<TableColumn> _columns = TableColumn.Of(schema);
    private readonly HashSet<string> _given = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _cellOf = new(StringComparer.Ordinal);

    /// <summary>The header.</summary>
    public static Spot Header { get; } = Spot.Row(1);

    /// <summary>Ids that were made from names.</summary>
    public List<string> MadeIds { get; } = [];

    public List<ThingEntry> Read(string csv)
    {
        List<ThingEntry> things = [];
        List<string[]> rows = Cells(csv);
        if (rows.Count == 0)
        {
            problems.Add(Header, "nothing", "a header and rows", "The table is empty.");
            return things;
        }

        ReadHeader(rows);
        _given.UnionWith(rows.Skip(1).Select(cells => Cell("id", cells)));
        for (int i = 1; i < rows.Count && problems.Count == 0 | NamesThings; i++)
        {
            if (rows[i].Any(cell => cell.Length > 0))
            {
                things.Add(ReadRow(rows[i], Spot.Row(i + 1), rows[0].Length));
            }
        }

        return things;
    }

    private bool NamesThings => _cellOf.ContainsKey("id") || _cellOf.ContainsKey("name");

    private static List<string[]> Cells(string csv)
    {
        string text = csv.TrimStart('\uFEFF');
        string header = text.Split('\n', 2)[0];
        char separator = Separators.MaxBy(candidate => header.Count(letter => letter == candidate));
        List<string[]> rows = [];
        if (string.IsNullOrWhiteSpace(text))
        {
            return rows;
        }

        using SepReader reader = Sep.New(separator).Reader(options => options with { HasHeader = false, Unescape = true, DisableColCountCheck = true }).FromText(text);
        foreach (SepReader.Row row in reader)
        {
            string[] cells = new string[row.ColCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString();
            }

            rows.Add(cells);
        }

        return rows;
    }

    private void ReadHeader(List<string[]> rows)
    {
        for (int i = 0; i < rows[0].Length; i++)
        {
            string name = rows[0][i].Trim();
            if (name.Length == 0)
            {
                CheckNameless(rows, i);
            }
            else if (_columns.All(column => column.Name != name))
            {
                string camel = string.Concat(name.Split('_').Select((word, index) => index == 0 || word.Length == 0 ? word : FirstUpper(word)));
                problems.Add(
                    Header.At(name),
                    $"column '{FoundJson.Short(name)}'",
                    string.Join(", ", _columns.Where(column => !column.IsKnowledge).Select(column => column.Name)),
                    NearestField.Advice(schema, camel, field => field.Column));
            }
            else if (!_cellOf.TryAdd(name, i))
            {
                problems.Add(Header.At(name), $"column '{name}' twice", "it once", "A column is given more than once.");
            }
        }

        if (!NamesThings)
        {
            problems.Add(Header.At("id"), "no column 'id' and no column 'name'", "a column 'id' or 'name'", "The table does not say which thing a row is.");
        }
    }

    private void CheckNameless(List<string[]> rows, int column)
    {
        if (rows.Any(cells => column < cells.Length && cells[column].Length > 0))
        {
            problems.Add(Header.At($"column {column + 1}"), "cells under no name", "a name in the header", "A column has no name.");
        }
    }

    private static string FirstUpper(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private ThingEntry ReadRow(string[] cells, Spot row, int columnCount)
    {
        int before = problems.Count;
        if (cells.Length > columnCount && cells.Skip(columnCount).Any(cell => cell.Length > 0))
        {
            problems.Add(row.At("row"), $"{cells.Length} cells", $"{columnCount}, as in the header", "The row has more cells than the header.");
        }

        string? id = Cell("id", cells) is { Length: > 0 } given ? given : Made(Cell("name", cells));
        Thing? existing = id is null ? null : boat.Find(id);
        existing = existing?.GetType() == schema.Type ? existing : null;
        object?[] values = new object?[schema.Fields.Count];
        bool[] isSet = new bool[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            FieldSchema field = schema.Fields[i];
            TableColumn[] columns = [.. _columns.Where(column => column.Field == field && _cellOf.ContainsKey(column.Name))];
            object? kept = existing is null ? null : field.Get(existing);
            values[i] = field.Type == FieldType.Id && id is not null && Cell("id", cells).Length == 0 ? id : columns.Length == 0 ? kept : FieldValue(field, columns, kept, cells, row.At(field.Name));
            isSet[i] = values[i] is not null;
            if (values[i] is null && field.IsRequired)
            {
                problems.Add(row.At(field.Name), "nothing", AllowedWords.Of(field, field.Type), $"{field.Label} is missing.");
            }
        }

        return new ThingEntry((Thing)schema.Create(values, isSet), id, row, problems.Count == before);
    }

    private string? Made(string name)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            return null;
        }

        string id = ReadableId.Of(name, taken => _given.Contains(taken) || boat.Find(taken) is not null || isTaken?.Invoke(taken) == true);
        _given.Add(id);
        MadeIds.Add(id);
        return id;
    }

    private string Cell(string column, string[] cells) => _cellOf.TryGetValue(column, out int index) && index < cells.Length ? cells[index] : "";

    private object? FieldValue(FieldSchema field, TableColumn[] columns, object? kept, string[] cells, Spot spot)
    {
        if (field.Type is not (FieldType.Quantity or FieldType.Place or FieldType.Box))
        {
            return _cells.Value(field, Cell(columns[0].Name, cells), spot);
        }

        object?[] values = new object?[field.Record!.Fields.Count];
        bool[] isSet = new bool[values.Length];
        foreach (TableColumn column in columns)
        {
            int index = field.Record.IndexOf(column.Part!.Name);
            values[index] = _cells.Value(column.Part, Cell(column.Name, cells), spot.At(column.Part.Name), field);
            isSet[index] = values[index] is not null;
        }

        if (columns.All(column => Cell(column.Name, cells).Length == 0))
        {
            return null;
        }

        for (int i = 0; i < values.Length; i++)
        {
            FieldSchema part = field.Record.Fields[i];
            if (part.IsRequired && !isSet[i])
            {
                Spot at = field.Type == FieldType.Quantity ? spot : spot.At(part.Name);
                problems.Add(at, "nothing", AllowedWords.Of(part, part.Type), $"{field.Label} is given in part only.");
            }
        }

        object made = field.Record.Create(values, isSet);
        bool saysOnlyTheSame = kept is Quantity was && made is Quantity { Known: Knowledge.Exact } now && was.Value == now.Value && columns.Length == 1;
        return saysOnlyTheSame ? kept : made;
    }
}
