using System.Globalization;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>The lists of a pack as tables for a spreadsheet: numbers in metres and square millimetres, with a full stop.</summary>
public static class PackTables
{
    /// <summary>The lengths to cut.</summary>
    public static string Cables(WorkPack pack) => CsvText.Of(
    [
        ["key", "cable", "area mm2", "cores", "run m", "allowance m", "cut m", "reel"],
        .. pack.Cuts.Select(cut => (IEnumerable<string>)[cut.Key, cut.Title, Number(cut.AreaMm2), Number(cut.CoreCount), Number(cut.RunM), Number(cut.AllowanceM), Number(cut.CutM), cut.StockId ?? ""]),
    ]);

    /// <summary>What is not in stock, or must be looked at, and what fails of it.</summary>
    public static string Shopping(WorkPack pack, PackTroubles troubles, PackText text) => CsvText.Of(
    [
        ["key", "what", "needed", "to buy", "unit", "state", "remarks"],
        .. pack.Bring.Where(item => item.State != Bring.StockState.InStock).Select(item => (IEnumerable<string>)
        [
            item.Key, text.Of(item.What), Number(item.Needed?.Value), Number(item.ToBuy?.Value), item.Needed?.Suffix switch { "M" => "m", "Count" => "pieces", _ => "" },
            PackText.Of(item.State), string.Join(" ", [.. text.Failing(troubles.FailingFor(item), troubles).Select(words => $"Fails: {words}."), .. item.Remarks.Select(text.Of)]),
        ]),
    ]);

    private static string Number(double? number) => number?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";
}
