using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A fault at the far end of each conductor opens its device before the conductor is hurt.</summary>
public sealed class FaultClearsCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "fault-clears",
        "A fault at the far end opens its device in time",
        "The weakest fault at the far end of each conductor that a battery feeds (lowest battery, hot conductors, joints as they are): the latest that a device before it may open, against the time that the conductor bears it, first with all heat in the copper, then with the heat it loses. Unknown where it holds only while a battery's resistance is no more than put down: two standard deviations more, of what is measured or on a sheet those of its ±. Behind a DC converter, whose limit is the most it gives, and a short may draw less: holds where the conductor carries that limit for ever, else unknown.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => BehindBatteries(view).Concat(
        from condition in view.Conditions
        from end in view.FarEndsIn(condition).Limited
        where !end.Before.IsEmpty
        select LimitedFault.Judge(Description, view, end, condition));

    private IEnumerable<Finding> BehindBatteries(ElectricsView view) =>
        from condition in view.Conditions
        from end in view.FarEndsIn(condition).All
            // A conductor that nothing protects is told by the check of protection.
        where !end.Before.IsEmpty && !CrankingWay.IsOnlyThat(view, end.Edge.Id, condition)
        select Judge(view, end, condition);

    private Finding Judge(ElectricsView view, FarEnd end, Condition condition)
    {
        string name = $"{end.Cable.Title}, {end.Edge.Core!.Id}";
        SolvedNetwork lowest = view.Solve(condition, ChargeCase.Lowest);
        ImmutableArray<FindingInput> missing = MissingInputs.OfWay(view, lowest, condition, end);
        if (missing.Length > 0)
        {
            return Unknown(Description, end.Edge.Id, condition.Id, Sentence.Of($"{name}: the weakest fault at its far end cannot be told"), missing);
        }

        if (end.Fault is null || !(Math.Abs(end.Fault.Fault.CurrentA) > 0))
        {
            return NotSolved(Description, end.Edge.Id, condition, name);
        }

        if (FaultedConductor.Of(view, end.Cable, condition, end.ThroughA(end.Edge.Id)) is not { } conductor)
        {
            return Unknown(Description, end.Edge.Id, condition.Id, Sentence.Of($"{name}: how long it bears a fault cannot be told"), view.AmpacityOf(end.Cable, condition).Missing is { Length: > 0 } where
                ? where
                : [new FindingInput(end.Cable.Id, "insulationC", IsMissing: end.Cable.InsulationC is null)]);
        }

        ImmutableArray<FarEndClearing> each = FarEndClearing.Each(view, end, conductor);
        FindingInput[] withoutGates = [.. end.Before.Where(device => view.GatesOnDc(device) is null).Select(device => GatesGap.Input(device))];
        if (each.IsEmpty)
        {
            return Unknown(Description, end.Edge.Id, condition.Id, Sentence.Of($"{name}: {GatesGap.Words(end.Before[^1])}, so whether it opens in time cannot be told"), [.. withoutGates]);
        }

        FarEndClearing best = each[0];
        (Protection device, FaultClearingResult result) = (best.Device, best.Result);
        if (FarEndClearing.VerdictOf(result.Status) != Verdict.Fails && WithMostResistance(view, end, condition) is { } weakest && MayFail(view, weakest, condition))
        {
            return Unknown(Description, end.Edge.Id, condition.Id, Sentence.Of($"{name}: {device.Title} opens in time on {A(end.ThroughA(end.Edge.Id))} at its far end; whether it does on {A(weakest.ThroughA(end.Edge.Id))}, if the battery's resistance is the most it may be, cannot be told"),
                [.. BatteryDoubt.Inputs(BatteryDoubt.Feeding(view, lowest.NetworkOf(end.Edge.Id)!, end.PlusNode))]);
        }

        return FarEndClearing.VerdictOf(result.Status) == Verdict.Fails && withoutGates.Length > 0
            ? Unknown(Description, end.Edge.Id, condition.Id, Sentence.Of($"{name}: {device.Title} may not open in time, and the times of another device before it are not known"), [.. withoutGates])
            : Told(view, end, device, result, condition, name);
    }

    // The same fault with the most resistance that its batteries may have; null where none is in doubt.
    private static FarEnd? WithMostResistance(ElectricsView view, FarEnd end, Condition condition) =>
        view.Solve(condition, ChargeCase.Lowest).NetworkOf(end.Edge.Id) is { } network && !BatteryDoubt.Feeding(view, network, end.PlusNode).IsEmpty && BatteryDoubt.WithMost(view, network) is { } doubted && view.Faults.Least(doubted)?.FlowBetween(end.PlusNode, end.MinusNode) is { } flow
            ? end with { Fault = flow }
            : null;

    private static bool MayFail(ElectricsView view, FarEnd end, Condition condition) =>
        FaultedConductor.Of(view, end.Cable, condition, end.ThroughA(end.Edge.Id)) is { } conductor
        && FarEndClearing.Each(view, end, conductor) is [var best, ..] && FarEndClearing.VerdictOf(best.Result.Status) == Verdict.Fails;

    private Finding Told(ElectricsView view, FarEnd end, Protection device, FaultClearingResult result, Condition condition, string name)
    {
        double fault = end.ThroughA(end.Edge.Id);
        OperatingGates gates = view.GatesOnDc(device)!;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = end.Edge.Id,
            ConditionId = condition.Id,
            Verdict = FarEndClearing.VerdictOf(result.Status),
            UseFraction = result.Status is FaultClearingStatus.Bears or FaultClearingStatus.MayNeverOpen || double.IsInfinity(result.BearsS) ? null : result.LatestOpeningS / result.BearsS,
            Headline = HeadlineOf(result, device, name, fault),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Voltage before the fault", "lowest battery, no loads, no charger", V(Math.Abs(end.Fault!.Fault.OpenCircuitV)), Solved(view.Solve(condition, ChargeCase.Lowest), end.Edge.Id)),
                .. FaultResistance.Lines(view, PreparedOf(view, end, condition), end.Fault.Fault, (end.PlusNode, end.MinusNode), "Resistance of batteries and way", "at its rated temperature"),
                new WorkingLine("Weakest fault at the far end", Formula.Of("{0} ÷ {1}", v => v[0] / v[1], Math.Abs(end.Fault.Fault.OpenCircuitV), end.Fault.Fault.SourceOhm), A(Math.Abs(end.Fault.Fault.CurrentA)), ""),
                .. Part(end, device, fault),
                .. result.Working.Select(step => Line(step, gates.IsFromMemory && step.Source == gates.Source)),
                new WorkingLine("Insulation bears at the end", "no longer than 5 s", new Amount(FaultedConductor.FinalC, "C"), FaultedConductor.FinalSource, IsFromMemory: true),
                .. result.LatestOpeningS is { } latest && double.IsFinite(result.BearsS) ? new[] { Use(latest, result.BearsS) } : [],
            ],
            Inputs = [new FindingInput(device.Id, "ratedA"), new FindingInput(device.Id, "gates"), new FindingInput(end.Cable.Id, "areaMm2"), new FindingInput(end.Cable.Id, "lengthM"), .. MissingInputs.GuessedFor(view.Solve(condition, ChargeCase.Lowest), end.Edge.Id)],
            Caution = FarEndClearing.VerdictOf(result.Status) == Verdict.Fails ? Cautions.BatteryPost : null,
        };
    }

    private static PreparedFaults? PreparedOf(ElectricsView view, FarEnd end, Condition condition) =>
        view.Solve(condition, ChargeCase.Lowest).NetworkOf(end.Edge.Id) is { } network ? view.Faults.Least(network) : null;

    // Where ways share a fault, each carries its part.
    private static IEnumerable<WorkingLine> Part(FarEnd end, Protection device, double faultA)
    {
        double throughDevice = end.ThroughA(device.Id), all = Math.Abs(end.Fault!.Fault.CurrentA);
        return Math.Abs(faultA - all) > 1e-6 * all || Math.Abs(throughDevice - all) > 1e-6 * all
            ? [new WorkingLine("Of which in the conductor", "the rest comes another way", A(faultA), ""), new WorkingLine("Of which through the device", "the rest comes another way", A(throughDevice), "")]
            : [];
    }

    private static Sentence HeadlineOf(FaultClearingResult result, Protection device, string name, double faultA) => result.Status switch
    {
        FaultClearingStatus.Bears => Sentence.Of($"{name}: the weakest fault at its far end is {A(faultA)}, which it carries for ever"),
        FaultClearingStatus.MayNeverOpen => Sentence.Of($"{name}: the weakest fault at its far end, {A(faultA)}, may never open {device.Title}, and it cannot carry that for ever"),
        FaultClearingStatus.MayBeTooLate => Sentence.Of($"{name}: on {A(faultA)} at its far end {device.Title} may take {Seconds(result.LatestOpeningS!.Value)}; it bears that for {Seconds(result.BearsS)}"),
        FaultClearingStatus.ClearsLate => Sentence.Of($"{name}: on {A(faultA)} at its far end {device.Title} may take {Seconds(result.LatestOpeningS!.Value)}; the copper bears it, but its insulation is judged for 5 s only"),
        _ when double.IsInfinity(result.BearsS) => Sentence.Of($"{name}: {A(faultA)} at its far end opens {device.Title} within {Seconds(result.LatestOpeningS!.Value)}; it bears that for ever"),
        _ => Sentence.Of($"{name}: {A(faultA)} at its far end opens {device.Title} within {Seconds(result.LatestOpeningS!.Value)}; it bears that for {Seconds(result.BearsS)}"),
    };
}
