using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Protection;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A fault to earth on the AC side ends before its protective conductor is spoilt.</summary>
public sealed class EarthFaultHeatCheck : ICheck<ElectricsView>
{
    private const string KSource = "IEC 60364-5-54, annex A and table A.54.4: a core beside live ones, as warm as its insulation is rated for; " + FaultedConductor.FinalSource;

    public CheckDescription Description { get; } = new(
        "earth-fault-heat",
        "The protective conductor bears a fault to earth",
        "For each AC circuit and each source that feeds it: a fault of no resistance from live to earth anywhere behind a device, from the far end with hot conductors to just behind the device with cold ones; the greatest energy that the devices before it let through at any current between (I²t), and the section of each protective conductor that it returns by: S ≥ √(I²t)/k (IEC 60364-5-54, 543.1.2). What a conductor carries for ever needs no end. A fault between a shore inlet and its first device is ended ashore and not judged. Unknown where it holds only while a guessed or estimated resistance of the shore supply is as put down.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.EarthFaults
        .Where(fault => fault.Circuit.Taker is not ElectricLoad { IsDoubleInsulated: true } && fault.Earth is { } earth && earth.Any(edge => edge.Owner is Cable))
        .Select(fault => Judge(view, fault)).OfType<Finding>().Select(finding => finding with { Caution = Cautions.EarthFault });

    private Finding? Judge(ElectricsView view, EarthFault fault)
    {
        AcCircuit circuit = fault.Circuit;
        string name = $"{circuit.Taker.Title}, fed by {circuit.Source.Title}";
        Finding Untold(IEnumerable<FindingInput> missing) =>
            Unknown(Description, circuit.Taker.Id, circuit.Condition.Id, Sentence.Of($"{name}: whether its protective conductor bears a fault to earth cannot be told"), [.. missing.Distinct()]);
        if (fault.Input is null || fault.Result is not { } result)
        {
            return Untold(fault.Missing.IsEmpty ? [new FindingInput(circuit.Source.Id, circuit.Source is Inverter ? "outputV" : "supplyV")] : fault.Missing);
        }

        if (result.Status == EarthFaultStatus.DrivesNothing)
        {
            return null;
        }

        FindingInput[] missing =
        [
            .. fault.IsRatingForLimit ? [new FindingInput(circuit.Source.Id, "shortCircuitA", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. fault.Earth!.Value.Select(edge => edge.Owner).OfType<Cable>().Distinct().Where(cable => cable.InsulationC!.Value >= FaultedConductor.FinalC).Select(cable => new FindingInput(cable.Id, "insulationC")),
        ];
        if (missing.Length > 0)
        {
            return Untold(missing);
        }

        ImmutableArray<EarthFaultStretch> stretches = EarthFaultStretch.Of(fault);
        if (stretches.Any(stretch => !(EarthFaultStretch.CurrentA(fault.Input, stretch.LeastOhm) <= EarthFaultHeat.MostA)))
        {
            return Untold([new FindingInput(circuit.Source.Id, circuit.Source is Inverter ? "shortCircuitA" : "sourceOhm")]);
        }

        ImmutableArray<EarthFaultHeat> all = EarthFaultHeat.Of(view, fault, stretches);
        return all.IsEmpty ? Untold([new FindingInput(circuit.Taker.Id, "id")])
            : all.Where(heat => heat.UseFraction > 1).SelectMany(Doubts).ToArray() is { Length: > 0 } doubts ? Untold(doubts)
            : all.All(heat => heat.UseFraction <= 1) && fault.InDoubt().Any(doubted => EarthFaultHeat.Of(view, doubted, EarthFaultStretch.Of(doubted)).Any(heat => !(heat.UseFraction <= 1)))
                ? Untold([new FindingInput(circuit.Source.Id, "sourceOhm", IsGuess: true)])
            : Told(fault, name, all.MaxBy(heat => heat.UseFraction)!);
    }

    // Devices without times may yet end it, and what opens at once may let through less than its time says.
    private static IEnumerable<FindingInput> Doubts(EarthFaultHeat heat) => heat.Stretch.Devices.SelectMany(device => DeviceGates.Of(device) is not { } gates
        ? device.ResidualA is null ? [GatesGap.Input(device)] : Array.Empty<FindingInput>()
        : device.ClearingA2S is null && gates.LatestOpening(Math.Min(heat.Energy.CurrentA / device.RatedA.Value, 10_000)).GuaranteedS <= LetThrough.QuickS ? [new FindingInput(device.Id, "clearingA2S", IsMissing: true)] : []);

    private Finding Told(EarthFault fault, string name, EarthFaultHeat heat)
    {
        AcCircuit circuit = fault.Circuit;
        bool isEnded = double.IsFinite(heat.Energy.A2S), isForEver = heat.IsBorneForEver && !(heat.AskedMm2 / heat.Cable.AreaMm2.Value <= heat.GreatestA / heat.AmpacityA!.Value);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = circuit.Taker.Id,
            ConditionId = circuit.Condition.Id,
            Verdict = isEnded || isForEver ? Verdicts.OfUse(heat.UseFraction) : Verdict.Fails,
            UseFraction = isEnded || isForEver ? heat.UseFraction : null,
            Headline = isForEver ? Sentence.Of($"{name}: a fault to earth of at most {A(heat.GreatestA)} is borne for ever by its protective conductor along {heat.Cable.Title}, which may carry {A(heat.AmpacityA!.Value)}")
                : isEnded ? Sentence.Of($"{name}: a fault to earth asks for a protective conductor of {Mm2(heat.AskedMm2)}; along {heat.Cable.Title} it has {Mm2(heat.Cable.AreaMm2.Value)}")
                : Sentence.Of($"{name}: nothing is sure to end a fault to earth of {A(heat.Energy.CurrentA)} before its protective conductor along {heat.Cable.Title} is spoilt"),
            Working = [.. Currents(fault, heat), .. isForEver ? ForEver(heat) : isEnded ? Energy(heat) : [new WorkingLine("Ended by", "nothing that is sure to open at the hardest current", A(heat.Energy.CurrentA), "the gates of its devices")]],
            Inputs =
            [
                new(heat.Cable.Id, "areaMm2"), new(heat.Cable.Id, "insulationC"), new(circuit.Source.Id, circuit.Source is Inverter ? "shortCircuitA" : "sourceOhm"),
                .. heat.Stretch.Devices.SelectMany(device => new[] { new FindingInput(device.Id, "gates"), new FindingInput(device.Id, "clearingA2S") }), .. fault.Assumed,
            ],
        };
    }

    private static IEnumerable<WorkingLine> Currents(EarthFault fault, EarthFaultHeat heat)
    {
        string behind = heat.Stretch.Devices is [.., { } last] ? $"behind {last.Title}" : $"behind {fault.Circuit.Source.Title}, before any device";
        yield return new WorkingLine("Fault", behind, null, "the wiring as drawn");
        foreach ((string what, string where, (double Source, double Live, double Earth) ohm, double currentA) in new[]
        {
            ("Greatest current", "near end, conductors at 20 °C", heat.Stretch.NearOhm, heat.GreatestA), ("Least current", "far end, conductors as hot as they are rated for", heat.Stretch.FarOhm, heat.LeastA),
        })
        {
            bool isLimited = fault.Input!.LimitA is { } limit && currentA >= limit;
            yield return new WorkingLine(
                what,
                isLimited ? "the source gives no more" : Formula.Of("{0} ÷ ({1} + {2} + {3})", v => v[0] / (v[1] + v[2] + v[3]), fault.Input.NominalV, ohm.Source, ohm.Live, ohm.Earth),
                A(currentA), isLimited ? "the source's own limit" : $"source, live, protective conductor; {where}");
        }
    }

    private static IEnumerable<WorkingLine> ForEver(EarthFaultHeat heat) =>
    [
        new WorkingLine("It may carry for ever", heat.Cable.Title, A(heat.AmpacityA!.Value), "as in the check of what conductors carry"),
        Use(heat.GreatestA, heat.AmpacityA.Value),
    ];

    private static IEnumerable<WorkingLine> Energy(EarthFaultHeat heat)
    {
        Protection? device = heat.Energy.DeviceIndex is { } index ? heat.Stretch.Devices[index] : null;
        OperatingGates? gates = device is null ? null : DeviceGates.Of(device);
        if (heat.Energy.Basis != LetThroughBasis.LastGate && heat.Energy.CurrentA < heat.GreatestA)
        {
            yield return new WorkingLine("Hardest at", "a current between at which the devices are slower", A(heat.Energy.CurrentA), "their gates");
        }

        (string source, bool isFromMemory) = heat.Energy.Basis switch
        {
            LetThroughBasis.Residual => (device!.ResidualOpensS is null ? ResidualOpening.Source : "its own sheet", false),
            LetThroughBasis.Sheet => (device!.ClearingA2S!.Method ?? "its sheet, as typed", false),
            LetThroughBasis.Source => ("the source takes its voltage away, by its sheet", false),
            _ => (gates!.Source, gates.IsFromMemory),
        };
        yield return new WorkingLine("Ended by", device?.Title ?? "the source", null, source, isFromMemory);
        yield return LetThroughLines.Of(heat.Energy, source, isFromMemory);
        if (heat.Energy.TimeS > AdiabaticWithstand.LongestValidS)
        {
            yield return new WorkingLine("Lasts", "longer than 5 s: heat that escapes meanwhile is left out, so that it bears more than this", Seconds(heat.Energy.TimeS.Value), AdiabaticWithstand.Source);
        }

        yield return new WorkingLine("k", FormattableString.Invariant($"copper from {heat.Cable.InsulationC!.Value:0.#} to {FaultedConductor.FinalC:0.#} °C, in A√s/mm²"), new Amount(heat.KFactor, "Coefficient"), KSource, IsFromMemory: true);
        yield return new WorkingLine("Section that bears it", Formula.Of("√({0}) ÷ {1}", v => Math.Sqrt(v[0]) / v[1], heat.Energy.A2S, heat.KFactor), Mm2(heat.AskedMm2), "S ≥ √(I²t)/k (IEC 60364-5-54, 543.1.2)");
        yield return new WorkingLine("Protective conductor", heat.Cable.Title, Mm2(heat.Cable.AreaMm2.Value), "as typed");
        yield return Use(heat.AskedMm2, heat.Cable.AreaMm2.Value);
    }
}
