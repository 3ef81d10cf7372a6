using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;

namespace Orlop.Review.Stability.Checks;

/// <summary>With everyone at one side she does not heel too far.</summary>
public sealed class PeopleToOneSideCheck : ICheck<StabilityView>
{
    private const double LeastLengthM = 2.5;
    private const double MostLengthM = 24;
    private const int SameHeelDigits = 6;
    private const double MostOpenBoatDeg = 10;

    public CheckDescription Description { get; } = new(
        "people-to-one-side",
        "Everyone at one side",
        "Heel with the greatest number of people, 75 kg each or as many as the heaviest listed weighs, 0.2 m inside the deck edge (no source), as far forward and as high as those that the condition lists, on the worse side. Small craft: 10° + (24 − L)³/600 (ISO 12217-1, secondary source). Open boat: 7°, or 10° while 75 mm of freeboard is kept, and over 15 m a GM (MGN 280 11.4). That she capsizes is one finding, of the first of the two rules that is chosen, with the limits of both; nothing for a condition in which she capsizes or goes under already with the people where they are listed, which floats-at-rest tells.",
        [])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => view.Basis is not { } basis ? [] :
        from rule in new[] { StabilityRule.SmallCraft, StabilityRule.OpenBoat }
        where basis.Rules.Contains(rule)
        from finding in Judge(view, basis, rule)
        select finding with { SubjectId = $"{basis.Id}.{(rule == StabilityRule.SmallCraft ? "small-craft" : "open-boat")}" };

    private IEnumerable<Finding> Judge(StabilityView view, StabilityBasis basis, StabilityRule rule)
    {
        if (basis.PeopleCount is not { } count)
        {
            return [Unknown(Description, basis.Id, null, Sentence.Of($"How she heels with everyone at one side cannot be told: the most people aboard is not given"), [new FindingInput(basis.Id, "peopleCount", IsMissing: true)])];
        }

        Condition[] manned = PeopleAboard.Manned(view);
        return count == 0 ? []
            : manned.Length == 0 ? [Unknown(Description, basis.Id, null, Sentence.Of($"How she heels with everyone at one side cannot be told: no condition lists people aboard, so nothing says how high they stand"), [PeopleAboard.Unlisted(view)])]
            : view.Conditions.Where(condition => manned.Contains(condition) || PeopleAboard.Untold(view, condition, view.LoadedIn(condition).Ledger).Any())
                .Select(condition => manned.Contains(condition) ? Judge(view, basis, rule, count, view.LoadedIn(condition)) : Nobody(view, basis, condition)).OfType<Finding>();
    }

    private Finding Nobody(StabilityView view, StabilityBasis basis, Condition condition) => Unknown(
        Description, basis.Id, condition.Id, Sentence.Of($"How she heels with everyone at one side {FindingLines.In(condition)} cannot be told: nobody is listed aboard, so nothing says how high they stand"), [PeopleAboard.Unlisted(view)]);

