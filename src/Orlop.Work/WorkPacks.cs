using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Loading;
using Orlop.Work.Readings;
using Orlop.Work.Scope;
using Orlop.Work.Steps;

namespace Orlop.Work;

/// <summary>Makes the work pack of an alteration. Nothing in it is typed: all is derived from the edits, the wiring and the solved network.</summary>
public static class WorkPacks
{
    /// <summary>
    /// The pack of an alteration. It covers all edits, those already built among them, so that its keys stay the same while the work goes on;
    /// what to bring and to cut is for what is not built yet.
    /// </summary>
    public static WorkPack Plan(BoatModel asBuilt, Alteration alteration, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(asBuilt);
        ArgumentNullException.ThrowIfNull(alteration);
        PackScope scope = new(asBuilt, alteration);
        ImmutableArray<CableEnd> ends = CableEnds.Of(scope);
        CutPlan cutting = CutList.Of(scope);
        ImmutableArray<CableCut> cuts = cutting.Cuts;
        ImmutableArray<WorkLabel> labels = WorkLabels.Of(scope);
        ImmutableArray<PredictedReading> readings = CommissioningReadings.Of(scope, ends, token);
        WorkIsolation isolation = WorkIsolation.Of(scope);
        WeighingPlan weights = WeighingPlan.Of(scope);
        IEnumerable<WorkStep> steps =
        [
            .. WeighingSteps.Before(weights),
            .. IsolationSteps.Of(scope, isolation),
            .. new BuildSteps(scope, isolation, cuts, ends).All(),
            .. FinishSteps.Of(scope, isolation, ends, labels, readings, weights, token),
        ];
        return new WorkPack
        {
            AsBuilt = asBuilt,
            AsAltered = scope.AsAltered,
            Alteration = alteration,
            Clashes = scope.Clashes,
            Assumed = [.. scope.Edits.Where(Assumptions.IsOne)],
            Bring = BringList.Of(scope, cuts, ends, labels, isolation, weights),
            Cutting = cutting,
            Ways = CableWay.Of(scope),
            Steps = WithBerthTests(StepRemarks.Of(WithOwnKeys(steps), alteration), scope, WorkAboard.Of(scope, weights.Condition)),
            Ends = ends,
            Stacks = EndStacks.Of(scope, ends, token),
            Labels = labels,
            Readings = readings,
            Weights = weights,
        };
    }

    // A berth test counts for a step that asks for one when it was made on the last day of the work or later, and lists what the work put aboard: of another nobody knows that the work was in her.
    private static ImmutableArray<WorkStep> WithBerthTests(ImmutableArray<WorkStep> steps, PackScope scope, WorkAboard work)
    {
        DateOnly? worked = steps.Where(step => !step.Builds.IsEmpty).Select(step => step.Tick?.On).Concat(scope.Alteration.Edits.Select(edit => edit.BuiltOn)).Max();
        HashSet<string> ticked = [.. steps.Where(step => step.Tick is not null).SelectMany(step => step.Builds)];
        return [.. steps.Select(step => step.WriteDown?.Into is { } kind ? Held(step, [.. scope.AsBuilt.All<BerthTest>().Where(test => kind.IsOf(test) && test.On >= worked).OrderByDescending(test => test.On)]) : step)];

        WorkStep Held(WorkStep step, BerthTest[] made) => made.FirstOrDefault(test => work.Unlike(test).IsEmpty) is { } kept ? step with { Kept = kept }
            : made.FirstOrDefault(test => work.IsUnlikeInPlace(test, ticked)) is { } unlike ? step with { Unlisted = (unlike, work.Unlike(unlike)) } : step;
    }

    // A thing that was built and then edited again has its steps twice: the later ones are numbered.
    private static IEnumerable<WorkStep> WithOwnKeys(IEnumerable<WorkStep> steps)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        foreach (WorkStep step in steps)
        {
            int count = seen[step.Key] = seen.GetValueOrDefault(step.Key) + 1;
            yield return count == 1 ? step : step with { Key = string.Create(CultureInfo.InvariantCulture, $"{step.Key}/{count}") };
        }
    }
}
