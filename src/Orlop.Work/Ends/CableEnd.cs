using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Work.Ends;

/// <summary>One end of one core, as it is made off.</summary>
public sealed record CableEnd
{
    /// <summary>The joint's element id: <c>winch-feed.plus@from</c>.</summary>
    public required string Key { get; init; }

    public required string CableId { get; init; }

    public required string CoreId { get; init; }

    /// <summary>The terminal it goes to.</summary>
    public required Terminal At { get; init; }

    /// <summary>The terminal in words: "Winch fuse, in".</summary>
    public required string Where { get; init; }

    public required double AreaMm2 { get; init; }

    /// <summary>What is crimped on; null when nobody said.</summary>
    public TerminationMeans? Means { get; init; }

    /// <summary>Thread that it goes over, in mm: its own, else its stud's, else that of the other rings on the stud; null where none of them tells it, and for what goes over none.</summary>
    public double? StudMm { get; init; }

    /// <summary>It goes over a stud, and nothing tells of what thread: one looks on board.</summary>
    public bool IsThreadUntold => Means is TerminationMeans.Ring or TerminationMeans.Fork && StudMm is null;

    /// <summary>Conductor that its barrel is made for; null where nobody said: one of the conductor's own size is brought.</summary>
    public double? LugMm2 { get; init; }

    /// <summary>Insulation to strip, in mm; null where the data does not reach.</summary>
    public double? StripMm { get; init; }

    /// <summary>Least force at which a test crimp of this size may pull out, in newtons; null for a size without a value, or an end that is not crimped.</summary>
    public PullForce? Pull { get; init; }

    /// <summary>How tight, where a table has the connection; otherwise the maker's figure is asked for.</summary>
    public TerminalTorque? Torque { get; init; }

    /// <summary>The end's screw or nut is tightened: it wants a torque.</summary>
    public bool IsTightened => Means is TerminationMeans.Ring or TerminationMeans.Fork or TerminationMeans.Screw or TerminationMeans.Ferrule;

    /// <summary>Heat-shrink goes over its barrel: it is crimped, and no contact that must go into a plug's housing.</summary>
    public bool IsSleeved => Pull is not null && Means is not TerminationMeans.Contact;

    /// <summary>It was there before, on the same terminal and made off the same way: it is lifted for the tests and put back, not made off.</summary>
    public bool IsKept { get; init; }

    /// <summary>The device that is exchanged, for which an end of a cable that stays is made anew; null where the cable is run or changed itself.</summary>
    public string? ForDevice { get; init; }

    /// <summary>What it is made off with: the cable that is run or changed, or the device that is exchanged.</summary>
    public string With => ForDevice ?? CableId;

    /// <summary>The day it was recorded as built, or null.</summary>
    public DateOnly? BuiltOn { get; init; }
}
