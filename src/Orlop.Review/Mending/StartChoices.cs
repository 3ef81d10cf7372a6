using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A soft starter before a load that starts hard.</summary>
internal static class StartChoices
{
    /// <summary>The slot of a load; null where none starts it softer.</summary>
    public static MendSlot? Slot(MendBench bench, ElectricLoad load)
    {
        if (load is not { IsAc: false, StartRatio: { } ratio, StartS: { } startS } || RunningA(load) is not { } runningA)
        {
            return null;
        }

        string id = ReadableId.Of($"{load.Id} soft starter", taken => bench.Draft.Find(taken) is not null);
        return bench.Slot(
            $"start:{load.Id}", SlotKind.Start, load.Id, new MendTraits { StartRatio = ratio.Value, StartS = startS.Value },
            bench.Catalogue.Parts
                .Where(part => part is { Use: CatalogueUse.SoftStart, StartRatio: not null, StartS: not null } && part.RatedA?.Value >= runningA && part.StartRatio.Value < ratio.Value)
                .SelectMany(part => bench.Ways(Of(load, part, id))));
    }

    private static double? RunningA(ElectricLoad load) => load.RunningA?.Value ?? (load.RunningW?.Value / load.NominalV.Value);

    private static MendOption Of(ElectricLoad load, CataloguePart part, string id)
    {
        Quantity lasts = part.StartS!.Value > load.StartS!.Value ? part.StartS : load.StartS;
        return new MendOption
        {
            What = Sentence.Of($"{load.Title}: {part.Title} before it; it starts at {new Amount(part.StartRatio!.Value, "Ratio")} times its running current for {new Amount(lasts.Value, "S")}"),
            Apply = boat => With(boat, load, part, lasts, id),
            Cost = new MendCost(part.PriceMoney?.Value ?? 0, part.MassKg?.Value ?? 0),
            Traits = new MendTraits { StartRatio = part.StartRatio.Value, StartS = lasts.Value },
            Part = part,
        };
    }

    // It is carried as gear, so that it is weighed and brought; what it does is the load's start.
    private static BoatModel With(BoatModel boat, ElectricLoad load, CataloguePart part, Quantity lasts, string id)
    {
        BoatModel soft = MendBench.Change<ElectricLoad>(boat, load.Id, was => was with { StartRatio = part.StartRatio, StartS = lasts });
        Gear starter = new()
        {
            Id = id,
            Name = $"{load.Title} soft starter, {part.Title}",
            MassKg = load.Place is null ? null : part.MassKg,
            Place = load.Place,
            Space = load.Space,
            Note = MendBench.NoteOf(part),
        };
        return soft.WithThings([.. soft.Things, starter]);
    }
}
