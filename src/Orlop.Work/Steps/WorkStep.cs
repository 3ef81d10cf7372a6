using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Work.Steps;

/// <summary>One step of a visit, to be ticked when it is done.</summary>
public sealed record WorkStep
{
    /// <summary>Made of what is done and the id it is done to (<c>connect:winch-feed</c>), so that a tick survives planning again.</summary>
    public required string Key { get; init; }

    public required StepKind Kind { get; init; }

    /// <summary>What to do.</summary>
    public required Sentence Text { get; init; }

    /// <summary>What to mind while doing it: places, sizes, torques.</summary>
    public ImmutableArray<Sentence> Details { get; init; } = [];

    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>How many people it needs, 1 or more: 2 where something is lifted that one does not lift, or nobody said what it weighs; where two read, or one must be able to switch off (common practice, no source).</summary>
    public int PeopleCount { get; init; } = 1;

    /// <summary>Ids of the things it is about.</summary>
    public ImmutableArray<string> About { get; init; } = [];

    /// <summary>Ids of the edits that are built once this step is done. Each edit of an alteration is built by exactly one step.</summary>
    public ImmutableArray<string> Builds { get; init; } = [];

    /// <summary>Keys of the cable ends made off in this step.</summary>
    public ImmutableArray<string> Ends { get; init; } = [];

    /// <summary>What is read off a meter in this step and written down, beside the readings at commissioning; null where nothing is.</summary>
    public WriteDown? WriteDown { get; init; }

    /// <summary>Keys of the readings taken in this step.</summary>
    public ImmutableArray<string> Readings { get; init; } = [];

    /// <summary>The tick the alteration holds for this step, or null.</summary>
    public StepTick? Tick { get; init; }

    /// <summary>What was read in it and typed before it is ticked, or null.</summary>
    public StepRemark? Remark { get; init; }

    /// <summary>Day on which everything it builds was recorded as built, or null.</summary>
    public DateOnly? BuiltOn { get; init; }

    /// <summary>Its tick holds for the day it was given and no longer: what was opened, proved dead or closed on one visit must be so again on the next.</summary>
    public bool IsForOneDay => Kind is StepKind.Isolate or StepKind.ProveDead or StepKind.Energise;

    /// <summary>Ticked; a step of one day counts only when it was ticked on this day. What is recorded as built is not done by that: nobody has said that the step was taken.</summary>
    public bool IsDoneOn(DateOnly day) => Tick is { } tick && (!IsForOneDay || tick.On == day);
}
