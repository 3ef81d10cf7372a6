using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Measuring;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She is not heavier than she may be.</summary>
public sealed class MostDisplacementCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "most-displacement",
        "Not over her greatest displacement",
        "Her mass with everything aboard, tank liquids among it, against the greatest displacement that the owner gives, in every condition; nothing where none is given.",
        [])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => view.Basis is { MostDisplacementKg: { } most } basis
        ? view.Conditions.Select(condition => Judge(view, basis, most, condition) with { SubjectId = basis.Id })
        : [];

    private Finding Judge(StabilityView view, StabilityBasis basis, Quantity most, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        if (view.FloatingIn(condition) is not { } floating)
        {
            return WhyUnknown.Of(Description, view, loaded, "what she weighs");
        }

        double mass = floating.Rest.MassKg;
        Banded banded = Banded.Of(mass, loaded, new WeightSlopes(1, 0, 0, 0));
        Verdict verdict = banded.AtMost(most.Value);
        Sentence found = Sentence.Of($"She weighs {Kg(mass)} {FindingLines.In(condition)}, at most {Kg(most.Value)} allowed");
        return Judged(Description, basis.Id, loaded, verdict, banded.UseAtMost(most.Value), verdict == Verdict.Unknown ? Sentence.Of($"{found}, {Unsure(view, loaded, banded, "kg", most.Value)}") : found,
            [new WorkingLine("Greatest displacement", "as given", Kg(most.Value), most.Method ?? "the owner's figure"), BandLine(banded, "kg")]);
    }
}
