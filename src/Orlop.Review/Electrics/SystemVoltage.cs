using Orlop.Boat.Things;

namespace Orlop.Review.Electrics;

/// <summary>The voltage of the system that a device is in: the highest nominal voltage of the sources that reach it, with everything closed.</summary>
internal static class SystemVoltage
{
    /// <summary>Nominal voltage of a source; null for parts that are none.</summary>
    public static double? NominalV(Part source) => source switch
    {
        BatteryBank battery => battery.NominalV.Value,
        DcConverter converter => converter.OutputV.Value,
        Inverter inverter => inverter.OutputV.Value,
        ShoreInlet inlet => inlet.SupplyV.Value,
        _ => null,
    };

    /// <summary>Highest voltage a source can have: a battery when full, a charger at its set voltage, others their output.</summary>
    public static double? GreatestV(Part source) => source switch
    {
        BatteryBank battery => battery.OpenCircuit.Count > 0 ? battery.OpenCircuit.Max(point => point.OpenCircuitV) : battery.NominalV.Value,
        Charger charger => charger.SetpointV.Value,
        _ => NominalV(source),
    };

    /// <summary>Null when no source reaches the device.</summary>
    public static double? Of(ElectricsView view, Part device) => view.SourcesReaching(device).Select(NominalV).Max();
}
