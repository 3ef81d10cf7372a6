using Orlop.Boat.Things;

namespace Orlop.Boat.Topology;

/// <summary>The two terminals of one side of a source, converter or load.</summary>
/// <param name="Part">The part.</param>
/// <param name="Plus">Node of its positive or live terminal.</param>
/// <param name="Minus">Node of its negative or neutral terminal.</param>
/// <param name="IsAc">Alternating current.</param>
public sealed record PolePair(Part Part, string Plus, string Minus, bool IsAc);

/// <summary>Where parts give and take power.</summary>
public static class Poles
{
    /// <summary>Where a part gives power: batteries, chargers, converter and inverter outputs, a shore inlet. Null for others.</summary>
    public static PolePair? Giving(Part part) => part switch
    {
        BatteryBank or Charger => Pair(part, TerminalNames.Plus, TerminalNames.Minus, false),
        DcConverter => Pair(part, TerminalNames.OutPlus, TerminalNames.OutMinus, false),
        Inverter or ShoreInlet => Pair(part, TerminalNames.Live, TerminalNames.Neutral, true),
        _ => null,
    };

    /// <summary>Where a part takes power: loads, converter and inverter inputs, a shore charger. Null for others.</summary>
    public static PolePair? Taking(Part part) => part switch
    {
        ElectricLoad { IsAc: true } => Pair(part, TerminalNames.Live, TerminalNames.Neutral, true),
        ElectricLoad => Pair(part, TerminalNames.Plus, TerminalNames.Minus, false),
        DcConverter or Inverter => Pair(part, TerminalNames.InPlus, TerminalNames.InMinus, false),
        Charger { Drive: ChargerDrive.Shore } => Pair(part, TerminalNames.Live, TerminalNames.Neutral, true),
        _ => null,
    };

    private static PolePair Pair(Part part, string plus, string minus, bool isAc) =>
        new(part, part.At(plus).ToString(), part.At(minus).ToString(), isAc);
}
