using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Starts;

/// <summary>A network that runs, and what starts in it at time 0.</summary>
public sealed record StartInput
{
    /// <summary>All that runs before and meanwhile; what starts is not in it. Conductors without heating keep their temperature, as a start is short.</summary>
    public required Network Network { get; init; }

    /// <summary>Motors and capacitors that start.</summary>
    public ImmutableArray<StartingStore> Stores { get; init; } = [];

    /// <summary>Currents that stay the same for a time.</summary>
    public ImmutableArray<StartingCurrent> Currents { get; init; } = [];

    /// <summary>How long is looked at, above 0, to 3600.</summary>
    public required double HorizonS { get; init; }

    /// <summary>Most that a step may be off, by its estimate, which is on the safe side; above 0.</summary>
    public double ToleranceV { get; init; } = 0.02;

    /// <summary>Every step as long as this; null for steps by the tolerance.</summary>
    public double? StepS { get; init; }
}
