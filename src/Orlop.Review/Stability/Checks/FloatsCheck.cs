using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She comes to rest afloat and upright enough.</summary>
public sealed class FloatsCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "floats-at-rest",
        "She floats at rest",
        "Mass against displaced mass and G against B in every condition: she comes to rest afloat, within 90° of upright, and not at an angle of loll.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) => view.Conditions.Select(condition => Judge(view, condition));

    private Finding Judge(StabilityView view, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        if (view.FloatingIn(condition) is not { } floating)
        {
            return WhyUnknown.Of(Description, view, loaded, "how she floats");
        }

        FloatingResult rest = floating.Rest;
        Verdict verdict = rest.Status switch
        {
            FloatingStatus.NotConverged => Verdict.Unknown,
            FloatingStatus.Floats when rest.Position is { IsStable: true, IsLoll: false } => loaded.Missing.IsEmpty ? Verdict.Holds : Verdict.Unknown,
            _ => Verdict.Fails,
        };
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = WhyUnknown.SubjectOf(view),
            ConditionId = condition.Id,
            Verdict = verdict,
            Headline = HeadlineOf(rest, condition),
            Working = [.. WeightLines(loaded), .. rest.Status == FloatingStatus.Floats ? rest.Working().Select(Line) : []],
            Inputs = loaded.Missing,
            Caution = Caution,
        };
    }

    private static Sentence HeadlineOf(FloatingResult rest, Condition condition) => rest switch
    {
        { Status: FloatingStatus.Floats, Position: { IsLoll: true } at } => Sentence.Of($"She is not stable upright {FindingLines.In(condition)} and lies over at {Deg(Math.Abs(at.Attitude.HeelDeg))} to one side or the other"),
        { Status: FloatingStatus.Floats, Position: { } at } => Sentence.Of($"She floats {FindingLines.In(condition)} at {Kg(rest.MassKg)}, {Levers.Heel(at.Attitude.HeelDeg)}, {Levers.Trim(at.Attitude.TrimDeg)}"),
        { Status: FloatingStatus.Capsizes, Position: { } over } => Sentence.Of($"She capsizes {FindingLines.In(condition)}: she comes to rest at {Levers.Heel(over.Attitude.HeelDeg)}"),
        { Status: FloatingStatus.Capsizes } => Sentence.Of($"She capsizes {FindingLines.In(condition)}"),
        { Status: FloatingStatus.NotConverged } => Sentence.Of($"No position of rest was found {FindingLines.In(condition)}"),
        _ => Sentence.Of($"She goes under {FindingLines.In(condition)}: {Kg(rest.MassKg)} is more than she can push aside"),
    };
}
