using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Networks;

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

    /// <summary>Highest voltage a source can have: a battery when full, a charger at its set voltage, others their output; null for a battery whose points do not reach full.</summary>
    public static double? GreatestV(Part source) => source switch
    {
        BatteryBank battery => battery.OpenCircuit.Any(point => point.ChargeFraction >= 1) ? battery.OpenCircuit.Max(point => point.OpenCircuitV) : null,
        Charger charger => charger.SetpointV.Value,
        _ => NominalV(source),
    };

    /// <summary>Where the highest voltage of some sources comes from, as the source of a line of working.</summary>
    public static string SourceOfGreatest(IEnumerable<Part> sources) =>
        sources.MaxBy(GreatestV) is BatteryBank battery && GuessedBattery.CurveOf(battery) is { } guessed ? $"the wiring as drawn, {guessed}" : "the wiring as drawn";

    /// <summary>Null when no source reaches the device.</summary>
    public static double? Of(ElectricsView view, Part device) => view.SourcesReaching(device).Select(NominalV).Max();

    /// <summary>The first of some sources that stands in series on another, so that their voltages add and none alone tells the voltage; null when none does.</summary>
    public static Part? InSeries(ElectricsView view, IEnumerable<Part> sources) => sources.FirstOrDefault(source => IsStacked(view, source));

    // Its negative pole stands on another source's positive one.
    private static bool IsStacked(ElectricsView view, Part source) =>
        Poles.Giving(source) is { IsAc: false } poles && view.SourcesReaching([poles.Minus]).Any();

    /// <summary>The sources that reach any terminal of a device without passing a grounded node or one edge.</summary>
    public static IEnumerable<Part> SourcesWithout(ElectricsView view, Part device, string edgeId)
    {
        Dictionary<string, Part> giving = new(StringComparer.Ordinal);
        foreach (Part part in view.Boat.All<Part>())
        {
            if (Poles.Giving(part) is { } poles)
            {
                giving.TryAdd(poles.Plus, part);
            }
        }

        Queue<string> queue = new(device.TerminalNames.Select(name => device.At(name).ToString()).Where(node => !view.Grounding.IsGrounded(node)));
        HashSet<string> seen = [.. queue];
        while (queue.TryDequeue(out string? node))
        {
            if (giving.TryGetValue(node, out Part? source))
            {
                yield return source;
            }

            foreach (string next in view.Wiring.At(node).Where(edge => edge.Id != edgeId).Select(edge => edge.Other(node)))
            {
                if (!view.Grounding.IsGrounded(next) && seen.Add(next))
                {
                    queue.Enqueue(next);
                }
            }
        }
    }
}
