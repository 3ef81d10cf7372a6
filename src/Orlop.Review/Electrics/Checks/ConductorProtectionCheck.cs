using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Every ungrounded conductor is protected by a device small enough for it, near enough to what feeds it.</summary>
public sealed class ConductorProtectionCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "conductor-protection",
        "Every conductor is protected, near enough to its source",
        "For each ungrounded core: the most that can feed it from either end before something opens, devices side by side counted together, against the largest device its ampacity allows. A core that nothing upstream protects may only be a short stretch to its device: battery lead, sheathed, or bare.",
        [LimitIds.DeviceOverAmpacityBelow50VRatio, LimitIds.DeviceOverAmpacityFrom50VRatio, LimitIds.DeviceUsesDeratedAmpacityFlag, LimitIds.UnprotectedM, LimitIds.UnprotectedSheathedM, LimitIds.UnprotectedFromBatteryM]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        from core in cable.Cores
        where !ConductorAmpacityCheck.IsEarth(core)
        let edge = view.Wiring.Find(ElementIds.Core(cable, core))!
        where !view.Grounding.IsGrounded(edge)
        from condition in view.Conditions
        let finding = Judge(view, cable, edge, condition)
        where finding is not null
        select finding.Verdict == Verdict.Fails && UnbondedMinus.Of(view, edge) is { } minus ? minus.Explain(finding) : finding;

    private Finding? Judge(ElectricsView view, Cable cable, WiringEdge edge, Condition condition)
    {
        FeedLimit feed = view.ReachIn(condition).FeedOf(edge);
        if (feed.MostA == 0 || CrankingWay.IsOnlyThat(view, edge.Id, condition))
        {
            return null;
        }

        if (AllowedDevice.Of(view, cable, condition) is not { } allowed)
        {
            if (FeedWords.IsBare(view, feed) && WithoutAnyDevice(view, cable, edge, condition, feed) is { } bare)
            {
                return bare;
            }
            AmpacityOfCable where = view.AmpacityOf(cable, condition);
            return where.Missing.Length > 0
                ? Unknown(Description, edge.Id, condition.Id, Sentence.Of($"{cable.Title}: the largest device it allows cannot be told"), where.Missing)
                : NoLimit(Description, edge.Id, condition.Id, cable.Title, LimitIds.DeviceOverAmpacityBelow50VRatio);
        }

        if (allowed.MostA <= 0)
        {
            return Unprotected(view, cable, edge, condition, feed, allowed, AllowsNothing(view, cable, edge, condition), []);
        }

        if (feed.MostA <= allowed.MostA)
        {
            return Protected(view, cable, edge, condition, feed, allowed);
        }

        return feed.IsKnown || feed.LeastA > allowed.MostA ? Stretch(view, cable, edge, condition, feed, allowed) : NotKnown(view, cable, edge, condition, feed);
    }

    // Whatever the cable may carry: no device of any size may be left out between a battery and what it feeds, nor stand too far along.
    private Finding? WithoutAnyDevice(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed)
    {
        UnprotectedStretch stretch = UnprotectedStretch.Of(view, edge, condition, double.PositiveInfinity);
        if (stretch.Fault is { } fault)
        {
            return Unprotected(view, cable, edge, condition, feed, null, fault, stretch.FaultLines);
        }
        return view.Practice?.Find(UnprotectedStretch.LimitIdOf(stretch.IsFromBattery, cable)) is { } limit && Verdicts.Of(stretch.LengthM, limit.Value) == Verdict.Fails
            ? Along(view, cable, edge, condition, feed, null, stretch, limit)
            : null;
    }

    private Finding NotKnown(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed) => Unknown(
        Description, edge.Id, condition.Id, Sentence.Of($"{cable.Title}, {edge.Core!.Id}: what can feed it cannot be told; a rating is not known"),
        [.. feed.LimitedBy.Where(part => double.IsPositiveInfinity(part.LimitA)).Select(part => new FindingInput(part.Id, "ratedA", IsMissing: true))]);

    private static Sentence AllowsNothing(ElectricsView view, Cable cable, WiringEdge edge, Condition condition)
    {
        AmpacityOfCable where = view.AmpacityOf(cable, condition);
        return where.Result is { IsTooHot: true }
            ? Sentence.Of($"{cable.Title}, {edge.Core!.Id} may carry nothing {In(condition)}: {where.SpaceTitle} at {new Amount(where.AmbientC, "C")} is as hot as its insulation may get, so no device is small enough")
            : Sentence.Of($"{cable.Title}, {edge.Core!.Id}: the practice's limits allow it no device at all, and it can be fed");
    }

    private Finding Protected(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed, AllowedDevice allowed) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdicts.Of(feed.MostA, allowed.MostA),
        UseFraction = Verdicts.UseOf(feed.MostA, allowed.MostA),
        Headline = Sentence.Of($"{cable.Title}, {edge.Core!.Id}: at most {A(feed.MostA)} can feed it before something opens{FeedWords.Together(view, feed)}; it allows {A(allowed.MostA)}"),
        WorkingWhenAsked = () =>
        [
            FeedWords.Line(view, feed),
            .. allowed.Working,
            Use(feed.MostA, allowed.MostA),
        ],
        Inputs = [new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "insulationC")],
    };

    private Finding Stretch(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed, AllowedDevice allowed)
    {
        UnprotectedStretch stretch = UnprotectedStretch.Of(view, edge, condition, allowed.MostA);
        if (stretch.Fault is { } fault)
        {
            return Unprotected(view, cable, edge, condition, feed, allowed, fault, stretch.FaultLines);
        }

        string limitId = UnprotectedStretch.LimitIdOf(stretch.IsFromBattery, cable);
        if (view.Practice?.Find(limitId) is not { } limit)
        {
            return NoLimit(Description, edge.Id, condition.Id, cable.Title, limitId);
        }

        return stretch.Missing.Length > 0 && Verdicts.Of(stretch.LengthM, limit.Value) != Verdict.Fails
            ? Unknown(Description, edge.Id, condition.Id, Sentence.Of($"{cable.Title}, {edge.Core!.Id}: how far it runs before its fuse is not known"), stretch.Missing)
            : Along(view, cable, edge, condition, feed, allowed, stretch, limit);
    }

    private Finding Along(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed, AllowedDevice? allowed, UnprotectedStretch stretch, Limit limit) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdicts.Of(stretch.LengthM, limit.Value),
        UseFraction = Verdicts.UseOf(stretch.LengthM, limit.Value),
        Headline = Sentence.Of($"{cable.Title}, {edge.Core!.Id}: {(stretch.Missing.Length > 0 ? "at least " : "")}{M(stretch.LengthM)} from {stretch.FromTitle} before {stretch.DeviceTitle} protects it; {M(limit.Value)} is allowed"),
        WorkingWhenAsked = () =>
        [
            FeedWords.Line(view, feed),
            .. WorkingOf(allowed),
            new WorkingLine("Unprotected length", $"along the conductor from {stretch.FromTitle} to {stretch.DeviceTitle}", M(stretch.LengthM), "the wiring as drawn"),
            Line(limit, stretch.IsFromBattery ? "Allowed from a battery" : cable.IsSheathed ? "Allowed in a sheath" : "Allowed", "M"),
            Use(stretch.LengthM, limit.Value),
        ],
        Inputs = [new FindingInput(cable.Id, "lengthM")],
        Caution = stretch.IsFromBattery ? Cautions.BatteryPost : null,
    };

    private Finding Unprotected(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, FeedLimit feed, AllowedDevice? allowed, Sentence fault, ImmutableArray<WorkingLine> faultLines) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdict.Fails,
        UseFraction = allowed is null ? null : Verdicts.UseOf(feed.MostA, allowed.MostA),
        Headline = fault,
        WorkingWhenAsked = () => [FeedWords.Line(view, feed), .. WorkingOf(allowed), .. faultLines, .. allowed is not null && double.IsFinite(feed.MostA) ? new[] { Use(feed.MostA, allowed.MostA) } : []],
        Inputs = [new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "cores")],
        Caution = double.IsFinite(feed.MostA) ? null : Cautions.BatteryPost,
    };

    private static IEnumerable<WorkingLine> WorkingOf(AllowedDevice? allowed) =>
        allowed?.Working ?? [new WorkingLine("Largest device", "not known; without any device it makes no difference", null, "")];
}
