using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each fuse and breaker can break the worst fault behind it.</summary>
public sealed class BreakingCapacityCheck : IElectricsCheck
{
    public CheckDescription Description { get; } = new(
        "breaking-capacity",
        "Device can break the worst fault",
        "The greatest prospective current of a bolted fault just behind a fuse or breaker (full battery, every source, cold conductors, joints taken as nothing) against its breaking capacity.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from condition in view.Conditions
        let solved = view.Solve(condition, ChargeCase.Full)
        let faults = Faults(view, solved)
        from device in view.Boat.All<Protection>()
        let finding = Judge(solved, faults, device, condition)
        where finding is not null
        select finding;

    private Finding? Judge(SolvedNetwork solved, Dictionary<string, FaultCurrentResult> faults, Protection device, Condition condition)
    {
        if (solved.NetworkOf(device.Id) is not { } network || !faults.TryGetValue(device.Id, out FaultCurrentResult? fault))
        {
            return null;
        }

        if (device.BreakingA is not { } breaking)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: the greatest current it can break is not known"), [new FindingInput(device.Id, "breakingA", IsMissing: true)]);
        }

        FindingInput[] missing = [.. network.Batteries.SelectMany(battery => solved.Built.Gaps.GetValueOrDefault(battery.Id, []))];
        if (missing.Length > 0)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: the worst fault behind it cannot be told"), [.. missing]);
        }

        double use = fault.CurrentA / breaking.Value;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = device.Id,
            ConditionId = condition.Id,
            Verdict = Verdicts.OfUse(use),
            UseFraction = use,
            Headline = Sentence.Of($"{device.Title} can break {A(breaking.Value)}; the worst fault behind it is {A(fault.CurrentA)}"),
            Working =
            [
                new WorkingLine("Voltage before the fault", "full battery, no loads", V(fault.OpenCircuitV), "solved network"),
                new WorkingLine("Resistance of sources and way", "cold conductors of ideal copper, unknown joints taken as nothing", double.IsFinite(fault.SourceOhm) ? new Amount(fault.SourceOhm, "Ohm") : null, "theorem of Thévenin"),
                new WorkingLine("Chargers and converters add", "their limits", A(fault.LimitedA), ""),
                new WorkingLine("Prospective fault current", $"{N(fault.OpenCircuitV)} ÷ {N(fault.SourceOhm)} + {N(fault.LimitedA)}", A(fault.CurrentA), ""),
                new WorkingLine("Breaking capacity", "", A(breaking.Value), breaking.Method ?? "as typed"),
                Use(fault.CurrentA, breaking.Value),
            ],
            Inputs = [new FindingInput(device.Id, "breakingA"), .. network.Batteries.Select(battery => new FindingInput(battery.Id, "internalResistanceOhm"))],
        };
    }

    private static string? ReturnNode(ElectricsView view, Network network, Protection device)
    {
        HashSet<string> reaching = [.. view.SourcesReaching(device).Select(source => source.Id)];
        return network.Batteries.FirstOrDefault(battery => reaching.Contains(battery.Id))?.Minus
            ?? network.LimitedSources.FirstOrDefault(source => reaching.Contains(source.Id))?.Minus
            ?? network.Converters.FirstOrDefault(converter => reaching.Contains(converter.Id))?.OutMinus;
    }

    // For each device the worse of its two sides: a device between two sources sees the larger. One factorisation for each group.
    private static Dictionary<string, FaultCurrentResult> Faults(ElectricsView view, SolvedNetwork solved)
    {
        Dictionary<string, FaultCurrentResult> worst = new(StringComparer.Ordinal);
        foreach (IGrouping<Network, Protection> devices in view.Boat.All<Protection>().Where(device => solved.NetworkOf(device.Id) is not null).GroupBy(device => solved.NetworkOf(device.Id)!))
        {
            (string Device, string Plus, string Minus)[] pairs = [.. devices.SelectMany(device => Sides(view, devices.Key, device))];
            var currents = view.FaultsIn(devices.Key, [.. pairs.Select(pair => (pair.Plus, pair.Minus))]);
            foreach ((var pair, FaultCurrentResult? fault) in pairs.Zip(currents))
            {
                if (fault is not null && (!worst.TryGetValue(pair.Device, out FaultCurrentResult? known) || fault.CurrentA > known.CurrentA))
                {
                    worst[pair.Device] = fault;
                }
            }
        }

        return worst;
    }

    private static IEnumerable<(string Device, string Plus, string Minus)> Sides(ElectricsView view, Network network, Protection device) =>
        ReturnNode(view, network, device) is { } minus
            ? new[] { TerminalNames.In, TerminalNames.Out }.Select(name => (device.Id, device.At(name).ToString(), minus))
            : [];
}
