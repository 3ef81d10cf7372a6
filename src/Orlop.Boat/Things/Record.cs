using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>A measured voltage between two terminals or current through an element, in a condition.</summary>
[Kind("reading")]
public sealed record Reading : Thing
{
    [Description("The alteration it was taken for."), RefersTo(typeof(Alteration))]
    public string? Alteration { get; init; }

    [Description("The condition it was taken in."), RefersTo(typeof(Condition))]
    public required string Condition { get; init; }

    [Description("Terminal of the positive probe; a conductor's end inside its crimp is cable.core@from or cable.core@to.")]
    public Terminal? Plus { get; init; }

    [Description("Terminal of the negative probe.")]
    public Terminal? Minus { get; init; }

    [Description("Element the current was taken in: cable.core, a protection, a switch.")]
    public string? Through { get; init; }

    [Description("Voltage between the probes."), Allowed(-1500, 1500)]
    public Quantity? VoltageV { get; init; }

    [Description("Current through the element."), Allowed(-5000, 5000)]
    public Quantity? CurrentA { get; init; }

    [Description("Day it was taken.")]
    public DateOnly? On { get; init; }
}

/// <summary>A photograph of something in the boat. Its bytes are an attachment of the boat's store.</summary>
[Kind("photograph")]
public sealed record Photograph : Thing
{
    [Description("Id of what it shows."), RefersTo(typeof(Thing))]
    public required string Of { get; init; }

    [Description("SHA-256 of its bytes, in small hexadecimal letters: the attachment's name.")]
    public required string Sha256 { get; init; }

    [Description("Media type: image/jpeg, image/png or image/webp.")]
    public required string MediaType { get; init; }

    [Description("Day it was taken.")]
    public DateOnly? On { get; init; }
}
