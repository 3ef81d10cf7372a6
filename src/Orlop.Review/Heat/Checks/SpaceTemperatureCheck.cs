using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Heat.Checks;

/// <summary>A space stays cool enough for what stands in it.</summary>
public sealed class SpaceTemperatureCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "space-temperature",
        "A space stays cool enough for what stands in it",
        "The temperature of a space against the greatest that a thing in it may stand in, and against that up to which it carries its full rating. A space whose walls, openings or fan are described is reckoned: everything on for good, and each load for its share of the time. Too hot even by the share of the time fails; too hot with everything on, or hot enough that something loses part of its rating, is tight. Any other space is as its owner typed it. The use is in °C over °C.",
        [Practices.LimitIds.EngineSpaceC]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from space in view.Boat.All<Space>()
        where HeatTable.LimitC(view, space) is not null || (SpaceWarmth.IsDescribed(space) && Bounds(view, space).Length > 0)
        from condition in view.Conditions
        select Judge(view, space, condition);

    private Finding Judge(ElectricsView view, Space space, Condition condition)
    {
        Part[] bound = [.. view.Boat.All<Part>().Where(part => part.Space == space.Id && (part.FullRatingC is not null || part.MostAmbientC is not null))];
        SpaceWarmth? warmth = SpaceWarmth.IsDescribed(space) ? view.WarmthsIn(condition).Of(space) : null;
        if (warmth is { Missing.IsEmpty: false })
        {
            return Unknown(Description, space.Id, condition.Id, Sentence.Of($"{space.Title}: how warm it gets {In(condition)} cannot be told"), warmth.Missing);
        }

        if (warmth is { Most: null })
        {
            return Said(space, condition, Verdict.Fails, null, Sentence.Of($"{space.Title} {In(condition)}: {warmth.WhyNone ?? "it has no rest"}"), [.. Heats(view, warmth)]);
        }

        if (bound.Length == 0)
        {
            return Unknown(Description, space.Id, condition.Id, Sentence.Of($"{space.Title} gets to {new Amount(warmth!.Most!.InsideC, "C")} {In(condition)}; nothing in it says how warm it may get"), Bounds(view, space));
        }

        if (warmth is not null)
        {
            return Judge(view, space, condition, bound, warmth.Most!.InsideC, warmth.Mean!.InsideC, warmth);
        }

        Surroundings typed = view.Air.Of(space, condition);
        return typed.AmbientC is { } ambient
            ? Judge(view, space, condition, bound, ambient, ambient, null)
            : Unknown(Description, space.Id, condition.Id, Sentence.Of($"{space.Title}: how warm it is {In(condition)} is not known"), typed.Missing);
    }

    private Finding Judge(ElectricsView view, Space space, Condition condition, Part[] bound, double mostC, double meanC, SpaceWarmth? warmth)
    {
        Part first = bound.MinBy(part => part.FullRatingC?.Value ?? part.MostAmbientC!.Value)!;
        double full = first.FullRatingC?.Value ?? first.MostAmbientC!.Value, stand = bound.Min(part => part.MostAmbientC?.Value ?? part.FullRatingC!.Value);
        Derating derated = Derating.Of(first, space, mostC);
        Verdict verdict = meanC > stand ? Verdict.Fails : mostC > Math.Min(full, stand) ? Verdict.Tight : mostC <= 0 ? Verdict.Holds : Verdicts.Of(mostC, Math.Min(full, stand));
        Sentence part = mostC <= full && first.FullRatingC is null ? Sentence.Of($"{first.Title} may stand in up to {new Amount(full, "C")}")
            : mostC <= full ? Sentence.Of($"{first.Title} carries its full rating up to {new Amount(full, "C")}")
            : derated.Missing.IsEmpty && first.FullRatingC is not null ? Sentence.Of($"{first.Title} carries its full rating up to {new Amount(full, "C")}, {Fraction(derated.ShareFraction)} of it there")
            : Sentence.Of($"{first.Title} may stand in up to {new Amount(full, "C")}");
        Sentence told = warmth is null ? Sentence.Of($"{space.Title} has {new Amount(mostC, "C")} {In(condition)}; ")
            : Sentence.Of($"{space.Title} gets to {new Amount(mostC, "C")} with everything on {In(condition)}, {new Amount(meanC, "C")} by the share of the time; ");
        return Said(space, condition, verdict, mostC > 0 && full > 0 ? mostC / Math.Min(full, stand) : 0, Sentence.Of($"{told}{part}"),
        [
            .. warmth is null ? [new WorkingLine("Air in it", "", new Amount(mostC, "C"), "as typed")] : Lines(view, warmth, Math.Min(full, stand)),
            .. bound.Select(each => new WorkingLine("Full rating up to", each.Title, new Amount(each.FullRatingC?.Value ?? each.MostAmbientC!.Value, "C"), "as typed")),
            .. bound.Where(each => each.MostAmbientC is not null).Select(each => new WorkingLine("May stand in", each.Title, new Amount(each.MostAmbientC!.Value, "C"), "as typed")),
            .. derated.Working.Skip(1),
        ]);
    }

    private static IEnumerable<WorkingLine> Lines(ElectricsView view, SpaceWarmth warmth, double limitC)
    {
        foreach (WorkingLine heat in Heats(view, warmth))
        {
            yield return heat;
        }

        SpaceRest rest = warmth.Most!;
        foreach (SpaceSide side in warmth.Input!.Sides)
        {
            yield return new WorkingLine("Through a side", $"{side.Name}: {N(side.ConductanceWPerK)} W/K, {N(side.OutsideC!.Value)} °C beyond", new Amount(side.ConductanceWPerK * (rest.InsideC - side.OutsideC.Value), "W"), SpaceSides.Source, true);
        }

        yield return rest.AirC is { } air
            ? new WorkingLine("With the air", warmth.Input.FanM3PerH > 0 ? $"fan or draught, whichever moves more, from {N(air)} °C" : $"its own draught, from {N(air)} °C", new Amount(rest.AirW, "W"), NaturalDraught.Source)
            : new WorkingLine("With the air", "no openings at two heights, and no fan", new Amount(0, "W"), "");
        yield return new WorkingLine("Air that passes", "at the density of the air around", new Amount(rest.FlowM3PerH, "M3PerH"), NaturalDraught.Source);
        yield return new WorkingLine("At rest", "everything on for good; it warms towards this", new Amount(rest.InsideC, "C"), "balance of heat");
        yield return new WorkingLine("At rest by the share of the time", "", new Amount(warmth.Mean!.InsideC, "C"), "balance of heat");
        if (warmth.WithoutFan is { } still)
        {
            yield return new WorkingLine("With the fan stopped", "", new Amount(still.InsideC, "C"), "balance of heat");
        }

        if (warmth.Space.AmbientC is { } typed)
        {
            yield return new WorkingLine("Typed", warmth.Space.IsReckoned == true ? "not used: the reckoned one is" : "used for cables and devices in it", new Amount(typed.Value, "C"), "as typed");
        }

        yield return warmth.OpeningNeededCm2(limitC) is { } needed
            ? new WorkingLine("Openings for that limit", $"each of two, {N(warmth.OpeningsApartM)} m apart", new Amount(needed, "Cm2"), NaturalDraught.Source)
            : new WorkingLine("Openings for that limit", "none is enough: the air around is no cooler", null, NaturalDraught.Source);
    }

    private static IEnumerable<WorkingLine> Heats(ElectricsView view, SpaceWarmth warmth) =>
    [
        .. warmth.Heats.Select(heat => new WorkingLine("Heat in it", view.Boat.Find(heat.ThingId)?.Title ?? heat.ThingId, new Amount(heat.MostW, "W"),
            view.Boat.Find<Cable>(heat.ThingId) is null ? "running powers at nominal voltage" : "I² R by the share of its run, copper at its rated temperature, running powers at nominal voltage")),
        .. warmth.Heats.SelectMany(heat => heat.Assumed).Distinct().Select(assumed => new WorkingLine("Taken for granted", assumed, null, "")),
    ];

    // The parts that give heat and do not say what they may stand in.
    private static ImmutableArray<FindingInput> Bounds(ElectricsView view, Space space) =>
    [
        .. view.Boat.All<Part>().Where(part => part.Space == space.Id && part is (Inverter or DcConverter or Charger or BatteryBank or ElectricLoad))
            .Select(part => new FindingInput(part.Id, "mostAmbientC", IsMissing: true)),
    ];

    private Finding Said(Space space, Condition condition, Verdict verdict, double? use, Sentence headline, ImmutableArray<WorkingLine> working) => new()
    {
        CheckId = Description.Id,
        SubjectId = space.Id,
        ConditionId = condition.Id,
        Verdict = verdict,
        UseFraction = use,
        Headline = headline,
        Working = working,
        Inputs = SpaceWarmth.IsDescribed(space) ? [new FindingInput(space.Id, "walls"), new FindingInput(space.Id, "vents"), new FindingInput(condition.Id, "outsideC")] : [new FindingInput(space.Id, "ambientC")],
    };
}
