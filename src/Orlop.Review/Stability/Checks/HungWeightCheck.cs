using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>With a weight on the hook she lies with deck edge and openings clear of the water.</summary>
public sealed class HungWeightCheck : ICheck<StabilityView>
{
    private const string Lifting = "Nobody under the load or in the bight of its line. Gear, hook and deck fastening need their own proof; waves and a swinging load add to these still-water numbers. ";

    public CheckDescription Description { get; } = new(
        "hung-weight",
        "She bears the weight on the hook",
        "Heel at rest with a weight hung from its hook against the heel at which the deck edge or an opening goes under; GM and what is left of her range with it (our rule, no source).",
        []);

    public IEnumerable<Finding> Run(StabilityView view) => HungWeight.In(view).Select(hung => Judge(view, hung) with { SubjectId = hung.Deadweight.Id, Caution = Lifting + Caution });

    private Finding Judge(StabilityView view, HungWeight hung)
    {
        LoadedBoat loaded = hung.With;
        string title = hung.Deadweight.Title, id = hung.Deadweight.Id;
        if (view.FloatingIn(loaded.Condition) is not { } floating)
        {
            return WhyUnknown.Of(Description, view, loaded, $"how she lies with {title} on the hook");
        }

        if (floating.Rest is not { Status: FloatingStatus.Floats, Position: { IsStable: true, IsLoll: false } at })
        {
            Verdict verdict = floating.Rest.Status == FloatingStatus.NotConverged ? Verdict.Unknown : Verdict.Fails;
            return Judged(Description, id, loaded, verdict, null, Sentence.Of($"With {title} on the hook {FindingLines.In(loaded.Condition)} she does not lie steady and upright enough: {floating.Rest.Message}"), []);
        }

        double heel = at.Attitude.HeelDeg;
        int side = heel < 0 ? -1 : 1;
        ImmutableArray<Opening> openings = view.OpeningsIn(loaded.Condition);
        RightingFeatures wet = Levers.To(side, loaded.Input!, [.. DeckEdge.Of(view.Boat), .. openings]).Features;
        double under = Math.Abs(wet.DownfloodingDeg ?? Levers.LastDeg);
        Banded banded = new(Math.Abs(heel), view.NearbyIn(loaded.Condition).Deviation(near => near.Attitude.HeelDeg));
        Verdict told = under == 0 ? Verdict.Fails : banded.AtMost(under);
        Sentence first = wet.DownfloodingDeg is null ? Sentence.Of($"nothing goes under to {Deg(under)}") : Sentence.Of($"{DeckEdge.TitleOf(view.Boat, wet.DownfloodingOpening)} goes under at {Deg(under)}");
        double left = RangeLeftDeg(side > 0 ? floating.Starboard : floating.Port, Math.Abs(heel));
        Sentence found = Sentence.Of($"With {title} on the hook {FindingLines.In(loaded.Condition)} she heels {Deg(Math.Abs(heel))} {Levers.Name(side)}; {first}; GM {M(at.MetacentricHeightM)}, {Deg(left)} of range left");
        return Judged(Description, id, loaded, told, banded.UseAtMost(under), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(banded, "°")}") : found,
        [
            new WorkingLine("On the hook", hung.Item is { } item ? $"acts at {item.Place}, the point it hangs from, at every heel" : "", hung.Item is { } weight ? Kg(weight.MassKg) : null, "mechanics of a freely hanging weight"),
            .. floating.Rest.Working().Select(Line),
            Line(new WorkingStep("Goes under", "first of deck edge and openings on that side", under, "°", "levers solved with the weight hung")),
            Line(new WorkingStep("Range left", "from this heel to where she no longer rights herself, or an opening goes under", left, "°", "levers solved with the weight hung")),
            BandLine(banded, "°"),
        ], OpeningsGiven.Missing(view.Boat));
    }

    private static double RangeLeftDeg(RightingCurve curve, double heelDeg)
    {
        RightingFeatures features = curve.Features;
        return Math.Max(0, Math.Min(Math.Abs(features.VanishingDeg ?? 180), Math.Abs(features.DownfloodingDeg ?? 180)) - heelDeg);
    }
}
