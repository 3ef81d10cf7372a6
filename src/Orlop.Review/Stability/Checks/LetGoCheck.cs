using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>When the hung weight is let go, or its line parts, she swings back without taking water.</summary>
public sealed class LetGoCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "hung-weight-let-go",
        "The hung weight may be let go",
        "She starts at rest at the heel with the weight and swings, undamped, until the work of the levers without it is used up on the other side; against the heel there at which an opening goes under or she no longer rights herself.",
        [])
    {
        RestsOnFloatingDry = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) =>
        HungWeight.In(view).Where(hung => hung.Without is not null).Select(hung => Judge(view, hung) with { SubjectId = hung.Deadweight.Id });

    private Finding Judge(StabilityView view, HungWeight hung)
    {
        LoadedBoat without = hung.Without!;
        string title = hung.Deadweight.Title, id = hung.Deadweight.Id;
        ImmutableArray<Opening> openings = view.OpeningsIn(without.Condition);
        if (view.FloatingIn(hung.With.Condition)?.Rest is not { Status: FloatingStatus.Floats, Position: { IsStable: true } rest } || !(Math.Abs(rest.Attitude.HeelDeg) < Levers.LastDeg))
        {
            return Judged(Description, id, without, Verdict.Unknown, null, Sentence.Of($"What happens when {title} is let go {FindingLines.In(without.Condition)} cannot be told: {(view.FloatingIn(hung.With.Condition) is { } with ? Sentence.Of($"with it she {Ending.Briefly(with.Rest)}") : Sentence.Of($"how she lies with it is not known"))}"), []);
        }

        double heel = rest.Attitude.HeelDeg;
        int side = heel < 0 ? -1 : 1;
        RightingCurve away = Levers.To(-side, without.Input!, openings);
        WeightItem weight = new(id, hung.Item!.MassKg, hung.Item.Place);
        WeightSlopes heels = ResultDeviation.SlopesOf(without, boat => HeelDeg(boat.With(weight), rest.Attitude)) ?? WeightSlopes.Untold;
        FreeSwing free = FreeSwing.From(away, Levers.To(side, without.Input!, [], Math.Abs(heel)), heel, heels);
        if (free.HeelDeg is not { } swing)
        {
            return Judged(Description, id, without, Verdict.Fails, null, Sentence.Of($"When {title} is let go {FindingLines.In(without.Condition)} from {Deg(Math.Abs(heel))} {Levers.Name(side)} she swings over {Levers.Name(-side)} and does not come back"),
            [
                Line(new WorkingStep("From", "heel at rest with the weight", Math.Abs(heel), "°", "hydrostatics")),
                new WorkingLine("Asked", "the levers without the weight use up its work before she no longer rights herself", away.Features.VanishingDeg is { } last ? Deg(Math.Abs(last)) : null, "work and energy, no damping, still water: common practice, no source"),
            ]);
        }

        RightingFeatures features = away.Features;
        double vanishing = Math.Abs(features.VanishingDeg ?? Levers.LastDeg), flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity), limit = Math.Min(vanishing, flooding);
        // Where she does not come to upright there is no end to take slopes at: neighbouring boats tell.
        Banded banded = Banded.Of(swing, without, swing > 0 ? free.Slopes : ResultDeviation.SlopesOf(without, boat => SwingDeg(boat, weight, rest.Attitude)));
        Verdict told = limit == 0 ? Verdict.Fails : banded.AtMost(limit);
        Sentence end = flooding <= vanishing ? Sentence.Of($"{DeckEdge.TitleOf(view.Boat, features.DownfloodingOpening)} goes under at {Deg(flooding)}") : Sentence.Of($"she rights herself to {Deg(vanishing)}");
        Sentence found = Sentence.Of($"When {title} is let go {FindingLines.In(without.Condition)} she swings from {Deg(Math.Abs(heel))} {Levers.Name(side)} to {Deg(swing)} {Levers.Name(-side)}; {end} there");
        return Judged(Description, id, without, told, banded.UseAtMost(limit), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, without, banded, "°", limit)}") : found,
        [
            Line(new WorkingStep("From", "heel at rest with the weight", Math.Abs(heel), "°", "hydrostatics")),
            Line(new WorkingStep("To", "∫GZ dφ without the weight is the same from upright to either end", swing, "°", "work and energy, no damping, still water: common practice, no source")),
            Line(new WorkingStep("Limit there", "first of openings and vanishing stability", limit, "°", "levers solved without the weight")),
            BandLine(banded, "°"),
        ], OpeningsGiven.Missing(view.Boat));
    }

    private static double? SwingDeg(FloatingInput boat, WeightItem weight, Attitude near)
    {
        if (HeelDeg(boat.With(weight), near) is not { } heel)
        {
            return null;
        }

        int side = heel < 0 ? -1 : 1;
        return FreeSwing.From(Levers.To(-side, boat, []), Levers.To(side, boat, [], Math.Abs(heel)), heel, default).HeelDeg;
    }

    private static double? HeelDeg(FloatingInput boat, Attitude? near = null) =>
        Equilibrium.Solve(boat, near) is { Status: FloatingStatus.Floats, Position: { IsStable: true } at } && Math.Abs(at.Attitude.HeelDeg) < Levers.LastDeg ? at.Attitude.HeelDeg : null;
}
