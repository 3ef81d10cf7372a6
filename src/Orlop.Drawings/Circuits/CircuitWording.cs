using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Circuits;

/// <summary>What stands beside parts and cables on a diagram.</summary>
internal sealed class CircuitWording(DisplayUnits units, CultureInfo culture)
{
    /// <summary>The ratings that matter, in one line.</summary>
    internal string Rating(Part part) => part switch
    {
        BatteryBank battery => Joined(Of(battery.NominalV, "V"), Of(battery.CapacityAh, "Ah")),
        Charger charger => Joined(Of(charger.SetpointV, "V"), Of(charger.LimitA, "A")),
        Inverter inverter => Joined(Of(inverter.RatedW, "W"), Of(inverter.OutputV, "V")),
        DcConverter converter => Joined(Of(converter.OutputV, "V"), Of(converter.RatedA, "A")),
        ShoreInlet inlet => Joined(Of(inlet.SupplyV, "V"), Of(inlet.RatedA, "A")),
        Protection protection => Joined(Of(protection.RatedA, "A"), protection.ResidualA is null ? "" : $"residual {Of(protection.ResidualA, "A")}"),
        IsolatorSwitch isolator => Of(isolator.RatedA, "A"),
        Changeover changeover => Of(changeover.RatedA, "A"),
        PlugAndSocket plug => Of(plug.RatedA, "A"),
        Busbar bar => Of(bar.RatedA, "A"),
        ElectricLoad load => Joined(Of(load.RunningW, "W"), Of(load.RunningA, "A")),
        _ => "",
    };

    /// <summary>Size and length of a cable's core, "length?" where nobody gave one.</summary>
    internal string Cable(Cable cable, string coreId)
    {
        Quantity? length = cable.Cores.FirstOrDefault(core => core.Id == coreId)?.LengthM ?? cable.LengthM;
        string size = units == DisplayUnits.Us && WireGauge.NumberOf(cable.AreaMm2.Value) is { } number
            ? $"{WireGauge.Name(number)} {WireGauge.Symbol}"
            : QuantityText.Format(cable.AreaMm2.Value, "Mm2", units, culture);
        return Joined(size, length is null ? "length?" : Of(length, "M"));
    }

    private string Of(Quantity? quantity, string suffix) => quantity is null ? "" : QuantityText.Format(quantity.Value, suffix, units, culture);

    private static string Joined(params ReadOnlySpan<string> parts)
    {
        List<string> given = [];
        foreach (string part in parts)
        {
            if (part.Length > 0)
            {
                given.Add(part);
            }
        }

        return string.Join(" · ", given);
    }
}
