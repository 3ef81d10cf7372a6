using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>With one space open to the sea she stays afloat, and no opening of another space comes under.</summary>
public sealed class FloodedSpaceCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "one-space-flooded",
        "Afloat with one space flooded",
        "Where she ends with one space open to the sea (lost buoyancy, the share that water can fill), for every space that gives its permeability, in every condition: afloat, steady, and each opening that is not shut and does not lead to that space above water (our rule, no source).",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
        from space in view.Boat.All<Space>()
        where space.PermeabilityFraction is not null
        let cut = view.InsideOf(space)
        from condition in view.Conditions
        select Judge(view, space, cut, view.LoadedIn(condition)) with { SubjectId = space.Id };

    private Finding Judge(StabilityView view, Space space, BoxCutResult? cut, LoadedBoat loaded)
    {
        if (cut is null || view.FloatingIn(loaded.Condition) is null)
        {
            return WhyUnknown.Of(Description, view, loaded, $"how she lies with {space.Title} flooded");
        }

        if (cut.Body is null)
        {
            return Unknown(Description, space.Id, loaded.Condition.Id, Sentence.Of($"Nothing of {space.Title} lies inside the hull, so what flooding it does cannot be told"), [new FindingInput(space.Id, "from")]);
        }

        FloatingInput flooded = loaded.Input! with { Flooded = [new FloodedSpace(space.Id, cut.Body, space.PermeabilityFraction!.Value)] };
        FloatingResult rest = Equilibrium.Solve(flooded);
        IEnumerable<WorkingLine> form =
        [
            new WorkingLine("Space", FormattableString.Invariant($"{cut.VolumeM3:0.###} m³ inside the hull, {100 * cut.InsideFraction:0} % of its box"), null, "box cut by the hull's surface; the skin has no thickness"),
            new WorkingLine("Water can fill", "share of it", new Amount(space.PermeabilityFraction.Value, "Fraction"), "as typed"),
        ];
        if (rest is not { Status: FloatingStatus.Floats, Position: { IsStable: true } at })
        {
            Verdict verdict = rest.Status == FloatingStatus.NotConverged ? Verdict.Unknown : Verdict.Fails;
            string end = rest.Status switch
            {
                FloatingStatus.Sinks => "she sinks",
                FloatingStatus.Capsizes => "she capsizes",
                FloatingStatus.NotConverged => "no position of rest was found",
                FloatingStatus.DoesNotFloat => "she does not float even whole",
                _ => "she does not lie steady",
            };
            return Judged(Description, space.Id, loaded, verdict, null, Sentence.Of($"With {space.Title} flooded {FindingLines.In(loaded.Condition)} {end}"), [.. form, new WorkingLine("Ends", rest.Message, null, "lost buoyancy")]);
        }

        Opening[] openings = [.. view.OpeningsIn(loaded.Condition).Where(opening => view.Boat.Find<HullOpening>(opening.Id)?.Space != space.Id)];
        (Opening Place, double HeightM)? lowest = DeckEdge.Lowest(openings, at.Attitude), edge = DeckEdge.Lowest(DeckEdge.Of(view.Boat), at.Attitude);
        Banded? banded = lowest is { } low
            ? new Banded(low.HeightM, ResultDeviation.Of(loaded, boat => Equilibrium.Solve(boat with { Flooded = flooded.Flooded }, at.Attitude) is { Status: FloatingStatus.Floats, Position: { } near } ? near.Attitude.HeightAboveWaterM(low.Place.Place) : null))
            : null;
        Verdict told = banded?.AtLeast(0) ?? Verdict.Holds;
        Sentence dry = lowest switch
        {
            null => Sentence.Of($"no opening of another space is open"),
            { HeightM: <= 0 } under => Sentence.Of($"{DeckEdge.TitleOf(view.Boat, under.Place.Id)} is {M(-under.HeightM)} under water, and she fills on"),
            { } over => Sentence.Of($"{DeckEdge.TitleOf(view.Boat, over.Place.Id)} stays {M(over.HeightM)} above water"),
        };
        Sentence found = Sentence.Of($"With {space.Title} flooded {FindingLines.In(loaded.Condition)} she lies at {Levers.Heel(at.Attitude.HeelDeg)}, trim {Deg(at.Attitude.TrimDeg)}; {dry}");
        return Judged(Description, space.Id, loaded, told, null, told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(banded!.Value, "m")}") : found,
        [
            .. form,
            .. edge is { } deck ? [new WorkingLine("Lowest of the deck edge", deck.Place.Id, M(deck.HeightM), "height over the water, flooded")] : Array.Empty<WorkingLine>(),
            .. openings.Select(opening => new WorkingLine(DeckEdge.TitleOf(view.Boat, opening.Id), "height over the water, flooded", M(at.Attitude.HeightAboveWaterM(opening.Place)), "lost buoyancy")),
            .. rest.Working().Select(Line),
        ], OpeningsGiven.Missing(view.Boat));
    }
}
