using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No cable runs in the bilge.</summary>
public sealed class BilgeRunCheck : ICheck<ElectricsView>
{
    private const string Source = "French order of 23 November 1987, Division 240, 240-2.35; 46 CFR 143.575";

    public CheckDescription Description { get; } = new(
        "run-clear-of-bilge",
        "Cable runs clear of the bilge",
        "No stretch of a cable's run follows a bilge way or lies in a bilge space, except a lead that ends at something that itself is in the bilge.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        where cable.Run.Count > 0
        select Judge(view, cable);

    private Finding Judge(ElectricsView view, Cable cable)
    {
        RunLeg[] wet = [.. cable.Run.Where(leg => IsBilge(view, leg))];
        FindingInput[] missing = [.. cable.Run.Select((leg, index) => MissingOf(view, cable, leg, index)).OfType<FindingInput>().Distinct()];
        if (wet.Length == 0 && missing.Length > 0)
        {
            return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: where it runs is not known for its whole length"), [.. missing]);
        }

        bool endsThere = cable.Cores.SelectMany(core => new[] { core.From, core.To })
            .Any(terminal => view.Boat.Find<Part>(terminal.Part)?.Space is { } space && view.Boat.Find<Space>(space) is { Use: SpaceUse.Bilge });
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            Verdict = wet.Length == 0 || endsThere ? Verdict.Holds : Verdict.Fails,
            Headline = wet.Length == 0
                ? Sentence.Of($"{cable.Title} runs clear of the bilge")
                : Sentence.Of($"{cable.Title} runs {M(wet.Sum(leg => leg.LengthM))} in the bilge"),
            Working = [new WorkingLine("In the bilge", string.Join(", ", wet.Select(leg => leg.Way ?? leg.Space)), M(wet.Sum(leg => leg.LengthM)), Source)],
            Inputs = [new FindingInput(cable.Id, "run")],
        };
    }

    // What is not given of where a stretch lies; null when it is known.
    private static FindingInput? MissingOf(ElectricsView view, Cable cable, RunLeg leg, int index) => leg switch
    {
        { Space: not null } => null,
        { Way: { } way } => view.Boat.Find<Way>(way) is { Space: null, Means: not WayKind.Bilge } ? new FindingInput(way, "space", IsMissing: true) : null,
        _ => CoreSurroundings.PlaceOfStretch(cable, index),
    };

    private static bool IsBilge(ElectricsView view, RunLeg leg) =>
        (leg.Way is { } way && view.Boat.Find<Way>(way) is { } follows && (follows.Means == WayKind.Bilge || (follows.Space is { } at && view.Boat.Find<Space>(at) is { Use: SpaceUse.Bilge })))
        || (leg.Space is { } space && view.Boat.Find<Space>(space) is { Use: SpaceUse.Bilge });
}
