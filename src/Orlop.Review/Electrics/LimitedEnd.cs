using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>A conductor on the way from a DC converter to what it feeds: a fault at its far end draws no more than its sources give, and may draw less.</summary>
/// <param name="Edge">The conductor.</param>
/// <param name="Cable">Its cable.</param>
/// <param name="Before">The fuses and breakers between the converter and it, from the converter on.</param>
/// <param name="Sources">All that give power to what it feeds, in the order of the boat's parts.</param>
internal sealed record LimitedEnd(WiringEdge Edge, Cable Cable, ImmutableArray<Protection> Before, ImmutableArray<Part> Sources)
{
    /// <summary>The most that the sources give together, A: the sum of their limits; infinite where a battery is among them.</summary>
    public double MostA => Sources.Sum(ProtectionReach.OwnLimitA);

    /// <summary>The ungrounded conductors on the ways from converters to takers in a condition; one that feeds several takers once for each.</summary>
    public static IEnumerable<LimitedEnd> Of(ElectricsView view, Condition condition)
    {
        foreach (Part taker in view.Boat.All<Part>())
        {
            ShortestWay way = Poles.Taking(taker) is null ? ShortestWay.None : view.WayTo(taker, condition);
            if (way.SourceId is not { } id || view.Boat.Find<DcConverter>(id) is null)
            {
                continue;
            }

            IReadOnlySet<string> elements = view.PathsIn(condition).ElementsTo(taker.Id);
            ImmutableArray<Part> sources = [.. view.Boat.All<Part>().Where(part => Poles.Giving(part) is not null && elements.Contains(part.Id))];
            List<Protection> before = [];
            foreach (WiringEdge edge in way.Out.Select(edgeId => view.Wiring.Find(edgeId)!))
            {
                if (edge.Owner is Protection device)
                {
                    before.Add(device);
                }
                else if (edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable } && !view.Grounding.IsGrounded(edge))
                {
                    yield return new LimitedEnd(edge, cable, [.. before], sources);
                }
            }
        }
    }
}
