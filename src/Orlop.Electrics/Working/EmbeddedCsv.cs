using System.Collections.Immutable;
using System.Globalization;

namespace Orlop.Electrics.Working;

/// <summary>A table that ships inside the engine: lines that start with # name its sources, then a header, then rows without quoting.</summary>
internal sealed class EmbeddedCsv
{
    private readonly ImmutableArray<string> _columns;

    private EmbeddedCsv(string source, ImmutableArray<string> columns, ImmutableArray<ImmutableArray<string>> rows)
    {
        Source = source;
        _columns = columns;
        Rows = rows;
    }

    public string Source { get; }

    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    public static EmbeddedCsv Read(string fileName)
    {
        using var stream = typeof(EmbeddedCsv).Assembly.GetManifestResourceStream(fileName)
            ?? throw new InvalidDataException($"{fileName}: this table is not built into the engine.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var comments = lines.Where(line => line.StartsWith('#')).Select(line => line.TrimStart('#', ' ').Replace("source: ", "", StringComparison.Ordinal));
        var table = lines.Where(line => !line.StartsWith('#')).Select(line => line.Split(',').ToImmutableArray()).ToImmutableArray();
        foreach (var row in table)
        {
            if (row.Length != table[0].Length)
            {
                throw new InvalidDataException($"{fileName}: the row \"{string.Join(',', row)}\" has {row.Length} cells; the header has {table[0].Length}.");
            }
        }

        return new EmbeddedCsv(string.Join("; ", comments), table[0], table[1..]);
    }

    public string Text(ImmutableArray<string> row, string column) => row[ColumnIndex(column)];

    public double Number(ImmutableArray<string> row, string column) =>
        double.Parse(Text(row, column), NumberStyles.Float, CultureInfo.InvariantCulture);

    public double? NumberOrNull(ImmutableArray<string> row, string column) =>
        Text(row, column).Length == 0 ? null : Number(row, column);

    private int ColumnIndex(string column)
    {
        var index = _columns.IndexOf(column);
        return index >= 0 ? index : throw new InvalidDataException($"No column {column}; there are {string.Join(", ", _columns)}.");
    }
}
