using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>No way bends a cable more sharply than it bears.</summary>
public sealed class BendRadiusCheck : ICheck<WaysView>
{
    public CheckDescription Description { get; } = new(
        "bend-radius",
        "Cable is not bent too sharply",
        "The least radius that a cable may be bent to, its own or the practice's multiple of its outer diameter, against the tightest bend of each way that it follows and that turns.",
        [LimitIds.BendOverDiameterRatio]);

    public IEnumerable<Finding> Run(WaysView view) =>
        from cable in view.Boat.All<Cable>()
        let turning = cable.Run.Select(leg => leg.Way).OfType<string>().Distinct().Select(view.Boat.Find<Way>).OfType<Way>().Where(WayCorners.Any).ToImmutableArray()
        where turning.Length > 0
        select Judge(view, cable, turning);

    private Finding Judge(WaysView view, Cable cable, ImmutableArray<Way> turning)
    {
        Limit? ratio = view.Practice?.Find(LimitIds.BendOverDiameterRatio);
        if (cable.LeastBendMm is null && ratio is null)
        {
            return NoLimit(Description, cable.Id, null, cable.Title, LimitIds.BendOverDiameterRatio);
        }

        FindingInput[] missing = [.. WaysView.MissingForBend(cable), .. turning.Where(way => way.BendMm is null).Select(way => new FindingInput(way.Id, "bendMm", IsMissing: true))];
        double? leastMm = view.LeastBendMm(cable);
        Way? tightest = turning.Where(way => way.BendMm is not null).MinBy(way => way.BendMm!.Value);
        bool isTooTight = leastMm is { } needed && tightest is not null && Verdicts.Of(needed, tightest.BendMm!.Value) == Verdict.Fails;
        if (missing.Length > 0 && !isTooTight)
        {
            return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: whether it is bent too sharply cannot be told while a radius or diameter is missing"), [.. missing]);
        }

        (double least, double bend) = (leastMm!.Value, tightest!.BendMm!.Value);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            Verdict = Verdicts.Of(least, bend),
            UseFraction = Verdicts.UseOf(least, bend),
            Headline = Sentence.Of($"{cable.Title} is bent to a radius of {new Amount(bend, "Mm")} in {tightest.Title}; it bears {new Amount(least, "Mm")}"),
            Working =
            [
                cable.LeastBendMm is null
                    ? new WorkingLine("Least radius", $"{N(ratio!.Value)} × {N(cable.OuterDiameterMm!.Value)} mm", new Amount(least, "Mm"), ratio.Source, ratio.IsFromMemory)
                    : new WorkingLine("Least radius", "as typed", new Amount(least, "Mm"), ""),
                .. turning.Where(way => way.BendMm is not null).Select(way => new WorkingLine("Tightest bend", way.Title, new Amount(way.BendMm!.Value, "Mm"), "as typed")),
                Use(least, bend),
            ],
            Inputs = [new FindingInput(cable.Id, cable.LeastBendMm is null ? "outerDiameterMm" : "leastBendMm"), new FindingInput(tightest.Id, "bendMm")],
        };
    }
}
