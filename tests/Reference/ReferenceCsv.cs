using System.Globalization;
using System.Text;
using Xunit;

namespace Orlop.Reference.Tests;

/// <summary>
/// A published table kept beside the tests: a "# source:" line, a header, rows. Reading fails on a missing file, a missing source, an unknown column, or another
/// number of rows than the test states.
/// </summary>
public static class ReferenceCsv
{
    public static IReadOnlyList<ReferenceRow> Load(string fileName, int expectedRows)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", fileName)).Where(line => line.Length > 0).ToArray();
        Assert.StartsWith("# source:", lines[0], StringComparison.Ordinal);
        var table = lines.Where(line => !line.StartsWith('#')).Select(Cells).ToArray();
        var columns = table[0].Select((name, index) => (name, index)).ToDictionary(pair => pair.name, pair => pair.index);
        Assert.Equal(expectedRows, table.Length - 1);
        return [.. table.Skip(1).Select(cells => new ReferenceRow(fileName, columns, cells))];
    }

    private static string[] Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var isQuoted = false;
        foreach (var letter in line)
        {
            if (letter == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (letter == ',' && !isQuoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(letter);
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }
}

/// <summary>One row of a published table.</summary>
public sealed class ReferenceRow(string fileName, IReadOnlyDictionary<string, int> columns, string[] cells)
{
    public string Text(string column) =>
        columns.TryGetValue(column, out var index)
            ? cells[index]
            : throw new InvalidDataException($"{fileName} has no column {column}; it has {string.Join(", ", columns.Keys)}.");

    public bool Has(string column) => Text(column).Length > 0;

    public double Number(string column) => double.Parse(Text(column), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Fails with file, row, both values, difference and tolerance.</summary>
    public void Agrees(double published, double computed, double tolerance) =>
        Assert.True(Math.Abs(published - computed) <= tolerance,
            FormattableString.Invariant($"{fileName}: {this}: published {published}, computed {computed}, difference {computed - published}, tolerance {tolerance}."));

    public override string ToString() => string.Join(", ", cells);
}
