using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>The hull's lines make a closed surface, and no point stands off the run of its neighbours.</summary>
public sealed class HullLinesCheck : ICheck<StabilityView>
{
    private const double SmallM = 0.001;

    public CheckDescription Description { get; } = new(
        "hull-lines-fair",
        "Hull lines are whole and fair",
        "Fails where the measured points make no closed surface; unknown for each point that stands off the cubic through its neighbouring stations by more than six times what is usual on the form and 0.4 % of its breadth, or likewise and by 0.8 % off that through its neighbours on its own station (our rule, no source); unknown while stations are a starting form's, or laid between others, and not measured: every criterion that holds says so.",
        []);

    public IEnumerable<Finding> Run(StabilityView view)
    {
        if (view.Boat.All<HullLines>().FirstOrDefault() is not { Stations.Count: > 0 } lines)
        {
            yield break;
        }

        foreach (FormDoubt doubt in view.Bodies.Doubts)
        {
            yield return Unknown(Description, $"{lines.Id}.{doubt.SectionId}-{doubt.PointNumber}{(doubt.IsStarboard ? "-starboard" : "")}", null,
                Sentence.Of($"Point {doubt.PointNumber} of {(doubt.IsStarboard ? "starboard " : "")}{(doubt.SectionId.StartsWith("station", StringComparison.OrdinalIgnoreCase) ? "" : "station ")}{doubt.SectionId} stands {Off(doubt)} a fair line through its neighbours: measure it again"), [new FindingInput(lines.Id, "stations")]) with
            {
                Working = [new WorkingLine("Expected", FormattableString.Invariant($"half-breadth {doubt.ExpectedHalfBreadthM:0.###} m, height {doubt.ExpectedHeightM:0.###} m"), null, doubt.Run == FormRun.AlongTheBoat ? "cubic through the stations before and behind" : "cubic through the points below and above")],
            };
        }

        if (view.NotMeasured is { } said)
        {
            yield return Unknown(Description, $"{lines.Id}.measured", null, Sentence.Of($"{said}: how she floats and stands up is told of that hull, and is hers only so far as she is like it"), [new FindingInput(lines.Id, "stations")]);
        }

        yield return new Finding
        {
            CheckId = Description.Id,
            SubjectId = lines.Id,
            Verdict = view.Bodies.Hull is null ? Verdict.Fails : Verdict.Holds,
            Headline = view.Bodies.Hull is null
                ? Sentence.Of($"The hull's lines make no closed surface: {view.Bodies.Problems[0].ToString()}")
                : Sentence.Of($"The hull's {lines.Stations.Count} stations make a closed surface"),
            Working = [.. view.Bodies.Problems.Select(problem => new WorkingLine("Wrong", problem.ToString(), null, "points as typed"))],
            Inputs = [new FindingInput(lines.Id, "stations")],
            Caution = Caution,
        };
    }

    // "0.088 m wide of, 0.088 m above": as a tape finds it, across and up.
    private static Sentence Off(FormDoubt doubt)
    {
        Sentence wide = Sentence.Of($"{M(Math.Abs(doubt.WideM))} {(doubt.WideM > 0 ? "wide of" : "inboard of")}"), high = Sentence.Of($"{M(Math.Abs(doubt.HighM))} {(doubt.HighM > 0 ? "above" : "below")}");
        return (Math.Abs(doubt.WideM) > SmallM, Math.Abs(doubt.HighM) > SmallM) switch
        {
            (true, true) => Sentence.Of($"{wide}, {high}"),
            (true, false) => wide,
            (false, true) => high,
            _ => Sentence.Of($"{M(doubt.OffM)} off"),
        };
    }
}
