using System.Collections.Immutable;

namespace Orlop.Electrics.Protection;

/// <summary>How long a protective device takes to open, by current over its rating (or setting).</summary>
public interface IOperatingCurve
{
    string Id { get; }

    string Source { get; }

    /// <summary>Some of the numbers are from memory and were not checked against a source.</summary>
    bool IsFromMemory { get; }

    /// <summary>The multiples of the rating at which what is known of the device changes, rising; none for a smooth curve.</summary>
    ImmutableArray<double> BreakRatios { get; }

    /// <summary>The soonest the device may open: a load that must not open it stays below this.</summary>
    /// <param name="currentRatio">Current over rating, above 0 to 10 000.</param>
    OpeningTime EarliestOpening(double currentRatio);

    /// <summary>The longest the device may take: a conductor that it protects must bear the current this long.</summary>
    /// <param name="currentRatio">Current over rating, above 0 to 10 000.</param>
    OpeningTime LatestOpening(double currentRatio);
}
