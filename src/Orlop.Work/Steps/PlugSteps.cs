using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// Plugs that are pulled and put together. A plug is no switch: it is parted once all before it is open and put together while it still is, before any fuse, breaker or isolator that feeds it is
/// closed (common practice, no source).
/// </summary>
internal static class PlugSteps
{
    private const string Why = "A plug is no switch, and its contacts burn where they make or break a current. Plus on plus by the labels, pushed home, latched; pull to prove.";

    /// <summary>How a plug is put together before anything is closed.</summary>
    public static Sentence Dead { get; } = Sentence.Of($"With its load off, and while all that was opened for this work is still open. {Why}");

    /// <summary>How a plug is put together that was pulled to cut the work off: what feeds it may be live.</summary>
    public static Sentence Fed { get; } = Sentence.Of($"With its load off, and with the fuse, breaker or isolator that feeds it out or open until it is pushed home. {Why}");

    /// <summary>The plugs pulled before a part that hangs on them is moved or exchanged.</summary>
    public static IEnumerable<WorkStep> Pull(PackScope scope, WorkIsolation isolation) => Pulled(scope, isolation).Select(plug => new WorkStep
    {
        Key = $"unplug:{plug.Plug.Id}",
        Kind = StepKind.Remove,
        Text = Sentence.Of($"Pull {scope.Words.Located(plug.Plug.Id)} apart, before {SentenceText.Listed(plug.Parts.Select(part => part.Title))} is moved or taken off. Cap the side that stays."),
        Cautions = [.. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(plug.Plug))],
        About = [plug.Plug.Id, .. plug.Parts.Select(part => part.Id)],
    });

    /// <summary>The plugs put together again, and those that the alteration fits.</summary>
    public static IEnumerable<WorkStep> Mate(PackScope scope, WorkIsolation isolation) =>
    [
        .. Pulled(scope, isolation).Select(plug => Mated(scope, isolation, $"plug-in:{plug.Plug.Id}", plug.Plug, Sentence.Of($"Plug {scope.Words.Located(plug.Plug.Id)} in again."))),
        .. scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Select(change => change.Thing).OfType<PlugAndSocket>()
            .Select(plug => Mated(scope, isolation, $"switch-on:{plug.Id}", plug, Sentence.Of($"Plug in {scope.Words.Located(plug.Id)}."))),
    ];

    private static WorkStep Mated(PackScope scope, WorkIsolation isolation, string key, PlugAndSocket plug, Sentence text) => new()
    {
        Key = key,
        Kind = StepKind.Energise,
        Text = text,
        Details = [Dead],
        Cautions = [.. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(plug)).Where(caution => caution.Kind == CautionKind.Mains)],
        About = [plug.Id],
    };

    // Those that the isolation plan pulls anyhow are not pulled twice.
    private static IEnumerable<(PlugAndSocket Plug, ImmutableArray<Part> Parts)> Pulled(PackScope scope, WorkIsolation isolation)
    {
        HashSet<string> changed = [.. scope.Changes.Select(change => change.Id)];
        HashSet<string> opened = [.. (isolation.Result?.Openings ?? []).Select(opening => opening.Id)];
        return scope.Of(ChangeKind.Move, ChangeKind.Exchange).Select(change => change.Thing).OfType<Part>().Where(part => part is not PlugAndSocket)
            .SelectMany(part => Leads.Of(scope.Before, part.Id).Select(lead => (Part: part, Plug: scope.Before.Find<PlugAndSocket>(lead.Other))))
            .Where(pair => pair.Plug is { } plug && !changed.Contains(plug.Id) && !opened.Contains(plug.Id))
            .GroupBy(pair => pair.Plug!.Id)
            .Select(plug => (plug.First().Plug!, plug.Select(pair => pair.Part).Distinct().ToImmutableArray()));
    }
}
