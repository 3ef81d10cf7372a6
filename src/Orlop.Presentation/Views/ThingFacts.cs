using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>What matters of a thing in one short line, for a chain or a list.</summary>
public static class ThingFacts
{
    /// <summary>The line; empty when nothing is known.</summary>
    public static string Of(Thing thing, DisplayUnits units, CultureInfo culture)
    {
        string Show(Quantity? quantity, string suffix, string before = "", string after = "") =>
            quantity is null ? "" : $"{before}{QuantityText.Shown(quantity, suffix, units, culture)}{after}";
        IEnumerable<string> facts = thing switch
        {
            Cable cable => [Show(cable.AreaMm2, "Mm2"), Lengths(cable, units, culture), Show(cable.InsulationC, "C", after: " insulation"), cable.IsSheathed ? "sheathed" : ""],
            Protection device => [Show(device.RatedA, "A"), Show(device.BreakingA, "A", before: "breaks "), device.IsTwoPole ? "two poles" : ""],
            IsolatorSwitch device => [Show(device.RatedA, "A"), device.IsTwoPole ? "two poles" : ""],
            Changeover device => [Show(device.RatedA, "A")],
            PlugAndSocket plug => [Show(plug.RatedA, "A"), plug.Keying ?? "", Show(plug.LooseLeadM, "M", after: " loose lead")],
            Link link => [Show(link.LengthM, "M")],
            BatteryBank bank => [Show(bank.NominalV, "V"), Show(bank.CapacityAh, "Ah"), Show(bank.InternalResistanceOhm, "Ohm", after: " inside"), bank.IsMinusBonded is true ? "minus bonded to the hull" : ""],
            ElectricLoad load => [Show(load.NominalV, "V"), Show(load.RunningW, "W"), Show(load.RunningA, "A"), load.StartRatio is { Value: > 1 } ratio ? $"starts at {Show(ratio, "Ratio")} times that" : "", Show(load.LeastV, "V", before: "works down to ")],
            Inverter inverter => [Show(inverter.RatedW, "W"), Show(inverter.OutputV, "V")],
            DcConverter converter => [Show(converter.OutputV, "V"), Show(converter.RatedA, "A")],
            Charger charger => [Show(charger.LimitA, "A"), Show(charger.SetpointV, "V", before: "holds ")],
            ShoreInlet inlet => [Show(inlet.SupplyV, "V"), Show(inlet.RatedA, "A")],
            Busbar bar => [Show(bar.RatedA, "A"), bar.IsBonded ? "bonded to the hull" : ""],
            _ => [],
        };
        return string.Join(" · ", facts.Where(fact => fact.Length > 0));
    }

    private static string Lengths(Cable cable, DisplayUnits units, CultureInfo culture)
    {
        Quantity?[] lengths = [.. cable.Cores.Select(core => core.LengthM ?? cable.LengthM)];
        string Show(Quantity? length) => length is null ? "length not given" : QuantityText.Shown(length, "M", units, culture);
        return lengths.Length == 2 && lengths[0] != lengths[1] ? $"{Show(lengths[0])} out, {Show(lengths[1])} back" : lengths.Length == 2 ? $"{Show(lengths[0])} each way" : Show(cable.LengthM);
    }
}
