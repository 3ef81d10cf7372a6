using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No conductor is smaller than the practice allows.</summary>
public sealed class SmallestConductorCheck : ICheck<ElectricsView>
{
    // 16 AWG is written 1.31 mm² and is 1.309: sizes are compared with this slack.
    private const double SizeSlackRatio = 0.995;

    public CheckDescription Description { get; } = new(
        "smallest-conductor",
        "Conductor is not too small",
        "The cross-section of a cable against the smallest the practice allows, for a single conductor or for a core in a sheath with others.",
        [LimitIds.SmallestConductorMm2, LimitIds.SmallestSheathedConductorMm2]);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<Cable>().Select(cable => Judge(view, cable));

    private Finding Judge(ElectricsView view, Cable cable)
    {
        bool isSheathed = cable.IsSheathed && cable.Cores.Count > 1;
        string limitId = isSheathed ? LimitIds.SmallestSheathedConductorMm2 : LimitIds.SmallestConductorMm2;
        if (view.Practice?.Find(limitId) is not { } limit)
        {
            return NoLimit(Description, cable.Id, null, cable.Title, limitId);
        }

        double area = cable.AreaMm2.Value;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            // Sizes come in steps: the smallest allowed size is allowed.
            Verdict = area >= limit.Value * SizeSlackRatio ? Verdict.Holds : Verdict.Fails,
            UseFraction = Verdicts.UseOf(limit.Value, area),
            Headline = Sentence.Of($"{cable.Title} has {Mm2(area)}; at least {Mm2(limit.Value)} is asked"),
            Working = [Line(limit, isSheathed ? "Smallest core in a sheath" : "Smallest single conductor", "Mm2"), Use(limit.Value, area)],
            Inputs = [new FindingInput(cable.Id, "areaMm2", IsGuess: cable.AreaMm2.Known is Knowledge.Guessed or Knowledge.Estimated)],
        };
    }
}
