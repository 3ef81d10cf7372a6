using System.Collections.Immutable;

namespace Orlop.Electrics.Strings;

/// <summary>What the batteries of a boat are wired to, to find their strings. Nodes exist by being named.</summary>
public sealed record StringInput
{
    public required ImmutableArray<StringBattery> Batteries { get; init; }

    /// <summary>Metal between two nodes: conductors, closed contacts, fuses.</summary>
    public required ImmutableArray<StringJoin> Joins { get; init; }

    /// <summary>Loads, chargers and converters: where current enters and leaves a bank.</summary>
    public required ImmutableArray<StringOutside> Outside { get; init; }
}

/// <summary>A battery between its posts.</summary>
/// <param name="NominalV">Nominal voltage, above 0.</param>
public sealed record StringBattery(string Id, string Plus, string Minus, double NominalV);

/// <summary>Metal between two nodes.</summary>
/// <param name="IsProtection">It is a fuse or breaker.</param>
public sealed record StringJoin(string A, string B, bool IsProtection);

/// <summary>The two poles of something that takes from a bank or gives to it.</summary>
/// <param name="NominalV">The voltage that it is made for, above 0; null where it is made for none.</param>
public sealed record StringOutside(string Plus, string Minus, double? NominalV);

/// <summary>Strings side by side between the same two ends.</summary>
/// <param name="Strings">In the order of the batteries.</param>
/// <param name="FedV">Voltage that most of what is wired to both ends is made for; null where nothing is.</param>
public sealed record StringGroup(ImmutableArray<BatteryString> Strings, double? FedV);

/// <summary>Batteries one on another.</summary>
/// <param name="Members">From the plus end of the group to its minus end.</param>
/// <param name="NominalV">Sum of the nominal voltages, those that stand the wrong way round taken off.</param>
/// <param name="IsProtected">A fuse or breaker parts its plus end from every other string's; null where it stands alone.</param>
public sealed record BatteryString(ImmutableArray<StringMember> Members, double NominalV, bool? IsProtected);

/// <summary>A battery in a string.</summary>
/// <param name="IsReversed">Its plus is where its minus should be.</param>
public sealed record StringMember(string Id, bool IsReversed);
