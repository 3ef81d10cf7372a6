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

    /// <summary>How many people it needs, 1 or more: 2 where something is lifted that one does not lift; where one holds what another takes off; where two read, or one stands at a switch (common practice, no source).</summary>
    public int PeopleCount { get; init; } = 1;

    /// <summary>Nobody has said what something weighs that it lifts: it may need one more.</summary>
    public bool IsMassUntold { get; init; }

    /// <summary>What it lifts is lifted with lifting gear marked for the load only: no number of people lifts it instead.</summary>
    public bool IsByGear { get; init; }

    /// <summary>Ids of the things it is about.</summary>
    public ImmutableArray<string> About { get; init; } = [];

    /// <summary>Ids of the edits that are built once this step is done. Each edit of an alteration is built by exactly one step.</summary>
    public ImmutableArray<string> Builds { get; init; } = [];

    /// <summary>Keys of the cable ends made off in this step.</summary>
    public ImmutableArray<string> Ends { get; init; } = [];

    /// <summary>It connects to a point that nothing makes dead, as a battery's post: what it connects is live from then on.</summary>
    public bool IsOntoLive { get; init; }

    /// <summary>What is read off a meter in this step and written down, beside the readings at commissioning; null where nothing is.</summary>
    public WriteDown? WriteDown { get; init; }

    /// <summary>Ids of the breakers and switches that must be on while it is read, the nearest to the source first: put on for it where they are off, and off again after a reading before anything is opened.</summary>
    public ImmutableArray<string> PutOn { get; init; } = [];

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

    /// <summary>Ticked; a step of one day counts only when it was ticked on this day. What is recorded as built is not ticked by that: nobody has said that the step was taken.</summary>
    public bool IsTickedOn(DateOnly day) => Tick is { } tick && CountsOn(day, tick.On);

    /// <summary>Ticked, and what was read in it does not speak against it: a test that failed stays open, whatever its box says.</summary>
    public bool IsDoneOn(DateOnly day) => IsTickedOn(day) && TestOn(day) is not { LetsGoOn: false };

    /// <summary>What was read in it, as typed, where it counts on a day; else null. What is done anew on each visit is read anew, too: what was read on another day proves nothing.</summary>
    public string? NoteOn(DateOnly day) => IsTickedOn(day) ? Tick!.Remark : Remark is { } remark && CountsOn(day, remark.On) ? remark.Remark : null;

    /// <summary>Its owner has left it out, and said why in its remark: it is not done, and what rests on it asks as for any open step.</summary>
    public bool IsLeftOutOn(DateOnly day) => !IsTickedOn(day) && Remark is { IsLeftOut: true } remark && CountsOn(day, remark.On);

    /// <summary>The berth test that was typed in after the work, where the step asks for one; null where none is.</summary>
    public BerthTest? Kept { get; init; }

    /// <summary>The berth test that was typed in after the work and lists some of it otherwise than it is, and what, by title; null where there is none, or another counts.</summary>
    public (BerthTest Test, ImmutableArray<string> Things)? Unlisted { get; init; }

    /// <summary>What was read in it, held against what its test accepts, where it counts on a day; null where nothing was read, or nothing is tested.</summary>
    public StepTest? TestOn(DateOnly day) => Kind == StepKind.Weigh ? IsTickedOn(day) ? Unweighed : null : WriteDown?.Into is { } kind ? Kept is null && Unlisted is null && !IsTickedOn(day) ? null : StepTest.Of(kind, Kept, Unlisted) : StepTest.Of(this, NoteOn(day)) ?? (IsTickedOn(day) ? Untyped : null);

    /// <summary>The same as it would be once the step is ticked: what is asked for and not typed in speaks against the tick.</summary>
    public StepTest? TestWhenTickedOn(DateOnly day) => Kind == StepKind.Weigh ? Unweighed : WriteDown?.Into is { } kind ? StepTest.Of(kind, Kept, Unlisted) : TestOn(day) ?? Untyped;

    /// <summary>The last reading of its test, of whatever day, where it did not pass; else null. It stands until another one is typed. While some readings are still to be typed, nothing has failed before it is ticked.</summary>
    public StepTest? Failed => Kind == StepKind.Weigh ? Tick is null ? null : Unweighed : WriteDown?.Into is { } kind ? Kept is null && (Unlisted is not null || Tick is not null) ? StepTest.Of(kind, null, Unlisted) : null
        : StepTest.Of(this, Remark is { } remark && !(Tick?.On > remark.On) ? remark.Remark : Tick?.Remark) is { LetsGoOn: false } failed && (failed.Standing != TestStanding.TooFew || Tick is not null) ? failed : null;

    /// <summary>What speaks against going on, on a day: a test that did not pass; one of which readings are still to be typed only once it is ticked. Else null.</summary>
    public StepTest? AgainstOn(DateOnly day) => TestOn(day) is { LetsGoOn: false } test && (test.Standing != TestStanding.TooFew || IsTickedOn(day)) ? test : null;

    // What opens, proves dead or makes live by a reading proves nothing without one.
    private StepTest? Untyped => IsForOneDay && WriteDown is { Into: null, Accepts: { IsEmpty: false } accepts } ? StepTest.Untyped(accepts.Length) : null;

    // It is there only while something is not weighed.
    private StepTest Unweighed => StepTest.Unweighed(About.Length);

    private bool CountsOn(DateOnly day, DateOnly on) => !IsForOneDay || on == day;
}
