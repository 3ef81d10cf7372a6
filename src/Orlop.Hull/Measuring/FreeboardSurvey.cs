using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Draught, trim, heel and hog from freeboards by weighted least squares (Gauss-Newton), f = Up·p - d + hog·(1/3 - (2(x - x_mid)/L)²); then displacement and centre of
/// buoyancy by exact integration, with errors carried through by differences, widened where the marks disagree by more than was stated. Read in calm water, boat free of her lines, twice round.
/// </summary>
public static class FreeboardSurvey
{
    private const double RadPerDeg = Math.PI / 180;
    private const int MostSteps = 30;
    private const double SmallStep = 1e-5;

    // Common practice, no source.
    private const double BeyondReasonRatio = 5;
    private const double AsExpectedRatio = 0.9;

    public static FreeboardResult Calculate(FreeboardInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        var unknowns = new double[4];
        double[,] covariance;
        for (var step = 0; ; step++)
        {
            var (information, pull) = Normal(input, unknowns);
            var (inverse, missing) = FourUnknowns.Inverse(information);
            if (inverse is null)
            {
                throw new ArgumentException($"{input.Subject}: the marks do not settle {Name(missing)}; place them at both ends and on both sides.", nameof(input));
            }

            var longest = 0.0;
            for (var i = 0; i < 4; i++)
            {
                var change = Enumerable.Range(0, 4).Sum(j => inverse[i, j] * pull[j]);
                unknowns[i] += change;
                longest = Math.Max(longest, Math.Abs(change));
            }

            covariance = inverse;
            if (longest < 1e-12 || step == MostSteps)
            {
                break;
            }
        }

        return Result(input, unknowns, covariance);
    }

    private static FreeboardResult Result(FreeboardInput input, double[] unknowns, double[,] covariance)
    {
        if (Math.Abs(unknowns[1]) > 0.5 || Math.Abs(unknowns[2]) > 0.8)
        {
            throw new ArgumentException(FormattableString.Invariant($"{input.Subject}: the freeboards give trim {unknowns[1] / RadPerDeg:0.#}°, heel {unknowns[2] / RadPerDeg:0.#}°; check the marks."), nameof(input));
        }

        var afloat = Afloat(input, unknowns);
        if (!(afloat[0] > 0))
        {
            throw new ArgumentException($"{input.Subject}: by these freeboards the hull is out of the water; check the marks.", nameof(input));
        }

        var plane = WaterPlane.OfRadians(unknowns[0], unknowns[1], unknowns[2]);
        var residuals = input.Readings.Select(reading => reading.FreeboardM - Fitted(input, plane, unknowns[3], reading.Mark)).ToArray();
        var squares = residuals.Zip(input.Readings, (residual, reading) => Math.Pow(residual / reading.DeviationM, 2)).Sum() + Math.Pow(unknowns[3] / input.HogDeviationM, 2);
        // The expectation of hog counts as one reading.
        var misfit = Math.Sqrt(squares / (input.Readings.Length - 3));
        var widening = Math.Max(1, misfit);
        double Deviation(int unknown) => widening * Math.Sqrt(covariance[unknown, unknown]);
        var (bySlope, slopes, widened) = (Slopes(input, unknowns), new double[4, 4], new double[4, 4]);
        for (var i = 0; i < 16; i++)
        {
            slopes[i / 4, i % 4] = i % 4 < 3 ? bySlope[i % 4][i / 4] : 0;
            widened[i / 4, i % 4] = widening * widening * covariance[i / 4, i % 4];
        }

        var spread = FourUnknowns.Carried(slopes, widened);
        var deviations = Enumerable.Range(0, 4).Select(k => Math.Sqrt(spread[k, k])).ToArray();
        var worst = Enumerable.Range(0, residuals.Length).MaxBy(i => Math.Abs(residuals[i]) / input.Readings[i].DeviationM);
        return new FreeboardResult
        {
            Attitude = new Attitude(unknowns[0], unknowns[1] / RadPerDeg, unknowns[2] / RadPerDeg),
            DraughtDeviationM = Deviation(0),
            TrimDeviationDeg = Deviation(1) / RadPerDeg,
            HeelDeviationDeg = Deviation(2) / RadPerDeg,
            HogM = unknowns[3],
            HogDeviationM = Deviation(3),
            DisplacementKg = afloat[0],
            DisplacementDeviationKg = deviations[0],
            CentreOfBuoyancy = new Point3(afloat[1], afloat[2], afloat[3]),
            LcbDeviationM = deviations[1],
            TcbDeviationM = deviations[2],
            AttitudeCovariance = widened,
            AfloatSlopes = slopes,
            Residuals = [.. residuals.Zip(input.Readings, (residual, reading) => new FreeboardResidual(reading.Id, residual))],
            MisfitRatio = misfit,
            BeyondReason = Math.Abs(residuals[worst]) > BeyondReasonRatio * input.Readings[worst].DeviationM ? new FreeboardResidual(input.Readings[worst].Id, residuals[worst]) : null,
            IsHogMeasured = Math.Sqrt(covariance[3, 3]) < AsExpectedRatio * input.HogDeviationM,
            Working =
            [
                new WorkingStep("d", FormattableString.Invariant($"{input.Readings.Length} freeboards, least squares"), unknowns[0], "m", "f = Up·p − d"),
                new WorkingStep("t", "the same", unknowns[1] / RadPerDeg, "°", "f = Up·p − d"),
                new WorkingStep("h", "the same", unknowns[2] / RadPerDeg, "°", "f = Up·p − d"),
                new WorkingStep("hog", FormattableString.Invariant($"the same, expected 0 ± {input.HogDeviationM:0.###} m"), unknowns[3], "m", "parabola over the length"),
                new WorkingStep("Δ", FormattableString.Invariant($"{input.WaterKgPerM3:0.#}·V at that waterline"), afloat[0], "kg", "Archimedes"),
                new WorkingStep("χ", FormattableString.Invariant($"√(Σ(residual/deviation)²/({input.Readings.Length} − 3)); above 1 all deviations are multiplied by it"), misfit, "", "Birge ratio"),
            ],
        };
    }

