using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Heat.Checks;

/// <summary>Cables that share a way keep below what their insulation bears, by a thermal network, beside what the table says.</summary>
public sealed class BundleTemperatureCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "bundle-temperature",
        "Cables that share a way stay cool enough",
        "The copper of each cable of a way at rest, all of them heating each other in a thermal network of a metre of it, against what its insulation bears: the rise over the air against the rise allowed, the cable in the middle, everything on for good. What the table and its factor say of the same cable stands beside it.",
        [Practices.LimitIds.EngineSpaceC]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from way in view.Boat.All<Way>()
        where !BundleWarmth.CablesOf(view, way).IsEmpty
        from condition in view.Conditions
        select Judge(view.BundleIn(way, condition), way.Space is { } id ? view.Boat.Find(id)?.Title ?? id : "");

    private Finding Judge(BundleWarmth bundle, string spaceTitle)
    {
        (Way way, Condition condition) = (bundle.Way, bundle.Condition);
        if (!bundle.Missing.IsEmpty)
        {
            return Unknown(Description, way.Id, condition.Id, Sentence.Of($"{way.Title}: how warm its cables get together {In(condition)} cannot be told"), bundle.Missing);
        }

        if (bundle.Result is not { } result || bundle.Input is not { } input)
        {
            return NotSolved(Description, way.Id, condition, way.Title);
        }

        if (result.WhyNone is { } why)
        {
            return Finding(bundle, Verdict.Fails, null, Sentence.Of($"{way.Title}: its cables, {In(condition)}: {why}"), [Air(bundle, spaceTitle)]);
        }

        BundleCable worst = bundle.Worst!;
        double ambient = input.AmbientC, insulation = worst.Cable.InsulationC!.Value, conductor = worst.ConductorC!.Value, rise = Math.Max(0, conductor - ambient), allowed = insulation - ambient;
        Verdict verdict = allowed <= 0 ? Verdict.Fails : Verdicts.Of(rise, allowed);
        if (verdict != Verdict.Fails && bundle.MissingCurrents.Length > 0)
        {
            return Unknown(Description, way.Id, condition.Id, Sentence.Of($"{way.Title}: {worst.Cable.Title} gets to {new Amount(conductor, "C")} at least {In(condition)}; what else runs there is not known"), bundle.MissingCurrents);
        }

        Sentence headline = allowed <= 0
            ? Sentence.Of($"{way.Title}: at {new Amount(ambient, "C")} {In(condition)} it is as hot as the insulation of {worst.Cable.Title} bears, {new Amount(insulation, "C")}")
            : Sentence.Of($"{way.Title}: {worst.Cable.Title} gets to {new Amount(conductor, "C")} among {Others(bundle)} {In(condition)}; its insulation bears {new Amount(insulation, "C")}");
        return Finding(bundle, verdict, allowed <= 0 ? null : Verdicts.UseOf(rise, allowed), headline, [.. Lines(bundle, worst, spaceTitle), .. allowed > 0 ? [Use(rise, allowed)] : Array.Empty<WorkingLine>()]);
    }

    private static string Others(BundleWarmth bundle) => bundle.Cables.Length switch
    {
        1 => "no others",
        2 => "one other",
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{bundle.Cables.Length - 1} others"),
    };

    private static IEnumerable<WorkingLine> Lines(BundleWarmth bundle, BundleCable worst, string spaceTitle)
    {
        BundleInput input = bundle.Input!;
        yield return new WorkingLine("Current", $"in {worst.Cable.Title}, the larger of normal and lowest charge", A(worst.CurrentA!.Value), "circuit solved");
        yield return worst.TableA is { } table
            ? new WorkingLine("By the table it may carry", "with its factors for heat and for cables beside it: see whether the cable carries its current", A(table), "table of the practice")
            : new WorkingLine("By the table it may carry", "cannot be told", null, "table of the practice");
        yield return Air(bundle, spaceTitle);
        yield return new WorkingLine("Heat of a metre of the way", $"Σ I² R at 20 °C of {N(input.Cables.Length)} cables", new Amount(input.Cables.Sum(cable => cable.LossAt20WPerM), "W"), "IEC 60228");
        yield return new WorkingLine("Outside of the bundle", "as a round one without air between: √ΣD²", new Amount(input.BundleMm, "Mm"), "no bundle has less");
        yield return new WorkingLine("Between cables", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"insulation and air across, {BundleHeat.BundleWPerMK} W/(m K); insulation {N(BundleHeat.InsulationWPerMK)} W/(m K)"), null, "IEC 60287-2-1 for PVC; a lower bound for round cables that touch", true);
        yield return new WorkingLine("To the air", input.ConduitInnerMm is { } inner ? $"through the still air of a conduit of {N(inner)} mm" : $"{N(input.OpenFraction)} of the outside, natural convection and radiation", null, $"{StillAir.CylinderSource}; {BundleWarmth.AgainstSource}", true);
        foreach (BundleCable cable in bundle.Cables.OrderByDescending(cable => cable.ConductorC).Take(4))
        {
            yield return new WorkingLine("Copper at rest", cable.Cable.Title, new Amount(cable.ConductorC!.Value, "C"), "thermal network");
        }
    }

    private static WorkingLine Air(BundleWarmth bundle, string spaceTitle) => new("Air around", spaceTitle, new Amount(bundle.AmbientC!.Value, "C"), "the space of the way");

    private Finding Finding(BundleWarmth bundle, Verdict verdict, double? use, Sentence headline, ImmutableArray<WorkingLine> working) => new()
    {
        CheckId = Description.Id,
        SubjectId = bundle.Way.Id,
        ConditionId = bundle.Condition.Id,
        Verdict = verdict,
        UseFraction = use,
        Headline = headline,
        Working = working,
        Inputs = [new FindingInput(bundle.Way.Id, "space"), .. bundle.Cables.SelectMany(cable => new[] { new FindingInput(cable.Cable.Id, "outerDiameterMm"), new FindingInput(cable.Cable.Id, "areaMm2") })],
    };
}
