using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Numbers typed beside each other in one row: all of them, or what is wrong with each.</summary>
internal static class TypedNumbers
{
    /// <summary>The numbers in their order; with a refusal where one is not given or cannot be used.</summary>
    public static (double[] Numbers, string? Refusal) Read(IReadOnlyList<(string Name, FieldSchema Field, string Text)> cells, DisplayUnits units, CultureInfo culture)
    {
        FieldReading[] reads = [.. cells.Select(cell => FieldText.Read(cell.Field, cell.Text, units, culture))];
        string[] wrong = [.. cells.Zip(reads, (cell, read) => read.IsGood && read.Value is double ? null : $"{cell.Name}: {read.Refusal ?? "it is not given."}").OfType<string>()];
        return wrong.Length > 0 ? ([], string.Join(" ", wrong)) : ([.. reads.Select(read => (double)read.Value!)], null);
    }
}
