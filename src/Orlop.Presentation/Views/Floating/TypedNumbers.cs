using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Numbers typed beside each other in one row: all of them, or what is wrong with each.</summary>
internal static class TypedNumbers
{
    /// <summary>The numbers in their order, with what was taken of two meanings; with a refusal where one is not given or cannot be used.</summary>
    public static (double[] Numbers, string? Refusal, string? Remark) Read(IReadOnlyList<(string Name, FieldSchema Field, string Text)> cells, DisplayUnits units, CultureInfo culture)
    {
        FieldReading[] reads = [.. cells.Select(cell => FieldText.Read(cell.Field, cell.Text, units, culture))];
        string[] wrong = [.. cells.Zip(reads, (cell, read) => read.IsGood && read.Value is double ? null : $"{cell.Name}: {read.Refusal ?? "it is not given."}").OfType<string>()];
        string[] chosen = [.. cells.Zip(reads, (cell, read) => read.IsOneOfTwo ? $"{cell.Name}: {char.ToLowerInvariant(read.Remark![0])}{read.Remark[1..]}" : null).OfType<string>()];
        return wrong.Length > 0 ? ([], string.Join(" ", wrong), null) : ([.. reads.Select(read => (double)read.Value!)], null, chosen.Length == 0 ? null : string.Join(" ", chosen));
    }
}