    private static (double[,] Information, double[] Pull) Normal(FreeboardInput input, double[] unknowns)
    {
        var plane = WaterPlane.OfRadians(unknowns[0], unknowns[1], unknowns[2]);
        var information = new double[4, 4];
        var pull = new double[4];
        foreach (var reading in input.Readings)
        {
            double[] slopes = [-1, plane.Along.Dot(reading.Mark), plane.CosTrim * plane.Across.Dot(reading.Mark), HogShape(input.Hull, reading.Mark)];
            Add(slopes, reading.FreeboardM - Fitted(input, plane, unknowns[3], reading.Mark), reading.DeviationM);
        }

        Add([0, 0, 0, 1], -unknowns[3], input.HogDeviationM);
        return (information, pull);

        void Add(double[] slopes, double residual, double deviation)
        {
            for (var i = 0; i < 4; i++)
            {
                pull[i] += slopes[i] * residual / (deviation * deviation);
                for (var j = 0; j < 4; j++)
                {
                    information[i, j] += slopes[i] * slopes[j] / (deviation * deviation);
                }
            }
        }
    }

    private static double Fitted(FreeboardInput input, in WaterPlane plane, double hog, Point3 mark) => plane.HeightM(mark) + (hog * HogShape(input.Hull, mark));

    private static double HogShape(TriangleMesh hull, Point3 mark) =>
        (1.0 / 3) - Math.Pow(2 * (mark.XM - hull.Centre.XM) / (hull.Highest.XM - hull.Lowest.XM), 2);

    // Displacement and centre of buoyancy.
    private static double[] Afloat(FreeboardInput input, double[] unknowns)
    {
        var immersion = Immersion.Below(WaterPlane.OfRadians(unknowns[0], unknowns[1], unknowns[2]), input.Hull);
        var centre = (1 / immersion.Volume) * immersion.Moment;
        return [input.WaterKgPerM3 * immersion.Volume, centre.XM, centre.YM, centre.ZM];
    }

    // Draught, trim, heel; hog bends her without moving the water.
    private static double[][] Slopes(FreeboardInput input, double[] unknowns) =>
    [
        .. Enumerable.Range(0, 3).Select(i =>
        {
            double[] more = [.. unknowns], less = [.. unknowns];
            more[i] += SmallStep;
            less[i] -= SmallStep;
            return Afloat(input, more).Zip(Afloat(input, less), (after, before) => (after - before) / (2 * SmallStep)).ToArray();
        }),
    ];

    private static string Name(int unknown) => unknown switch { 0 => "draught", 1 => "trim", 2 => "heel", _ => "hog" };

    private static void Check(FreeboardInput input)
    {
        input.Hull.Closed(input.Subject);
        Guard.Water(input.WaterKgPerM3, input.Subject);
        Guard.Positive(input.HogDeviationM, 1, "m", input.Subject);
        if (input.Readings.IsDefault || input.Readings.Length < 4)
        {
            throw new ArgumentException($"{input.Subject}: {(input.Readings.IsDefault ? 0 : input.Readings.Length)} freeboards; at least 4 are needed, better 6.", nameof(input));
        }

        foreach (var reading in input.Readings)
        {
            Guard.Place(reading.Mark, reading.Id);
            Guard.InRange(reading.FreeboardM, -5, 20, "m", reading.Id);
            Guard.Positive(reading.DeviationM, 1, "m", reading.Id);
        }
    }
}
