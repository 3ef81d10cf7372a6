using System.Collections.Immutable;
using System.Text;

namespace Orlop.Hull.Surfaces;

/// <summary>Comma-separated text, RFC 4180 with comments: lines that begin with # and empty lines are passed over, cells that are not quoted are trimmed.</summary>
internal static class CsvText
{
    public static IEnumerable<(int LineNumber, ImmutableArray<string> Cells)> Rows(string text)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        bool isQuoted = false, wasQuoted = false;
        int line = 1, start = 1;
        for (var i = 0; i <= text.Length; i++)
        {
            var letter = i < text.Length ? text[i] : '\n';
            if (isQuoted && i < text.Length)
            {
                line += letter == '\n' ? 1 : 0;
                if (letter != '"')
                {
                    cell.Append(letter);
                }
                else if (i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else
                {
                    isQuoted = false;
                }
            }
            else if (letter == '#' && cells.Count == 0 && cell.Length == 0 && !wasQuoted)
            {
                i = text.IndexOf('\n', i) is var end && end < 0 ? text.Length : end;
                start = ++line;
            }
            else if (letter == '"' && cell.ToString().Trim().Length == 0)
            {
                cell.Clear();
                (isQuoted, wasQuoted) = (true, true);
            }
            else if (letter is ',' or '\n')
            {
                cells.Add(wasQuoted ? cell.ToString() : cell.ToString().Trim());
                cell.Clear();
                var isEmpty = cells is [""] && !wasQuoted;
                (isQuoted, wasQuoted) = (false, false);
                if (letter == ',')
                {
                    continue;
                }

                if (!isEmpty)
                {
                    yield return (start, cells.ToImmutable());
                }

                cells.Clear();
                start = ++line;
            }
            else if (!(wasQuoted && char.IsWhiteSpace(letter)))
            {
                cell.Append(letter);
            }
        }
    }

    public static string Cell(string text) =>
        text.Length == 0 || text.AsSpan().IndexOfAny("\",\n\r#") >= 0 || text.Trim() != text ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
