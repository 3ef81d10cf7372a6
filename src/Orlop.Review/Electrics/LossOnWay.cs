using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics;

/// <summary>The voltage lost between a source and what it feeds, piece by piece: cores, joints, links, poles and contacts, out and back.</summary>
internal static class LossOnWay
{
    // A piece that loses less than this carries nothing.
    private const double NothingV = 1e-9;

    /// <summary>Each piece with its loss, and their sum; none where the way is not whole.</summary>
    public static IEnumerable<WorkingLine> Lines(ElectricsView view, SolvedNetwork solved, ShortestWay way, Part source, Part taker)
    {
        (string What, double LossV)[] pieces =
        [
            .. Pieces(view, solved, way, source, taker)
                .GroupBy(piece => NameOf(piece.Edge), (what, all) => (what, all.Sum(piece => piece.LossV)))
                .Where(piece => Math.Abs(piece.Item2) > NothingV),
        ];
        return pieces.Length == 0 ? [] :
        [
            .. pieces.Select(piece => new WorkingLine(piece.What, "lost in it", V(piece.LossV), "")),
            new WorkingLine("All pieces together", SumOf([.. pieces.Select(piece => piece.LossV)]), V(pieces.Sum(piece => piece.LossV)), ""),
        ];
    }

    /// <summary>Each edge on the way out and back with the voltage lost in it, in V; none where the way is not whole.</summary>
    public static IEnumerable<(WiringEdge Edge, double LossV)> Pieces(ElectricsView view, SolvedNetwork solved, ShortestWay way, Part source, Part taker) =>
        Poles.Giving(source) is { } giving && Poles.Taking(taker) is { } taking
            ? Along(view, solved, way, giving.Plus, taking.Plus).Concat(Along(view, solved, way, taking.Minus, giving.Minus))
            : [];

    private static string SumOf(double[] losses)
    {
        string form = string.Concat(losses.Select((loss, index) => string.Create(
            CultureInfo.InvariantCulture, $"{(loss < 0 ? index == 0 ? "0 − " : " − " : index == 0 ? "" : " + ")}{{{index}}}")));
        return Formula.Of(form, sizes => sizes.Select((size, index) => losses[index] < 0 ? -size : size).Sum(), [.. losses.Select(Math.Abs)]);
    }

    private static IEnumerable<(WiringEdge Edge, double LossV)> Along(ElectricsView view, SolvedNetwork solved, ShortestWay way, string from, string to)
    {
        HashSet<string> passed = [];
        for (string node = from; node != to;)
        {
            if (view.Wiring.At(node).FirstOrDefault(edge => way.Holds(edge.Id) && !passed.Contains(edge.Id)) is not { } next)
            {
                yield break;
            }

            passed.Add(next.Id);
            yield return (next, solved.BetweenV(node, next.Other(node)) ?? 0);
            node = next.Other(node);
        }
    }

    /// <summary>What an edge is called in a working.</summary>
    public static string NameOf(WiringEdge edge) => edge.Kind switch
    {
        WiringEdgeKind.Core => $"{edge.Owner.Title}, core {edge.Core!.Id}",
        WiringEdgeKind.Joint => $"{edge.Owner.Title}, joints of core {edge.Core!.Id}",
        WiringEdgeKind.PlugContact => $"{edge.Owner.Title}, contacts",
        WiringEdgeKind.ProtectionPole or WiringEdgeKind.SwitchPole or WiringEdgeKind.ChangeoverPole or WiringEdgeKind.Link => edge.Owner.Title,
        _ => edge.Id,
    };
}
