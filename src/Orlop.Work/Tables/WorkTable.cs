using System.Collections.Immutable;
using System.Globalization;

namespace Orlop.Work.Tables;

/// <summary>A table built into this project: lines that start with # name its sources, then a header, then rows.</summary>
internal sealed class WorkTable
{
    private WorkTable(string source, ImmutableArray<ImmutableArray<string>> rows)
    {
        Source = source;
        Rows = rows;
    }

    public string Source { get; }

    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    public static WorkTable Read(string name)
    {
        using Stream stream = typeof(WorkTable).Assembly.GetManifestResourceStream(name)!;
        using StreamReader reader = new(stream);
        string[] lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return new WorkTable(
            string.Join("; ", lines.Where(line => line[0] == '#').Select(line => line.TrimStart('#', ' ').Replace("source: ", "", StringComparison.Ordinal))),
            [.. lines.Where(line => line[0] != '#').Skip(1).Select(line => line.Split(',', 4).ToImmutableArray())]);
    }

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
