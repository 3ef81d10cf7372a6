using System.Collections.Frozen;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>
/// Which nodes are grounded: joined to the hull's bond through metal that is never opened by a fuse. Neutral and protective earth of
/// an AC source count as grounded at that source, unless it is told that its neutral is joined to earth nowhere; then its neutral counts only where a conductor on board joins it.
/// </summary>
public sealed class Grounding
{
    private readonly FrozenSet<string> _nodes;

    private Grounding(FrozenSet<string> nodes) => _nodes = nodes;

    /// <summary>The node is grounded.</summary>
    public bool IsGrounded(string node) => _nodes.Contains(node);

    /// <summary>Both ends are grounded.</summary>
    public bool IsGrounded(WiringEdge edge) => IsGrounded(edge.A) && IsGrounded(edge.B);

    /// <summary>All grounded nodes.</summary>
    public IEnumerable<string> Nodes => _nodes;

    /// <summary>The grounded nodes of a boat.</summary>
    public static Grounding Of(BoatModel boat, Wiring wiring)
    {
        Queue<string> queue = new(Bonds.Of(boat.All<Part>()).Select(bond => bond.ToString())
            .Concat(boat.All<Part>().Where(part => Poles.Giving(part) is { IsAc: true })
                .SelectMany(EarthedTerminals)));
        HashSet<string> grounded = [.. queue];
        Dictionary<string, string> shared = SharedMinuses(boat);
        while (queue.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Where(edge => edge.Kind != WiringEdgeKind.ProtectionPole || edge.Id.EndsWith(".2", StringComparison.Ordinal))
                .Select(edge => edge.Other(node)))
            {
                if (grounded.Add(next))
                {
                    queue.Enqueue(next);
                }
            }

            if (shared.TryGetValue(node, out string? twin) && grounded.Add(twin))
            {
                queue.Enqueue(twin);
            }
        }

        return new Grounding(grounded.ToFrozenSet(StringComparer.Ordinal));
    }

    private static IEnumerable<string> EarthedTerminals(Part source)
    {
        yield return source.At(TerminalNames.Earth).ToString();
        if (source is not (Inverter { NeutralBond: NeutralBond.Never } or ShoreInlet { NeutralBond: NeutralBond.Never }))
        {
            yield return source.At(TerminalNames.Neutral).ToString();
        }
    }

    private static Dictionary<string, string> SharedMinuses(BoatModel boat)
    {
        Dictionary<string, string> shared = new(StringComparer.Ordinal);
        foreach (DcConverter converter in boat.All<DcConverter>().Where(converter => !converter.IsIsolated))
        {
            string input = converter.At(TerminalNames.InMinus).ToString(), output = converter.At(TerminalNames.OutMinus).ToString();
            shared[input] = output;
            shared[output] = input;
        }

        return shared;
    }
}
