using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>The resistance that a fault's current meets, piece by piece: batteries, cores, joints, poles.</summary>
internal static class FaultResistance
{
    // A piece smaller than this part of the whole is in the rest.
    private const double SmallFraction = 1e-4;

    /// <summary>Each piece, and their sum as the resistance of all.</summary>
    /// <param name="faults">The faults that are prepared for the network.</param>
    /// <param name="fault">The fault between the two nodes.</param>
    /// <param name="what">What the sum is called.</param>
    /// <param name="conductors">How warm the conductors are taken to be.</param>
    public static ImmutableArray<WorkingLine> Lines(ElectricsView view, PreparedFaults? faults, FaultCurrentResult fault, (string Plus, string Minus) at, string what, string conductors) =>
        view.Faults.LinesOf(faults, at, what, () => Tell(view, faults, fault, at, what, conductors));

    private static IEnumerable<WorkingLine> Tell(ElectricsView view, PreparedFaults? faults, FaultCurrentResult fault, (string Plus, string Minus) at, string what, string conductors)
    {
        if (!double.IsFinite(fault.SourceOhm))
        {
            return [new WorkingLine(what, "no metal joins them", null, "")];
        }

        (string What, ImmutableArray<FaultPiece> Pieces)[] all =
        [
            .. (faults?.PiecesBetween(at.Plus, at.Minus) ?? []).GroupBy(piece => NameOf(view, piece.Id), (name, pieces) => (name, pieces.ToImmutableArray()))
                .OrderByDescending(each => view.Boat.Find(each.Item2[0].Id) is BatteryBank),
        ];
        (string What, ImmutableArray<FaultPiece> Pieces)[] told = [.. all.Where(each => PartOf(each.Pieces) >= SmallFraction * fault.SourceOhm)];
        double[] parts = [.. told.Select(each => PartOf(each.Pieces)), .. told.Length < all.Length ? new[] { all.Except(told).Sum(each => PartOf(each.Pieces)) } : []];
        Amount sum = new(fault.SourceOhm, "Ohm");
        return told.Length == 0 ? [new WorkingLine(what, conductors, sum, "all sources and ways to the fault, as one (Thévenin)")] :
        [
            .. told.Select(each => new WorkingLine(each.What, FormOf(each.Pieces), new Amount(PartOf(each.Pieces), "Ohm"), WordsOf(view, each.Pieces[0], conductors))),
            .. told.Length < all.Length ? new[] { new WorkingLine("Pieces smaller than a ten-thousandth", "together", new Amount(parts[^1], "Ohm"), "") } : [],
            new WorkingLine(what, ResistanceForm.Sum(parts), sum, "all sources and ways to the fault, as one (Thévenin)"),
        ];
    }

    private static double PartOf(ImmutableArray<FaultPiece> pieces) => pieces.Sum(piece => piece.PartOhm);

    // Where ways lie side by side, a piece counts by the square of its share of the current.
    private static string FormOf(ImmutableArray<FaultPiece> pieces) => pieces.All(piece => piece.ShareFraction == 1)
        ? pieces.Length == 1 ? "" : ResistanceForm.Sum([.. pieces.Select(piece => piece.Ohm)])
        : ResistanceForm.Of(
            string.Join(" + ", pieces.Select((_, index) => $"{{{2 * index}}} × {{{(2 * index) + 1}}} × {{{(2 * index) + 1}}}")),
            values => values.Chunk(2).Sum(pair => pair[0] * pair[1] * pair[1]),
            [.. pieces.Select(piece => (piece.Ohm, piece.ShareFraction))]);

    private static string NameOf(ElectricsView view, string id) =>
        view.Boat.Find(id) is BatteryBank battery ? $"{battery.Title}, inside" : view.Wiring.Find(id) is { } edge ? LossOnWay.NameOf(edge) : view.Boat.Find(id)?.Title ?? id;

    private static string WordsOf(ElectricsView view, FaultPiece piece, string conductors)
    {
        string own = view.Boat.Find(piece.Id) is BatteryBank ? "its internal resistance" : view.Wiring.Find(piece.Id) is { Kind: WiringEdgeKind.Core } ? conductors : "as typed or assumed";
        return piece.ShareFraction == 1 ? own : $"{own}; its resistance by the square of its share of the current";
    }
}
