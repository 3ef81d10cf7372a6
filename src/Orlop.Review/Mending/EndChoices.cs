using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What may become of the ends of cables: lugs made for the conductor, rings made for the stud, and their order on it. What is crimped on is not in the catalogue and costs nothing here.</summary>
internal static class EndChoices
{
    /// <summary>Lugs of a cable that are made for its conductor; null where none is told.</summary>
    public static MendSlot? Lugs(MendBench bench, Cable cable)
    {
        int count = cable.Cores.SelectMany(core => new[] { core.FromEnd, core.ToEnd }).Count(end => end is { LugMm2: { } mm2 } && mm2 != cable.AreaMm2.Value);
        return count == 0 ? null : Slot(bench, $"lugs:{cable.Id}", cable.Id,
            Sentence.Of($"{cable.Title}: {(count == 1 ? "1 new lug" : $"{count} new lugs")}, made for {new Amount(cable.AreaMm2.Value, "Mm2")}"),
            boat => MendBench.Change<Cable>(boat, cable.Id, was => was with { Cores = LuggedFor(was.Cores, was.AreaMm2.Value) }));
    }

    /// <summary>Cores whose lugs, where they are told, are made for a conductor of so many mm².</summary>
    public static ValueList<Core> LuggedFor(ValueList<Core> cores, double areaMm2) => Ended(cores, end => end.LugMm2 is null ? end : end with { LugMm2 = areaMm2 });

    /// <summary>Rings on a stud that are made for its thread, in order from the face outward, with nothing between; null where nothing of it is told otherwise.</summary>
    public static MendSlot? Rings(MendBench bench, Terminal at)
    {
        ElectricsView view = MendBench.ViewOf(bench.Draft);
        StudRing[] rings = [.. StudStack.Of(view, at).Rings.Select(each => each.Ring).Where(ring => ring.End is not null)];
        if (bench.Draft.Find<Part>(at.Part) is not { } part || rings.Length == 0 || (part.StudOf(at.Name)?.SizeMm ?? rings.Max(ring => ring.End!.StudMm)) is not { } threadMm)
        {
            return null;
        }

        int linkCount = view.Rings.At(at).Count(ring => ring.Core is null), newCount = rings.Count(ring => ring.End!.StudMm is { } mm && mm != threadMm);
        bool isOrdered = rings.Any(ring => ring.End!.FromFaceCount is not null);
        Dictionary<(string, string), int> places = rings.Index().ToDictionary(each => (each.Item.Owner.Id, each.Item.Core!.Id), each => linkCount + each.Index + 1);
        BoatModel With(BoatModel boat) => boat.WithThings(boat.Things.Select(thing => thing switch
        {
            Cable cable when rings.Any(ring => ring.Owner.Id == cable.Id) => cable with { Cores = On(cable, at, threadMm, isOrdered ? places : []) },
            Part stands when stands.Id == part.Id => stands with { Studs = stands.Studs.Select(stud => stud.Terminal == at.Name && stud.HasWasherUnder == true ? stud with { HasWasherUnder = false } : stud).ToValueList() },
            _ => thing,
        }));
        return With(bench.Draft) == bench.Draft ? null : Slot(bench, $"rings:{at}", part.Id,
            Sentence.Of($"{part.Title}, {at.Name}: {(newCount == 0 ? "" : $"{newCount} of its rings new, made for {FormattableString.Invariant($"M{threadMm:0.#}")}; ")}from the face outward {string.Join(", ", rings.Select(ring => ring.Title))}, washers over them only"),
            With);
    }

    private static ValueList<Core> On(Cable cable, Terminal at, double threadMm, Dictionary<(string, string), int> places) => cable.Cores.Select(core =>
    {
        Termination? Put(Terminal terminal, Termination? end) => terminal != at || end is not { Means: TerminationMeans.Ring or TerminationMeans.Fork } ? end
            : end with { StudMm = end.StudMm is null ? null : threadMm, FromFaceCount = places.TryGetValue((cable.Id, core.Id), out int place) ? place : end.FromFaceCount };
        return core with { FromEnd = Put(core.From, core.FromEnd), ToEnd = Put(core.To, core.ToEnd) };
    }).ToValueList();

    private static ValueList<Core> Ended(ValueList<Core> cores, Func<Termination, Termination> becomes) => cores.Select(core => core with
    {
        FromEnd = core.FromEnd is { } from ? becomes(from) : null,
        ToEnd = core.ToEnd is { } to ? becomes(to) : null,
    }).ToValueList();

    private static MendSlot? Slot(MendBench bench, string id, string thingId, Sentence what, Func<BoatModel, BoatModel> apply) =>
        bench.Slot(id, SlotKind.End, thingId, new MendTraits(), [new MendOption { What = what, Apply = apply, Traits = new MendTraits { IsMadeOff = true } }]);
}
