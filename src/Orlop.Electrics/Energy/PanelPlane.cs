using System.Collections.Immutable;

namespace Orlop.Electrics.Energy;

/// <summary>Solar panels that lie in one plane.</summary>
public sealed record PanelPlane
{
    /// <summary>What they are called, for messages.</summary>
    public required string Id { get; init; }

    /// <summary>Power at 1000 W/m² and a cell of 25 °C, above 0 to 100 000.</summary>
    public required double PeakW { get; init; }

    /// <summary>From the horizontal, 0 to 90.</summary>
    public double TiltDeg { get; init; }

    /// <summary>Way it faces, clockwise from north; null where the boat swings and every heading is as likely.</summary>
    public double? AzimuthDeg { get; init; }

    /// <summary>Lost to shade, dirt and leads, 0 to 1.</summary>
    public double LostFraction { get; init; }
}

/// <summary>Panels behind one controller.</summary>
/// <param name="Id">What the controller is called.</param>
/// <param name="Planes">The planes.</param>
/// <param name="EfficiencyFraction">Controller's output over what panels could give, above 0 to 1.</param>
/// <param name="MostW">Most the controller puts out; infinite where nothing limits it.</param>
public sealed record SolarArray(string Id, ImmutableArray<PanelPlane> Planes, double EfficiencyFraction, double MostW);
