using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>With a weight on the hook she lies with deck edge and openings clear of the water.</summary>
public sealed class HungWeightCheck : ICheck<StabilityView>
{
    internal const string Lifting = "Nobody under the load or in the bight of its line. Gear, hook and deck fastening need their own proof; waves and a swinging load add to these still-water numbers. ";

    public CheckDescription Description { get; } = new(
        "hung-weight",
        "She bears the weight on the hook",
        "Heel at rest with a weight hung from its hook against the owner's own limit of heel while lifting, and against the heel at which the deck edge or an opening goes under (our rule, no source), whichever is less; where she capsizes or goes under with it, that is the finding of floats-at-rest; GM and what is left of her range with it. Unknown where the hook, as it is placed, is under water, and where the owner set no limit: that the deck edge is dry is not enough to lift by.",
        [LimitIds.MostLiftingHeelDeg])
    {
        RestsOnFloatingDry = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => HungWeight.In(view).Where(hung => view.FloatingIn(hung.With.Condition) is not { } floating || !Ending.IsLost(floating.Rest)).Select(hung => Judge(view, hung) with { SubjectId = hung.Deadweight.Id, Caution = Lifting + Caution });

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
            return Judged(Description, id, loaded, verdict, null, Sentence.Of($"With {title} on the hook {FindingLines.In(loaded.Condition)} she {Ending.Of(floating.Rest)}"), Ending.Asked(floating.Rest));
        }

        // A hook below the water would count as ballast, and make her look stiffer than she is.
        if (hung.Item is { } hook && at.Attitude.HeightAboveWaterM(hook.Place) is var over and < 0)
        {
            return Judged(Description, id, loaded, Verdict.Unknown, null, Sentence.Of($"The hook of {title} is {M(-over)} under water {FindingLines.In(loaded.Condition)}, as it is placed: give the point it hangs from"),
            [
                .. floating.Rest.Working().Select(Line),
                new WorkingLine("Hook under water", $"at {hook.Place}, as she lies with it", M(-over), "position solved with the weight hung"),
            ], new FindingInput(id, "place"));
        }

        double heel = at.Attitude.HeelDeg;
        int side = heel < 0 ? -1 : 1;
        RightingFeatures wet = Levers.To(side, loaded.Input!, [.. DeckEdge.WithOpenings(view, loaded.Condition)]).Features;
        double under = Math.Abs(wet.DownfloodingDeg ?? Levers.LastDeg);
        Limit? own = view.Practice?.Find(LimitIds.MostLiftingHeelDeg);
        double most = Math.Min(own?.Value ?? double.PositiveInfinity, under);
        Banded banded = view.NearbyIn(loaded.Condition).Banded(Math.Abs(heel), near => near.Attitude.HeelDeg);
        Verdict told = under == 0 ? Verdict.Fails : banded.AtMost(most);
        Sentence first = wet.DownfloodingDeg is null ? Sentence.Of($"nothing goes under to {Deg(under)}") : Sentence.Of($"{DeckEdge.TitleOf(view.Boat, wet.DownfloodingOpening)} goes under at {Deg(under)}");
        double left = RangeLeftDeg(side > 0 ? floating.Starboard : floating.Port, Math.Abs(heel));
        Sentence found = Sentence.Of($"With {title} on the hook {FindingLines.In(loaded.Condition)} she heels {Deg(Math.Abs(heel))} {Levers.Name(side)}{PlusMinus(banded)}, {Asked(own)}; {first}; GM {M(at.MetacentricHeightM)}, {Deg(left)} of range left");
        Finding judged = Judged(Description, id, loaded, told, banded.UseAtMost(most), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, loaded, banded, "°", most)}") : found,
        [
            new WorkingLine("On the hook", hung.Item is { } item ? $"acts at {item.Place}, the point it hangs from, at every heel" : "", hung.Item is { } weight ? Kg(weight.MassKg) : null, "mechanics of a freely hanging weight"),
            .. floating.Rest.Working().Select(Line),
            own is null
                ? new WorkingLine("Allowed", "no limit of heel while lifting is set by the owner", null, "no limit set; deck edge and openings dry: our rule, no source")
                : new WorkingLine("Allowed", "the owner's limit of heel while lifting", Deg(own.Value), $"{own.Source}; deck edge and openings dry: our rule, no source"),
            Line(new WorkingStep("Goes under", "first of deck edge and openings on that side", under, "°", "levers solved with the weight hung")),
            Line(new WorkingStep("Range left", "from this heel to where she no longer rights herself, or an opening goes under", left, "°", "levers solved with the weight hung")),
            BandLine(banded, "°"),
        ], [.. own is null ? [new FindingInput(view.Boat.All<PracticeChoice>().FirstOrDefault()?.Id ?? "practice", $"own/{LimitIds.MostLiftingHeelDeg}", IsMissing: true)] : Array.Empty<FindingInput>(), .. OpeningsGiven.Missing(view.Boat)]);
        return judged with { IsFlooding = wet.DownfloodingDeg is not null && Math.Abs(heel) >= under };
    }

    private static Sentence PlusMinus(Banded banded) => double.IsFinite(banded.Half) ? Sentence.Of($", ± {Deg(banded.Half)}") : Sentence.Of($"");

    private static Sentence Asked(Limit? own) => own is null ? Sentence.Of($"no limit of heel while lifting is set") : Sentence.Of($"at most {Deg(own.Value)} wanted");

    private static double RangeLeftDeg(RightingCurve curve, double heelDeg)
    {
        RightingFeatures features = curve.Features;
        return Math.Max(0, Math.Min(Math.Abs(features.VanishingDeg ?? 180), Math.Abs(features.DownfloodingDeg ?? 180)) - heelDeg);
    }
}
