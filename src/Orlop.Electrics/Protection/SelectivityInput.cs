namespace Orlop.Electrics.Protection;

/// <summary>Two devices in series, and the currents at which they are held against each other.</summary>
public sealed record SelectivityInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>The device nearer to the source.</summary>
    public required SeriesDevice Earlier { get; init; }

    /// <summary>The device nearer to the fault.</summary>
    public required SeriesDevice Nearer { get; init; }

    /// <summary>The least current through the nearer device, above 0 to 1e6.</summary>
    public required double LeastA { get; init; }

    /// <summary>The greatest current through the nearer device, at least <see cref="LeastA"/>, to 1e6.</summary>
    public required double GreatestA { get; init; }

    /// <summary>Their standard promises that the nearer opens first: it proves what only the drawn curves show, and hard faults whatever their energies. It overrules no gate.</summary>
    public bool IsPromised { get; init; }

    /// <summary>What the earlier device carries besides to other things, 0 to 1e5.</summary>
    public double BesidesA { get; init; }
}

/// <summary>A device that stands in series with another.</summary>
/// <param name="Curve">Its operating times.</param>
/// <param name="RatingA">Rating or setting, above 0 to 10 000.</param>
/// <param name="LeastMeltingA2S">The least energy that melts it in a short time (pre-arcing I²t), A² s, above 0; null when its sheet was not read.</param>
/// <param name="MostClearingA2S">The most energy that it lets through in a short time (operating I²t), A² s, above 0; null when its sheet was not read.</param>
public sealed record SeriesDevice(IOperatingCurve Curve, double RatingA, double? LeastMeltingA2S = null, double? MostClearingA2S = null);
