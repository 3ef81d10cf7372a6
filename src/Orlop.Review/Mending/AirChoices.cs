using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Heat;
using Orlop.Review.Findings;
using Orlop.Review.Heat;

namespace Orlop.Review.Mending;

/// <summary>More air for a warm space: openings low and high, larger or added, a fan, or both.</summary>
internal static class AirChoices
{
    /// <summary>From floor and top of a space to openings that it has none of yet, as a share of its height. Common practice, no source.</summary>
    public const double EdgeFraction = 0.1;

    /// <summary>It is described how heat leaves a space that is not the open air, so that openings can be reckoned with.</summary>
    public static bool CanHave(Space space) => space.Use != SpaceUse.OpenDeck && SpaceWarmth.IsDescribed(space) && space.To.ZM > space.From.ZM;

    /// <summary>The slots of a space: its openings, and a fan besides where they are two; where they are not, a choice is openings alone, or openings and a fan that blows through them. None where nothing can be reckoned with there.</summary>
    public static IEnumerable<MendSlot> Slots(MendBench bench, Space space)
    {
        if (!CanHave(space))
        {
            return [];
        }

        string id = ReadableId.Of($"{space.Id} vents", taken => bench.Draft.Find(taken) is not null);
        bool isCooler = AirDirection.IsNeverWarmer(bench, space, AirFrom(space));
        (VentPlan Plan, MendOption Bought)[] vents =
        [
            .. from part in bench.Catalogue.Parts
               where part is { Use: CatalogueUse.Vent, AreaCm2: not null }
               from plan in Plans(space, part.AreaCm2!.Value)
               select (plan, Of(bench, space, plan, part, id)),
        ];
        MendSlot? Slot(string name, IEnumerable<MendOption> options, FanChoices? fans) =>
            bench.Slot($"{name}:{space.Id}", SlotKind.Air, space.Id, Traits(space, space.Vents), options) is { } slot ? slot with { AddedIds = fans?.AddedIds ?? [], IsAirCooler = isCooler } : null;
        IEnumerable<MendOption> openings = vents.SelectMany(vent => bench.Ways(vent.Bought));
        MendSlot?[] slots = FanChoices.In(bench, space) is { } own
            ? [Slot("air", openings, null), Slot("fan", own.Options(), own)]
            : [Slot("air", openings.Concat(Blown(bench, space, vents)), vents.Select(vent => FanChoices.In(bench, With(space, vent.Plan))).FirstOrDefault(fans => fans is not null))];
        return slots.OfType<MendSlot>();
    }

    // Through the openings that weigh least, or through those that also draw most by themselves: a fan moves what it moves through any.
    private static IEnumerable<MendOption> Blown(MendBench bench, Space space, IReadOnlyCollection<(VentPlan Plan, MendOption Bought)> vents)
    {
        (VentPlan Plan, MendOption Bought)[] paid = [.. vents.Where(vent => bench.Ways(vent.Bought).Any(way => !way.IsFromStock))];
        return paid.Length == 0 ? [] : new[] { paid.MinBy(vent => MendWeight.Of(vent.Bought, bench.Aim)), paid.MaxBy(vent => vent.Bought.Traits.Draught) }.DistinctBy(vent => vent.Bought)
            .SelectMany(vent => (FanChoices.In(bench, With(space, vent.Plan))?.Options() ?? []).Select(fan => fan with
            {
                What = new Sentence([.. vent.Bought.What.Parts, .. Sentence.Of($"; ").Parts, .. fan.What.Parts]),
                Apply = boat => fan.Apply(vent.Bought.Apply(boat)),
                Cost = new MendCost(fan.Cost.PriceMoney + vent.Bought.Cost.PriceMoney, fan.Cost.AddedKg + vent.Bought.Cost.AddedKg),
                BesidesMoney = fan.BesidesMoney + vent.Bought.Cost.PriceMoney,
            }));
    }

    private static Space With(Space space, VentPlan plan) => space with { Vents = plan.Vents, AirFrom = AirFrom(space) };

    /// <summary>What the rules compare of a space's air.</summary>
    public static MendTraits Traits(Space space, ValueList<AirVent> vents) => new()
    {
        Draught = NaturalDraught.Coefficient([.. vents.Select(vent => new AirOpening(vent.AreaCm2 / 1e4, vent.HeightM))]),
        FanM3PerH = space.FanM3PerH?.Value ?? 0,
    };

