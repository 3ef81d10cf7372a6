using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Ends;

/// <summary>Lists the ends that are made off in an alteration: those of cables that are run or changed, and those of cables that stay on a device that is exchanged with its holder.</summary>
internal static class CableEnds
{
    public static ImmutableArray<CableEnd> Of(PackScope scope)
    {
        StudRings rings = StudRings.Of(scope.AsAltered);
        return [.. Own(scope).Concat(DeviceMounts.Remounted(scope).SelectMany(change => Remade(scope, change))).Select(end => end.IsThreadUntold ? WithThread(scope, rings, end) : end)];
    }

    // Of a ring without a thread the stud tells it, else the other rings on it; its torque goes by that too.
    private static CableEnd WithThread(PackScope scope, StudRings rings, CableEnd end) =>
        scope.Whole.Find<Part>(end.At.Part) is var part && rings.ThreadMm(part, end.At, end.Key) is { } threadMm ? end with { StudMm = threadMm, Torque = EndTables.Torque(part, end.At.Name, threadMm) } : end;

    private static ImmutableArray<CableEnd> Own(PackScope scope) =>
    [
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends).SelectMany(change => ((Cable)change.Thing).Cores.SelectMany(core => new[]
        {
            End(scope, change, core, ElementIds.FromJoint((Cable)change.Thing, core), end => (end.From, end.FromEnd)),
            End(scope, change, core, ElementIds.ToJoint((Cable)change.Thing, core), end => (end.To, end.ToEnd)),
        })),
    ];

    // What goes onto the new device is told by its own studs alone: the end that was there fitted another.
    private static IEnumerable<CableEnd> Remade(PackScope scope, WorkChange change)
    {
        HashSet<string> changed = [.. scope.Of(ChangeKind.Cable, ChangeKind.Ends, ChangeKind.Remove).Select(other => other.Id)];
        return from cable in scope.AsAltered.All<Cable>()
               where !changed.Contains(cable.Id)
               from core in cable.Cores
               from one in new[] { (Key: ElementIds.FromJoint(cable, core), At: core.From, End: core.FromEnd), (Key: ElementIds.ToJoint(cable, core), At: core.To, End: core.ToEnd) }
               where one.At.Part == change.Id
               let studMm = ((Part)change.Thing).StudOf(one.At.Name)?.SizeMm
               let end = studMm is null ? null : new Termination(one.End?.Means is TerminationMeans.Fork ? TerminationMeans.Fork : TerminationMeans.Ring, studMm)
               select Made(scope, cable, core, one.Key, one.At, end) with { ForDevice = change.Id, BuiltOn = change.Edit.BuiltOn };
    }

    private static CableEnd End(PackScope scope, WorkChange change, Core core, string key, Func<Core, (Terminal At, Termination? End)> endOf)
    {
        (Terminal at, Termination? end) = endOf(core);
        return Made(scope, (Cable)change.Thing, core, key, at, end) with
        {
            IsKept = change.Kind == ChangeKind.Ends && change.Edit.Was is Cable old && old.Cores.FirstOrDefault(other => other.Id == core.Id) is { } was && IsSame(endOf(was), (at, end)),
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    private static CableEnd Made(PackScope scope, Cable cable, Core core, string key, Terminal at, Termination? end) => new()
    {
        Key = key,
        CableId = cable.Id,
        CoreId = core.Id,
        At = at,
        Where = scope.Words.At(at),
        AreaMm2 = cable.AreaMm2.Value,
        Means = end?.Means,
        StudMm = end?.StudMm,
        LugMm2 = end?.LugMm2,
        StripMm = EndTables.StripMm(cable.AreaMm2.Value, end?.Means),
        Pull = EndTables.Pull(cable.AreaMm2.Value, end?.Means),
        Torque = end?.Means is TerminationMeans.Ring or TerminationMeans.Fork ? EndTables.Torque(scope.Whole.Find<Part>(at.Part), at.Name, end.StudMm) : null,
    };

    private static bool IsSame((Terminal At, Termination? End) was, (Terminal At, Termination? End) becomes) =>
        was.At == becomes.At && was.End?.Means == becomes.End?.Means && was.End?.StudMm == becomes.End?.StudMm;
}
