using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// Panels are covered before anything of the battery's side is opened and uncovered last: a controller that loses its battery while its panels give may
/// be destroyed, and a direct current drawn out into an arc does not go out by itself (common practice, no source; the controller's sheet goes first).
/// </summary>
internal static class SolarSteps
{
    /// <summary>The step before the first opening; null where no sun charger is on board or nothing is opened by hand.</summary>
    public static WorkStep? Cover(PackScope scope, WorkIsolation isolation)
    {
        ImmutableArray<Charger> solar = Chargers(scope, isolation);
        return solar.IsEmpty ? null : new WorkStep
        {
            Key = "isolate:panels",
            Kind = StepKind.Isolate,
            Text = Sentence.Of($"Cover or disconnect the panels first: {Names(scope, solar)}."),
            Details =
            [
                Sentence.Of($"Before any fuse, breaker or battery lead is opened: a controller must not lose its battery while its panels give. How it is done, the controller's own sheet says; it goes first."),
                Sentence.Of($"Cover them so that no light falls on them and the wind cannot lift it. Then see that no charging current is left; a covered panel may still show a voltage."),
                Sentence.Of($"Never part a plug or pull a fuse while current flows in it: a DC arc burns and does not go out by itself."),
            ],
            About = [.. solar.Select(charger => charger.Id)],
        };
    }

    /// <summary>The step after everything else is closed again; null where nothing was covered.</summary>
    public static WorkStep? Uncover(PackScope scope, WorkIsolation isolation)
    {
        ImmutableArray<Charger> solar = Chargers(scope, isolation);
        return solar.IsEmpty ? null : new WorkStep
        {
            Key = "restore:panels",
            Kind = StepKind.Energise,
            Text = Sentence.Of($"Last, uncover or connect the panels again: {Names(scope, solar)}."),
            Details = [Sentence.Of($"Only once the battery is on its controller again; the controller's own sheet goes first.")],
            About = [.. solar.Select(charger => charger.Id)],
        };
    }

    private static string Names(PackScope scope, ImmutableArray<Charger> solar) => string.Join("; ", solar.Select(charger => scope.Words.Located(charger.Id)));

    private static ImmutableArray<Charger> Chargers(PackScope scope, WorkIsolation isolation)
    {
        ImmutableArray<Charger> solar = [.. scope.Whole.All<Charger>().Where(charger => charger.Drive == ChargerDrive.Sun)];
        bool isOpened = isolation.Result is { } plan && (plan.Openings.Any(opening => opening.Means is not null) || plan.CannotBeMadeDead.Any(node => solar.Any(charger => charger.Id == node.SourceId)));
        return isOpened ? solar : [];
    }
}
