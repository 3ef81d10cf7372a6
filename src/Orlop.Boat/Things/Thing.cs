using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Orlop.Boat.Things;

/// <summary>
/// Anything in a boat that has an id. A boat is a list of things; an edit adds, replaces or removes one of them.
/// To add a kind: derive a sealed record with a <see cref="Values.KindAttribute"/>; <see cref="ThingKinds"/> finds it.
/// </summary>
public abstract record Thing
{
    /// <summary>Readable and stable: small letters, digits and hyphens, unique in the boat.</summary>
    [JsonPropertyOrder(-3)]
    [Description("Readable, stable id: small letters, digits and hyphens, unique in the boat.")]
    public required string Id { get; init; }

    [JsonPropertyOrder(-2)]
    [Description("What people call it.")]
    public string? Name { get; init; }

    [JsonPropertyOrder(100)]
    [Description("Anything worth remembering.")]
    public string? Note { get; init; }

    /// <summary>The name, or the id where there is none.</summary>
    [JsonIgnore]
    public string Title => string.IsNullOrWhiteSpace(Name) ? Id : Name;
}
