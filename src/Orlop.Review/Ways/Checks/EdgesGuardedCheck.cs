using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>No bare edge chafes a cable.</summary>
public sealed class EdgesGuardedCheck : ICheck<WaysView>
{
    private const string Source = "33 CFR 183.445: conductors are protected where they pass through bulkheads";

    public CheckDescription Description { get; } = new(
        "edges-guarded",
        "No edge chafes a cable",
        "For each way that a cable follows and that has holes: each hole has a grommet, a gland or is sealed.",
        []);

    public IEnumerable<Finding> Run(WaysView view) => view.Ways.Where(way => way.Holes.Count > 0 && view.CablesIn(way).Any()).Select(Judge);

    private Finding Judge(Way way)
    {
        WayHole[] bare = [.. way.Holes.Where(hole => hole.Guard == EdgeGuard.Bare)], open = [.. way.Holes.Where(hole => hole.Guard is null)];
        if (bare.Length == 0 && open.Length > 0)
        {
            return Unknown(Description, way.Id, null, Sentence.Of($"{way.Title}: nobody said what guards {string.Join(", ", open.Select(hole => hole.Where))}"), [new FindingInput(way.Id, "holes", IsMissing: true)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = way.Id,
            Verdict = bare.Length > 0 ? Verdict.Fails : Verdict.Holds,
            Headline = bare.Length > 0
                ? Sentence.Of($"{way.Title}: a bare edge may chafe cables at {string.Join(", ", bare.Select(hole => hole.Where))}")
                : Sentence.Of($"{way.Title}: its {way.Holes.Count} {(way.Holes.Count == 1 ? "hole is" : "holes are")} guarded"),
            Working = [.. way.Holes.Select(hole => new WorkingLine("Hole", $"{hole.Where}: {(hole.Guard is { } guard ? guard.ToString().ToLowerInvariant() : "not looked at")}", null, Source))],
            Inputs = [new FindingInput(way.Id, "holes")],
        };
    }
}
