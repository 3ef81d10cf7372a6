using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>A place of the built-in table.</summary>
/// <param name="Id">As files name it: <c>uk-shetland</c>.</param>
/// <param name="Name">As people call it.</param>
/// <param name="LatitudeDeg">North positive.</param>
/// <param name="SunWhPerM2">Mean light on the horizontal in a day of each month; twelve.</param>
public sealed record ClimatePlace(string Id, string Name, double LatitudeDeg, ImmutableArray<double> SunWhPerM2);

/// <summary>Monthly sunlight of places, as published.</summary>
public static class ClimateTable
{
    private static readonly string[] MonthColumns = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    private static readonly EmbeddedCsv Table = EmbeddedCsv.Read("climates.csv");

    /// <summary>Where the numbers were published.</summary>
    public static string Source => Table.Source;

    /// <summary>The places, by id.</summary>
    public static FrozenDictionary<string, ClimatePlace> Places { get; } = Table.Rows
        .Select(row => new ClimatePlace(Table.Text(row, "place"), Table.Text(row, "name"), Table.Number(row, "latitude_deg"), [.. MonthColumns.Select(month => Table.Number(row, month))]))
        .ToFrozenDictionary(place => place.Id, StringComparer.Ordinal);
}
