using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Motions;

/// <summary>What a thing at the place feels, in the boat's axes, gravity's share included: the most each way, taken together.</summary>
/// <param name="AcrossMPerS2">Most along the deck across the boat, to either side.</param>
/// <param name="AlongMPerS2">Most along the deck fore and aft, either way.</param>
/// <param name="MostDownMPerS2">Most square to the deck, pressing down; at rest 9.81.</param>
/// <param name="LeastDownMPerS2">Least square to the deck; below 0 the thing lifts off.</param>
/// <param name="TiltDeg">Greatest tilt of the deck, roll and pitch together.</param>
/// <param name="Working">The steps.</param>
public sealed record MotionResult(double AcrossMPerS2, double AlongMPerS2, double MostDownMPerS2, double LeastDownMPerS2, double TiltDeg, ImmutableArray<WorkingStep> Working);

/// <summary>
/// Accelerations of a rigid boat in harmonic roll, pitch and heave about a fixed centre: across g·sin φ + ω²·φ·|z|, along g·sin θ + ω²·θ·|z|, square to the deck
/// g ± (ω²·φ·|y| + ω²·θ·|x| + heave). All extremes are taken at one moment, and gravity square to the deck at its most, which is on the side of caution. No slamming, no green
/// water, no planing.
/// </summary>
public static class BoatMotion
{
    private const double GravityMPerS2 = 9.81;
    private const double RadPerDeg = Math.PI / 180;
    private const string Source = "rigid-body mechanics, harmonic motion";

    public static MotionResult Calculate(MotionInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Place(input.Place, input.Subject);
        Guard.Place(input.Centre, input.Subject);
        Guard.InRange(input.RollDeg, 0, 60, "°", input.Subject);
        Guard.InRange(input.RollPeriodS, 1, 60, "s", input.Subject);
        Guard.InRange(input.PitchDeg, 0, 30, "°", input.Subject);
        Guard.InRange(input.PitchPeriodS, 1, 60, "s", input.Subject);
        Guard.InRange(input.HeaveMPerS2, 0, 30, "m/s²", input.Subject);
        var arm = input.Place - input.Centre;
        var (roll, pitch) = (input.RollDeg * RadPerDeg, input.PitchDeg * RadPerDeg);
        var (perRoll, perPitch) = (Math.Pow(Math.Tau / input.RollPeriodS, 2) * roll, Math.Pow(Math.Tau / input.PitchPeriodS, 2) * pitch);
        var across = (GravityMPerS2 * Math.Sin(roll)) + (perRoll * Math.Abs(arm.ZM));
        var along = (GravityMPerS2 * Math.Sin(pitch)) + (perPitch * Math.Abs(arm.ZM));
        var change = (perRoll * Math.Abs(arm.YM)) + (perPitch * Math.Abs(arm.XM)) + input.HeaveMPerS2;
        var (most, least) = (GravityMPerS2 + change, (GravityMPerS2 * Math.Cos(roll) * Math.Cos(pitch)) - change);
        var tilt = Math.Acos(Math.Cos(roll) * Math.Cos(pitch)) / RadPerDeg;
        return new MotionResult(across, along, most, least, tilt,
        [
            new WorkingStep("a across", FormattableString.Invariant($"9.81·sin {input.RollDeg:0.#}° + (2π/{input.RollPeriodS:0.##})²·{roll:0.####}·{Math.Abs(arm.ZM):0.###}"), across, "m/s²", Source),
            new WorkingStep("a along", FormattableString.Invariant($"9.81·sin {input.PitchDeg:0.#}° + (2π/{input.PitchPeriodS:0.##})²·{pitch:0.####}·{Math.Abs(arm.ZM):0.###}"), along, "m/s²", Source),
            new WorkingStep("a down, most", FormattableString.Invariant($"9.81 + {change:0.###}"), most, "m/s²", Source),
            new WorkingStep("a down, least", FormattableString.Invariant($"9.81·cos·cos − {change:0.###}"), least, "m/s²", Source),
            new WorkingStep("tilt", "acos(cos φ·cos θ)", tilt, "°", Source),
        ]);
    }
}
