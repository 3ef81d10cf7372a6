namespace Orlop.App.CommandLine;

/// <summary>Tables for a spreadsheet.</summary>
internal static class Csv
{
    /// <summary>A text as a cell, quoted where it must be (RFC 4180).</summary>
    public static string Cell(string text) => text.AsSpan().ContainsAny(",\"\n\r") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