    /// <summary>Openings as they become.</summary>
    private sealed record VentPlan(ValueList<AirVent> Vents, int PieceCount, string Words);

    private static IEnumerable<VentPlan> Plans(Space space, double areaCm2)
    {
        double topM = space.To.ZM - space.From.ZM;
        if (space.Vents.Count > 0 && space.Vents.MinBy(vent => vent.HeightM) is { } low && space.Vents.MaxBy(vent => vent.HeightM) is { } high && high.HeightM > low.HeightM)
        {
            ValueList<AirVent> Larger(params AirVent[] which) => space.Vents.Select(vent => which.Contains(vent) ? vent with { AreaCm2 = areaCm2 } : vent).ToValueList();
            AirVent[] small = [.. new[] { low, high }.Where(vent => vent.AreaCm2 < areaCm2)];
            foreach (AirVent vent in small)
            {
                yield return new VentPlan(Larger(vent), 1, $"in place of {vent.Name}");
            }

            if (small.Length == 2)
            {
                yield return new VentPlan(Larger(small), 2, $"in place of {low.Name} and of {high.Name}");
            }

            yield return new VentPlan([.. space.Vents, New("Low, added", areaCm2, low.HeightM), New("High, added", areaCm2, high.HeightM)], 2, $"more, one beside {low.Name} and one beside {high.Name}");
            yield break;
        }

        AirVent newLow = New("Low, added", areaCm2, EdgeFraction * topM), newHigh = New("High, added", areaCm2, (1 - EdgeFraction) * topM);
        if (space.Vents.Count == 0)
        {
            yield return new VentPlan([newLow, newHigh], 2, "one low and one high");
            yield break;
        }

        AirVent other = space.Vents[0].HeightM < topM / 2 ? newHigh : newLow;
        yield return new VentPlan([.. space.Vents, other], 1, other == newHigh ? "one more, high" : "one more, low");
    }

    private static AirVent New(string name, double areaCm2, double heightM) => new(name, areaCm2, Math.Round(heightM, 3));

    private static MendOption Of(MendBench bench, Space space, VentPlan plan, CataloguePart part, string id)
    {
        string? from = AirFrom(space);
        string around = from is null ? "the air outside" : bench.Draft.Find(from)?.Title ?? from;
        double kg = plan.PieceCount * (part.MassKg?.Value ?? 0);
        return new MendOption
        {
            What = Sentence.Of($"{space.Title}: {plan.PieceCount} × {part.Title}, {plan.Words}, with air from {around}{(from is null ? "; water may come in where it leads outside: tell it among her openings too" : "")}"),
            Apply = boat => With(boat, space, plan, part, id, from),
            Cost = new MendCost(plan.PieceCount * (part.PriceMoney?.Value ?? 0), kg),
            Traits = Traits(space, plan.Vents),
            Part = part,
            PieceCount = plan.PieceCount,
        };
    }

    // A space that has openings takes its air as it is told; one that has none through its largest side, which is common practice, no source.
    private static string? AirFrom(Space space) => space.Vents.Count > 0 || space.AirFrom is not null ? space.AirFrom : space.Walls.MaxBy(wall => wall.AreaM2)?.Space;

    // Carried as gear, so that it is weighed and brought.
    private static BoatModel With(BoatModel boat, Space space, VentPlan plan, CataloguePart part, string id, string? from)
    {
        BoatModel aired = MendBench.Change<Space>(boat, space.Id, was => was with { Vents = plan.Vents, AirFrom = from });
        Gear vents = new()
        {
            Id = id,
            Name = $"{space.Title}, {plan.PieceCount} × {part.Title}",
            MassKg = part.MassKg is { } mass ? mass with { Value = plan.PieceCount * mass.Value } : null,
            Place = Middle(space, 0.5),
            Space = space.Id,
            Note = MendBench.NoteOf(part),
        };
        return aired.WithThings([.. aired.Things, vents]);
    }

    /// <summary>The middle of a space at a share of its height.</summary>
    public static Place Middle(Space space, double heightFraction) => new(
        Math.Round((space.From.XM + space.To.XM) / 2, 3), Math.Round((space.From.YM + space.To.YM) / 2, 3), Math.Round(space.From.ZM + (heightFraction * (space.To.ZM - space.From.ZM)), 3));
}
