using System.Collections.Immutable;
using Orlop.Boat.Topology;
using Orlop.Electrics.Diagnosis;
using Orlop.Review.Findings;

namespace Orlop.Work.Readings;

/// <summary>A joint or conductor that would explain the readings.</summary>
/// <param name="ElementId">Element of the network.</param>
/// <param name="Where">In words: "the end of Drying locker feed, minus core, at Fan heater, minus".</param>
/// <param name="ExtraOhm">Resistance above what it should have.</param>
/// <param name="PlusMinusOhm">One standard deviation; null when the readings do not fix it.</param>
/// <param name="WeightFraction">How likely it is among all single faults and "nothing is wrong", 0 to 1.</param>
/// <param name="ExtraHeatW">Heat in the extra resistance while the readings were taken.</param>
public sealed record FaultSuspect(string ElementId, string Where, double ExtraOhm, double? PlusMinusOhm, double WeightFraction, double ExtraHeatW)
{
    /// <summary>Id of the thing it is part of, for its isolation plan.</summary>
    public string ThingId => ElementIds.ThingOf(ElementId);
}

/// <summary>The reading that would tell the suspects apart best.</summary>
public sealed record NextProbe(string PlusNode, string MinusNode, Sentence Text);

/// <summary>A reading that was left out, and why.</summary>
public sealed record LeftOut(string ReadingId, string Why);

/// <summary>What the readings of one condition say about bad joints.</summary>
public sealed record FaultReport
{
    public required string ConditionId { get; init; }

    /// <summary>Id of the part that takes the power whose circuit was searched; null where none was.</summary>
    public string? TakerId { get; init; }

    public required DiagnosisStatus Status { get; init; }

    /// <summary>What a boat owner reads.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>The likely ones, best first.</summary>
    public ImmutableArray<FaultSuspect> Suspects { get; init; } = [];

    /// <summary>What to mind before a suspect is opened; null where none is named.</summary>
    public Sentence? Caution { get; init; }

    public NextProbe? Next { get; init; }

    /// <summary>The reading that lies farthest from what the others say, where they do not fit together; else null.</summary>
    public string? MeasureAgainId { get; init; }

    public ImmutableArray<LeftOut> LeftOut { get; init; } = [];

    /// <summary>What was taken for granted.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];
}
