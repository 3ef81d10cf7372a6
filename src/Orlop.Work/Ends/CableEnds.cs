using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Ends;

/// <summary>Lists the ends that are made off in an alteration.</summary>
internal static class CableEnds
{
    public static ImmutableArray<CableEnd> Of(PackScope scope) =>
    [
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends).SelectMany(change => ((Cable)change.Thing).Cores.SelectMany(core => new[]
        {
            End(scope, change, core, ElementIds.FromJoint((Cable)change.Thing, core), end => (end.From, end.FromEnd)),
            End(scope, change, core, ElementIds.ToJoint((Cable)change.Thing, core), end => (end.To, end.ToEnd)),
        })),
    ];

    private static CableEnd End(PackScope scope, WorkChange change, Core core, string key, Func<Core, (Terminal At, Termination? End)> endOf)
    {
        (Terminal at, Termination? end) = endOf(core);
        Cable cable = (Cable)change.Thing;
        return new CableEnd
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
            IsKept = change.Kind == ChangeKind.Ends && change.Edit.Was is Cable old && old.Cores.FirstOrDefault(other => other.Id == core.Id) is { } was && IsSame(endOf(was), (at, end)),
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    private static bool IsSame((Terminal At, Termination? End) was, (Terminal At, Termination? End) becomes) =>
        was.At == becomes.At && was.End?.Means == becomes.End?.Means && was.End?.StudMm == becomes.End?.StudMm;
}
