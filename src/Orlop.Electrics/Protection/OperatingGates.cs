using System.Collections.Immutable;
using System.Diagnostics;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>One test point of a standard: at this multiple of rating the device opens no earlier and no later than this.</summary>
/// <param name="CurrentRatio">Current over rating, above 0.</param>
/// <param name="EarliestS">Above 0; null when the standard gives none.</param>
/// <param name="LatestS">Above 0; null when the standard gives none.</param>
/// <param name="IsStep">A second mechanism (a magnetic trip) takes over at this gate: the latest time of the gate before holds right up to it.</param>
/// <param name="IsFromMemory">Not checked against a source.</param>
public sealed record OperatingGate(double CurrentRatio, double? EarliestS, double? LatestS, bool IsStep, bool IsFromMemory);

/// <summary>
/// A fuse or breaker known by its gates. Between two gates the earliest and the latest curve are each taken straight on logarithmic scales.
/// Time-current curves sag below such a chord, so an interpolated latest time is cautious and an interpolated earliest time is not: use
/// <see cref="OpeningTime.GuaranteedS"/> where the gates alone must prove it.
/// </summary>
public sealed class OperatingGates : IOperatingCurve
{
    private readonly ImmutableArray<OperatingGate> _earliest;
    private readonly ImmutableArray<OperatingGate> _latest;

    /// <summary>Refuses gates out of order, without any time, or with a latest time before the earliest.</summary>
    public OperatingGates(string id, ImmutableArray<OperatingGate> gates, string source)
    {
        var least = 0.0;
        foreach (var gate in gates)
        {
            Guard.Positive(gate.CurrentRatio, 10_000, "× rating", id);
            Guard.Positive(gate.EarliestS ?? 1, 1e7, "s", id);
            Guard.Positive(gate.LatestS ?? 1, 1e7, "s", id);
            if (gate.CurrentRatio <= least || gate.EarliestS > gate.LatestS || (gate.EarliestS ?? gate.LatestS) is null)
            {
                throw new ArgumentException(FormattableString.Invariant(
                    $"{id}: gate at {gate.CurrentRatio} × rating, {gate.EarliestS} to {gate.LatestS} s; gates go up in current, have a time, and the latest is not before the earliest."), nameof(gates));
            }

            least = gate.CurrentRatio;
        }

        (Id, Gates, Source) = (id, gates, source);
        _earliest = [.. gates.Where(gate => gate.EarliestS is not null)];
        _latest = [.. gates.Where(gate => gate.LatestS is not null)];
    }

    public string Id { get; }

    public ImmutableArray<OperatingGate> Gates { get; }

    public string Source { get; }

    public ImmutableArray<double> BreakRatios => [.. Gates.Select(gate => gate.CurrentRatio)];

    public bool IsFromMemory => Gates.Any(gate => gate.IsFromMemory);

    public OpeningTime EarliestOpening(double currentRatio)
    {
        Guard.Positive(currentRatio, 10_000, "× rating", Id);
        if (_earliest.IsEmpty || currentRatio > _earliest[^1].CurrentRatio)
        {
            return new OpeningTime(null, null, OpeningBasis.Unknown, Say(currentRatio, $"above the last gate with an earliest time; it may open at once"));
        }

        var above = _earliest.First(gate => gate.CurrentRatio >= currentRatio);
        var guaranteed = above.EarliestS!.Value;
        if (above.CurrentRatio == currentRatio)
        {
            return new OpeningTime(guaranteed, guaranteed, OpeningBasis.Exact, Say(currentRatio, $"at a gate"));
        }

        if (above == _earliest[0])
        {
            return new OpeningTime(guaranteed, guaranteed, OpeningBasis.BelowFirstGate, Say(currentRatio, $"below the first gate; it holds at least {At(above, guaranteed)}"));
        }

        var below = _earliest.Last(gate => gate.CurrentRatio < currentRatio);
        return new OpeningTime(Between(below, below.EarliestS!.Value, above, guaranteed, currentRatio), guaranteed, OpeningBasis.Interpolated,
            Say(currentRatio, $"on the line from at least {At(below, below.EarliestS!.Value)} to {At(above, guaranteed)}"));
    }

    public OpeningTime LatestOpening(double currentRatio)
    {
        Guard.Positive(currentRatio, 10_000, "× rating", Id);
        if (_latest.IsEmpty || currentRatio < _latest[0].CurrentRatio)
        {
            return new OpeningTime(null, null, OpeningBasis.Unknown, Say(currentRatio, $"below the first gate with a latest time; it may never open"));
        }

        var below = _latest.Last(gate => gate.CurrentRatio <= currentRatio);
        var guaranteed = below.LatestS!.Value;
        if (below.CurrentRatio == currentRatio)
        {
            return new OpeningTime(guaranteed, guaranteed, OpeningBasis.Exact, Say(currentRatio, $"at a gate"));
        }

        if (below == _latest[^1])
        {
            return new OpeningTime(guaranteed, guaranteed, OpeningBasis.BeyondLastGate, Say(currentRatio, $"above the last gate; no later than {At(below, guaranteed)}"));
        }

        var above = _latest.First(gate => gate.CurrentRatio > currentRatio);
        return above.IsStep
            ? new OpeningTime(guaranteed, guaranteed, OpeningBasis.ShortOfStep, Say(currentRatio, $"short of the instantaneous trip; no later than {At(below, guaranteed)}"))
            : new OpeningTime(Between(below, guaranteed, above, above.LatestS!.Value, currentRatio), guaranteed, OpeningBasis.Interpolated,
                Say(currentRatio, $"on the line from at most {At(below, guaranteed)} to {At(above, above.LatestS!.Value)}"));
    }

    /// <summary>
    /// The same device with its instantaneous trip moved up, as for an AC breaker on DC, whose magnet pulls by the mean and not the peak current. Earliest
    /// times stay where they are, which is the cautious side.
    /// </summary>
    /// <param name="stepFactor">1 to 2; about 1.4 for AC breakers on DC (from memory, no source).</param>
    /// <param name="source">Where the factor comes from.</param>
    public OperatingGates WithInstantaneousTripAt(double stepFactor, string source)
    {
        Guard.InRange(stepFactor, 1, 2, "", Id);
        return new OperatingGates(Id,
            [.. Gates.Select(gate => gate.IsStep ? gate with { CurrentRatio = gate.CurrentRatio * stepFactor, IsFromMemory = true } : gate)], $"{Source}; instantaneous trip moved: {source}");
    }

    private static double Between(OperatingGate below, double belowS, OperatingGate above, double aboveS, double currentRatio)
    {
        Debug.Assert(below.CurrentRatio < currentRatio && currentRatio < above.CurrentRatio, "gates enclose the current");
        var share = Math.Log(currentRatio / below.CurrentRatio) / Math.Log(above.CurrentRatio / below.CurrentRatio);
        return belowS * Math.Pow(aboveS / belowS, share);
    }

    private static FormattableString At(OperatingGate gate, double timeS) => $"{timeS:0.###} s at {gate.CurrentRatio:0.###} × rating";

    private static FormattableString Say(double currentRatio, FormattableString what) => $"{currentRatio:0.###} × rating: {what}";
}
