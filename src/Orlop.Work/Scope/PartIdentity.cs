using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Work.Scope;

/// <summary>What makes a part the part it is: where this differs, another part is fitted or the part is set otherwise.</summary>
internal static class PartIdentity
{
    public static string Of(Part part) => $"{ThingKinds.NameOf(part)} {string.Join(' ', Marks(part))}";

    private static object?[] Marks(Part part) => part switch
    {
        BatteryBank battery => [battery.Chemistry, Number(battery.NominalV), Number(battery.CapacityAh)],
        Charger charger => [charger.Drive, Number(charger.LimitA), Number(charger.SetpointV)],
        DcConverter converter => [Number(converter.OutputV), Number(converter.RatedA), converter.IsIsolated],
        Inverter inverter => [Number(inverter.OutputV), Number(inverter.RatedW)],
        ShoreInlet inlet => [Number(inlet.SupplyV), Number(inlet.RatedA)],
        Busbar bar => [Number(bar.RatedA), bar.IsBonded],
        Protection device => [device.Means, Number(device.RatedA), Number(device.RatedV), Number(device.BreakingA), device.Gates, device.IsTwoPole, Number(device.ResidualA)],
        IsolatorSwitch device => [Number(device.RatedA), device.IsTwoPole, device.IsIsolator],
        Changeover device => [Number(device.RatedA), device.IsInterlocked],
        PlugAndSocket plug => [Number(plug.RatedA), Number(plug.RatedV), plug.Keying, plug.Arrangement],
        ElectricLoad load => [Number(load.NominalV), load.IsAc, load.Behaviour, Number(load.RunningA), Number(load.RunningW), Number(load.StartRatio)],
        _ => [],
    };

    private static double? Number(Quantity? quantity) => quantity?.Value;
}
