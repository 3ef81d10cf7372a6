using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>
/// The energy (I² t) that devices let through. Each bounds it by what is known of it, and the least bound counts. Of a range of currents the greatest energy stands at the greatest current or just
/// short of one at which some device gets quicker, for between those every time is the same and the energy grows with the current.
/// </summary>
public static class LetThrough
{
    /// <summary>What arcing may add to a fuse's energy at its last gate (common practice, no source).</summary>
    public const double ArcingRatio = 3;

    /// <summary>The energy of a sheet holds for a device that opens no later than this: at a quick opening only (common practice, no source).</summary>
    public const double QuickS = 0.1;

    // Just short of a current, as a share of it.
    private const double ShortFraction = 1e-9;

    /// <summary>What the gates of one device prove at a current; null where it has none, or they prove no opening there.</summary>
    /// <param name="currentA">Above 0 to 1e6.</param>
    public static LetThroughEnergy? ByGates(LetThroughDevice device, double currentA)
    {
        ArgumentNullException.ThrowIfNull(device);
        Check(device);
        Guard.Positive(currentA, 1e6, "A", device.Subject);
        if (device.Gates?.LatestOpening(Math.Min(currentA / device.RatingA, 10_000)).GuaranteedS is not { } latest)
        {
            return null;
        }

        LetThroughEnergy byTime = new(currentA, currentA * currentA * latest, latest, LetThroughBasis.Gates, 0);
        return device.IsFuse && device.Gates.Gates.LastOrDefault(gate => gate.LatestS is not null) is { LatestS: { } last } gate && currentA >= gate.CurrentRatio * device.RatingA
            && ArcingRatio * gate.CurrentRatio * device.RatingA * gate.CurrentRatio * device.RatingA * last is var melted && melted < byTime.A2S
            ? new LetThroughEnergy(gate.CurrentRatio * device.RatingA, melted, last, LetThroughBasis.LastGate, 0)
            : byTime;
    }

    /// <summary>The greatest energy of a range of currents.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static LetThroughEnergy Greatest(LetThroughInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.LeastA, 1e6, "A", "let-through");
        Guard.InRange(input.GreatestA, input.LeastA, 1e6, "A", "let-through");
        Guard.Positive(input.ShutsDownS ?? 1, 600, "s", "let-through");
        return input.Devices.SelectMany(Breaks).Select(breakA => breakA * (1 - ShortFraction)).Where(currentA => currentA > input.LeastA && currentA < input.GreatestA)
            .Append(input.LeastA).Append(input.GreatestA).Select(currentA => At(input, currentA)).MaxBy(energy => energy.A2S)!;
    }

    private static LetThroughEnergy At(LetThroughInput input, double currentA)
    {
        IEnumerable<LetThroughEnergy?> byDevices = input.Devices.SelectMany((device, index) => Bounds(device, currentA).Select(bound => bound is null ? null : bound with { DeviceIndex = index }));
        LetThroughEnergy? bySource = input.ShutsDownS is { } shuts ? new LetThroughEnergy(currentA, currentA * currentA * shuts, shuts, LetThroughBasis.Source, null) : null;
        return byDevices.Append(bySource).OfType<LetThroughEnergy>().MinBy(bound => bound.A2S) ?? new LetThroughEnergy(currentA, double.PositiveInfinity, null, LetThroughBasis.NeverEnds, null);
    }

    private static IEnumerable<LetThroughEnergy?> Bounds(LetThroughDevice device, double currentA)
    {
        LetThroughEnergy? byGates = ByGates(device, currentA);
        yield return byGates;
        yield return byGates?.TimeS <= QuickS && device.ClearingA2S is { } sheet ? new LetThroughEnergy(currentA, sheet, null, LetThroughBasis.Sheet, 0) : null;
        yield return device.ResidualA is { } residual && ResidualOpening.LatestS(currentA, residual, device.ResidualOpensS) is { } opens
            ? new LetThroughEnergy(currentA, currentA * currentA * opens, opens, LetThroughBasis.Residual, 0)
            : null;
    }

    private static IEnumerable<double> Breaks(LetThroughDevice device) =>
    [
        .. device.Gates?.BreakRatios.Select(ratio => ratio * device.RatingA) ?? [],
        .. device.ResidualA is { } residual ? new[] { residual, 2 * residual, 5 * residual } : [],
    ];

    private static void Check(LetThroughDevice device)
    {
        Guard.Positive(device.RatingA, 10_000, "A", device.Subject);
        Guard.Positive(device.ClearingA2S ?? 1, 1e12, "A² s", device.Subject);
    }
}
