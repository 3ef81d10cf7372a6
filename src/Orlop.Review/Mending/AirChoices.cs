using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Heat;
using Orlop.Review.Findings;
using Orlop.Review.Heat;

namespace Orlop.Review.Mending;

/// <summary>More air for a warm space: openings low and high, larger or added, or a fan.</summary>
internal static class AirChoices
{
    /// <summary>From floor and top of a space to openings that it has none of yet, as a share of its height. Common practice, no source.</summary>
    public const double EdgeFraction = 0.1;

    /// <summary>It is described how heat leaves a space that is not the open air, so that openings can be reckoned with.</summary>
    public static bool CanHave(Space space) => space.Use != SpaceUse.OpenDeck && SpaceWarmth.IsDescribed(space) && space.To.ZM > space.From.ZM;

    /// <summary>The slot of a space; null where nothing can be reckoned with there.</summary>
    public static MendSlot? Slot(MendBench bench, Space space)
    {
        if (!CanHave(space))
        {
            return null;
        }

        string id = ReadableId.Of($"{space.Id} vents", taken => bench.Draft.Find(taken) is not null);
        IEnumerable<MendOption> vents = bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Vent, AreaCm2: not null })
            .SelectMany(part => Plans(space, part.AreaCm2!.Value).SelectMany(plan => bench.Ways(Of(bench, space, plan, part, id))));
        FanChoices? fans = FanChoices.In(bench, space);
        return bench.Slot($"air:{space.Id}", SlotKind.Air, space.Id, Traits(space, space.Vents), vents.Concat(fans?.Options() ?? [])) is { } slot ? slot with { AddedIds = fans?.AddedIds ?? [] } : null;
    }

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
