using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

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

    /// <summary>What stands beside a conductor: size and length of the cable's core; nothing for a link.</summary>
    internal string Conductor(CircuitEdge edge) => edge.Change.Shown is Cable cable
        ? Cable(cable, cable.Cores.First(core => (core.From == edge.FromTerminal && core.To == edge.ToTerminal) || (core.From == edge.ToTerminal && core.To == edge.FromTerminal)).Id)
        : "";

    /// <summary>The accessible name of a part; it starts with what is drawn beside it.</summary>
    internal string NameOf(CircuitNode node) =>
        string.Join(", ", new[] { node.Part.Title, Rating(node.Part), Wording.KindOf(node.Part) }.Where(word => word.Length > 0)) + node.Change.Remark;

    /// <summary>The accessible name of a conductor; it starts with what is drawn beside it.</summary>
    internal static string NameOf(CircuitEdge edge, string drawn) =>
        string.Join(", ", new[] { drawn, edge.Change.Shown.Title, Wording.KindOf(edge.Change.Shown) }.Where(word => word.Length > 0)) + edge.Change.Remark;

    /// <summary>Size and length of a cable's core, "length?" where nobody gave one.</summary>
    private string Cable(Cable cable, string coreId)
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
