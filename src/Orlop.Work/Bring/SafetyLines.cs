using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Isolation;
using Orlop.Review.Findings;
using Orlop.Work.Ends;
using Orlop.Work.Scope;
using Orlop.Work.Steps;

namespace Orlop.Work.Bring;

/// <summary>What keeps the people whole: locks and tags, eye protection, an extinguisher (common practice, no source; local codes go first).</summary>
internal static class SafetyLines
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableEnd> ends, WorkIsolation isolation)
    {
        ImmutableArray<WorkChange> open = [.. scope.Changes.Where(change => !change.IsBuilt)];
        bool touchesWiring = open.Any(change => change.Thing is Part or Cable or Link && change.Kind != ChangeKind.Record);
        bool drills = open.Any(change => change.Kind is ChangeKind.Fit or ChangeKind.Move or ChangeKind.Exchange);
        bool hasBattery = touchesWiring && Cautions.TouchesBattery(scope), hasMains = touchesWiring && Cautions.TouchesMains(scope);
        bool heats = ends.Any(end => end.IsSleeved);
        int tagged = touchesWiring ? isolation.Result?.Openings.Count(opening => opening.Means is not OpeningMeans.PullFuse) ?? 0 : 0;
        if (tagged > 0)
        {
            yield return Line(scope, "lock-and-tag", Sentence.Of($"Lock and tag, one for each device that is opened or stopped"), PieceNeed.Pieces(tagged), "lock", "padlock", "tag", "lockout");
        }

        if (drills || hasBattery || hasMains)
        {
            yield return Line(scope, "eye-protection", Sentence.Of($"Eye protection: {Why((drills, "drilling"), (hasBattery, "batteries"), (hasMains, "mains"))}"), null, "visor", "goggle", "glasses", "spectacles");
        }

        if (open.Length > 0 && LiveNearby.Of(scope, isolation) is { IsEmpty: false } live)
        {
            yield return Line(scope, "terminal-covers", Sentence.Of($"Insulating covers or rubber mat for what stays live where the work is: {string.Join(", ", live.Select(bank => bank.Title))}"), null, "cover", "boot", "mat");
        }

        if (heats || hasBattery || drills)
        {
            yield return Line(scope, "extinguisher", Sentence.Of($"Fire extinguisher in reach of the work: {Why((heats, "flame or hot air on heat-shrink"), (hasBattery, "batteries"), (drills, "hot swarf"))}"), null, "extinguisher");
        }
    }

    private static string Why(params (bool Is, string Word)[] reasons) => string.Join(", ", reasons.Where(reason => reason.Is).Select(reason => reason.Word));

    /// <summary>A line that the stock and tools are searched for by a word of their name.</summary>
    internal static BringItem Line(PackScope scope, string key, Sentence what, Amount? needed, params string[] words)
    {
        ImmutableArray<StockTake> takes =
        [
            .. scope.AsBuilt.All<Tool>().Where(tool => StockWords.Is(tool.Title, words)).Select(tool => new StockTake(tool.Id, tool.Title, null, tool.Where)),
            .. scope.AsBuilt.All<StockItem>().Where(item => StockWords.Is(item.Title, words)).Select(item => new StockTake(item.Id, item.Title, null, item.Where)),
        ];
        return new BringItem
        {
            Key = $"safety:{key}",
            Kind = BringKind.Tool,
            What = what,
            Needed = needed,
            State = StockState.Look,
            Takes = takes,
            Remarks = takes.IsEmpty ? [Sentence.Of($"None in the list by name: see that it is on board, or bring it.")] : [],
        };
    }
}
