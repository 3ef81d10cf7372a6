using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Slack tanks do not take much of her stiffness.</summary>
public sealed class FreeSurfaceCheck : ICheck<StabilityView>
{
    private const double MuchFraction = 0.1;
    private const double LeastHeelDeg = 0.05;

    public CheckDescription Description { get; } = new(
        "free-surface",
        "What slack tanks take",
        "GM that the free surfaces in tanks take off at rest, over GM without them, in every condition with a slack tank. Tight from a tenth (our rule, no source); it fails where nothing is left.",
        [])
    {
        RestsOnFloatingDry = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) =>
        from condition in view.Conditions
        let loaded = view.LoadedIn(condition)
        where loaded.Input?.Tanks.Any(IsSlack) == true
        select Judge(view, loaded);

    private Finding Judge(StabilityView view, LoadedBoat loaded)
    {
        string subject = WhyUnknown.SubjectOf(view);
        if (view.FloatingIn(loaded.Condition)!.Rest is not { Status: FloatingStatus.Floats, Position: { } at } rest)
        {
            return Judged(Description, subject, loaded, Verdict.Unknown, null, Sentence.Of($"What slack tanks take {FindingLines.In(loaded.Condition)} cannot be told: she does not come to rest afloat"), []);
        }

        double loss = at.FreeSurfaceLossM, solid = at.MetacentricHeightM + loss;
        Verdict verdict = !(at.MetacentricHeightM > 0) ? Verdict.Fails : loss / solid >= MuchFraction ? Verdict.Tight : Verdict.Holds;
        string slack = string.Join(", ", loaded.Input!.Tanks.Where(IsSlack).Select(tank => view.Boat.Find(tank.Id)?.Title ?? tank.Id));
        return Judged(Description, subject, loaded, verdict, solid > 0 ? new UseOf(loss, solid) : null,
            Sentence.Of($"Slack tanks {FindingLines.In(loaded.Condition)} take {M(loss)} off GM where she rests, {Heeled(at.Attitude.HeelDeg)}, and leave {M(at.MetacentricHeightM)}; {new Amount(MuchFraction, "Fraction")} of it or more would be much"),
            [new WorkingLine("Slack", slack, null, "neither empty nor full"), .. rest.Working().Select(Line), new WorkingLine("Much", "share of GM without free surfaces", new Amount(MuchFraction, "Fraction"), "our rule, no source")]);
    }

    private static Sentence Heeled(double heelDeg) => Math.Abs(heelDeg) < LeastHeelDeg ? Sentence.Of($"upright")
        : Sentence.Of($"heeled {new Amount(Math.Round(Math.Abs(heelDeg), 1), "Deg")} {Levers.Name(Math.Sign(heelDeg))}");

    private static bool IsSlack(Hull.Floating.Tank tank) => tank.FillFraction is > 0 and < 1;
}
