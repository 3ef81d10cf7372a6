using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Review.Electrics;

/// <summary>A core's end, or the end of a link, at a terminal.</summary>
/// <param name="ElementId">The joint of the core, or the link: what the current through it is told by.</param>
/// <param name="Owner">The cable or link.</param>
/// <param name="Core">The core; null for a link.</param>
/// <param name="End">How the core is made off; null where nobody has said, and for a link.</param>
public sealed record StudRing(string ElementId, Thing Owner, Core? Core, Termination? End)
{
    /// <summary>It is bolted on: a ring, a fork or a link.</summary>
    public bool IsBolted => Core is null || End is { Means: TerminationMeans.Ring or TerminationMeans.Fork };

    /// <summary>It may be bolted on, for all that is known.</summary>
    public bool MayBeBolted => IsBolted || End is null;

    /// <summary>What people call it: the cable with its core where it has several.</summary>
    public string Title => Core is not null && ((Cable)Owner).Cores.Count > 1 ? $"{Owner.Title}, {Core.Id}" : Owner.Title;
}

/// <summary>What is bolted to each terminal of a boat, in the owner's order.</summary>
public sealed class StudRings
{
    private readonly ILookup<Terminal, StudRing> _rings;

    private StudRings(ILookup<Terminal, StudRing> rings) => _rings = rings;

    /// <summary>All terminals that something may be bolted to, with what is there.</summary>
    public IEnumerable<IGrouping<Terminal, StudRing>> All => _rings;

    /// <summary>What may be bolted to a terminal.</summary>
    public IEnumerable<StudRing> At(Terminal terminal) => _rings[terminal];

    /// <summary>
    /// Thread that a ring or fork must go over, in mm: its stud's where that is told, else that of the other rings on the terminal where they are all of one; null where nothing tells it. A bar has
    /// studs enough: its rings say nothing of each other.
    /// </summary>
    /// <param name="part">The part whose terminal it is; null where it is not in the boat.</param>
    /// <param name="at">The terminal.</param>
    /// <param name="elementId">The ring's own joint, which does not count.</param>
    public double? ThreadMm(Part? part, Terminal at, string elementId)
    {
        double[] others = part is Busbar ? [] : [.. At(at).Where(ring => ring.ElementId != elementId).Select(ring => ring.End?.StudMm).OfType<double>()];
        return part?.StudOf(at.Name)?.SizeMm ?? (others.Length > 0 && others.Max() - others.Min() <= SameThreadMm ? others[0] : null);
    }

    /// <summary>Threads no further apart are one, in mm: M8 for 5/16 in, M10 for 3/8 in.</summary>
    public const double SameThreadMm = 0.5;

    /// <summary>The rings, forks and links of a boat.</summary>
    public static StudRings Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        IEnumerable<(Terminal At, StudRing Ring)> ofCables =
            from cable in boat.All<Cable>()
            from core in cable.Cores
            from end in new[] { (core.From, new StudRing(ElementIds.FromJoint(cable, core), cable, core, core.FromEnd)), (core.To, new StudRing(ElementIds.ToJoint(cable, core), cable, core, core.ToEnd)) }
            select end;
        IEnumerable<(Terminal At, StudRing Ring)> ofLinks = boat.All<Link>().SelectMany(link => new[] { link.From, link.To }.Select(at => (at, new StudRing(link.Id, link, null, null))));
        return new StudRings(ofCables.Concat(ofLinks).Where(end => end.Ring.MayBeBolted).ToLookup(end => end.At, end => end.Ring));
    }
}
