using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// Linings, panels and hatches that the ways of the cables name: opened once each before the first cable is taken out or run behind them, closed once all behind them is tested and measured.
/// </summary>
internal static class PanelSteps
{
    /// <summary>One step for each, in the order in which the cables need them.</summary>
    public static IEnumerable<WorkStep> Open(PackScope scope, LiveBehind behind) => Of(scope).Select(panel => new WorkStep
    {
        Key = $"open:{panel.Key}",
        Kind = StepKind.Remove,
        Text = Sentence.Of($"Open or take off: {panel.Words}."),
        Details =
        [
            Sentence.Of($"Opened for: {string.Join("; ", panel.Cables.Select(cable => cable.Title))}."),
            .. behind.In(panel.Ways),
            Sentence.Of($"Screws into one bag with its name on it. What is long, overhead or heavy is held by a second person as its last screw comes out; what hangs on it by a lead is not pulled (common practice, no source)."),
        ],
        PeopleCount = 2,
        Cautions = [.. behind.CautionsIn(panel.Ways), .. panel.Spaces.SelectMany(space => Cautions.InSpace(space, false)).Distinct()],
        About = [.. panel.Cables.Select(cable => cable.Id)],
    });

    /// <summary>One step for each, the last opened first.</summary>
    public static IEnumerable<WorkStep> Close(PackScope scope, WorkIsolation isolation) => Of(scope).Reverse().Select(panel => new WorkStep
    {
        Key = $"close:{panel.Key}",
        Kind = StepKind.HandOver,
        Text = Sentence.Of($"Close again: {panel.Words}."),
        Details = [Sentence.Of($"Everything behind it tested and photographed; loads off, engine stopped. No tool left, no cable pinched or in the way of a screw; every screw back from its bag."), .. AltogetherBehind(scope, panel)],
        Cautions = LaidCables.In(scope.AsAltered, panel.Ways).Any() ? [LiveAgain(scope, isolation)] : [],
        About = [.. panel.Cables.Select(cable => cable.Id)],
    });

    private sealed record Panel(string Key, string Words, ImmutableArray<Cable> Cables, HashSet<string> Ways, ImmutableArray<Space> Spaces);

    private static IEnumerable<Sentence> AltogetherBehind(PackScope scope, Panel panel)
    {
        string[] laid = [.. LaidCables.In(scope.AsAltered, panel.Ways).Select(cable => $"{cable.Title} ({LaidCables.VoltageOf(scope.AsAltered, scope.AlteredWiring, cable)})")];
        if (laid.Length > 0)
        {
            yield return Sentence.Of($"Behind it now: {string.Join("; ", laid)}.");
        }
    }

    private static Caution LiveAgain(PackScope scope, WorkIsolation isolation)
    {
        string[] opened = [.. (isolation.Result?.Openings ?? []).Select(opening => LaidCables.NameOf(scope, opening))];
        string how = opened.Length == 0 ? "make dead what is named here" : $"make it dead as at the start ({string.Join("; ", opened)}) and prove it";
        return new Caution(CautionKind.StaysLive, $"Take all that lies behind it as live. Screws go into their old holes, none longer than it was; before any new hole or screw, {how} (common practice, no source).");
    }

    // Those of what is recorded as built too, so that the steps keep their keys.
    private static ImmutableArray<Panel> Of(PackScope scope) =>
    [
        .. from cable in scope.Changes.Where(change => change.Kind is ChangeKind.Remove or ChangeKind.Cable).SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Cable>()
           from leg in cable.Run
           let way = leg.Way is { } id ? scope.Whole.Find<Way>(id) : null
           where way?.Opened is { Length: > 0 }
           group (cable, way) by way.Opened!.Trim() into panel
           select new Panel(
               Slug(panel.Key),
               panel.Key,
               [.. panel.Select(one => one.cable).DistinctBy(cable => cable.Id)],
               LaidCables.Behind(scope.Whole, panel.Key),
               [.. panel.Select(one => one.way.Space).OfType<string>().Distinct(StringComparer.Ordinal).Select(scope.Whole.Find<Space>).OfType<Space>()]),
    ];

    private static string Slug(string words) => string.Join('-', new string([.. words.ToLowerInvariant().Select(sign => char.IsLetterOrDigit(sign) ? sign : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
