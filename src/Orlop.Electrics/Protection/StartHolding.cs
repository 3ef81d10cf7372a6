using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>A stretch of a load's start: so many times the device's rating for so long.</summary>
/// <param name="CurrentRatio">Current over the device's rating, 0 to 10 000.</param>
/// <param name="DurationS">0 to 1e7.</param>
public sealed record ProfileStep(double CurrentRatio, double DurationS);

/// <summary>Whether a device rides through a start.</summary>
public enum StartHoldingStatus
{
    /// <summary>No step was given, or one lies where the device says nothing about its earliest opening.</summary>
    Unknown,

    /// <summary>The gates alone show that it holds.</summary>
    Holds,

    /// <summary>It holds by the curve drawn between the gates, which the standard does not promise.</summary>
    HoldsByInterpolation,

    /// <summary>It may open.</summary>
    MayOpen,
}

/// <summary>Whether a device rides through a start.</summary>
/// <param name="UsedFraction">Sum of each step's time over the earliest opening time there, interpolated; null when unknown.</param>
/// <param name="GuaranteedUsedFraction">The same with the times that the gates alone promise; null when unknown.</param>
public sealed record StartHoldingResult(
    StartHoldingStatus Status, double? UsedFraction, double? GuaranteedUsedFraction, ImmutableArray<string> Assumptions, ImmutableArray<WorkingStep> Working);

/// <summary>
/// Adds up Σ t_i / t_earliest(r_i) over the steps above the rating; the device holds while the sum is below 1. The linear sum (as for fatigue) is an assumption: heat
/// that escapes between steps is not credited.
/// </summary>
public static class StartHolding
{
    public static StartHoldingResult Calculate(IOperatingCurve curve, ImmutableArray<ProfileStep> profile)
    {
        ArgumentNullException.ThrowIfNull(curve);
        // No profile is no knowledge of the start, not a start that draws nothing.
        double? used = profile.IsDefaultOrEmpty ? null : 0;
        double? guaranteed = used;
        var working = ImmutableArray.CreateBuilder<WorkingStep>();
        foreach (var step in profile.IsDefault ? [] : profile)
        {
            Guard.InRange(step.CurrentRatio, 0, 10_000, "× rating", curve.Id);
            Guard.InRange(step.DurationS, 0, 1e7, "s", curve.Id);
            if (step.CurrentRatio <= 1 || step.DurationS == 0)
            {
                continue;
            }

            var earliest = curve.EarliestOpening(step.CurrentRatio);
            var share = step.DurationS / earliest.TimeS;
            used += share;
            guaranteed += step.DurationS / earliest.GuaranteedS;
            working.Add(new WorkingStep("t/t_earliest",
                FormattableString.Invariant($"{step.DurationS:0.###} s at {earliest.Explanation}"), share, "", curve.Source));
        }

        working.Add(new WorkingStep("Σ", "shares added up", used, "", "common practice, no source"));
        return new StartHoldingResult(Judge(used, guaranteed), used, guaranteed,
        [
            "what is at or below the rating is carried for ever and not counted",
            "shares of the soonest opening time add up; cooling in between is not credited",
        ], working.ToImmutable());
    }

    private static StartHoldingStatus Judge(double? used, double? guaranteed) => (used, guaranteed) switch
    {
        (null, _) or (_, null) => StartHoldingStatus.Unknown,
        (_, < 1) => StartHoldingStatus.Holds,
        ( < 1, _) => StartHoldingStatus.HoldsByInterpolation,
        _ => StartHoldingStatus.MayOpen,
    };
}
