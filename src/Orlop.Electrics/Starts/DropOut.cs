namespace Orlop.Electrics.Starts;

/// <summary>What the voltage at a load or a converter's input does in a start, against the least it works at.</summary>
/// <param name="Id">The load, converter or store.</param>
/// <param name="LeastV">Least voltage it works at; an inverter's cut-off.</param>
/// <param name="LowestV">The lowest that it gets.</param>
/// <param name="LowestAtS">When, the first time.</param>
/// <param name="BelowS">The longest stretch below the least voltage; 0 where it never is.</param>
/// <param name="IsBelowAtEnd">It is still below at the end of what was looked at.</param>
/// <param name="DropsOut">It is below for longer than it bears: at once where nothing is known of a delay.</param>
public sealed record DropOut(string Id, double LeastV, double LowestV, double LowestAtS, double BelowS, bool IsBelowAtEnd, bool DropsOut)
{
    /// <summary>Reads it out of a start; straight between moments. Null where the start has no such voltage.</summary>
    /// <param name="delayS">How long it may be below before it stops, 0 or above.</param>
    public static DropOut? Of(StartResult start, string id, double leastV, double delayS = 0)
    {
        ArgumentNullException.ThrowIfNull(start);
        if (start.VoltageOf(id) is not { } volts || !(leastV >= 0) || !(delayS >= 0))
        {
            return null;
        }

        var lowest = 0;
        var (longest, current) = (0.0, 0.0);
        var isEverBelow = volts[0] < leastV;
        for (var k = 1; k < volts.Length; k++)
        {
            lowest = volts[k] < volts[lowest] ? k : lowest;
            isEverBelow |= volts[k] < leastV;
            var stepS = start.Moments[k].TimeS - start.Moments[k - 1].TimeS;
            var (from, to) = (volts[k - 1] - leastV, volts[k] - leastV);
            if (from < 0)
            {
                current += to < 0 ? stepS : stepS * from / (from - to);
                longest = Math.Max(longest, current);
            }

            current = to < 0 ? from < 0 ? current : stepS * to / (to - from) : 0;
        }

        longest = Math.Max(longest, current);
        return new DropOut(id, leastV, volts[lowest], start.Moments[lowest].TimeS, longest, volts[^1] < leastV, isEverBelow && longest >= delayS);
    }
}
