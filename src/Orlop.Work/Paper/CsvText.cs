using System.Text;

namespace Orlop.Work.Paper;

/// <summary>Comma-separated rows as RFC 4180 writes them. A cell that a spreadsheet would take for a formula gets a leading apostrophe.</summary>
internal static class CsvText
{
    public static string Of(IEnumerable<IEnumerable<string>> rows)
    {
        StringBuilder text = new();
        foreach (IEnumerable<string> row in rows)
        {
            text.AppendJoin(',', row.Select(Cell)).Append("\r\n");
        }

        return text.ToString();
    }

    private static string Cell(string text)
    {
        string harmless = text.Length > 1 && text[0] is '=' or '+' or '-' or '@' ? $"'{text}" : text;
        return harmless.AsSpan().IndexOfAny("\",\r\n") < 0 ? harmless : $"\"{harmless.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
