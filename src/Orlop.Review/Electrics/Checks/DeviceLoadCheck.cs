using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each fuse and breaker is big enough for what runs through it.</summary>
public sealed class DeviceLoadCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "device-carries-load",
        "Fuse or breaker is big enough for its load",
        "The running current through a fuse or breaker against the share of its rating that the practice lets it carry for long; of what it carries in the air where it stands, where its sheet says so.",
        [LimitIds.LoadOverDeviceFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from device in view.Boat.All<Protection>()
        where !FeedsCrankingOnly(view, device)
        from condition in view.Conditions
        select Judge(view, device, condition);

    private static bool FeedsCrankingOnly(ElectricsView view, Protection device) =>
        view.Conditions.All(condition => CrankingWay.IsOnlyThat(view, device.Id, condition));

    private Finding Judge(ElectricsView view, Protection device, Condition condition)
    {
        string[] poles = [.. Wiring.EdgesOf(device).Select(edge => edge.Id)];
        if (LoadedCurrents.GreatestA(view, condition, poles) is not { } current)
        {
            return view.Solve(condition, ChargeCase.Normal).GroupOf(device.Id) is null
                ? Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title} is joined to nothing"), [new FindingInput(device.Id, "id")])
                : NotSolved(Description, device.Id, condition, device.Title);
        }

        string fullest = poles.MaxBy(id => LoadedCurrents.GreatestA(view, condition, id))!;
        Limit? limit = view.Practice?.Find(LimitIds.LoadOverDeviceFraction);
        // More than its whole rating is too much by any practice.
        Derating derating = Derating.Of(view, device, condition);
        double share = limit?.Value ?? 1, rated = derating.ShareFraction * device.RatedA.Value, allowed = share * rated;
        Verdict verdict = Verdicts.Of(current, allowed);
        if (limit is null && verdict != Verdict.Fails)
        {
            return NoLimit(Description, device.Id, condition.Id, device.Title, LimitIds.LoadOverDeviceFraction);
        }

        if (derating.Missing.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: what it carries in the air where it stands {In(condition)} cannot be told"), derating.Missing);
        }

        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, poles);
        if (missing.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title} carries at least {A(current)} {In(condition)}; what else it feeds is not known"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = device.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(current, allowed),
            Headline = Sentence.Of($"{device.Title} carries {A(current)} of the {A(allowed)} it may for long {In(condition)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Running current", "the larger of normal and lowest charge", A(current), Solved(LoadedCurrents.GreatestCase(view, condition, fullest), fullest)),
                new WorkingLine("Rating", "", A(device.RatedA.Value), "as typed"),
                .. derating.Working,
                limit is null
                    ? new WorkingLine("Share it may carry for long", "the practice gives none; by any, its whole rating at most", Fraction(share), "")
                    : Line(limit, "Share it may carry for long", "Fraction"),
                new WorkingLine("Allowed", Formula.Of("{0} × {1}", v => v[0] * v[1], share, rated), A(allowed), ""),
                Use(current, allowed),
            ],
            Inputs = [new FindingInput(device.Id, "ratedA")],
        };
    }
}
