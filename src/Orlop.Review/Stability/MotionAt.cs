using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Hull.Motions;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>What a place of the boat feels when she moves as the owner stated for a condition.</summary>
/// <param name="Result">Accelerations, gravity in them, and tilt; null where they cannot be told.</param>
/// <param name="IsPeriodPredicted">The period of the roll is predicted from GM, not stated.</param>
/// <param name="Working">The steps, each with its source.</param>
/// <param name="WhyNot">Why nothing can be told, in a sentence; null where something can.</param>
/// <param name="Missing">What is not given.</param>
public sealed record MotionAt(MotionResult? Result, bool IsPeriodPredicted, ImmutableArray<WorkingLine> Working, string? WhyNot, ImmutableArray<FindingInput> Missing)
{
    /// <summary>What the method is, and how far it goes.</summary>
    public const string Range =
        "Rigid-body mechanics of a harmonic roll, pitch and heave about one centre, all at their most together: on the side of caution for such a motion. Roll 0 to 60°, pitch 0 to 30°, periods 1 to 60 s. "
        + "No slamming, no green water, no planing, no wave of any kind: the motion is the owner's statement, and a sea can do worse.";

    /// <summary>Stands with every result.</summary>
    public const string Caution =
        "What is lashed to these numbers holds for the stated motion and no other. A fastening that lets go at sea can kill: take the worst that you foresee, and have what matters looked at by someone who knows.";

    /// <summary>At a place, in a condition.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="condition">The condition, with the motion that is stated for it.</param>
    /// <param name="place">The place, in the boat's axes.</param>
    /// <param name="subject">What is there, for messages.</param>
    public static MotionAt Of(StabilityView view, Condition condition, Place place, string subject)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(condition);
        ArgumentNullException.ThrowIfNull(place);
        if (condition.Motion is not { } stated)
        {
            return Not("No motion is stated for this condition.", new FindingInput(condition.Id, "motion", IsMissing: true));
        }

        if (view.FloatingIn(condition)?.Rest is not { Status: FloatingStatus.Floats, Position: { } at } || view.Bodies.Hull is not { } hull)
        {
            return Not("Where she turns cannot be told: no position of rest is known.", [.. view.LoadedIn(condition).Missing]);
        }

        ImmutableArray<WorkingLine>.Builder working = ImmutableArray.CreateBuilder<WorkingLine>();
        if (PeriodS(view, stated, at, working) is not { } period)
        {
            return view.Boat.Particulars?.BeamM is null
                ? Not("The period of her roll is neither stated nor, without her beam, to be predicted.", new FindingInput(WhyUnknown.SubjectOf(view), "beamM", IsMissing: true))
                : Not("She has no roll period of 1 to 60 s at her GM; state one.");
        }

        Point3 flotation = Submersion.Calculate(hull, at.Attitude).CentreOfFlotation ?? at.CentreOfBuoyancy;
        double heave = Math.Pow(Math.Tau / stated.HeavePeriodS, 2) * stated.HeaveM;
        working.Add(StabilityLines.Line(new WorkingStep("Centre", FormattableString.Invariant($"centre of flotation at rest, x {flotation.XM:0.###} m, z {flotation.ZM:0.###} m"), null, "", "common practice, no source")));
        working.Add(StabilityLines.Line(new WorkingStep("Heave", FormattableString.Invariant($"(2π/{stated.HeavePeriodS:0.##})²·{stated.HeaveM:0.###}"), heave, "m/s²", "harmonic motion")));
        try
        {
            MotionResult result = BoatMotion.Calculate(new MotionInput
            {
                Subject = subject,
                Place = WeightLedger.At(place),
                Centre = new Point3(flotation.XM, 0, flotation.ZM),
                RollDeg = stated.RollDeg,
                RollPeriodS = period,
                PitchDeg = stated.PitchDeg,
                PitchPeriodS = stated.PitchPeriodS,
                HeaveMPerS2 = heave,
            });
            working.AddRange(result.Working.Select(StabilityLines.Line));
            return new MotionAt(result, stated.RollPeriodS is null, working.ToImmutable(), null, []);
        }
        catch (ArgumentException refused)
        {
            return Not(RefusalWords.Of(refused));
        }
    }

    private static double? PeriodS(StabilityView view, StatedMotion stated, FloatingPosition at, ImmutableArray<WorkingLine>.Builder working)
    {
        if (stated.RollPeriodS is { } own)
        {
            working.Add(StabilityLines.Line(new WorkingStep("Roll period", "as stated", own, "s", "owner")));
            return own;
        }

        RollFactor factor = RollFactor.Of(view);
        if (view.Boat.Particulars?.BeamM?.Value is not { } beam || RollPeriod.FromBeamS(factor.Value, beam, at.MetacentricHeightM) is not ({ } period and >= 1 and <= 60))
        {
            return null;
        }

        working.Add(StabilityLines.Line(new WorkingStep(
            "Roll period, predicted", FormattableString.Invariant($"f·B/√GM = {factor.Value:0.###}·{beam:0.###}/√{at.MetacentricHeightM:0.####}, f ± {2 * factor.Deviation:0.###}"), period, "s", factor.Source)));
        return period;
    }

    private static MotionAt Not(string why, params ImmutableArray<FindingInput> missing) => new(null, false, [], why, missing);
}
