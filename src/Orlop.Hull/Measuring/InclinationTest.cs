using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Inclining test: GM = moment/(displacement·tan heel), from many shifts by least squares. Heels of a few degrees only: the rule takes the metacentre as fixed. An inclining
/// test is done in calm water, slack lines, tanks empty or full, nobody moving; have it witnessed where your code asks for it.
/// </summary>
public static class InclinationTest
{
    private const double OutlierProbability = 0.05;
    private const double BandProbability = 0.05;
    private const int BandPointCount = 21;
    private const double NormalBand = 1.959964;
    private const int LeastReadingCount = 7;
    private const double SlopeBand = 2;

    // Common practice, no source.
    private const double MostSlopeFraction = 0.05;

    public static InclinationResult Calculate(InclinationInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        var (x, y) = (input.Readings.Select(reading => reading.HeelTangentRatio).ToArray(), input.Readings.Select(reading => reading.MomentKgM).ToArray());
        var n = x.Length;
        var (meanX, meanY) = (x.Average(), y.Average());
        var sumXx = x.Sum(value => (value - meanX) * (value - meanX));
        var sumXy = x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum();
        var sumYy = y.Sum(value => (value - meanY) * (value - meanY));
        var slope = sumXy / sumXx;
        var intercept = meanY - (slope * meanX);
        double[] residuals = [.. x.Zip(y, (a, b) => b - intercept - (slope * a))];
        var squares = residuals.Sum(residual => residual * residual);
        // No line is surer than its readings were fine: readings that were rounded alike fit each other without being exact.
        var readTo = input.Readings.Average(reading => reading.ReadToRatio * reading.ReadToRatio);
        var variance = Math.Max(squares / (n - 2), slope * slope * readTo);
        var free = Fit(input, slope, Math.Sqrt(variance / sumXx), intercept, n - 2);
        var (rawXx, rawXy) = (x.Sum(value => value * value), x.Zip(y, (a, b) => a * b).Sum());
        var forced = rawXy / rawXx;
        var forcedSquares = x.Zip(y, (a, b) => b - (forced * a)).Sum(residual => residual * residual);
        var origin = Fit(input, forced, Math.Sqrt(Math.Max(forcedSquares / (n - 1), forced * forced * readTo) / rawXx), 0, n - 1);
        return new InclinationResult(origin, free, sumYy > 0 ? 1 - (squares / sumYy) : 0,
            Band(x, free, Math.Sqrt(variance), meanX, sumXx), Outliers(input, x, residuals, meanX, sumXx, squares, slope * slope * readTo), Cautions(x, free),
        [
            new WorkingStep("Δ·GM", FormattableString.Invariant($"Σ(M·tan)/Σ(tan²), {n} readings"), forced, "kg m", "least squares through the origin"),
            new WorkingStep("Δ·GM", FormattableString.Invariant($"Σ(dM·dtan)/Σ(dtan²), {n} readings"), slope, "kg m", "least squares with intercept"),
            new WorkingStep("s(tan)", "how finely a heel is read, of one reading: no line is taken as surer", Math.Sqrt(readTo), "", "as stated with the readings"),
            new WorkingStep("GM", FormattableString.Invariant($"{slope:0.###}/{input.DisplacementKg:0.#}"), free.GmM, "m", "GM = w·d/(Δ·tan φ)"),
            new WorkingStep("s(GM)", "slope's and displacement's shares, combined as squares", free.GmDeviationM, "m", "propagation of errors"),
        ])
        {
            ScatterFraction = slope == 0 ? double.PositiveInfinity : Math.Sqrt(squares / (n - 2)) / Math.Abs(slope) / x.Max(Math.Abs),
        };
    }

    private static LineFit Fit(InclinationInput input, double slope, double deviation, double intercept, int freedom)
    {
        var gm = slope / input.DisplacementKg;
        var (bySlope, byMass) = (deviation / input.DisplacementKg, gm * input.DisplacementDeviationKg / input.DisplacementKg);
        var (bandSlope, bandMass) = (StudentT.TwoSided(BandProbability, freedom) * bySlope, NormalBand * byMass);
        return new LineFit(slope, deviation, intercept, gm, Math.Sqrt((bySlope * bySlope) + (byMass * byMass)), Math.Sqrt((bandSlope * bandSlope) + (bandMass * bandMass)));
    }

