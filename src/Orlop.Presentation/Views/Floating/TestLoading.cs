using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What a berth test was kept with as aboard, as the first thing to doubt where it disagrees.</summary>
public static class TestLoading
{
    /// <summary>What of it hangs on a hook, each with its mass; null where nothing does.</summary>
    public static string? Hung(BoatModel boat, IEnumerable<AboardItem> aboard, DisplayUnits units, CultureInfo culture)
    {
        string[] hung =
        [
            .. aboard.Where(item => boat.Find<Deadweight>(item.Id) is { Use: DeadweightUse.Hung })
                .Select(item => $"{boat.Find(item.Id)!.Title}, {QuantityText.Shown(Math.Round(item.MassKg), "Kg", units, culture)}"),
        ];
        return hung.Length == 0 ? null : string.Join("; ", hung);
    }

    /// <summary>Where to look first when a test disagrees with the rest: the loading it was kept with.</summary>
    public static string Doubt(BoatModel boat, BerthTest test, DisplayUnits units, CultureInfo culture)
    {
        string mass = test.IsBare ? "nothing aboard" : $"{QuantityText.Shown(Math.Round(test.Aboard.Sum(item => item.MassKg)), "Kg", units, culture)} aboard";
        string hung = Hung(boat, test.Aboard, units, culture) is { } hanging ? $" and on the hook {hanging}" : "";
        return $"Look first at the loading it was kept with: {mass}{hung}. If she was loaded otherwise, it is the test that is wrong: put its list right, or take it again.";
    }
}
