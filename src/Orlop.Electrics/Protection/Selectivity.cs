using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>
/// Which of two devices in series opens first: the nearer one does where its latest opening comes before the earliest opening of the other, at the same
/// current and whatever the other carries besides. Where a fault is cleared within a tenth of a second, energies decide as well: the nearer device lets
/// through less than what melts the other (IEC 60269-1, discrimination by I²t).
/// </summary>
public static class Selectivity
{
    /// <summary>Energies of fuses are constant in times so short that no heat escapes (IEC 60269-1).</summary>
    public const double LongestEnergyS = 0.1;

    private const double GridRatio = 1.02;
    private const double EdgeRatio = 1e-9;
    private const double SliverRatio = 1e-6;

    /// <summary>The whole band from the least to the greatest current.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static SelectivityResult Between(SelectivityInput input)
    {
        Check(input);
        double[] currents = [.. Currents(input)];
        var bands = ImmutableArray.CreateBuilder<SelectivityBand>();
        var (from, status) = (currents[0], At(input, currents[0]));
        for (var k = 1; k < currents.Length; k++)
        {
            var next = At(input, currents[k]);
            if (next != status)
            {
                var edge = EdgeBetween(input, currents[k - 1], currents[k], status);
                // A gate's own current is a point; what is true of it alone is no band.
                if (edge > from * (1 + SliverRatio))
                {
                    bands.Add(new SelectivityBand(from, edge, status));
                    from = edge;
                }

                status = next;
            }
        }

        bands.Add(new SelectivityBand(from, input.GreatestA, status));
        return new SelectivityResult(bands.ToImmutable());
    }

    /// <summary>Which opens first at one current through the nearer device.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static SelectivityStatus At(SelectivityInput input, double currentA)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(currentA, 1e6, "A", input.Subject);
        var (nearer, earlier) = (input.Nearer, input.Earlier);
        var nearerRatio = currentA / nearer.RatingA;
        var earlierRatio = (currentA + input.BesidesA) / earlier.RatingA;
        var (latest, earliest) = (nearer.Curve.LatestOpening(nearerRatio), earlier.Curve.EarliestOpening(earlierRatio));
        if (latest.GuaranteedS is { } by && (earliest.Basis == OpeningBasis.NeverOpens || by < earliest.GuaranteedS))
        {
            return SelectivityStatus.NearerFirst;
        }

        if (latest.TimeS <= LongestEnergyS && (input.IsPromised || nearer.MostClearingA2S < earlier.LeastMeltingA2S))
        {
            return SelectivityStatus.NearerFirst;
        }

        if (latest.TimeS < earliest.TimeS)
        {
            return input.IsPromised ? SelectivityStatus.NearerFirst : SelectivityStatus.NearerFirstAsDrawn;
        }

        return Otherwise(latest, earliest, earlier.Curve.LatestOpening(earlierRatio), nearer.Curve.EarliestOpening(nearerRatio));
    }

    private static SelectivityStatus Otherwise(OpeningTime latest, OpeningTime earliestOfEarlier, OpeningTime latestOfEarlier, OpeningTime earliestOfNearer)
    {
        var isEarlierFirst = latestOfEarlier.TimeS is { } by
            && (earliestOfNearer.Basis == OpeningBasis.NeverOpens || by < (earliestOfNearer.GuaranteedS ?? double.NegativeInfinity));
        return isEarlierFirst ? SelectivityStatus.EarlierFirst
            : latest.TimeS is null && latestOfEarlier.TimeS is null ? SelectivityStatus.NeitherMustOpen
            : latest.TimeS is not null && earliestOfEarlier.TimeS is null ? SelectivityStatus.NotTold
            : SelectivityStatus.EitherFirst;
    }

    // A grid that no band of practical width slips through, and both sides of every gate.
    private static IEnumerable<double> Currents(SelectivityInput input)
    {
        SortedSet<double> currents = [input.LeastA, input.GreatestA];
        for (var currentA = input.LeastA; currentA < input.GreatestA; currentA *= GridRatio)
        {
            currents.Add(currentA);
        }

        foreach (var gateA in input.Nearer.Curve.BreakRatios.Select(ratio => ratio * input.Nearer.RatingA)
            .Concat(input.Earlier.Curve.BreakRatios.Select(ratio => (ratio * input.Earlier.RatingA) - input.BesidesA)))
        {
            foreach (var currentA in new[] { gateA * (1 - EdgeRatio), gateA, gateA * (1 + EdgeRatio) })
            {
                if (currentA > input.LeastA && currentA < input.GreatestA)
                {
                    currents.Add(currentA);
                }
            }
        }

        return currents;
    }

    private static double EdgeBetween(SelectivityInput input, double lowA, double highA, SelectivityStatus low)
    {
        while (highA / lowA > 1 + EdgeRatio)
        {
            var middleA = Math.Sqrt(lowA * highA);
            (lowA, highA) = At(input, middleA) == low ? (middleA, highA) : (lowA, middleA);
        }

        return lowA;
    }

    private static void Check(SelectivityInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        foreach (var device in new[] { input.Earlier, input.Nearer })
        {
            Guard.Positive(device.RatingA, 10_000, "A", input.Subject);
            Guard.Positive(device.LeastMeltingA2S ?? 1, 1e12, "A² s", input.Subject);
            Guard.Positive(device.MostClearingA2S ?? 1, 1e12, "A² s", input.Subject);
        }

        Guard.Positive(input.LeastA, 1e6, "A", input.Subject);
        Guard.InRange(input.GreatestA, input.LeastA, 1e6, "A", input.Subject);
        Guard.InRange(input.BesidesA, 0, 1e5, "A", input.Subject);
    }
}
