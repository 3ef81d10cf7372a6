using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Strings;

namespace Orlop.Review.Electrics;

/// <summary>What strings and their batteries are called, and what of a battery counts in a string.</summary>
internal static class StringWords
{
    /// <summary>A string: "A", "A with B".</summary>
    public static string Title(BoatModel boat, BatteryString each) => string.Join(" with ", each.Members.Select(member => boat.Find(member.Id)?.Title ?? member.Id));

    /// <summary>The batteries of a string.</summary>
    public static IEnumerable<BatteryBank> Batteries(BoatModel boat, BatteryString each) => each.Members.Select(member => boat.Find<BatteryBank>(member.Id)).OfType<BatteryBank>();

    /// <summary>What is left of a battery's capacity; the nameplate's where nobody has said what is left; null where that is not given.</summary>
    public static double? CapacityAh(BatteryBank battery) => battery.CapacityAh is { } capacity ? capacity.Value * (battery.LeftFraction?.Value ?? 1) : null;

    /// <summary>What a string can give: its smallest battery's; null where one is not given.</summary>
    public static double? CapacityAh(BoatModel boat, BatteryString each)
    {
        double?[] all = [.. Batteries(boat, each).Select(CapacityAh)];
        return all.Contains(null) ? null : all.Min();
    }
}
