using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>One thing along a chain, as it is shown.</summary>
public sealed record ChainItemView
{
    /// <summary>The thing.</summary>
    public required Thing Thing { get; init; }

    /// <summary>What it is: "fuse".</summary>
    public required string Kind { get; init; }

    /// <summary>What matters of it in a line.</summary>
    public required string Facts { get; init; }

    /// <summary>Voltage behind it while running, in volts; null when unknown.</summary>
    public double? RunningV { get; init; }

    /// <summary>Voltage behind it while the load starts, in volts; null when it starts softly or unknown.</summary>
    public double? StartingV { get; init; }

    /// <summary>Length of conductor from the source to its far end, in metres; null when a cable on the way has no length.</summary>
    public double? AlongM { get; init; }

    /// <summary>Its findings, worst first.</summary>
    public required IReadOnlyList<FindingRow> Findings { get; init; }

    /// <summary>The worst of them; null when there is none.</summary>
    public Verdict? Worst => Findings.Count == 0 ? null : Findings.Select(row => row.Verdict).MaxBy(Verdicts.Weight);

    /// <summary>The open draft adds or changes it.</summary>
    public bool IsChanged { get; init; }

    /// <summary>Its index in the chain's way out; null for the source and the load.</summary>
    public int? OutIndex { get; init; }
}
