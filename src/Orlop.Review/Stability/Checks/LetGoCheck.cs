using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>When the hung weight is let go, or its line parts, she swings back without taking water.</summary>
public sealed class LetGoCheck : ICheck<StabilityView>
{
    private const double FinestDeg = 1e-4;

    public CheckDescription Description { get; } = new(
        "hung-weight-let-go",
        "The hung weight may be let go",
        "She starts at rest at the heel with the weight and swings, undamped, until the work of the levers without it is used up on the other side; against the heel there at which an opening goes under or she no longer rights herself.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
        HungWeight.In(view).Where(hung => hung.Without is not null).Select(hung => Judge(view, hung) with { SubjectId = hung.Deadweight.Id });

    private Finding Judge(StabilityView view, HungWeight hung)
    {
        LoadedBoat without = hung.Without!;
        string title = hung.Deadweight.Title, id = hung.Deadweight.Id;
        ImmutableArray<Opening> openings = view.OpeningsIn(without.Condition);
        if (HeelDeg(hung.With.Input!) is not { } heel)
        {
            return Judged(Description, id, without, Verdict.Unknown, null, Sentence.Of($"What happens when {title} is let go {FindingLines.In(without.Condition)} cannot be told: she does not lie steady with it"), []);
        }

        int side = heel < 0 ? -1 : 1;
        RightingCurve away = Levers.To(-side, without.Input!, openings);
        if (SwingDeg(without.Input!, heel, openings) is not { } swing)
        {
            return Judged(Description, id, without, Verdict.Fails, null, Sentence.Of($"When {title} is let go {FindingLines.In(without.Condition)} from {Deg(Math.Abs(heel))} {Levers.Name(side)} she swings over and does not come back"), []);
        }

        RightingFeatures features = RightingReading.Read(away);
        double vanishing = Math.Abs(features.VanishingDeg ?? Levers.LastDeg), flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity), limit = Math.Min(vanishing, flooding);
        Point3 hook = hung.Item!.Place;
        double mass = hung.Item.MassKg;
        Banded banded = new(swing, ResultDeviation.Of(without, boat => HeelDeg(boat.With(new WeightItem(id, mass, hook))) is { } from ? SwingDeg(boat, from, openings) : null));
        Verdict told = limit == 0 ? Verdict.Fails : banded.AtMost(limit);
        Sentence end = flooding <= vanishing ? Sentence.Of($"{DeckEdge.TitleOf(view.Boat, features.DownfloodingOpening)} goes under at {Deg(flooding)}") : Sentence.Of($"she rights herself to {Deg(vanishing)}");
        Sentence found = Sentence.Of($"When {title} is let go {FindingLines.In(without.Condition)} she swings from {Deg(Math.Abs(heel))} {Levers.Name(side)} to {Deg(swing)} {Levers.Name(-side)}; {end} there");
        return Judged(Description, id, without, told, banded.UseAtMost(limit), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(banded, "°")}") : found,
        [
            Line(new WorkingStep("From", "heel at rest with the weight", Math.Abs(heel), "°", "hydrostatics")),
            Line(new WorkingStep("To", "∫GZ dφ without the weight is the same from upright to either end", swing, "°", "work and energy, no damping, still water: common practice, no source")),
            Line(new WorkingStep("Limit there", "first of openings and vanishing stability", limit, "°", "levers solved without the weight")),
            BandLine(banded, "°"),
        ], OpeningsGiven.Missing(view.Boat));
    }

    private static double? HeelDeg(FloatingInput boat) =>
        Equilibrium.Solve(boat) is { Status: FloatingStatus.Floats, Position: { IsStable: true } at } && Math.Abs(at.Attitude.HeelDeg) < Levers.LastDeg ? at.Attitude.HeelDeg : null;

    /// <summary>How far she swings to the other side; 0 when she does not cross upright, null when nothing stops her to 90°.</summary>
    private static double? SwingDeg(FloatingInput boat, double fromDeg, ImmutableArray<Opening> openings)
    {
        int side = fromDeg < 0 ? -1 : 1;
        RightingCurve away = Levers.To(-side, boat, openings);
        if (Levers.To(side, boat, openings).AreaMRad(0, fromDeg) is not { } work)
        {
            return null;
        }

        double Left(double deg) => work - away.AreaMRad(0, -side * deg) ?? double.NaN;
        double low = 0, high = 0;
        foreach (RightingPoint point in away.Points)
        {
            (low, high) = (high, Math.Abs(point.HeelDeg));
            if (Left(high) <= 0)
            {
                break;
            }
        }

        if (!(Left(high) <= 0))
        {
            return null;
        }

        while (high - low > FinestDeg)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Left(middle) <= 0 ? (low, middle) : (middle, high);
        }

        return high;
    }
}
