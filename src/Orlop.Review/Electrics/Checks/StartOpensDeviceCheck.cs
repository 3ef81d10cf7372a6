using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No fuse or breaker opens by mistake while a load starts.</summary>
public sealed class StartOpensDeviceCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "start-opens-device",
        "No device opens while a load starts",
        "The current through each fuse and breaker on the way while a load starts, for as long as the start lasts, against the earliest time at which the device may open (its operating-time gates).",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from load in view.Boat.All<ElectricLoad>()
        where Starts.HasOne(load)
        from condition in view.Conditions
        where LoadElements.IsOnIn(load, condition.Id)
        from device in view.Boat.All<Protection>()
        where view.PathsIn(condition).TakersBehind(device.Id).Contains(load.Id)
        select Judge(view, load, device, condition);

    private Finding Judge(ElectricsView view, ElectricLoad load, Protection device, Condition condition)
    {
        string subject = $"{device.Id}";
        if (Starts.IsRatioMissing(load))
        {
            return Starts.RatioUnknown(Description, subject, condition.Id, load);
        }

        if (load.StartS is not { } duration)
        {
            return Unknown(Description, subject, condition.Id, Sentence.Of($"{load.Title}: how long its start lasts is not known"), [new FindingInput(load.Id, "startS", IsMissing: true)]);
        }

        if (DeviceGates.Of(device) is not { } gates)
        {
            return Unknown(Description, subject, condition.Id, Sentence.Of($"{GatesGap.Words(device)}, so whether it holds while {load.Title} starts cannot be told"), [GatesGap.Input(device)]);
        }

        // A charger helps at normal charge and takes current off the battery's own fuse; at the lowest none helps.
        SolvedNetwork[] both = [.. new[] { ChargeCase.Normal, ChargeCase.Lowest }.Select(charge => view.Solve(new NetworkCase(condition.Id, charge, load.Id)))];
        if (both.Any(each => each.BranchA(device.Id) is null))
        {
            return NotSolved(Description, subject, condition, device.Title);
        }

        SolvedNetwork greatest = both.MaxBy(each => Math.Abs(each.BranchA(device.Id)!.Value))!;
        double current = Math.Abs(greatest.BranchA(device.Id)!.Value), ratio = current / device.RatedA.Value;
        StartHoldingResult holding = StartHolding.Calculate(gates, [new ProfileStep(ratio, duration.Value)]);
        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, device.Id);
        if (missing.Length > 0 && VerdictOf(holding) != Verdict.Fails)
        {
            return Unknown(Description, subject, condition.Id, Sentence.Of($"{device.Title}: its current while {load.Title} starts cannot be told"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = subject,
            ConditionId = condition.Id,
            Verdict = VerdictOf(holding),
            UseFraction = holding.UsedFraction is { } used && double.IsFinite(used) ? used : null,
            Headline = HeadlineOf(holding, device, load, current, ratio, duration.Value),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Starting current", $"{load.Title} at {N(load.StartRatio!.Value)} × its running current, everything else running, the larger of normal and lowest charge", A(current), Solved(greatest, device.Id)),
                new WorkingLine("Share of the rating", Formula.Share(current, device.RatedA.Value), Fraction(ratio), ""),
                new WorkingLine("The start lasts", "as typed", Seconds(duration.Value), ""),
                .. holding.Working.Select(step => Line(step, gates.IsFromMemory && step.Source == gates.Source)),
                .. holding.UsedFraction is { } taken && double.IsFinite(taken) ? new[] { new WorkingLine("Use", "shares of the time to open, added up", Fraction(taken), "") } : [],
                .. holding.Assumptions.Select(assumption => new WorkingLine("Assumed", assumption, null, "")),
            ],
            Inputs = [new FindingInput(load.Id, "startRatio"), new FindingInput(load.Id, "startS"), new FindingInput(device.Id, "ratedA"), new FindingInput(device.Id, "gates")],
        };
    }

    private static Verdict VerdictOf(StartHoldingResult holding) => holding.Status switch
    {
        StartHoldingStatus.Holds => Verdicts.OfUse(holding.GuaranteedUsedFraction),
        StartHoldingStatus.HoldsByInterpolation => Verdict.Tight,
        StartHoldingStatus.MayOpen => Verdict.Fails,
        _ => Verdict.Unknown,
    };

    private static Sentence HeadlineOf(StartHoldingResult holding, Protection device, ElectricLoad load, double current, double ratio, double durationS) => holding.Status switch
    {
        StartHoldingStatus.MayOpen => Sentence.Of($"{device.Title} may open while {load.Title} starts: {A(current)} for {Seconds(durationS)} is {Fraction(ratio)} of its rating"),
        StartHoldingStatus.Holds => Sentence.Of($"{device.Title} holds while {load.Title} starts: {A(current)} for {Seconds(durationS)} is {Fraction(ratio)} of its rating"),
        StartHoldingStatus.HoldsByInterpolation => Sentence.Of($"{device.Title} should hold while {load.Title} starts ({A(current)} for {Seconds(durationS)}), but only by the curve drawn between its gates"),
        _ => Sentence.Of($"{device.Title}: {A(current)} while {load.Title} starts is beyond what is known of its operating times"),
    };
}