    // Of the line itself at each place, not of a further reading: t·s·√(1/n + (x - mean)²/Sxx).
    private static ImmutableArray<LineBandPoint> Band(double[] x, LineFit line, double deviation, double meanX, double sumXx)
    {
        var t = StudentT.TwoSided(BandProbability, x.Length - 2);
        var (from, to) = (x.Min(), x.Max());
        return
        [
            .. Enumerable.Range(0, BandPointCount).Select(i => from + ((to - from) * i / (BandPointCount - 1))).Select(at => new LineBandPoint(
                at, line.InterceptKgM + (line.SlopeKgM * at), t * deviation * Math.Sqrt((1.0 / x.Length) + ((at - meanX) * (at - meanX) / sumXx)))),
        ];
    }

    // Residual over its own deviation with the reading itself left out of the estimate.
    private static ImmutableArray<string> Outliers(InclinationInput input, double[] x, double[] residuals, double meanX, double sumXx, double squares, double leastVariance)
    {
        var n = x.Length;
        var limit = StudentT.TwoSided(OutlierProbability / n, n - 3);
        var outliers = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < n; i++)
        {
            var share = 1 - (1.0 / n) - ((x[i] - meanX) * (x[i] - meanX) / sumXx);
            var others = Math.Max((squares - (residuals[i] * residuals[i] / share)) / (n - 3), leastVariance);
            if (share > 1e-9 && Math.Abs(residuals[i]) > 1e-12 * Math.Abs(input.Readings.Max(reading => reading.MomentKgM)) && residuals[i] * residuals[i] > limit * limit * others * share)
            {
                outliers.Add(input.Readings[i].Id);
            }
        }

        return outliers.ToImmutable();
    }

    // 2 to 4 degrees at the largest shift: IS Code annex 1 as quoted by a national inspectorate (stability reference, section 5).
    // The zero and six shifts at least: 2008 IS Code part B 8.4.1.2.
    private static ImmutableArray<string> Cautions(double[] tangents, LineFit line)
    {
        var largest = Math.Atan(tangents.Max(Math.Abs)) * 180 / Math.PI;
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (largest is < 2 or > 4)
        {
            cautions.Add(FormattableString.Invariant($"largest heel {largest:0.0}°; 2° to 4° is asked for (2008 IS Code annex 1, as quoted by a national inspectorate)"));
        }

        if (!(tangents.Max() > 0 && tangents.Min() < 0))
        {
            cautions.Add("all readings heel to one side; move the weights to both");
        }

        if (tangents.Length < LeastReadingCount)
        {
            cautions.Add(FormattableString.Invariant($"{tangents.Length} readings; the zero and six shifts are the least, eight shifts the standard (2008 IS Code part B 8.4.1.2)"));
        }

        if (SlopeBand * line.SlopeDeviationKgM > MostSlopeFraction * Math.Abs(line.SlopeKgM))
        {
            cautions.Add(FormattableString.Invariant($"the line fits badly: its slope is known to ± {100 * SlopeBand * line.SlopeDeviationKgM / Math.Abs(line.SlopeKgM):0} %, two standard deviations, and {100 * MostSlopeFraction:0} % is the most of a good test (common practice, no source)"));
        }

        return cautions.ToImmutable();
    }

    private static void Check(InclinationInput input)
    {
        Guard.Positive(input.DisplacementKg, 1e7, "kg", input.Subject);
        Guard.InRange(input.DisplacementDeviationKg, 0, input.DisplacementKg, "kg", input.Subject);
        if (input.Readings.IsDefault || input.Readings.Length < 4)
        {
            throw new ArgumentException($"{input.Subject}: {(input.Readings.IsDefault ? 0 : input.Readings.Length)} readings; at least 4 are needed, better 8 or more.", nameof(input));
        }

        foreach (var reading in input.Readings)
        {
            Guard.InRange(reading.MomentKgM, -1e9, 1e9, "kg m", reading.Id);
            Guard.InRange(reading.HeelTangentRatio, -0.3, 0.3, "", reading.Id);
            Guard.InRange(reading.ReadToRatio, 0, 0.1, "", reading.Id);
        }

        if (input.Readings.Select(reading => reading.HeelTangentRatio).Distinct().Count() < 2)
        {
            throw new ArgumentException($"{input.Subject}: all readings show the same heel; at least two different ones are needed.", nameof(input));
        }
    }
}
