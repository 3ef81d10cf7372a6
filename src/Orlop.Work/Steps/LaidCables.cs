using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The cables that lie in the ways which the work opens, drills, screws into or pulls through.</summary>
internal static class LaidCables
{
    /// <summary>Ids of those ways: all that the cables of the work follow, old ones and new ones, and all that lie behind what is opened for them.</summary>
    public static HashSet<string> Entered(PackScope scope)
    {
        Way[] followed = [.. scope.Of(ChangeKind.Remove, ChangeKind.Cable).SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Cable>()
            .SelectMany(cable => WaysOf(cable)).Distinct(StringComparer.Ordinal).Select(scope.Whole.Find<Way>).OfType<Way>()];
        return [.. followed.Select(way => way.Id), .. followed.Where(way => way.Opened is { Length: > 0 }).SelectMany(way => Behind(scope.Whole, way.Opened!.Trim()))];
    }

    /// <summary>Ids of the ways behind a lining, panel or hatch.</summary>
    /// <param name="opened">What it is called, without spaces around.</param>
    public static HashSet<string> Behind(BoatModel boat, string opened) => [.. boat.All<Way>().Where(way => way.Opened?.Trim() == opened).Select(way => way.Id)];

    /// <summary>Ids of the ways that a cable follows.</summary>
    public static IEnumerable<string> WaysOf(Cable cable) => cable.Run.Select(leg => leg.Way).OfType<string>();

    /// <summary>The cables of a boat that lie in some ways.</summary>
    public static IEnumerable<Cable> In(BoatModel boat, IReadOnlySet<string> ways) => boat.All<Cable>().Where(cable => WaysOf(cable).Any(ways.Contains));

    /// <summary>The cables of which nobody told where they lie.</summary>
    public static IEnumerable<Cable> Unplaced(BoatModel boat) => boat.All<Cable>().Where(cable => cable.Run.Count == 0 || cable.Run.Any(leg => leg.Way is null && leg.Space is null));

    /// <summary>The ends of its cores inside their terminals: a lead that is off its post is dead, though the post is not.</summary>
    public static IEnumerable<string> NodesOf(Cable cable) => cable.Cores.SelectMany(core => new[] { ElementIds.FromJoint(cable, core), ElementIds.ToJoint(cable, core) });

    /// <summary>Nominal voltage of a cable with every switch taken as closed, V; null where no source of a told voltage is drawn to it. Of a core that several systems share, as a common minus, the other cores tell.</summary>
    public static (double V, bool IsAc)? NominalOf(BoatModel boat, Wiring wiring, Cable cable)
    {
        (double V, bool IsAc)[] told = [.. cable.Cores.Select(core => PointVoltage.At(boat, wiring, core.From.ToString()))
            .Where(point => point is { NominalV: > 0, IsAc: not null }).Select(point => (point.NominalV!.Value, point.IsAc!.Value))];
        return told.Length == 0 ? null : told.Any(one => one.IsAc) ? told.Where(one => one.IsAc).Max() : told.Min();
    }

    /// <summary>The same in words: "12 V DC".</summary>
    public static string VoltageOf(BoatModel boat, Wiring wiring, Cable cable) => WordsOf(NominalOf(boat, wiring, cable));

    /// <summary>A nominal voltage in words.</summary>
    public static string WordsOf((double V, bool IsAc)? nominal) => nominal is { } told ? FormattableString.Invariant($"{told.V:0.#} V {(told.IsAc ? "AC" : "DC")}") : "voltage cannot be told";

    /// <summary>What is opened or stopped, by its name.</summary>
    public static string NameOf(PackScope scope, Opening opening) => opening.Means == OpeningMeans.LiftBatteryLead ? scope.Words.Element(opening.Id) : scope.Words.Located(opening.Id);
}
