using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>Where the neutral that a source feeds is joined to earth while it feeds.</summary>
/// <param name="Places">Each place, in words: inside the source, inside another whose neutral is joined, along a conductor on board.</param>
/// <param name="OnBoard">Those along conductors on board.</param>
/// <param name="BehindResidual">Those of them that lie behind a residual-current device, seen from the source: it is blind to a fault.</param>
/// <param name="Missing">The sources that do not say.</param>
internal sealed record NeutralBonds(ImmutableArray<string> Places, ImmutableArray<WiringEdge> OnBoard, ImmutableArray<WiringEdge> BehindResidual, ImmutableArray<FindingInput> Missing)
{
    /// <summary>What a source says of its own bond; null where it says nothing, or is none.</summary>
    public static NeutralBond? Said(Part source) => source switch
    {
        Inverter inverter => inverter.NeutralBond,
        ShoreInlet inlet => inlet.NeutralBond,
        _ => null,
    };

    /// <summary>The bonds of a source's neutral in a condition.</summary>
    public static NeutralBonds Of(ElectricsView view, Part source, Condition condition)
    {
        BondEdges edges = BondEdges.Of(view, source, condition);
        HashSet<string> before = edges.All.IsEmpty ? [] : BondEdges.BeforeResidual(view, source, condition);
        List<string> places = [];
        List<FindingInput> missing = [];
        foreach (Part other in AcCircuits.Sources(view).Where(part => edges.Joined.Contains(part.At(TerminalNames.Neutral).ToString())))
        {
            NeutralBond? said = Said(other);
            if (said is null)
            {
                missing.Add(new FindingInput(other.Id, "neutralBond", IsMissing: true));
            }
            else if (said is NeutralBond.Always or NeutralBond.OwnEarth || (said == NeutralBond.WhileFeeding && other.Id == source.Id))
            {
                places.Add(other is ShoreInlet ? $"ashore, by {other.Title}" : $"inside {other.Title}");
            }
        }

        ImmutableArray<WiringEdge> onBoard = [.. edges.All.Select(bond => bond.Edge)];
        return new NeutralBonds(
            [.. places, .. onBoard.Select(edge => $"along {edge.Owner.Title}")], onBoard,
            [.. edges.All.Where(bond => !before.Contains(bond.NeutralNode)).Select(bond => bond.Edge)], [.. missing]);
    }
}
