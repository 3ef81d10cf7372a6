using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>
/// Batteries whose internal resistance may be another than is put down, by its ± or because nobody measured it or read it from a sheet. A greatest fault is held against the least resistance, a weakest
/// fault against the most.
/// </summary>
internal static class BatteryDoubt
{
    // The batteries of a network that are in doubt, in its order.
    private static ImmutableArray<BatteryBank> In(ElectricsView view, Network network) =>
        [.. network.Batteries.Select(battery => view.Boat.Find<BatteryBank>(battery.Id)).OfType<BatteryBank>().Where(battery => OhmBand.IsWide(battery.InternalResistanceOhm))];

    /// <summary>Those of them that can feed a node, with everything closed.</summary>
    public static ImmutableArray<BatteryBank> Feeding(ElectricsView view, Network network, string node) =>
        In(view, network) is { IsEmpty: false } doubted ? [.. doubted.Where(view.SourcesReaching([node]).Contains)] : [];

    /// <summary>The network with the least resistance that its batteries may have; null where none is in doubt.</summary>
    public static Network? WithLeast(ElectricsView view, Network network) => view.Faults.Instead(network, nameof(WithLeast), () => With(view, network, OhmBand.Least));

    /// <summary>The network with the most resistance that its batteries may have; null where none is in doubt.</summary>
    public static Network? WithMost(ElectricsView view, Network network) =>
        view.Faults.Instead(network, nameof(WithMost), () => With(view, network, OhmBand.Most));

    /// <summary>The least resistance of each battery in doubt, as lines.</summary>
    public static IEnumerable<WorkingLine> LeastLines(IEnumerable<BatteryBank> batteries) => batteries.Select(battery => LeastLine($"{battery.Title}, the least it may have inside", battery.InternalResistanceOhm!));

    private static WorkingLine LeastLine(string what, Quantity ohm) => OhmBand.IsAtFloor(ohm)
        ? new WorkingLine(what, Formula.Of("0.25 × {0}", v => OhmBand.LeastFactor * v[0], ohm.Value), new Amount(OhmBand.Least(ohm), "Ohm"), $"{HowKnown(ohm)}: no less than a quarter of it", IsFromMemory: true)
        : new WorkingLine(what, Formula.Of("{0} − 2 × {1}", v => v[0] - (2 * v[1]), ohm.Value, OhmBand.Deviation(ohm)), new Amount(OhmBand.Least(ohm), "Ohm"), $"{HowKnown(ohm)}: two standard deviations less");

    private static string HowKnown(Quantity ohm) => OhmBand.IsDoubted(ohm) ? "guessed or estimated" : ohm.Known == Knowledge.Measured ? "measured, with its ±" : "as typed, with its ±";

    /// <summary>What would settle it: how the resistance of a battery is measured.</summary>
    public static WorkingLine HowMeasured { get; } = new("Measure the battery's resistance", "(voltage before − voltage in the step) ÷ (current in the step − current before)", null,
        "at its posts, in the condition it is used in: a known load is put on, voltage and current are read just before and a few seconds after; a larger step and more of them make its ± smaller. Common practice, no source");

    /// <summary>What would settle it: the resistance of each battery in doubt.</summary>
    public static IEnumerable<FindingInput> Inputs(IEnumerable<BatteryBank> batteries) => batteries.Select(battery => new FindingInput(battery.Id, "internalResistanceOhm", IsGuess: OhmBand.IsDoubted(battery.InternalResistanceOhm)));

    private static Network? With(ElectricsView view, Network network, Func<Quantity, double> ohm)
    {
        Dictionary<string, double> doubted = In(view, network).ToDictionary(battery => battery.Id, battery => ohm(battery.InternalResistanceOhm!), StringComparer.Ordinal);
        return doubted.Count == 0 ? null : network with
        {
            Batteries = [.. network.Batteries.Select(battery => doubted.TryGetValue(battery.Id, out double instead) ? battery with { InternalOhm = instead } : battery)],
        };
    }
}
