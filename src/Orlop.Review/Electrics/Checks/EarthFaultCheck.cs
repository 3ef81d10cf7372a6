using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A fault to earth on the AC side ends before it kills.</summary>
public sealed class EarthFaultCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "earth-fault-disconnection",
        "A fault to earth on the AC side ends in time",
        "For each AC circuit and each source that feeds it: a fault of no resistance from live to the metal of what it feeds, through hot conductors; the sooner of breaker and residual-current device at the latest, against the time of IEC 60364-4-41; with an earth of its own also R_A · I∆n against 50 V. Unknown where it ends in time only while a guessed or estimated resistance of the shore supply is as put down.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.EarthFaults.Where(fault => fault.Circuit.Taker is not ElectricLoad { IsDoubleInsulated: true }).Select(fault => Judge(view, fault))
        .Concat(AcCircuits.Takers(view).Where(taker => view.EarthFaults.All(fault => fault.Circuit.Taker.Id != taker.Id)).Select(NotFed));

    private Finding NotFed(Part taker) => Cautioned(Unknown(Description, taker.Id, null, Sentence.Of($"{taker.Title}: no AC source feeds it in any condition, so how a fault to earth ends cannot be told"), [new FindingInput(taker.Id, "id")]));

    private Finding Judge(ElectricsView view, EarthFault fault)
    {
        AcCircuit circuit = fault.Circuit;
        string name = $"{circuit.Taker.Title}, fed by {circuit.Source.Title}";
        if (fault.Earth is null)
        {
            return Cautioned(NoEarth(view, circuit, name));
        }

        if (fault.Input is null || fault.Result is not { } result)
        {
            return Cautioned(Unknown(Description, circuit.Taker.Id, circuit.Condition.Id, Sentence.Of($"{name}: how a fault to earth ends cannot be told"), fault.Missing.IsEmpty ? [new FindingInput(circuit.Source.Id, circuit.Source is Inverter ? "outputV" : "supplyV")] : fault.Missing));
        }

        if (result.Status == EarthFaultStatus.DrivesNothing)
        {
            return Cautioned(Floats(view, fault, name));
        }

        if (result.Status == EarthFaultStatus.EndsInTime && fault.InDoubt().Any(doubted => doubted.Result!.Status != EarthFaultStatus.EndsInTime))
        {
            return Cautioned(Unknown(Description, circuit.Taker.Id, circuit.Condition.Id, Sentence.Of($"{name}: a fault to earth ends in time only while the shore supply's resistance is as it was put down: measure it"), [new FindingInput(circuit.Source.Id, "sourceOhm", IsGuess: true)]));
        }

        // What the inverter gives beyond its rating, and devices without times, may yet end it.
        FindingInput[] doubts = result.Status is EarthFaultStatus.EndsInTime or EarthFaultStatus.TouchTooHigh ? [] :
        [
            .. fault.IsRatingForLimit ? [new FindingInput(circuit.Source.Id, "shortCircuitA", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. circuit.Devices.Where(device => DeviceGates.Of(device) is null && device.ResidualA is null).Select(device => GatesGap.Input(device)),
        ];
        return Cautioned(doubts.Length > 0
            ? Unknown(Description, circuit.Taker.Id, circuit.Condition.Id, Sentence.Of($"{name}: nothing that is known ends a fault to earth of {A(result.FaultA)} in time"), [.. doubts])
            : Told(fault, result, name));
    }

    private Finding Told(EarthFault fault, EarthFaultResult result, string name)
    {
        AcCircuit circuit = fault.Circuit;
        bool isGround = result.Status == EarthFaultStatus.TouchTooHigh;
        double? groundV = fault.Input!.Return == EarthReturn.Ground ? EarthFaultLoop.GroundTouchV(fault.Input) : null;
        (double? asked, double? allowed) = isGround ? (groundV, EarthFaultLoop.LastingTouchV) : (result.EndsS, result.PermittedS);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = circuit.Taker.Id,
            ConditionId = circuit.Condition.Id,
            Verdict = result.Status == EarthFaultStatus.EndsInTime ? Verdicts.Of(asked!.Value, allowed!.Value) : Verdict.Fails,
            UseFraction = asked is { } want && allowed is { } most && double.IsFinite(want) ? Verdicts.UseOf(want, most) : null,
            Headline = HeadlineOf(fault, result, name, groundV),
            WorkingWhenAsked = () =>
            [
                .. result.Working.Select(step => Line(step, IsFromMemory(fault, step.Source))),
                .. fault.IsRatingForLimit ? [new WorkingLine("Source", $"{circuit.Source.Title} does not say what it gives into a short circuit: its rating is counted on, no more", null, "")] : Array.Empty<WorkingLine>(),
                .. result.IsLimited && result.Openings.All(opening => opening.OvercurrentS is null) ? [new WorkingLine("Breakers", "the source limits its current: none is sure to open on that; the residual-current device must", null, "")] : Array.Empty<WorkingLine>(),
                new WorkingLine("May last", "final circuit of up to 32 A or other, by how the fault returns", result.PermittedS is { } permitted ? Seconds(permitted) : null, DisconnectionTimes.Source),
                .. asked is { } used && allowed is { } limit && double.IsFinite(used) ? new[] { Use(used, limit) } : [],
            ],
            Inputs = InputsOf(fault),
        };
    }

    private static ImmutableArray<FindingInput> InputsOf(EarthFault fault) =>
    [
        new(fault.Circuit.Source.Id, "neutralBond"), new(fault.Circuit.Source.Id, fault.Circuit.Source is Inverter ? "shortCircuitA" : "sourceOhm"),
        .. fault.Circuit.Devices.SelectMany(device => new[] { new FindingInput(device.Id, "ratedA"), new FindingInput(device.Id, device.ResidualA is null ? "gates" : "residualA") }),
        .. fault.Circuit.Live.Concat(fault.Earth ?? []).Select(edge => edge.Owner).OfType<Cable>().Distinct().SelectMany(cable => new[] { new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "lengthM") }),
        .. fault.Assumed,
    ];

    private static bool IsFromMemory(EarthFault fault, string source) =>
        source == EarthFaultLoop.GroundSource || fault.Circuit.Devices.Select(DeviceGates.Of).Any(gates => gates is { IsFromMemory: true } && gates.Source == source);

    private static Sentence HeadlineOf(EarthFault fault, EarthFaultResult result, string name, double? groundV) => result.Status switch
    {
        EarthFaultStatus.EndsInTime => Sentence.Of($"{name}: a fault to earth of {A(result.FaultA)} is ended by {fault.EndedBy!.Title} within {Seconds(result.EndsS!.Value)}; it may last {Seconds(result.PermittedS!.Value)}"),
        EarthFaultStatus.MayEndLate => Sentence.Of($"{name}: a fault to earth of {A(result.FaultA)} may last {Seconds(result.EndsS!.Value)}, with {V(result.TouchV)} on what is touched"),
        EarthFaultStatus.TouchTooHigh => Sentence.Of($"{name}: on an earth of its own what is touched may stand at more than {V(EarthFaultLoop.LastingTouchV)} before anything opens{(groundV is { } volts && double.IsFinite(volts) ? Sentence.Of($": {V(volts)}") : Sentence.Of($": no residual-current device sees it"))}"),
        _ => Sentence.Of($"{name}: nothing is sure to open on a fault to earth of {A(result.FaultA)}; {V(result.TouchV)} stays on what is touched"),
    };

    private Finding NoEarth(ElectricsView view, AcCircuit circuit, string name) => circuit.Taker is ElectricLoad { IsDoubleInsulated: null } load && view.Wiring.At(load.At(TerminalNames.Earth).ToString()).Count == 0
        ? Unknown(Description, load.Id, circuit.Condition.Id, Sentence.Of($"{name}: it has no earth, and whether it needs one is not known"), [new FindingInput(load.Id, "isDoubleInsulated", IsMissing: true)])
        : new Finding
        {
            CheckId = Description.Id,
            SubjectId = circuit.Taker.Id,
            ConditionId = circuit.Condition.Id,
            Verdict = Verdict.Fails,
            Headline = Sentence.Of($"{name}: a fault to its metal finds no way back, so nothing opens and the metal stays live"),
            Working = [new WorkingLine("Way of the earth", $"none from {circuit.Taker.Title} back to {circuit.Source.Title}", null, "the wiring as drawn")],
            Inputs = [new FindingInput(circuit.Taker.Id, "id"), new FindingInput(circuit.Source.Id, "id")],
        };

    private Finding Floats(ElectricsView view, EarthFault fault, string name)
    {
        int others = view.EarthFaults.Count(other => other.Circuit.Source.Id == fault.Circuit.Source.Id) - 1;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = fault.Circuit.Taker.Id,
            ConditionId = fault.Circuit.Condition.Id,
            Verdict = others == 0 ? Verdict.Holds : Verdict.Fails,
            Headline = others == 0
                ? Sentence.Of($"{name}: the source floats and feeds nothing else, so a first fault drives no current through anyone")
                : Sentence.Of($"{name}: the source floats and feeds {others} more: a first fault opens nothing and tells nobody, a second can kill"),
            Working = [new WorkingLine("Neutral", "joined to earth nowhere", null, "as given, and the wiring as drawn"), new WorkingLine("Separation", "of one item from one source", null, "IEC 60364-4-41, 413", IsFromMemory: true)],
            Inputs = [new FindingInput(fault.Circuit.Source.Id, "neutralBond")],
        };
    }

    private static Finding Cautioned(Finding finding) => finding with { Caution = Cautions.EarthFault };
}
