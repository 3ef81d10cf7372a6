using System.Collections.Immutable;

namespace Orlop.Electrics.Protection;

/// <summary>A device that ends a fault, and what is known of the energy that it lets through.</summary>
public sealed record LetThroughDevice
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Rating of its overcurrent release, above 0 to 10 000.</summary>
    public required double RatingA { get; init; }

    /// <summary>Gates of its overcurrent release; null where it has none or they are not known.</summary>
    public OperatingGates? Gates { get; init; }

    /// <summary>A fuse: past its last gate it melts on no more energy than there.</summary>
    public bool IsFuse { get; init; }

    /// <summary>The most that it lets through where it opens at once (operating I²t), from its sheet, above 0 to 1e12; null where its sheet says nothing.</summary>
    public double? ClearingA2S { get; init; }

    /// <summary>Rated residual current, above 0 to 10; null where it does not see residual currents.</summary>
    public double? ResidualA { get; init; }

    /// <summary>The longest it takes at its rated residual current, by its sheet, above 0 to 10; null where it says nothing.</summary>
    public double? ResidualOpensS { get; init; }
}

/// <summary>What the greatest energy of a fault is told by.</summary>
public enum LetThroughBasis
{
    /// <summary>Nothing is sure to end the fault: the energy has no bound.</summary>
    NeverEnds,

    /// <summary>The current for as long as the gates alone prove it to last.</summary>
    Gates,

    /// <summary>Three times the energy at a fuse's last gate.</summary>
    LastGate,

    /// <summary>The device's own sheet.</summary>
    Sheet,

    /// <summary>The current for as long as a residual release may take.</summary>
    Residual,

    /// <summary>The current until the source takes its voltage away.</summary>
    Source,
}

/// <summary>The greatest energy (I² t) that a fault brings.</summary>
/// <param name="CurrentA">The current at which it is so great.</param>
/// <param name="A2S">Infinite where nothing is sure to end it.</param>
/// <param name="TimeS">The longest it lasts at that current; null where the energy is told without a time, or nothing ends it.</param>
/// <param name="Basis">What it is told by.</param>
/// <param name="DeviceIndex">Place among the devices of the one that bounds it; null where the source does, or nothing.</param>
public sealed record LetThroughEnergy(double CurrentA, double A2S, double? TimeS, LetThroughBasis Basis, int? DeviceIndex);

/// <summary>A fault of any current between two, and what ends it.</summary>
public sealed record LetThroughInput
{
    /// <summary>The least current, above 0 to 1e6.</summary>
    public required double LeastA { get; init; }

    /// <summary>The greatest current, from <see cref="LeastA"/> to 1e6.</summary>
    public required double GreatestA { get; init; }

    /// <summary>The devices that the fault's current passes; each of them may end it.</summary>
    public required ImmutableArray<LetThroughDevice> Devices { get; init; }

    /// <summary>The source takes its voltage away no later than this, above 0 to 600; null where it does not or that is not known.</summary>
    public double? ShutsDownS { get; init; }
}
