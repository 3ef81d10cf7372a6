using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// Puts the rings in order on the studs that a set of changes touches, where their order is told: the greatest current nearest the face (common practice, no source). A stud whose nut nobody
/// takes off, and whose order is no worse than it was, stays as it is.
/// </summary>
/// <param name="Boat">The boat with them in order.</param>
/// <param name="Remarks">One for each stud whose order is another than in the draft.</param>
internal sealed record StudOrder(BoatModel Boat, ImmutableArray<Sentence> Remarks)
{
    /// <summary>The order after a set of changes.</summary>
    /// <param name="draft">The boat before them.</param>
    /// <param name="boat">The boat with them.</param>
    public static StudOrder Of(BoatModel draft, BoatModel boat)
    {
        StudRings before = StudRings.Of(draft), after = StudRings.Of(boat);
        Terminal[] told = [.. after.All.Where(stud => IsTold(draft, boat, stud)).Select(stud => stud.Key)];
        if (told.Length == 0)
        {
            return new StudOrder(boat, []);
        }

        ElectricsView view = MendBench.ViewOf(boat);
        Lazy<ElectricsView> was = new(() => MendBench.ViewOf(draft));
        StudStack[] put = [.. told.Select(at => StudStack.Of(view, at)).Where(stack => IsAlike(before.At(stack.At), after.At(stack.At)) ? stack.Wrong is not null && StudStack.Of(was.Value, stack.At).Wrong is null : !IsGood(stack))];
        return new StudOrder(
            put.Aggregate(boat, Put),
            [.. put.Select(stack => Sentence.Of($"{boat.Find<Part>(stack.At.Part)!.Title}, {stack.At.Name}: from the face outward {string.Join(", ", stack.Rings.Select(each => each.Ring.Title))}, washers over them only"))]);
    }

    /// <summary>The boat with the rings of a stack lying as they should.</summary>
    public static BoatModel Put(BoatModel boat, StudStack stack)
    {
        Dictionary<(string, string), int> places = stack.Rings.Index().Where(each => each.Item.Ring.Core is not null)
            .ToDictionary(each => (each.Item.Ring.Owner.Id, each.Item.Ring.Core!.Id), each => each.Index + 1);
        Termination? Placed(Cable cable, Core core, Terminal at, Termination? end) =>
            at == stack.At && end is not null && places.TryGetValue((cable.Id, core.Id), out int place) ? end with { FromFaceCount = place } : end;
        return boat.WithThings(boat.Things.Select(thing => thing is Cable cable && cable.Cores.Any(core => places.ContainsKey((cable.Id, core.Id)))
            ? cable with { Cores = cable.Cores.Select(core => core with { FromEnd = Placed(cable, core, core.From, core.FromEnd), ToEnd = Placed(cable, core, core.To, core.ToEnd) }).ToValueList() }
            : thing));
    }

    // Some place on it is told, or its studs are new, and all rings on them are put on anew.
    private static bool IsTold(BoatModel draft, BoatModel boat, IGrouping<Terminal, StudRing> stud) => stud.Count(ring => ring.IsBolted) > 1
        && boat.Find<Part>(stud.Key.Part) is { } part and not Busbar
        && (stud.Any(ring => ring.End?.FromFaceCount is not null) || (part.StudOf(stud.Key.Name) is { } now && draft.Find<Part>(part.Id)?.StudOf(stud.Key.Name) != now));

    // Each ring has a place of its own over the links, and none lies over one that carries less.
    private static bool IsGood(StudStack stack)
    {
        int linkCount = stack.Rings.Count(each => each.Ring.Core is null);
        int?[] places = [.. stack.Rings.Where(each => each.Ring.Core is not null).Select(each => each.Ring.End?.FromFaceCount)];
        return places.All(place => place > linkCount) && places.Distinct().Count() == places.Length && stack.Wrong is null;
    }

    private static bool IsAlike(IEnumerable<StudRing> before, IEnumerable<StudRing> after) => Signs(before).SetEquals(Signs(after));

    private static HashSet<(string, string?, double?)> Signs(IEnumerable<StudRing> rings) => [.. rings.Select(ring => (ring.Owner.Id, ring.Core?.Id, (ring.Owner as Cable)?.AreaMm2.Value))];
}
