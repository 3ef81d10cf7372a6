using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>The protective conductor runs with each AC circuit, thick enough, and nothing opens it.</summary>
public sealed class ProtectiveConductorCheck : ICheck<ElectricsView>
{
    private const string Source = "Directive 2006/87/EC, Annex II, 9.05: section of the earthing conductor";
    private const double SeparateMm2 = 4;

    public CheckDescription Description { get; } = new(
        "protective-conductor",
        "The protective conductor is thick enough and unbroken",
        "For each AC circuit and each source that feeds it: the earth leads back to the source through metal that no switch, fuse, breaker or plug parts, each core of it no thinner than Directive 2006/87/EC asks for the thickest live conductor of the circuit; a separate one is 4 mm² or more.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.EarthFaults.Where(fault => fault.Circuit.Taker is not ElectricLoad { IsDoubleInsulated: true } && fault.Earth is not null)
        .Select(fault => Judge(fault) with { Caution = Cautions.MainsVoltage });

    /// <summary>The least section of a protective conductor for a live conductor.</summary>
    /// <param name="liveMm2">Section of the live conductor.</param>
    /// <param name="isSeparate">It runs in no cable with a live core.</param>
    internal static double LeastMm2(double liveMm2, bool isSeparate)
    {
        double least = liveMm2 switch { <= 16 => liveMm2, <= 35 => 16, <= 120 => liveMm2 / 2, _ => 70 };
        return isSeparate ? Math.Max(SeparateMm2, least) : least;
    }

    private Finding Judge(EarthFault fault)
    {
        AcCircuit circuit = fault.Circuit;
        string name = $"{circuit.Taker.Title}, fed by {circuit.Source.Title}";
        Cable[] live = [.. circuit.Live.Select(edge => edge.Owner).OfType<Cable>().Distinct()];
        if (fault.Earth!.Value.FirstOrDefault(edge => !EarthWay.IsPlainMetal(edge)) is { } parted)
        {
            return Of(circuit, Verdict.Fails, null, Sentence.Of($"{name}: its protective conductor goes through {parted.Owner.Title}, which can part it"), [new WorkingLine("Way of the earth", $"through {parted.Owner.Title}", null, "the wiring as drawn")], [new FindingInput(parted.Owner.Id, "id")]);
        }

        Cable[] earth = [.. fault.Earth.Value.Where(edge => edge.Kind == WiringEdgeKind.Core).Select(edge => (Cable)edge.Owner).Distinct()];
        if (earth.Length == 0 || live.Length == 0)
        {
            return Of(circuit, Verdict.Holds, null, Sentence.Of($"{name}: its earth leads back by links and bars alone"), [new WorkingLine("Way of the earth", "no cable", null, "the wiring as drawn")], [new FindingInput(circuit.Taker.Id, "id")]);
        }

        double liveMm2 = live.Max(cable => cable.AreaMm2.Value);
        (Cable worst, bool isSeparate, double least) = earth
            .Select(cable => (Cable: cable, IsSeparate: !HasLive(cable, live), Own: HasLive(cable, live) ? cable.AreaMm2.Value : liveMm2))
            .Select(core => (core.Cable, core.IsSeparate, Least: LeastMm2(core.Own, core.IsSeparate)))
            .MaxBy(core => core.Least / core.Cable.AreaMm2.Value);
        double use = least / worst.AreaMm2.Value;
        return Of(
            circuit,
            // At the very section that is asked there is nothing tight: sections come in steps.
            use > 1 + 1e-9 ? Verdict.Fails : Verdict.Holds,
            use > 1 + 1e-9 ? use : null,
            use > 1 + 1e-9
                ? Sentence.Of($"{name}: its protective conductor along {worst.Title} has {Mm2(worst.AreaMm2.Value)}; {Mm2(least)} is asked")
                : Sentence.Of($"{name}: its protective conductor has {Mm2(worst.AreaMm2.Value)} and more, unbroken back to the source"),
            [
                new WorkingLine("Live conductor", isSeparate ? "the thickest of the circuit" : "in the same cable", Mm2(isSeparate ? liveMm2 : worst.AreaMm2.Value), "as drawn"),
                new WorkingLine("Least protective conductor", isSeparate ? "separate: 4 mm² or more" : "in the cable", Mm2(least), Source),
                Use(least, worst.AreaMm2.Value),
            ],
            [new FindingInput(worst.Id, "areaMm2")]);
    }

    // A core of any source's live side counts: the earth of the inlet's cable runs beside the inlet's live core.
    private static bool HasLive(Cable cable, Cable[] live) => live.Contains(cable) || cable.Cores.Any(core => core.From.Name == TerminalNames.Live || core.To.Name == TerminalNames.Live);

    private Finding Of(AcCircuit circuit, Verdict verdict, double? use, Sentence headline, WorkingLine[] working, FindingInput[] inputs) => new()
    {
        CheckId = Description.Id,
        SubjectId = circuit.Taker.Id,
        ConditionId = circuit.Condition.Id,
        Verdict = verdict,
        UseFraction = use,
        Headline = headline,
        Working = [.. working],
        Inputs = [.. inputs],
    };
}
