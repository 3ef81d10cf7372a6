using System.Collections.Immutable;

namespace Orlop.Hull.Measuring;

/// <summary>An inclining test as read.</summary>
public sealed record InclinationInput
{
    public required string Subject { get; init; }

    /// <summary>At least four readings, with at least two moments among them.</summary>
    public required ImmutableArray<InclinationReading> Readings { get; init; }

    /// <summary>Displacement of the boat as inclined, above 0 to 10 000 000.</summary>
    public required double DisplacementKg { get; init; }

    /// <summary>Standard deviation of the displacement, 0 to the displacement.</summary>
    public required double DisplacementDeviationKg { get; init; }
}
