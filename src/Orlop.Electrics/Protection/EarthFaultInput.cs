using System.Collections.Immutable;

namespace Orlop.Electrics.Protection;

/// <summary>A device on the live side between a source and a fault to earth.</summary>
public sealed record EarthFaultDevice
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Rating of its overcurrent release, above 0 to 10 000.</summary>
    public required double RatingA { get; init; }

    /// <summary>Operating times of its overcurrent release; null where it has none or they are not known.</summary>
    public IOperatingCurve? Curve { get; init; }

    /// <summary>Rated residual current, above 0 to 10; null where it does not see residual currents.</summary>
    public double? ResidualA { get; init; }

    /// <summary>The longest it takes at its rated residual current, by its sheet; null where it says nothing.</summary>
    public double? ResidualOpensS { get; init; }
}

/// <summary>A fault of no resistance from live to the metal of what a circuit feeds.</summary>
public sealed record EarthFaultInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Live to earth, above 50 to 400.</summary>
    public required double NominalV { get; init; }

    /// <summary>How the fault returns.</summary>
    public required EarthReturn Return { get; init; }

    /// <summary>Resistance of the source, and of its way back where it is not on board, 0 to 1e5; of an own earth, with both electrodes.</summary>
    public required double SourceOhm { get; init; }

    /// <summary>The most that the source gives into a short circuit, above 0 to 1e6; null where only its resistance limits it.</summary>
    public double? LimitA { get; init; }

    /// <summary>A source that limits its current takes its voltage away no later than this, above 0 to 600; null where that is not known.</summary>
    public double? ShutsDownS { get; init; }

    /// <summary>Live conductor with joints and devices, hot, 0 to 1e4.</summary>
    public required double LiveOhm { get; init; }

    /// <summary>Protective conductor with joints, hot, 0 to 1e4.</summary>
    public required double EarthOhm { get; init; }

    /// <summary>The devices that the live conductor passes, from the source on; any of them ends the fault.</summary>
    public required ImmutableArray<EarthFaultDevice> Devices { get; init; }
}
