using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>A wall, deck or lid of a space.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="ConductanceWPerK">U times its area, 0 or more.</param>
/// <param name="OutsideC">Temperature on its other side, sun counted in; null where a space that is reckoned too is there.</param>
/// <param name="SpaceId">The space on its other side, where that is reckoned too.</param>
public sealed record SpaceSide(string Name, double ConductanceWPerK, double? OutsideC, string? SpaceId = null);

/// <summary>A space whose temperature is sought.</summary>
public sealed record HeatedSpace
{
    /// <summary>What it is called.</summary>
    public required string Id { get; init; }

    /// <summary>Heat set free in it, 0 to 1e6.</summary>
    public required double HeatW { get; init; }

    /// <summary>Its sides; none where nobody described them.</summary>
    public ImmutableArray<SpaceSide> Sides { get; init; } = [];

    /// <summary>Its openings to the air around; none for a closed space.</summary>
    public ImmutableArray<AirOpening> Openings { get; init; } = [];

    /// <summary>Air that a fan moves through it, 0 or more.</summary>
    public double FanM3PerH { get; init; }

    /// <summary>Air that its openings take in; null where it comes from a space that is reckoned too.</summary>
    public double? AirC { get; init; }

    /// <summary>The space its air comes from, where that is reckoned too.</summary>
    public string? AirSpaceId { get; init; }

    /// <summary>What its air and what stands in it store, J/K.</summary>
    public double CapacityJPerK { get; init; }
}

/// <summary>Spaces that are reckoned together: one may draw its air from another.</summary>
/// <param name="Subject">What it is, for messages.</param>
public sealed record SpaceHeatInput(string Subject, ImmutableArray<HeatedSpace> Spaces);

/// <summary>A space at rest.</summary>
/// <param name="Id">The space.</param>
/// <param name="InsideC">Its temperature.</param>
/// <param name="AirC">Of the air that its openings take in; null without any.</param>
/// <param name="FlowM3PerH">Air that passes, at the density of the air around.</param>
/// <param name="AirW">Heat that the air takes along.</param>
/// <param name="SidesW">Heat through its sides.</param>
public sealed record SpaceRest(string Id, double InsideC, double? AirC, double FlowM3PerH, double AirW, double SidesW);

/// <summary>Spaces at rest.</summary>
/// <param name="Spaces">Each, in the order of the input; none where <paramref name="WhyNone"/> says why.</param>
/// <param name="WhyNone">Why there is no answer; null where there is.</param>
/// <param name="ImbalanceFraction">What the balance of heat lacks at most, over all heat that flows, a milliwatt at least.</param>
public sealed record SpaceHeatResult(ImmutableArray<SpaceRest> Spaces, string? WhyNone, double ImbalanceFraction);
