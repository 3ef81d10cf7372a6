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
            End(scope, change, core, ElementIds.FromJoint((Cable)change.Thing, core), core.From, core.FromEnd),
            End(scope, change, core, ElementIds.ToJoint((Cable)change.Thing, core), core.To, core.ToEnd),
        })),
    ];

    private static CableEnd End(PackScope scope, WorkChange change, Core core, string key, Terminal at, Termination? end)
    {
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
            StripMm = EndTables.StripMm(cable.AreaMm2.Value, end?.Means),
            Pull = EndTables.Pull(cable.AreaMm2.Value, end?.Means),
            Torque = end?.Means is TerminationMeans.Ring or TerminationMeans.Fork ? EndTables.Torque(scope.Whole.Find<Part>(at.Part), end.StudMm) : null,
            BuiltOn = change.Edit.BuiltOn,
        };
    }
}