    private Finding? Judge(StabilityView view, StabilityBasis basis, StabilityRule rule, int count, LoadedBoat loaded)
    {
        if (view.FloatingIn(loaded.Condition) is not { } listed)
        {
            return WhyUnknown.Of(Description, view, loaded, "how she heels with everyone at one side");
        }

        double length = view.Boat.Particulars?.LengthOverAllM?.Value ?? double.NaN;
        if (!(length is >= LeastLengthM and <= MostLengthM))
        {
            return Unknown(Description, basis.Id, loaded.Condition.Id, Sentence.Of($"The rule is for boats of {M(LeastLengthM)} to {M(MostLengthM)}, and her length is {(double.IsNaN(length) ? "not given" : "another")}"),
                [new FindingInput(WhyUnknown.SubjectOf(view), "lengthOverAllM", IsMissing: double.IsNaN(length))]);
        }

        if (PeopleAboard.ListedAndMost(view, loaded).Any(load => Ending.IsLost(load.With.Length == 0 ? listed.Rest : view.RestOf(load.Boat)!)))
        {
            return null;
        }

        ((int Side, LoadedBoat Boat, Place At) Case, FloatingResult End) worst = new[] { -1, 1 }
            .Select(side => Moved(view, loaded, count, side))
            .Select(moved => (Case: moved, End: Equilibrium.Solve(moved.Boat.Input!)))
            .MaxBy(side => Badness(view, loaded, side.End));
        string where = Levers.Name(worst.Case.Side);
        if (worst.End is not { Status: FloatingStatus.Floats, Position: { } at })
        {
            if (rule != StabilityRule.SmallCraft && basis.Rules.Contains(StabilityRule.SmallCraft))
            {
                return null;
            }

            Verdict verdict = worst.End.Status == FloatingStatus.NotConverged ? Verdict.Unknown : Verdict.Fails;
            return Judged(Description, basis.Id, loaded, verdict, null, Sentence.Of($"With {count} people of {Kg(PeopleAboard.PersonKgIn(view, loaded))} {where} {FindingLines.In(loaded.Condition)} she {Ending.Of(worst.End)}; a heel of {Allowed(rule, length)} is allowed"),
                [PeopleLine(view, loaded, count, worst.Case.At), .. Ending.Asked(worst.End), .. basis.Rules.Select(held => LimitLine(held, length)).OfType<WorkingLine>()]);
        }

        double heel = Math.Abs(at.Attitude.HeelDeg);
        (Opening lowest, double freeboard) = DeckEdge.Lowest(DeckEdge.WithOpenings(view, loaded.Condition), at.Attitude)!.Value;
        ImmutableArray<CriterionResult> criteria = rule == StabilityRule.SmallCraft ? [] : WorkboatCriteria.PersonsToOneSide(
            new WorkboatInput(loaded.Condition.Title, length, heel, freeboard, at.MetacentricHeightM, view.Boat.All<FreeboardSurvey>().Any()));
        double limit = rule == StabilityRule.SmallCraft ? SmallCraftCriteria.OffsetLoadLimitDeg(length) : criteria[0].Value!.Value + heel;
        Banded banded = ResultDeviation.Banded(worst.Case.Boat, heel, boat => Equilibrium.Solve(boat, at.Attitude).Position?.Attitude.HeelDeg);
        // The second asks a freeboard of decked boats; the third a GM of boats over 15 m.
        Verdict told = freeboard <= 0 || criteria.Skip(2).Any(criterion => criterion.Verdict == CriterionVerdict.Fails) ? Verdict.Fails : banded.AtMost(limit);
        Sentence low = freeboard > 0
            ? Sentence.Of($"{DeckEdge.TitleOf(view.Boat, lowest.Id)} stays {M(freeboard)} above water")
            : Sentence.Of($"{DeckEdge.TitleOf(view.Boat, lowest.Id)} is {M(-freeboard)} under water");
        double eachKg = PeopleAboard.PersonKgIn(view, loaded);
        Sentence found = Sentence.Of($"With {count} people of {Kg(eachKg)} at the side {FindingLines.In(loaded.Condition)} she heels {Deg(heel)} {where}, at most {Deg(limit)} allowed; {low}");
        Finding judged = Judged(Description, basis.Id, loaded, told, banded.UseAtMost(limit), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, worst.Case.Boat, banded, "°", limit)}") : found,
        [
            PeopleLine(view, loaded, count, worst.Case.At),
            .. OpeningsGiven.Taken(view.Boat),
            new WorkingLine("Heel", "at rest", Deg(heel), "hydrostatics"),
            LimitLine(rule, length)! with { Value = Deg(limit) },
            .. criteria.Skip(2).SelectMany(criterion => criterion.Working.Select(Line)),
            new WorkingLine("Least freeboard", DeckEdge.TitleOf(view.Boat, lowest.Id), M(freeboard), "hydrostatics"),
            BandLine(banded, "°"),
        ], OpeningsGiven.Missing(view.Boat));
        return judged with { IsFlooding = freeboard <= 0 };
    }

    private static Sentence Allowed(StabilityRule rule, double length) => rule == StabilityRule.SmallCraft
        ? Sentence.Of($"at most {Deg(SmallCraftCriteria.OffsetLoadLimitDeg(length))}") : Sentence.Of($"at most {Deg(MostOpenBoatDeg)}, with a freeboard of 75 mm");

    private static WorkingLine PeopleLine(StabilityView view, LoadedBoat loaded, int count, Place at)
    {
        double eachKg = PeopleAboard.PersonKgIn(view, loaded);
        return new WorkingLine("People", FormattableString.Invariant($"{count} × {eachKg:0.##} kg at ({at.XM:0.##}, {at.YM:0.##}, {at.ZM:0.##}) m, in place of those listed"), Kg(count * eachKg), eachKg > PeopleAboard.PersonKg ? "as the heaviest listed weighs, more than the 75 kg of MGN 280 and ISO 12217-1; 0.2 m inside the deck edge: common practice, no source" : "75 kg: MGN 280, ISO 12217-1; 0.2 m inside the deck edge: common practice, no source");
    }

    // The limit of one of the two rules; what it comes to is left out where it hangs on a freeboard that she has not.
    private static WorkingLine? LimitLine(StabilityRule rule, double length) => rule switch
    {
        StabilityRule.SmallCraft => new("Allowed", FormattableString.Invariant($"10 + (24 − {length:0.##})³/600"), Deg(SmallCraftCriteria.OffsetLoadLimitDeg(length)), "ISO 12217-1, secondary source"),
        StabilityRule.OpenBoat => new("Allowed", "7°, or 10° while 75 mm of freeboard is kept", null, "MGN 280 11.4"),
        _ => null,
    };

    // She lies over no further to the other side of a boat that is alike on both; a low door there goes under all the same.
    private static (int Rank, double HeelDeg, double LowM) Badness(StabilityView view, LoadedBoat loaded, FloatingResult end)
    {
        if (end is not { Status: FloatingStatus.Floats, Position: { } at })
        {
            return (2, 0, 0);
        }

        double freeboard = DeckEdge.Lowest(DeckEdge.WithOpenings(view, loaded.Condition), at.Attitude)!.Value.HeightM;
        return (freeboard <= 0 ? 1 : 0, Math.Round(Math.Abs(at.Attitude.HeelDeg), SameHeelDigits), -freeboard);
    }

    private static (int Side, LoadedBoat Boat, Place At) Moved(StabilityView view, LoadedBoat loaded, int count, int side)
    {
        (LoadedBoat boat, Place at) = PeopleAboard.ToOneSide(view, loaded, count, side);
        return (side, boat, at);
    }
}
