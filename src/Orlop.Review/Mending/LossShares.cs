using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Mending;

/// <summary>Where the voltage on the way to a load is lost, in V: each at least 0 but where current flows the other way.</summary>
/// <param name="SourceV">Inside the battery that feeds it.</param>
/// <param name="JointsV">In joints and links.</param>
/// <param name="DevicesV">In fuses, breakers, switches and contacts.</param>
/// <param name="CablesV">In cables.</param>
internal sealed record LossShares(double SourceV, double JointsV, double DevicesV, double CablesV)
{
    /// <summary>Between the source's terminals and the load, in V.</summary>
    public double OnWayV => JointsV + DevicesV + CablesV;

    private double TotalV => SourceV + OnWayV;

    /// <summary>The shares of a load's way in a case; null where they cannot be told.</summary>
    public static LossShares? Of(ElectricsView view, Part taker, Condition condition, NetworkCase networkCase)
    {
        SolvedNetwork solved = view.Solve(networkCase);
        ShortestWay way = view.WayTo(taker, condition);
        if (way.SourceId is not { } id || view.Boat.Find<Part>(id) is not { } source || solved.LoadV(taker.Id) is null)
        {
            return null;
        }

        ILookup<WiringEdgeKind, double> lost = LossOnWay.Pieces(view, solved, way, source, taker).ToLookup(piece => piece.Edge.Kind, piece => piece.LossV);
        double cablesV = lost[WiringEdgeKind.Core].Sum(), jointsV = lost[WiringEdgeKind.Joint].Concat(lost[WiringEdgeKind.Link]).Sum();
        double inside = solved.NetworkOf(taker.Id)?.Batteries.FirstOrDefault(battery => battery.Id == id) is { } battery && solved.SourceA(id) is { } givenA ? givenA * battery.InternalOhm : 0;
        LossShares shares = new(inside, jointsV, lost.Sum(kind => kind.Sum()) - cablesV - jointsV, cablesV);
        return double.IsFinite(shares.TotalV) && shares.OnWayV > 0 ? shares : null;
    }

    /// <summary>The shares in words; what is lost inside the source only where the finding counts it.</summary>
    public Sentence Words(bool isSourceCounted)
    {
        double wholeV = isSourceCounted ? TotalV : OnWayV;
        Sentence Share(double lostV, string where) => Sentence.Of($"{V(lostV)} ({Fraction(lostV / wholeV)}) {where}");
        Sentence way = Sentence.Of($"{Share(CablesV, "in cables")}, {Share(JointsV, "in joints and links")}, {Share(DevicesV, "in devices and contacts")}");
        return isSourceCounted ? Sentence.Of($"Of {V(wholeV)} lost: {Share(SourceV, "inside the source")}, {way}") : Sentence.Of($"Of {V(wholeV)} lost: {way}; {V(SourceV)} more inside the source, which do not count here");
    }

    /// <summary>What takes most of the greatest share away.</summary>
    public string Help(bool isSourceCounted) => (isSourceCounted ? [SourceV, JointsV, DevicesV, CablesV] : new[] { 0, JointsV, DevicesV, CablesV }) switch
    {
        var each when each.Max() == CablesV => "a shorter way, a source nearer to it, or terminals that take a thicker cable",
        var each when each.Max() == DevicesV => "a device or plug of less resistance, or one less on the way",
        var each when each.Max() == JointsV => "fewer joints, and these measured: one that is bad is made anew",
        _ => "a battery of less resistance or one more beside it, a start that draws less, or a lowest charge that is higher",
    };
}
