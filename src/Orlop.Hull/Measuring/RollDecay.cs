using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>One extreme of a roll that dies out.</summary>
/// <param name="TimeS">When, 0 to 10 000.</param>
/// <param name="HeelDeg">Heel there, starboard positive, by turns to either side; -60 to 60.</param>
public sealed record RollPeak(double TimeS, double HeelDeg);

/// <summary>What a dying roll tells.</summary>
/// <param name="PeriodS">Mean period of a whole roll, there and back.</param>
/// <param name="NaturalPeriodS">Period without damping: the damped one times √(1 - ζ²).</param>
/// <param name="LinearLossCoefficient">a of the loss ΔA = a·A + b·A² in half a roll, A the mean of the two amplitudes in rad; a = π·ζ.</param>
/// <param name="QuadraticLossCoefficient">b of the same, per rad; b = 4/3 of the coefficient of |φ'|φ'.</param>
/// <param name="LogDecrementCoefficient">Mean of ln(A/next A) in half a roll, as if damping were all linear.</param>
/// <param name="DampingRatio">ζ from the log-decrement δ: δ/√(π² + δ²).</param>
/// <param name="Working">The steps.</param>
public sealed record RollDecayResult(
    double PeriodS, double NaturalPeriodS, double LinearLossCoefficient, double QuadraticLossCoefficient, double LogDecrementCoefficient, double DampingRatio, ImmutableArray<WorkingStep> Working);

/// <summary>Period and damping from the extremes of one dying roll: the whole record is fitted by least squares, since the log-decrement of single pairs has the largest error.</summary>
public static class RollDecay
{
    public static RollDecayResult Calculate(string subject, ImmutableArray<RollPeak> peaks)
    {
        Check(subject, peaks);
        double[] amplitudes = [.. peaks.Select(peak => Math.Abs(peak.HeelDeg) * Math.PI / 180)];
        double sum11 = 0, sum12 = 0, sum22 = 0, right1 = 0, right2 = 0;
        for (var i = 1; i < amplitudes.Length; i++)
        {
            var (mean, loss) = (0.5 * (amplitudes[i - 1] + amplitudes[i]), amplitudes[i - 1] - amplitudes[i]);
            sum11 += mean * mean;
            sum12 += mean * mean * mean;
            sum22 += mean * mean * mean * mean;
            right1 += mean * loss;
            right2 += mean * mean * loss;
        }

        var determinant = (sum11 * sum22) - (sum12 * sum12);
        var (linear, quadratic) = (((right1 * sum22) - (right2 * sum12)) / determinant, ((sum11 * right2) - (sum12 * right1)) / determinant);
        var decrement = Decrement(amplitudes);
        var ratio = decrement / Math.Sqrt((Math.PI * Math.PI) + (decrement * decrement));
        var period = 2 * (peaks[^1].TimeS - peaks[0].TimeS) / (peaks.Length - 1);
        const string Source = "φ\" + 2ζωφ' + β|φ'|φ' + ω²φ = 0";
        return new RollDecayResult(period, period * Math.Sqrt(1 - (ratio * ratio)), linear, quadratic, decrement, ratio,
        [
            new WorkingStep("T", FormattableString.Invariant($"2·({peaks[^1].TimeS:0.##} − {peaks[0].TimeS:0.##})/{peaks.Length - 1}"), period, "s", "mean of the record"),
            new WorkingStep("a", "ΔA = a·A + b·A² by least squares", linear, "", Source),
            new WorkingStep("b", "ΔA = a·A + b·A² by least squares", quadratic, "1/rad", Source),
            new WorkingStep("δ", "slope of ln A over half rolls", decrement, "", Source),
            new WorkingStep("ζ", "δ/√(π² + δ²)", ratio, "", Source),
        ]);
    }

    private static double Decrement(double[] amplitudes)
    {
        var middle = 0.5 * (amplitudes.Length - 1);
        double above = 0, below = 0;
        for (var i = 0; i < amplitudes.Length; i++)
        {
            above -= (i - middle) * Math.Log(amplitudes[i]);
            below += (i - middle) * (i - middle);
        }

        return above / below;
    }

    private static void Check(string subject, ImmutableArray<RollPeak> peaks)
    {
        if (peaks.IsDefault || peaks.Length < 4)
        {
            throw new ArgumentException($"{subject}: {(peaks.IsDefault ? 0 : peaks.Length)} extremes of roll; at least 4 are needed.", nameof(peaks));
        }

        for (var i = 0; i < peaks.Length; i++)
        {
            var where = FormattableString.Invariant($"{subject}, extreme {i + 1}");
            Guard.InRange(peaks[i].TimeS, 0, 10_000, "s", where, "TimeS");
            Guard.InRange(peaks[i].HeelDeg, -60, 60, "°", where, "HeelDeg");
            if (peaks[i].HeelDeg == 0 || (i > 0 && (Math.Sign(peaks[i].HeelDeg) == Math.Sign(peaks[i - 1].HeelDeg) || peaks[i].TimeS <= peaks[i - 1].TimeS)))
            {
                throw new ArgumentException($"{where}: extremes go to either side by turns, each later than the one before.", nameof(peaks));
            }
        }

        if (!(Math.Abs(peaks[^1].HeelDeg) < Math.Abs(peaks[0].HeelDeg)))
        {
            throw new ArgumentException($"{subject}: the roll does not die out.", nameof(peaks));
        }
    }
}
