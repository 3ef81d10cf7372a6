using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>
/// Batteries whose internal resistance nobody measured or read from a sheet: how far it may truly lie from what is put down. A greatest fault is held against the least resistance, a weakest fault
/// against the most.
/// </summary>
internal static class BatteryDoubt
{
    // The batteries of a network that are in doubt, in its order.
    private static ImmutableArray<BatteryBank> In(ElectricsView view, Network network) =>
        [.. network.Batteries.Select(battery => view.Boat.Find<BatteryBank>(battery.Id)).OfType<BatteryBank>().Where(battery => GuessedOhm.IsDoubted(battery.InternalResistanceOhm))];

    /// <summary>Those of them that can feed a node, with everything closed.</summary>
    public static ImmutableArray<BatteryBank> Feeding(ElectricsView view, Network network, string node) =>
        In(view, network) is { IsEmpty: false } doubted ? [.. doubted.Where(view.SourcesReaching([node]).Contains)] : [];

    /// <summary>The network with the least resistance that its batteries may have; null where none is in doubt.</summary>
    public static Network? WithLeast(ElectricsView view, Network network) => view.Faults.Instead(network, nameof(WithLeast), () => With(view, network, GuessedOhm.Least));

    /// <summary>The network with the most resistance that its batteries may have; null where none is in doubt.</summary>
    public static Network? WithMost(ElectricsView view, Network network) =>
        view.Faults.Instead(network, nameof(WithMost), () => With(view, network, GuessedOhm.Most));

    /// <summary>The least resistance of each battery in doubt, as lines.</summary>
    public static IEnumerable<WorkingLine> LeastLines(IEnumerable<BatteryBank> batteries) => batteries.Select(battery => LeastLine($"{battery.Title}, the least it may have inside", battery.InternalResistanceOhm!));

    private static WorkingLine LeastLine(string what, Quantity ohm) => GuessedOhm.IsAtFloor(ohm)
        ? new WorkingLine(what, Formula.Of("0.25 × {0}", v => GuessedOhm.LeastFactor * v[0], ohm.Value), new Amount(GuessedOhm.Least(ohm), "Ohm"), "guessed or estimated: no less than a quarter of it", IsFromMemory: true)
        : new WorkingLine(what, Formula.Of("{0} − 2 × {1}", v => v[0] - (2 * v[1]), ohm.Value, GuessedOhm.Deviation(ohm)), new Amount(GuessedOhm.Least(ohm), "Ohm"), "guessed or estimated: two standard deviations less");

    /// <summary>What would settle it: the resistance of each battery in doubt.</summary>
    public static IEnumerable<FindingInput> Inputs(IEnumerable<BatteryBank> batteries) => batteries.Select(battery => new FindingInput(battery.Id, "internalResistanceOhm", IsGuess: true));

    private static Network? With(ElectricsView view, Network network, Func<Quantity, double> ohm)
    {
        Dictionary<string, double> doubted = In(view, network).ToDictionary(battery => battery.Id, battery => ohm(battery.InternalResistanceOhm!), StringComparer.Ordinal);
        return doubted.Count == 0 ? null : network with
        {
            Batteries = [.. network.Batteries.Select(battery => doubted.TryGetValue(battery.Id, out double instead) ? battery with { InternalOhm = instead } : battery)],
        };
    }
}
