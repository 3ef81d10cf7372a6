using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each fuse and breaker can break the worst fault behind it.</summary>
public sealed class BreakingCapacityCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "breaking-capacity",
        "Device can break the worst fault",
        "The greatest prospective current of a bolted fault just behind a fuse or breaker (full battery, every source, cold conductors, joints taken as nothing) against its breaking capacity. Unknown where it holds only while a battery's resistance is no less than put down: two standard deviations less, of what is measured or on a sheet those of its ±.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from condition in view.Conditions
        let solved = view.Solve(condition, ChargeCase.Full)
        let faults = Faults(view, solved)
        let ways = new WiringTrees(view.Wiring, condition.Id)
        from device in view.Boat.All<Protection>()
        let finding = Judge(view, solved, faults, ways, device, condition)
        where finding is not null
        select finding;

    // The worst fault at one side of a device, and the two nodes that it joins.
    private sealed record WorstFault(Network Network, FaultCurrentResult Fault, string Plus, string Minus);

    private Finding? Judge(ElectricsView view, SolvedNetwork solved, Dictionary<string, WorstFault?> faults, WiringTrees ways, Protection device, Condition condition)
    {
        if (solved.NetworkOf(device.Id) is not { } network)
        {
            return null;
        }

        if (!faults.TryGetValue(device.Id, out WorstFault? worst))
        {
            return null;
        }

        if (worst is null)
        {
            return NotSolved(Description, device.Id, condition, device.Title);
        }

        if (device.BreakingA is not { } breaking)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: the greatest current it can break is not known"), [new FindingInput(device.Id, "breakingA", IsMissing: true)]);
        }

        HashSet<string> reaching = [.. view.SourcesReaching(device).Select(source => source.Id)];
        FindingInput[] missing = [.. network.Batteries.Select(battery => battery.Id).Concat(network.LimitedSources.Select(source => source.Id).Where(reaching.Contains))
            .SelectMany(id => solved.Built.Gaps.GetValueOrDefault(id, []))];
        Verdict verdict = Verdicts.Of(worst.Fault.CurrentA, breaking.Value);
        // A length that is not given counts as nothing here: what holds so holds with any length, what does not cannot be told.
        if (verdict != Verdict.Holds)
        {
            missing =
            [
                .. missing,
                .. network.Contacts.Where(contact => solved.Built.Gaps.ContainsKey(contact.Id) && SystemVoltage.SourcesWithout(view, device, contact.Id).Count() < reaching.Count)
                    .SelectMany(contact => solved.Built.Gaps[contact.Id]).Where(gap => gap.Field == "lengthM"),
            ];
        }

        if (missing.Length > 0 && KnownAlone(view, solved, network, device) is { } known && Verdicts.Of(known.Fault.CurrentA, breaking.Value) == Verdict.Fails)
        {
            (worst, verdict, missing) = (known, Verdict.Fails, []);
        }

        if (missing.Length > 0)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: the worst fault behind it cannot be told"), [.. missing]);
        }

        FaultCurrentResult fault = worst.Fault;
        Finding finding = new()
        {
            CheckId = Description.Id,
            SubjectId = device.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(fault.CurrentA, breaking.Value),
            Headline = Sentence.Of($"{device.Title} can break {A(breaking.Value)}; the worst fault behind it is {A(fault.CurrentA)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Voltage before the fault", "full battery, no loads", V(fault.OpenCircuitV), Solved(solved, device.Id)),
                .. FaultResistance.Lines(view, view.Faults.Greatest(worst.Network), fault, (worst.Plus, worst.Minus), "Resistance of sources and way", "cold, 20 °C, the least its size and class may have"),
                .. LeftOut(view, solved, worst, ways),
                .. fault.IsFedByBatteries ? [new WorkingLine("Chargers and converters add", "the most each gives", A(fault.LimitedA), "")] : Array.Empty<WorkingLine>(),
                new WorkingLine("Prospective fault current", FaultText(fault), A(fault.CurrentA), ""),
                new WorkingLine("Breaking capacity", "", A(breaking.Value), breaking.Method ?? "as typed"),
                Use(fault.CurrentA, breaking.Value),
            ],
            Inputs = [new FindingInput(device.Id, "breakingA"), .. MissingInputs.GuessedFor(solved, device.Id)
                .UnionBy(network.Batteries.Select(battery => new FindingInput(battery.Id, "internalResistanceOhm")), input => (input.ThingId, input.Field))],
        };
        return verdict != Verdict.Fails && WithLeastResistance(view, worst) is { } most && Verdicts.Of(most.CurrentA, breaking.Value) == Verdict.Fails
            ? InDoubt(finding, device, breaking, fault, most, BatteryDoubt.Feeding(view, worst.Network, worst.Plus))
            : finding;
    }

    private static FaultCurrentResult? WithLeastResistance(ElectricsView view, WorstFault worst) =>
        !BatteryDoubt.Feeding(view, worst.Network, worst.Plus).IsEmpty && BatteryDoubt.WithLeast(view, worst.Network) is { } network ? view.Faults.Greatest(network)?.Between(worst.Plus, worst.Minus) : null;

    // Within what the device can break only by a resistance that may be less.
    private static Finding InDoubt(Finding finding, Protection device, Quantity breaking, FaultCurrentResult fault, FaultCurrentResult most, ImmutableArray<BatteryBank> batteries) => finding with
    {
        Verdict = Verdict.Unknown,
        UseFraction = null,
        Headline = Sentence.Of($"{device.Title} can break {A(breaking.Value)}; the worst fault behind it is {A(fault.CurrentA)} if the battery's resistance is as it was put down, and {A(most.CurrentA)} if it is the least it may be: measure it{(batteries.Any(battery => OhmBand.IsDoubted(battery.InternalResistanceOhm)) ? "" : " again, to less ±")}"),
        WorkingWhenAsked = () =>
        [
            .. finding.Working.Where(line => line.What != "Use"),
            .. BatteryDoubt.LeastLines(batteries),
            new WorkingLine("Prospective fault current then", "reckoned in the same way", A(most.CurrentA), ""),
            BatteryDoubt.HowMeasured,
        ],
        Inputs = [.. BatteryDoubt.Inputs(batteries), new FindingInput(device.Id, "breakingA")],
    };

    // What would make the fault smaller and is not counted, so that it is the worst there can be.
    private static WorkingLine[] LeftOut(ElectricsView view, SolvedNetwork solved, WorstFault worst, WiringTrees ways)
    {
        WiringEdge[] along = [.. worst.Network.Batteries.Where(battery => battery.Minus == worst.Minus).Take(1).SelectMany(battery => ways.Along(battery.Plus, worst.Plus))];
        string[] unmeasured = [.. along.Where(edge => solved.Built.Assumed.ContainsKey(edge.Id)).Select(LossOnWay.NameOf).Distinct()];
        string[] unknown = [.. along.Where(edge => solved.Built.Gaps.ContainsKey(edge.Id)).Select(edge => $"{LossOnWay.NameOf(edge)}, whose length is not given").Distinct()];
        return along.Length == 0 ? [] :
        [
            new("Left out for the worst case", $"{string.Join("; ", unmeasured.Concat(unknown).DefaultIfEmpty("no joint or device before it: all are measured or typed"))}", null,
                "counted as nothing where nobody measured them: any resistance would make the fault smaller; so would what lies between the fault and the battery's minus post, which is left out too"),
        ];
    }

    // What the sources and conductors that are fully known give by themselves: the others can only add to it.
    private static WorstFault? KnownAlone(ElectricsView view, SolvedNetwork solved, Network network, Protection device)
    {
        bool IsGap(string id) => solved.Built.Gaps.ContainsKey(id);
        Network known = network with
        {
            Batteries = network.Batteries.RemoveAll(battery => IsGap(battery.Id)),
            LimitedSources = network.LimitedSources.RemoveAll(source => IsGap(source.Id)),
            Converters = network.Converters.RemoveAll(converter => IsGap(converter.Id)),
            Contacts = network.Contacts.RemoveAll(contact => IsGap(contact.Id)),
            Conductors = network.Conductors.RemoveAll(conductor => IsGap(conductor.Id)),
        };
        (string Device, string Plus, string Minus)[] sides = [.. Sides(view, known, device)];
        return sides.Zip(view.Faults.GreatestBetween(known, [.. sides.Select(side => (side.Plus, side.Minus))]))
            .Where(each => each.Second is not null).Select(each => new WorstFault(known, each.Second!, each.First.Plus, each.First.Minus)).MaxBy(each => each.Fault.CurrentA);
    }

    private static string FaultText(FaultCurrentResult fault)
    {
        if (fault.IsFedByBatteries)
        {
            return Formula.Of("{0} ÷ {1} + {2}", v => (v[0] / v[1]) + v[2], fault.OpenCircuitV, fault.SourceOhm, fault.LimitedA);
        }

        string unlimited = Formula.Of("{0} ÷ {1}", v => v[0] / v[1], fault.OpenCircuitV, fault.SourceOhm);
        return Math.Abs(fault.OpenCircuitV / fault.SourceOhm) > Math.Abs(fault.CurrentA) * (1 + 1e-9) ? $"the most its sources give, which is less than {unlimited}" : unlimited;
    }

    // The minus of every battery that reaches the device; without a battery, of the other sources.
    private static string[] ReturnNodes(ElectricsView view, Network network, Protection device)
    {
        HashSet<string> reaching = [.. view.SourcesReaching(device).Select(source => source.Id)];
        string[] batteries = [.. network.Batteries.Where(battery => reaching.Contains(battery.Id)).Select(battery => battery.Minus)];
        return batteries.Length > 0
            ? batteries
            :
            [
                .. network.LimitedSources.Where(source => reaching.Contains(source.Id)).Select(source => source.Minus),
                .. network.Converters.Where(converter => reaching.Contains(converter.Id)).Select(converter => converter.OutMinus),
            ];
    }

    // For each device the worse of its two sides: a device between two sources sees the larger. Null where the network itself has faults. One factorisation for each group.
    private static Dictionary<string, WorstFault?> Faults(ElectricsView view, SolvedNetwork solved)
    {
        Dictionary<string, WorstFault?> worst = new(StringComparer.Ordinal);
        foreach (IGrouping<Network, Protection> devices in view.Boat.All<Protection>().Where(device => solved.NetworkOf(device.Id) is not null).GroupBy(device => solved.NetworkOf(device.Id)!))
        {
            (string Device, string Plus, string Minus)[] pairs = [.. devices.SelectMany(device => Sides(view, devices.Key, device))];
            var currents = view.Faults.GreatestBetween(devices.Key, [.. pairs.Select(pair => (pair.Plus, pair.Minus))]);
            if (currents.IsEmpty)
            {
                foreach (var pair in pairs)
                {
                    worst[pair.Device] = null;
                }
            }

            foreach ((var pair, FaultCurrentResult? fault) in pairs.Zip(currents))
            {
                // Where no way leads from a source to both, nothing can flow, and there is nothing to break.
                if (fault is not null && double.IsFinite(fault.SourceOhm) && (!worst.TryGetValue(pair.Device, out WorstFault? known) || fault.CurrentA > known!.Fault.CurrentA))
                {
                    worst[pair.Device] = new WorstFault(devices.Key, fault, pair.Plus, pair.Minus);
                }
            }
        }

        return worst;
    }

    private static IEnumerable<(string Device, string Plus, string Minus)> Sides(ElectricsView view, Network network, Protection device) =>
        ReturnNodes(view, network, device).SelectMany(minus => new[] { TerminalNames.In, TerminalNames.Out }.Select(name => (device.Id, device.At(name).ToString(), minus)));
}
