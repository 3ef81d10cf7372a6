using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>With one space open to the sea she stays afloat, and neither deck edge nor an opening of another space comes under.</summary>
public sealed class FloodedSpaceCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "one-space-flooded",
        "Afloat with one space flooded",
        "Where she ends with one space open to the sea (lost buoyancy, the share that water can fill), for every space that gives its permeability, in every condition: afloat, steady, and the deck edge and each opening that is not shut and does not lead to that space above water (our rule, no source), and by as much as the owner's own limit of freeboard with one space flooded: unknown where the owner set none, that it is dry is not enough. Where the rules give the most people and the condition lists fewer, but somebody, with them aboard too; the worse counts. Where it lists nobody nothing says where they stand: they are not in the numbers, and under way it is unknown. Nothing for a loading in which she capsizes or goes under whole: that is the finding of floats-at-rest.",
        [LimitIds.LeastFloodedFreeboardM])
    {
        RestsOnFloatingDry = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) =>
        from space in view.Boat.All<Space>()
        where space.PermeabilityFraction is not null
        let cut = view.InsideOf(space)
        from condition in view.Conditions
        let told = Judge(view, space, cut, view.LoadedIn(condition))
        where told is not null
        select told! with { SubjectId = space.Id };

    private Finding? Judge(StabilityView view, Space space, BoxCutResult? cut, LoadedBoat loaded)
    {
        if (cut is null || view.FloatingIn(loaded.Condition) is not { } whole)
        {
            return WhyUnknown.Of(Description, view, loaded, $"how she lies with {space.Title} flooded");
        }

        if (cut.Body is null)
        {
            return Unknown(Description, space.Id, loaded.Condition.Id, Sentence.Of($"Nothing of {space.Title} lies inside the hull, so what flooding it does cannot be told"), [new FindingInput(space.Id, "from")]);
        }

        WorkingLine[] form =
        [
            new("Space", FormattableString.Invariant($"{cut.VolumeM3:0.###} m³ inside the hull, {100 * cut.InsideFraction:0} % of its box"), null, "box cut by the hull's surface; the skin has no thickness"),
            new("Water can fill", "share of it", new Amount(space.PermeabilityFraction!.Value, "Fraction"), "as typed"),
            .. PeopleAboard.Of(view, loaded).Length > 0 ? Array.Empty<WorkingLine>() : [new WorkingLine("Remark", Nobody(view), null, "")],
        ];
        FloodedSpace body = new(space.Id, cut.Body, space.PermeabilityFraction.Value);
        return PeopleAboard.ListedAndMost(view, loaded)
            .Where(load => !Ending.IsLost(load.With.Length == 0 ? whole.Rest : view.RestOf(load.Boat)!))
            .Select(load => (Load: load, End: Equilibrium.Solve(load.Boat.Input! with { Flooded = [body] })))
            .Select(flooded => flooded.End is { Status: FloatingStatus.Floats, Position: { IsStable: true } at }
                ? Steady(view, space, flooded.Load, body, flooded.End, at, form)
                : (Height: double.NegativeInfinity, Told: Ended(space, flooded.Load, flooded.End, form)))
            .Select(flooded => (flooded.Height, Told: flooded.Told with { GravityRatio = -flooded.Height }))
            .OrderBy(flooded => flooded.Height).Select(flooded => flooded.Told).FirstOrDefault();
    }

    private static string Nobody(StabilityView view) => view.Basis?.PeopleCount is > 0 and var most
        ? FormattableString.Invariant($"nobody is listed aboard in this condition, so nothing says where the {most} people of the rules would be: nobody is in these numbers")
        : "nobody is listed aboard in this condition, so nobody is in these numbers";

    private static string And(string people) => people.Length == 0 ? "" : $" and {people}";

    private Finding Ended(Space space, (LoadedBoat Boat, string With) load, FloatingResult rest, WorkingLine[] form)
    {
        Verdict verdict = rest.Status == FloatingStatus.NotConverged ? Verdict.Unknown : Verdict.Fails;
        return Judged(Description, space.Id, load.Boat, verdict, null, Sentence.Of($"With {space.Title} flooded {FindingLines.In(load.Boat.Condition)}{And(load.With)} she {Ending.Of(rest)}"), [.. form, .. Ending.Asked(rest), new WorkingLine("Ends", rest.Message, null, "lost buoyancy")]);
    }

    private (double Height, Finding Told) Steady(StabilityView view, Space space, (LoadedBoat Boat, string With) load, FloodedSpace body, FloatingResult rest, FloatingPosition at, WorkingLine[] form)
    {
        Opening[] places = [.. DeckEdge.WithOpenings(view, load.Boat.Condition).Where(place => view.Boat.Find<HullOpening>(place.Id) is not { } opening || opening.Space != space.Id)];
        (Opening lowest, double height) = DeckEdge.Lowest(places, at.Attitude)!.Value;
        Banded banded = ResultDeviation.Banded(load.Boat, height, boat =>
            Equilibrium.Solve(boat with { Flooded = [body] }, at.Attitude) is { Status: FloatingStatus.Floats, Position: { } near } ? near.Attitude.HeightAboveWaterM(lowest.Place) : null);
        Limit? own = view.Practice?.Find(LimitIds.LeastFloodedFreeboardM);
        double least = own?.Value ?? 0;
        Verdict told = banded.AtLeast(least);
        string title = DeckEdge.TitleOf(view.Boat, lowest.Id);
        Sentence dry = height <= 0
            ? Sentence.Of($"{title} is {M(-height)} under water, and she may fill on")
            : Sentence.Of($"lowest of deck edge and openings, {title} stays {M(height)} above water, {(own is null ? Sentence.Of($"no limit of freeboard with one space flooded is set") : Sentence.Of($"at least {M(own.Value)} wanted"))}");
        Sentence found = Sentence.Of($"With {space.Title} flooded {FindingLines.In(load.Boat.Condition)}{And(load.With)} she lies at {Levers.Heel(at.Attitude.HeelDeg)}, {Levers.Trim(at.Attitude.TrimDeg)}; {dry}");
        Finding judged = Judged(Description, space.Id, load.Boat, told, own is null ? null : banded.UseAtLeast(least), told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, load.Boat, banded, "m", least)}") : found,
        [
            .. form,
            own is null
                ? new WorkingLine("Asked at least", "above water; no limit of freeboard with one space flooded is set by the owner", null, "our rule, no source")
                : new WorkingLine("Asked at least", "the owner's limit of freeboard with one space flooded", M(own.Value), own.Source),
            .. DeckEdge.Heights(places, at.Attitude).Select(place => new WorkingLine(DeckEdge.TitleOf(view.Boat, place.Place.Id), "height over the water, flooded", M(place.HeightM), "lost buoyancy")),
            .. rest.Working().Select(Line),
            BandLine(banded, "m"),
        ], [.. own is null ? [new FindingInput(view.Boat.All<PracticeChoice>().FirstOrDefault()?.Id ?? "practice", $"own/{LimitIds.LeastFloodedFreeboardM}", IsMissing: true)] : Array.Empty<FindingInput>(), .. OpeningsGiven.Missing(view.Boat)]);
        return (height, judged with { IsFlooding = height <= 0 });
    }
}
