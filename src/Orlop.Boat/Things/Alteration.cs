using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>How far an alteration has come.</summary>
public enum AlterationStatus { Draft, Accepted, UnderWay, Built, Dropped }

/// <summary>A named, ordered list of edits drafted against the boat as built, and what was done of it.</summary>
[Kind("alteration")]
public sealed record Alteration : Thing
{
    [Description("How far it has come.")]
    public AlterationStatus Status { get; init; } = AlterationStatus.Draft;

    [Description("Day on which it was accepted into the plan; left out where it is not accepted, or nobody recorded when.")]
    public DateOnly? AcceptedOn { get; init; }

    [Description("Why it is wanted.")]
    public string? Purpose { get; init; }

    [Description("The edits, in order.")]
    public ValueList<Edit> Edits { get; init; } = [];

    [Description("Steps of its work pack that are done.")]
    public ValueList<StepTick> Ticks { get; init; } = [];

    [Description("What was read in steps that are not ticked, and why one is left out.")]
    public ValueList<StepRemark> StepRemarks { get; init; } = [];
}

/// <summary>One edit of an alteration: adds, replaces or removes one thing.</summary>
public sealed record Edit
{
    [JsonPropertyOrder(-1)]
    [Description("Id of the thing that is added, replaced or removed.")]
    public required string Id { get; init; }

    [Description("The thing as it was in the boat when the edit was drafted; left out for an addition.")]
    public Thing? Was { get; init; }

    [Description("The thing as it will be; left out for a removal.")]
    public Thing? Becomes { get; init; }

    [Description("Day it was built; it is part of the boat as built from then on.")]
    public DateOnly? BuiltOn { get; init; }
}

/// <summary>A step of a work pack that was done.</summary>
public sealed record StepTick(string Step, DateOnly On, string? Remark = null);

/// <summary>What was read in a step that is not ticked, in the words it was typed in; a tick takes it over.</summary>
public sealed record StepRemark(string Step, DateOnly On, string Remark, [property: Description("The step is left out; the remark says why.")] bool IsLeftOut = false);
