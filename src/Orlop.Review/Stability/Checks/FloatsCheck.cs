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
        "Mass against displaced mass and G against B in every condition: she comes to rest afloat, within 90° of upright (common practice, no source), not at an angle of loll, and with no opening under water there that is not shut tight, nor the deck edge of an open boat (our rule, no source: by how much is not asked); unknown where it is not told whether water comes in there, and where one is nearer to the water, over or under, than two standard deviations of its height: she may fill. Where nothing tells KG, the waterline is that of her freeboards, which ask for none, and what is under there upright too lets her fill. Where she fills, nothing that rests on her floating dry holds. Where the rules give the most people and the condition lists fewer, but somebody, with them aboard too; the worse counts. Where she capsizes or goes under, this is the one finding of that loading: it tells to which side, what hangs from a hook and how she lies without it, and which limits of the owner fall with it.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) => view.Conditions.Select(condition => Judge(view, condition));

    private Finding Judge(StabilityView view, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        if (view.FloatingIn(condition) is not { } floating)
        {
            Finding unknown = WhyUnknown.Of(Description, view, loaded, "how she floats");
            return view.UnderAtRestIn(condition) is { } wet ? ByFreeboards(unknown, wet, condition) : unknown;
        }

        (LoadedBoat boat, string people, FloatingResult rest, UnderAtRest? under) = PeopleAboard.ListedAndMost(view, loaded)
            .Select(load => (load.Boat, load.With, End: load.With.Length == 0 ? floating.Rest : view.RestOf(load.Boat)!))
            .Select(load => (load.Boat, load.With, load.End, Under: UnderAtRest.Of(view, load.Boat, load.End)))
            .MaxBy(load => Ending.IsLost(load.End) ? 3 : VerdictOf(load.End, load.Under) switch { Verdict.Fails => 2, Verdict.Unknown => 1, _ => 0 });
        Verdict told = VerdictOf(rest, under), verdict = told == Verdict.Holds && !loaded.Missing.IsEmpty ? Verdict.Unknown : told;
        HungWeight[] hung = Ending.IsLost(rest) ? [.. HungWeight.In(view).Where(weight => weight.With.Condition.Id == condition.Id)] : [];
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = WhyUnknown.SubjectOf(view),
            OtherSubjectId = hung.FirstOrDefault()?.Deadweight.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            IsFlooding = under is { Fills: true },
            GravityRatio = under?.UnderM,
            Headline = HeadlineOf(view, boat, rest, under, Ending.With(hung, people)),
            Working =
            [
                .. under is null ? Array.Empty<WorkingLine>() : Heights(under),
                .. verdict == Verdict.Fails && under is null ? Ending.Asked(rest) : [],
                .. hung.SelectMany(Hook),
                .. Ending.IsLost(rest) ? OwnersHold.Lost(view) : [],
                .. WeightLines(boat),
                .. rest.Status == FloatingStatus.Floats ? rest.Working().Select(Line) : [],
            ],
            Inputs = under?.Asked is { } asked ? [.. loaded.Missing, asked] : loaded.Missing,
            Caution = hung.Length > 0 ? HungWeightCheck.Lifting + Caution : Caution,
        };
    }

    private static Verdict VerdictOf(FloatingResult rest, UnderAtRest? under) => rest.Status switch
    {
        FloatingStatus.NotConverged => Verdict.Unknown,
        FloatingStatus.Floats when rest.Position is { IsStable: true, IsLoll: false } => under switch { null => Verdict.Holds, { Fills: true } => Verdict.Fails, _ => Verdict.Unknown },
        _ => Verdict.Fails,
    };

    // A survey says where the water is, whatever her KG.
    private static Finding ByFreeboards(Finding unknown, UnderAtRest under, Condition condition) => unknown with
    {
        Verdict = under.Fills ? Verdict.Fails : Verdict.Unknown,
        IsFlooding = under.Fills,
        GravityRatio = under.UnderM,
        Headline = under.Fills
            ? Sentence.Of($"{Begun(FindingLines.In(condition))} she fills, whatever her KG: {under.Where}; nothing else of her stability can be told")
            : Sentence.Of($"{unknown.Headline}; and she may fill: {under.Where}, {under.Why}"),
        Working = [.. Heights(under), .. unknown.Working],
        Inputs = under.Asked is { } asked ? [.. unknown.Inputs, asked] : unknown.Inputs,
    };

    private static WorkingLine[] Heights(UnderAtRest under) =>
    [
        new(under.UnderM < 0 ? "Over the water" : "Under water", $"{under.Title}, {under.Spot}; above water by its band is asked", M(Math.Abs(under.UnderM)), "hydrostatics; our rule, no source: by how much is not asked"),
        BandLine(under.Height, "m"),
    ];

    // What hangs, and how she would lie without it.
    private static IEnumerable<WorkingLine> Hook(HungWeight hung)
    {
        yield return new WorkingLine("On the hook", hung.Item is { } item ? $"{hung.Deadweight.Title}, acts at {item.Place}, the point it hangs from" : hung.Deadweight.Title, hung.Item is { } weight ? Kg(weight.MassKg) : null, "mechanics of a freely hanging weight");
        if (hung.Without?.Input is { } boat)
        {
            FloatingResult without = Equilibrium.Solve(boat);
            yield return without is { Status: FloatingStatus.Floats, Position: { IsStable: true, IsLoll: false } at }
                ? new WorkingLine("Without it", $"she lies {Levers.Name(at.Attitude.HeelDeg < 0 ? -1 : 1)}, at heel", Deg(Math.Abs(at.Attitude.HeelDeg)), "hydrostatics")
                : new WorkingLine("Without it", $"she {Ending.Of(without)}", null, "hydrostatics");
        }
    }

    private static Sentence HeadlineOf(StabilityView view, LoadedBoat loaded, FloatingResult rest, UnderAtRest? under, string with) => rest switch
    {
        { Position: { IsStable: true, IsLoll: false } } when under is { Fills: true } => Sentence.Of($"{Begun(FindingLines.In(loaded.Condition))}{with} she fills: {under.Where}"),
        { Position: { IsStable: true, IsLoll: false } } when under is { IsSurelyUnder: true } => Sentence.Of($"Whether she floats dry {FindingLines.In(loaded.Condition)}{with} cannot be told: {under.Where}, and {under.Doubt}"),
        { Position: { IsStable: true, IsLoll: false } } when under is not null => Sentence.Of($"{Begun(FindingLines.In(loaded.Condition))}{with} she may fill: {under.Where}, {Unsure(view, loaded, under.Height, "m", 0)}{(under.Doubt is null ? "" : $"; and {under.Doubt}")}"),
        { Status: FloatingStatus.Floats, Position: { IsStable: true, IsLoll: false } at } => Sentence.Of($"She floats {FindingLines.In(loaded.Condition)} at {Kg(rest.MassKg)}, {Levers.Heel(at.Attitude.HeelDeg)}, {Levers.Trim(at.Attitude.TrimDeg)}"),
        { Status: FloatingStatus.NotConverged } => Sentence.Of($"No position of rest was found {FindingLines.In(loaded.Condition)}{with}"),
        _ => Sentence.Of($"{Begun(FindingLines.In(loaded.Condition))}{with} she {Ending.Of(rest)}"),
    };
}
