using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Loading;
using Orlop.Work.Readings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Steps after the last connection: label, test, energise, commission, hand over.</summary>
internal static class FinishSteps
{
    public static IEnumerable<WorkStep> Of(PackScope scope, WorkIsolation isolation, ImmutableArray<CableEnd> ends, ImmutableArray<WorkLabel> labels, ImmutableArray<PredictedReading> readings, WeighingPlan weights, CancellationToken token) =>
    [
        .. labels.IsEmpty ? [] : new[] { Label(labels) },
        .. ends.IsEmpty ? [] : Tests(scope, ends),
        .. AcTests.Dead(scope),
        .. Energise(scope, isolation, readings),
        .. AcTests.Live(scope),
        .. Commission(scope, readings, isLifting: false, token),
        .. scope.Of(ChangeKind.Move).Select(change => change.Thing).OfType<ElectricLoad>().Where(load => !readings.Any(reading => reading.About.Contains(load.Id))).Select(TryMoved),
        .. WeighingSteps.After(scope, weights),
        .. TrialLifts.Steps(scope, token),
        .. Commission(scope, readings, isLifting: true, token),
        .. LiveNearby.Of(scope, isolation).Select(bank => LiveNearby.Off(scope, bank)),
        .. PanelSteps.Close(scope, isolation),
        .. scope.Changes.IsEmpty ? [] : new[] { HandOver(scope) },
    ];

    // Nothing is hung from a hook before it was measured how she floats with the work in her.
    private static IEnumerable<WorkStep> Commission(PackScope scope, ImmutableArray<PredictedReading> readings, bool isLifting, CancellationToken token) =>
        readings.GroupBy(reading => reading.ConditionId).Where(condition => CommissionSteps.Hung(scope, condition.Key).IsEmpty != isLifting).Select(condition => CommissionSteps.Of(scope, condition.Key, [.. condition], token));

    private static WorkStep Label(ImmutableArray<WorkLabel> labels) => new()
    {
        Key = "label:all",
        Kind = StepKind.Label,
        Text = WorkLabels.CountToMake(labels) is var count && count == labels.Length
            ? Sentence.Of($"Label both ends of every core and every device: {count} labels, on the label sheet.")
            : Sentence.Of($"Label both ends of every core and every device: {count} labels still to make of the {labels.Length} on the label sheet; the others are of what is recorded as built."),
        About = [.. labels.Select(label => ElementIds.ThingOf(label.Key)).Distinct(StringComparer.Ordinal)],
    };

    private static IEnumerable<WorkStep> Tests(PackScope scope, ImmutableArray<CableEnd> ends)
    {
        ImmutableArray<string> cables = [.. ends.Select(end => end.CableId).Distinct(StringComparer.Ordinal)];
        WorkStep test = new() { Key = "", Kind = StepKind.Test, Text = Sentence.Of($""), About = cables };
        yield return test with
        {
            Key = "test:open",
            Text = Sentence.Of($"Before testing: every new fuse out, every new breaker and isolator open, new loads and electronics unplugged."),
        };
        yield return test with
        {
            Key = "test:polarity",
            Text = Sentence.Of($"Polarity: follow each core by its label and by the meter, plus to plus and minus to minus, at every terminal and plug."),
            Details = [.. ends.GroupBy(end => (end.CableId, end.CoreId)).Select(core => Sentence.Of($"{scope.Words.Title(core.Key.CableId)}, {PartWords.CoreName(core.Key.CoreId)}: {string.Join(" → ", core.Select(end => end.Where))}."))],
        };
    }

