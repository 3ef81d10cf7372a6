using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Tables;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review;

/// <summary>Every list of a boat as a table and back: all things of a kind, or the months of her climates.</summary>
public static class BoatTable
{
    /// <summary>Names of the lists, in the order of the alphabet.</summary>
    public static ImmutableArray<string> Lists { get; } = [.. ThingKinds.ByName.Keys.Append(ClimateMonthsTable.ListName).Order(StringComparer.Ordinal)];

    /// <summary>Text with a header.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="list">Name of the list.</param>
    /// <param name="separator">What parts the cells; a tab for what is pasted into a spreadsheet.</param>
    public static string Export(BoatModel boat, string list, char separator = ',') =>
        list == ClimateMonthsTable.ListName ? ClimateMonthsTable.Export(boat, separator) : ThingTable.Export(boat, list, separator);

    /// <summary>What a table would change in the boat, or all that is wrong with it.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="list">Name of the list.</param>
    /// <param name="csv">The table.</param>
    /// <param name="isTaken">Ids that the boat does not have and that none may be made of either; null where there are none.</param>
    public static TableImport Import(BoatModel boat, string list, string csv, Func<string, bool>? isTaken = null) =>
        list == ClimateMonthsTable.ListName ? ClimateMonthsTable.Import(boat, csv, LightOutsideAir.MonthWhPerM2) : ThingTable.Import(boat, list, csv, isTaken);
}
