using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Topology;

/// <summary>The terminals that are told to be bonded to the hull: a bar that is marked so, and the minus post of a battery that is.</summary>
public static class Bonds
{
    /// <summary>The bonded terminals among these parts, in their order.</summary>
    public static IEnumerable<Terminal> Of(IEnumerable<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.Select(Of).OfType<Terminal>();
    }

    private static Terminal? Of(Part part) => part switch
    {
        Busbar { IsBonded: true } => part.At(TerminalNames.Bar),
        BatteryBank { IsMinusBonded: true } => part.At(TerminalNames.Minus),
        _ => null,
    };
}