    private static IEnumerable<WorkStep> Energise(PackScope scope, WorkIsolation isolation, ImmutableArray<PredictedReading> readings)
    {
        ImmutableArray<Part> devices = [.. scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Select(change => change.Thing).OfType<Part>()
            .Where(part => scope.IsNewBattery(part.Id) || part is Protection or IsolatorSwitch { IsIsolator: true } or Changeover)
            .OrderBy(part => scope.StepsFrom(part.At(part.TerminalNames[0]).ToString()))];
        foreach (WorkStep mate in PlugSteps.Mate(scope, isolation))
        {
            yield return mate;
        }

        // A plug that the plan pulled goes in before whatever else is closed, as every plug does.
        Opening[] closing = [.. (isolation.Result is { } plan ? ClosingOrder.Devices(plan) : []).OrderByDescending(opening => opening.Means == OpeningMeans.Unplug)];
        int place = MinusLeads.PlaceAfter(closing);
        for (int i = 0; i <= closing.Length; i++)
        {
            foreach (BatteryBank bank in i == place ? isolation.MinusFirst.Where(bank => scope.AsAltered.Find(bank.Id) is not null) : [])
            {
                yield return MinusSteps.Last(scope, isolation, bank);
            }

            if (i < closing.Length)
            {
                yield return Close(scope, isolation, closing[i]);
            }
        }

        HashSet<string> closed = [.. closing.Select(opening => opening.Id)], still = [.. devices.Select(device => device.Id)];
        foreach (Part device in devices)
        {
            AcceptedReading supply = Supply(scope, device);
            ImmutableArray<string> putOn = supply.At is { } at ? [.. (new SwitchedOn(scope.AsAltered, scope.AlteredWiring, id => !still.Contains(id)).Between(at.Node, at.OtherNode) ?? []).Where(id => !closed.Contains(id))] : [];
            still.Remove(device.Id);
            closed.Add(device.Id);
            yield return new WorkStep
            {
                Key = $"switch-on:{device.Id}",
                Kind = StepKind.Energise,
                Text = device switch
                {
                    Protection { Means: ProtectionMeans.Fuse } fuse => Sentence.Of($"Put in the {new Amount(fuse.RatedA.Value, "A")} fuse: {scope.Words.Located(fuse.Id)}."),
                    BatteryBank => Sentence.Of($"Put the leads on the posts of {scope.Words.Located(device.Id)}: plus first, minus last."),
                    _ => Sentence.Of($"Switch on {scope.Words.Located(device.Id)}."),
                },
                Details =
                [
                    supply is { Least: { } least, Most: { } most }
                        ? Sentence.Of($"Loads off. First measure at its supply side: right voltage, {new Amount(least, "V")} to {new Amount(most, "V")}{(supply.IsEitherSign ? "" : ", right polarity")}.")
                        : supply.Least is { } from ? Sentence.Of($"Loads off. First measure at its supply side: right voltage, at least {new Amount(from, "V")}, right polarity. What it may be at most is not told: no charger that reaches it, and no voltage of its battery when full.")
                        : Sentence.Of($"Loads off. First measure at its supply side: right voltage, right polarity. What feeds it is not told: what to expect is for you to find out."),
                    .. putOn.IsEmpty ? [] : new[] { Sentence.Of($"On for it, where they are off: {string.Join("; ", putOn.Select(scope.Words.Located))}. With one of them off it reads nothing.") },
                    .. readings.Where(reading => CommissioningReadings.IsBeforeJoining(reading) && reading.About.Contains(device.Id))
                        .Select(reading => Sentence.Of($"{reading.What.ToString()}: {(reading.Expected is { } band ? FormattableString.Invariant($"at most {band.Most.Value:0.##} V, else charge each by itself first") : "how far apart they may be is not told")}.")),
                ],
                WriteDown = new WriteDown("V", "At its supply side") { Accepts = [supply] },
                PutOn = putOn,
                Cautions = [.. readings.Any(reading => CommissioningReadings.IsBeforeJoining(reading) && reading.About.Contains(device.Id)) ? new[] { CommissionSteps.JoinAlike } : [], .. Cautions.AtNodes(scope, isolation, device.TerminalNames.Select(name => device.At(name).ToString())).Where(caution => caution.Kind is CautionKind.Mains or CautionKind.Battery)],
                About = [device.Id],
            };
        }

        foreach (Opening stopped in isolation.Result is { } done ? ClosingOrder.Sources(done) : [])
        {
            yield return Close(scope, isolation, stopped);
        }

        if (SolarSteps.Uncover(scope, isolation) is { } uncover)
        {
            yield return uncover;
        }
    }

    // The leads of a new battery are live from the battery itself; everything else from what feeds it, every switch taken as closed.
    private static AcceptedReading Supply(PackScope scope, Part device)
    {
        string node = device.At(device.TerminalNames[0]).ToString();
        PointVoltage point = PointVoltage.At(scope.AsAltered, scope.AlteredWiring, node);
        return device is BatteryBank battery ? LiveVoltage.Of(battery.NominalV.Value, false, LiveVoltage.MostOf(battery.NominalV.Value, [battery])) with { At = (node, battery.At(TerminalNames.Minus).ToString()) }
            : LiveVoltage.Of(point) with { At = point.IsAc == false && PartProofs.Reference(scope.AsAltered)?.ToString() is { } reference ? (node, reference) : null };
    }

    private static WorkStep Close(PackScope scope, WorkIsolation isolation, Opening opening) => new()
    {
        Key = $"restore:{opening.Id}",
        Kind = StepKind.Energise,
        Text = Sentence.Of($"{IsolationWords.Close(scope.Words, opening, scope.Whole.Find(opening.Id))}"),
        Details = opening.Means switch
        {
            OpeningMeans.Unplug => [PlugSteps.Fed],
            OpeningMeans.LiftBatteryLead => LiveNearby.AtPosts(scope, isolation, opening.EdgeIds.Select(scope.WholeWiring.Find).OfType<WiringEdge>().SelectMany(edge => new[] { edge.A, edge.B }).Select(ElementIds.ThingOf)),
            _ => [],
        },
        Cautions = opening.Means == OpeningMeans.LiftBatteryLead ? [Cautions.Battery] : [],
        About = [ElementIds.ThingOf(opening.Id)],
    };

    private static WorkStep TryMoved(ElectricLoad load) => new()
    {
        Key = $"try:{load.Id}",
        Kind = StepKind.Commission,
        Text = Sentence.Of($"Try {load.Title} where it now stands: it runs, nothing pulls or chafes its lead, nothing gets warm that should not."),
        Details = [Sentence.Of($"{CommissionSteps.RunLimit}")],
        About = [load.Id],
    };

    private static WorkStep HandOver(PackScope scope) => new()
    {
        Key = "hand-over:record",
        Kind = StepKind.HandOver,
        Text = Sentence.Of($"Hand over: photograph each joint and label, count tools and offcuts, tick this pack off in the boat's file."),
        Details = [Sentence.Of($"Write down what was built otherwise than drawn. Tell your insurer and surveyor of changes they must know.")],
        About = [scope.Alteration.Id],
    };
}
