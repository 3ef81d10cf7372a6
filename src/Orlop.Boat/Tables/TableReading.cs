using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Tables;

/// <summary>Reads the rows of a table into things, as far as it goes; what does not fit becomes a problem of its cell.</summary>
internal sealed class TableReading(BoatModel boat, RecordSchema schema, ProblemList problems, Func<string, bool>? isTaken)
{
    private readonly CellReading _cells = new(boat, problems);
    private readonly IReadOnlyList<TableColumn> _columns = TableColumn.Of(schema);
    private readonly HashSet<string> _given = new(StringComparer.Ordinal);

    /// <summary>Ids that were made from names.</summary>
    public List<string> MadeIds { get; } = [];

    public List<ThingEntry> Read(string csv)
    {
        List<ThingEntry> things = [];
        List<string[]> rows = TableText.Cells(csv);
        if (rows.Count == 0)
        {
            problems.Add(TableHeader.Spot, "nothing", "a header and rows", "The table is empty.");
            return things;
        }

        TableHeader header = ReadHeader(rows);
        _given.UnionWith(rows.Skip(1).Select(cells => header.Cell("id", cells)));
        for (int i = 1; i < rows.Count && problems.Count == 0 | NamesThings(header); i++)
        {
            if (rows[i].Any(cell => cell.Length > 0))
            {
                things.Add(ReadRow(header, rows[i], Spot.Row(i + 1)));
            }
        }

        return things;
    }

    private TableHeader ReadHeader(List<string[]> rows)
    {
        TableHeader header = new(
            rows, _columns.Select(column => column.Name).ToHashSet(StringComparer.Ordinal), _columns.Where(column => !column.IsKnowledge).Select(column => column.Name),
            name => NearestField.Advice(schema, name, field => field.Column), problems);
        if (!NamesThings(header))
        {
            problems.Add(TableHeader.Spot.At("id"), "no column 'id' and no column 'name'", "a column 'id' or 'name'", "The table does not say which thing a row is.");
        }

        return header;
    }

    private static bool NamesThings(TableHeader header) => header.Has("id") || header.Has("name");

    private ThingEntry ReadRow(TableHeader header, string[] cells, Spot row)
    {
        int before = problems.Count;
        header.CheckLength(cells, row);
        string? id = header.Cell("id", cells) is { Length: > 0 } given ? given : Made(header.Cell("name", cells));
        Thing? existing = id is null ? null : boat.Find(id);
        existing = existing?.GetType() == schema.Type ? existing : null;
        object?[] values = new object?[schema.Fields.Count];
        bool[] isSet = new bool[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            FieldSchema field = schema.Fields[i];
            TableColumn[] columns = [.. _columns.Where(column => column.Field == field && header.Has(column.Name))];
            object? kept = existing is null ? null : field.Get(existing);
            values[i] = field.Type == FieldType.Id && id is not null && header.Cell("id", cells).Length == 0 ? id : columns.Length == 0 ? kept : FieldValue(field, header, columns, kept, cells, row.At(field.Name));
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

    private object? FieldValue(FieldSchema field, TableHeader header, TableColumn[] columns, object? kept, string[] cells, Spot spot)
    {
        if (field.Type is not (FieldType.Quantity or FieldType.Place or FieldType.Box))
        {
            return _cells.Value(field, header.Cell(columns[0].Name, cells), spot);
        }

        object?[] values = new object?[field.Record!.Fields.Count];
        bool[] isSet = new bool[values.Length];
        foreach (TableColumn column in columns)
        {
            int index = field.Record.IndexOf(column.Part!.Name);
            values[index] = _cells.Value(column.Part, header.Cell(column.Name, cells), spot.At(column.Part.Name), field);
            isSet[index] = values[index] is not null;
        }

        if (columns.All(column => header.Cell(column.Name, cells).Length == 0))
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
