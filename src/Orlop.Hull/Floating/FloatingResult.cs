using System.Collections.Immutable;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>How the boat ends.</summary>
public enum FloatingStatus
{
    /// <summary>She lies at rest, within 90° of upright.</summary>
    Floats,

    /// <summary>She comes to rest more than 90° from upright.</summary>
    Capsizes,

    /// <summary>She floated whole, and goes under with her flooded spaces.</summary>
    Sinks,

    /// <summary>Whole as she is, she weighs more than all the water she can push aside.</summary>
    DoesNotFloat,

    /// <summary>The search ended without an answer; nothing may be concluded.</summary>
    NotConverged,
}

/// <summary>Where a loaded boat comes to rest. Position and all that goes with it are null unless she floats, upright or capsized.</summary>
/// <param name="Status">How she ends.</param>
/// <param name="Message">The same in a sentence.</param>
/// <param name="MassKg">All masses, liquids in tanks among them.</param>
/// <param name="Position">The position, if there is one.</param>
/// <param name="StepCount">Steps of the search.</param>
/// <param name="ResidualRatio">Greatest remaining imbalance: force over weight, or moment over weight times length or breadth.</param>
public sealed record FloatingResult(FloatingStatus Status, string Message, double MassKg, FloatingPosition? Position, int StepCount, double ResidualRatio)
{
    /// <summary>The side she capsizes to: 1 for starboard, -1 for port, 0 where she balances upright and may go either way; null unless she capsizes.</summary>
    public int? CapsizedSide { get; init; }

    /// <summary>How GM comes about; empty without a position.</summary>
    public ImmutableArray<WorkingStep> Working() => Position is not { } at
        ? []
        :
        [
            new WorkingStep("Δ", FormattableString.Invariant($"{at.DisplacedM3:0.####} m³ displaced"), MassKg, "kg", "Archimedes"),
            new WorkingStep("BM", "I/V, waterplane about its own centroid", at.MetacentricRadiusM, "m", "BM = I/V"),
            new WorkingStep("BG", FormattableString.Invariant($"G {at.CentreOfGravity}, B {at.CentreOfBuoyancy}"), at.GravityOverBuoyancyM, "m", "plumb distance"),
            new WorkingStep("free surface", "Σρ·i/Δ at this attitude", at.FreeSurfaceLossM, "m", "liquid level in each tank"),
            new WorkingStep("GM", FormattableString.Invariant($"{at.MetacentricRadiusM:0.####} − {at.GravityOverBuoyancyM:0.####} − {at.FreeSurfaceLossM:0.####}"), at.MetacentricHeightM, "m", "GM = BM − BG − free surface"),
        ];
}

/// <summary>A position of rest.</summary>
public sealed record FloatingPosition
{
    public required Attitude Attitude { get; init; }

    /// <summary>False when the smallest push would send her elsewhere.</summary>
    public required bool IsStable { get; init; }

    /// <summary>True when she is not stable upright, so that she may lie as well at the same angle to the other side (angle of loll).</summary>
    public required bool IsLoll { get; init; }

    /// <summary>Volume pushed aside, flooded spaces not counted.</summary>
    public required double DisplacedM3 { get; init; }

    /// <summary>Centre of that volume.</summary>
    public required Point3 CentreOfBuoyancy { get; init; }

    /// <summary>Centre of all masses with tank liquids where they lie at this attitude.</summary>
    public required Point3 CentreOfGravity { get; init; }

    /// <summary>Height of the metacentre over G, plumb: stiffness in turning about the level fore-and-aft axis over weight, free surfaces taken off.</summary>
    public required double MetacentricHeightM { get; init; }

    /// <summary>Transverse metacentre over B: second moment of the waterplane about its own centroid over volume, flooded spaces taken off.</summary>
    public required double MetacentricRadiusM { get; init; }

    /// <summary>G over B, plumb.</summary>
    public required double GravityOverBuoyancyM { get; init; }

    /// <summary>What the free surfaces in tanks take off GM at this position.</summary>
    public required double FreeSurfaceLossM { get; init; }

    /// <summary>Stiffness in trim over weight at this position, free surfaces taken off.</summary>
    public required double LongitudinalMetacentricHeightM { get; init; }

    /// <summary>Area of water plane cut by all buoyancy, flooded spaces not counted.</summary>
    public required double WaterplaneAreaM2 { get; init; }
}
