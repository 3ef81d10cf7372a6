using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Ends;
using Orlop.Work.Scope;
using Orlop.Work.Steps;

namespace Orlop.Work.Bring;

/// <summary>Tools for the work at hand: for work on conductors, tools whose range covers each size; for other work, what the owner has.</summary>
internal static class ToolLines
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableEnd> ends)
    {
        ImmutableArray<WorkChange> open = [.. scope.Changes.Where(change => !change.IsBuilt)];
        ImmutableArray<double> sizes = [.. ends.Select(end => end.AreaMm2).Distinct().Order()];
        ImmutableArray<double> crimped = [.. ends.Where(end => end.Means is not TerminationMeans.Screw).Select(end => end.AreaMm2).Distinct().Order()];
        bool touchesWiring = open.Any(change => change.Thing is Part or Cable or Link && change.Kind != ChangeKind.Record);
        bool runsCable = open.Any(change => change.Kind == ChangeKind.Cable);
        bool fits = open.Any(change => change.Kind is ChangeKind.Fit or ChangeKind.Move or ChangeKind.Exchange);
        bool hasRisk = touchesWiring && (Cautions.TouchesBattery(scope) || Cautions.TouchesMains(scope));
        return
        [
            .. Sized(scope, ToolUse.Cutting, sizes), .. Sized(scope, ToolUse.Stripping, sizes), .. Sized(scope, ToolUse.Crimping, crimped),
            .. Plain(scope, ToolUse.Measuring, touchesWiring), .. Plain(scope, ToolUse.Tightening, touchesWiring || fits),
            .. Plain(scope, ToolUse.Labelling, touchesWiring), .. Plain(scope, ToolUse.Protecting, hasRisk),
            .. Plain(scope, ToolUse.Pulling, runsCable), .. Plain(scope, ToolUse.Drilling, fits),
        ];
    }

    private static IEnumerable<BringItem> Plain(PackScope scope, ToolUse use, bool isNeeded)
    {
        if (isNeeded)
        {
            ImmutableArray<Tool> tools = [.. scope.AsBuilt.All<Tool>().Where(tool => tool.Use == use)];
            yield return Line($"tool:{use.ToString().ToLowerInvariant()}", Sentence.Of($"{Work(use)}"), tools);
        }
    }

    private static IEnumerable<BringItem> Sized(PackScope scope, ToolUse use, ImmutableArray<double> sizes)
    {
        foreach (var covered in sizes.GroupBy(size => scope.AsBuilt.All<Tool>().FirstOrDefault(tool => tool.Use == use && Covers(tool, size))?.Id))
        {
            Amount least = new(covered.Min(), "Mm2"), most = new(covered.Max(), "Mm2");
            Sentence what = least == most ? Sentence.Of($"{Work(use)}, {least}") : Sentence.Of($"{Work(use)}, {least} to {most}");
            string key = string.Create(CultureInfo.InvariantCulture, $"tool:{use.ToString().ToLowerInvariant()}:{covered.Key ?? covered.Min().ToString(CultureInfo.InvariantCulture)}");
            yield return Line(key, what, covered.Key is null ? [] : [scope.AsBuilt.Find<Tool>(covered.Key)!]);
        }
    }

    private static bool Covers(Tool tool, double areaMm2) => areaMm2 >= (tool.FromMm2 ?? 0) && areaMm2 <= (tool.ToMm2 ?? double.MaxValue);

    private static BringItem Line(string key, Sentence what, ImmutableArray<Tool> tools) => new()
    {
        Key = key,
        Kind = BringKind.Tool,
        What = what,
        State = tools.IsEmpty ? StockState.ToBuy : StockState.InStock,
        Takes = [.. tools.Select(tool => new StockTake(tool.Id, tool.Title, null, tool.Where))],
        Remarks = tools.IsEmpty ? [Sentence.Of($"No tool for this in the list: buy or borrow.")] : [],
    };

    private static string Work(ToolUse use) => use switch
    {
        ToolUse.Cutting => "Cutting cable",
        ToolUse.Stripping => "Stripping",
        ToolUse.Crimping => "Crimping",
        ToolUse.Measuring => "Measuring voltage and current",
        ToolUse.Drilling => "Drilling",
        ToolUse.Tightening => "Tightening to a torque",
        ToolUse.Labelling => "Printing labels",
        ToolUse.Protecting => "Protecting hands and bare terminals",
        _ => "Pulling cable",
    };
}
