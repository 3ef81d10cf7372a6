using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;

namespace Orlop.Review.Isolation;

/// <summary>What a meter is set to at a point, and what stood there before anything was opened.</summary>
/// <param name="IsAc">Alternating current; null where the wiring names no kind, or both.</param>
/// <param name="NominalV">Highest nominal voltage of the sources of that kind; null where none gives one.</param>
/// <param name="Sources">The sources of that kind that are wired to it.</param>
/// <param name="Joined">All nodes that metal joins to it with every switch and fuse closed.</param>
public sealed record PointVoltage(bool? IsAc, double? NominalV, ImmutableArray<Part> Sources, IReadOnlySet<string> Joined)
{
    /// <summary>A node is of the same pole.</summary>
    public bool Reaches(string node) => Joined.Contains(node);

    /// <summary>The voltage at a node, with every switch taken as closed. What is bonded ends the search: what hangs on it says nothing of the point.</summary>
    public static PointVoltage At(BoatModel boat, Wiring wiring, string node)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        HashSet<string> bonded = [.. Bonds.Of(boat.All<Part>()).Select(bond => bond.ToString())], seen = [node];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? at))
        {
            foreach (string next in wiring.At(at).Select(edge => edge.Other(at)).Where(next => !bonded.Contains(at) && seen.Add(next)))
            {
                queue.Enqueue(next);
            }
        }

        PolePair[] giving = [.. boat.All<Part>().Select(Poles.Giving).OfType<PolePair>().Where(IsHere)];
        bool[] kinds = [.. giving.Concat(boat.All<Part>().Select(Poles.Taking).OfType<PolePair>().Where(IsHere)).Select(poles => poles.IsAc).Distinct()];
        bool? isAc = kinds.Length == 1 ? kinds[0] : IsEarth(node) ? true : null;
        ImmutableArray<Part> sources = [.. giving.Where(poles => poles.IsAc == isAc).Select(poles => poles.Part)];
        return new PointVoltage(isAc, sources.Select(SystemVoltage.NominalV).Max(), sources, seen);

        bool IsHere(PolePair poles) => seen.Contains(poles.Plus) || seen.Contains(poles.Minus);
    }

    private static bool IsEarth(string node) => node.EndsWith($".{TerminalNames.Earth}", StringComparison.Ordinal);
}
