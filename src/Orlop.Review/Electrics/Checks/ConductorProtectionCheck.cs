using Orlop.Boat.Things;
using Orlop.Boat.Topology;
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
        "For each ungrounded core: the worst that can feed it, from either end, against the largest device its ampacity allows. A core that nothing upstream protects may only be a short stretch to its device: battery lead, sheathed, or bare.",
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
        select finding;

    private Finding? Judge(ElectricsView view, Cable cable, WiringEdge edge, Condition condition)
    {
        double feedA = view.ReachIn(condition).WorstFeedA(edge.A);
        if (feedA == 0 || CrankingWay.IsOnlyThat(view, edge.Id, condition))
        {
            return null;
        }

        if (AllowedDevice.Of(view, cable, condition) is not { } allowed)
        {
            if (double.IsPositiveInfinity(feedA) && WithoutAnyDevice(view, cable, edge, condition, feedA) is { } bare)
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
            return Unprotected(cable, edge, condition, feedA, allowed, AllowsNothing(view, cable, edge, condition));
        }

        return feedA <= allowed.MostA ? Protected(cable, edge, condition, feedA, allowed) : Stretch(view, cable, edge, condition, feedA, allowed);
    }

    // Whatever the cable may carry: no device of any size may be left out between a battery and what it feeds, nor stand too far along.
    private Finding? WithoutAnyDevice(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, double feedA)
    {
        UnprotectedStretch stretch = UnprotectedStretch.Of(view, edge, condition, double.PositiveInfinity);
        if (stretch.Fault is { } fault)
        {
            return Unprotected(cable, edge, condition, feedA, null, fault);
        }
        return view.Practice?.Find(LimitOf(stretch, cable)) is { } limit && Verdicts.Of(stretch.LengthM, limit.Value) == Verdict.Fails
            ? Along(cable, edge, condition, feedA, null, stretch, limit)
            : null;
    }

    private static Sentence AllowsNothing(ElectricsView view, Cable cable, WiringEdge edge, Condition condition)
    {
        AmpacityOfCable where = view.AmpacityOf(cable, condition);
        return where.Result is { IsTooHot: true }
            ? Sentence.Of($"{cable.Title}, {edge.Core!.Id} may carry nothing {In(condition)}: {where.SpaceTitle} at {new Amount(where.AmbientC, "C")} is as hot as its insulation may get, so no device is small enough")
            : Sentence.Of($"{cable.Title}, {edge.Core!.Id}: the practice's limits allow it no device at all, and it can be fed");
    }

    private Finding Protected(Cable cable, WiringEdge edge, Condition condition, double feedA, AllowedDevice allowed) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdicts.Of(feedA, allowed.MostA),
        UseFraction = Verdicts.UseOf(feedA, allowed.MostA),
        Headline = Sentence.Of($"{cable.Title}, {edge.Core!.Id}: at most {A(feedA)} can feed it before something opens; it allows {A(allowed.MostA)}"),
        Working =
        [
            new WorkingLine("Worst feed", "the smallest device on each way from a source; the largest of these", A(feedA), "the wiring as drawn"),
            .. allowed.Working,
            Use(feedA, allowed.MostA),
        ],
        Inputs = [new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "insulationC")],
    };

    private Finding Stretch(ElectricsView view, Cable cable, WiringEdge edge, Condition condition, double feedA, AllowedDevice allowed)
    {
        UnprotectedStretch stretch = UnprotectedStretch.Of(view, edge, condition, allowed.MostA);
        if (stretch.Fault is { } fault)
        {
            return Unprotected(cable, edge, condition, feedA, allowed, fault);
        }

        string limitId = LimitOf(stretch, cable);
        if (view.Practice?.Find(limitId) is not { } limit)
        {
            return NoLimit(Description, edge.Id, condition.Id, cable.Title, limitId);
        }

        return stretch.Missing.Length > 0 && Verdicts.Of(stretch.LengthM, limit.Value) != Verdict.Fails
            ? Unknown(Description, edge.Id, condition.Id, Sentence.Of($"{cable.Title}, {edge.Core!.Id}: how far it runs before its fuse is not known"), stretch.Missing)
            : Along(cable, edge, condition, feedA, allowed, stretch, limit);
    }

    private static string LimitOf(UnprotectedStretch stretch, Cable cable) =>
        stretch.IsFromBattery ? LimitIds.UnprotectedFromBatteryM : cable.IsSheathed ? LimitIds.UnprotectedSheathedM : LimitIds.UnprotectedM;

    private Finding Along(Cable cable, WiringEdge edge, Condition condition, double feedA, AllowedDevice? allowed, UnprotectedStretch stretch, Limit limit) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdicts.Of(stretch.LengthM, limit.Value),
        UseFraction = Verdicts.UseOf(stretch.LengthM, limit.Value),
        Headline = Sentence.Of($"{cable.Title}, {edge.Core!.Id}: {(stretch.Missing.Length > 0 ? "at least " : "")}{M(stretch.LengthM)} from {stretch.FromTitle} before {stretch.DeviceTitle} protects it; {M(limit.Value)} is allowed"),
        Working =
        [
            Feed(feedA),
            .. WorkingOf(allowed),
            new WorkingLine("Unprotected length", $"along the conductor from {stretch.FromTitle} to {stretch.DeviceTitle}", M(stretch.LengthM), "the wiring as drawn"),
            Line(limit, stretch.IsFromBattery ? "Allowed from a battery" : cable.IsSheathed ? "Allowed in a sheath" : "Allowed", "M"),
            Use(stretch.LengthM, limit.Value),
        ],
        Inputs = [new FindingInput(cable.Id, "lengthM")],
        Caution = stretch.IsFromBattery ? Cautions.BatteryPost : null,
    };

    private Finding Unprotected(Cable cable, WiringEdge edge, Condition condition, double feedA, AllowedDevice? allowed, Sentence fault) => new()
    {
        CheckId = Description.Id,
        SubjectId = edge.Id,
        ConditionId = condition.Id,
        Verdict = Verdict.Fails,
        UseFraction = allowed is null ? null : Verdicts.UseOf(feedA, allowed.MostA),
        Headline = fault,
        Working = [Feed(feedA), .. WorkingOf(allowed), .. allowed is not null && double.IsFinite(feedA) ? new[] { Use(feedA, allowed.MostA) } : []],
        Inputs = [new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "cores")],
        Caution = double.IsFinite(feedA) ? null : Cautions.BatteryPost,
    };

    private static IEnumerable<WorkingLine> WorkingOf(AllowedDevice? allowed) =>
        allowed?.Working ?? [new WorkingLine("Largest device", "not known; without any device it makes no difference", null, "")];

    private static WorkingLine Feed(double feedA) => double.IsFinite(feedA)
        ? new WorkingLine("Worst feed", "the smallest device on each way from a source; the largest of these", A(feedA), "the wiring as drawn")
        : new WorkingLine("Worst feed", "a battery reaches it with no fuse or breaker between", null, "the wiring as drawn");
}
