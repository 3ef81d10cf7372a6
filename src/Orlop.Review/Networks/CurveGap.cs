using System.Globalization;
using Orlop.Boat.Things;

namespace Orlop.Review.Networks;

/// <summary>A charge at which a battery's open-circuit voltage is asked for and its curve says nothing.</summary>
public static class CurveGap
{
    private const string CurveField = "openCircuit";

    /// <summary>The missing field: the whole curve where there is none, else the charge that lies outside it, as <c>openCircuit/0.3</c>.</summary>
    /// <param name="chargeFraction">The charge that is asked for, 0 empty to 1 full.</param>
    internal static string Field(BatteryBank battery, double chargeFraction) =>
        battery.OpenCircuit.Count < 2 ? CurveField : string.Create(CultureInfo.InvariantCulture, $"{CurveField}/{chargeFraction}");

    /// <summary>The charge of such a field, 0 empty to 1 full; null for any other field.</summary>
    public static double? ChargeFraction(string field) =>
        field?.Split('/') is [CurveField, var charge] && double.TryParse(charge, NumberStyles.Float, CultureInfo.InvariantCulture, out double fraction) ? fraction : null;
}
