using nietras.SeparatedValues;

namespace Orlop.Boat.Tables;

/// <summary>The cells of a table as text, and back: RFC 4180, parted by commas; on reading also by semicolons or tabs, which the header decides.</summary>
internal static class TableText
{
    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>The cells, row by row, the header first; none of blank text.</summary>
    public static List<string[]> Cells(string csv)
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

    /// <summary>The text of rows, the header being the first.</summary>
    /// <param name="rows">Their cells.</param>
    /// <param name="separator">What parts the cells.</param>
    public static string Write(IEnumerable<IEnumerable<string>> rows, char separator)
    {
        using SepWriter writer = Sep.New(separator).Writer(options => options with { WriteHeader = false, Escape = true, DisableColCountCheck = true }).ToText();
        foreach (IEnumerable<string> cells in rows)
        {
            using SepWriter.Row row = writer.NewRow();
            int index = 0;
            foreach (string cell in cells)
            {
                row[index++].Set(cell);
            }
        }

        return writer.ToString();
    }
}
