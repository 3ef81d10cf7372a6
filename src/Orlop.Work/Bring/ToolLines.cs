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
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends)
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
            .. ends.Any(end => end.IsSleeved) ? [Heat(scope)] : Array.Empty<BringItem>(),
            .. Plain(scope, ToolUse.Labelling, touchesWiring), .. Plain(scope, ToolUse.Protecting, hasRisk),
            .. runsCable ? [Pulling(scope, cuts)] : Array.Empty<BringItem>(), .. Plain(scope, ToolUse.Drilling, fits),
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

    // The list of tools knows no such work: it is looked for by name, in stock too.
    private static BringItem Heat(PackScope scope) =>
        SafetyLines.Line(scope, "heat", Sentence.Of($"Heat source for heat-shrink: hot air; a flame only where nothing burns"), null, "heat gun", "heat-gun", "hot air", "hot-air", "gas torch", "burner") with { Key = "tool:heat" };

    // What is drawn in with is as long as the longest run: a wire that is too short is found out behind the lining.
    private static BringItem Pulling(PackScope scope, ImmutableArray<CableCut> cuts)
    {
        double? longestM = cuts.Any(cut => cut.RunM is null) ? null : cuts.Select(cut => cut.RunM).Max();
        (StockTake Take, double? LengthM)[] all =
        [
            .. scope.AsBuilt.All<Tool>().Where(tool => tool.Use == ToolUse.Pulling).Select(tool => (new StockTake(tool.Id, tool.Title, null, tool.Where), StatedLength.In(tool.Title))),
            .. scope.AsBuilt.All<StockItem>().Where(item => item.Title.Contains("draw wire", StringComparison.OrdinalIgnoreCase)).Select(item => (new StockTake(item.Id, item.Title, null, item.Where), StatedLength.Of(item))),
        ];
        (StockTake Take, double? LengthM)[] enough = [.. all.Where(one => one.LengthM >= longestM)], unstated = [.. all.Where(one => one.LengthM is null || longestM is null)];
        BringItem line = Line("tool:pulling", longestM is { } m ? Sentence.Of($"{Work(ToolUse.Pulling)}, {new Amount(m, "M")} and more for the longest run") : Sentence.Of($"{Work(ToolUse.Pulling)}, as long as the longest run, which is not known: measure it"), []);
        return line with
        {
            State = enough.Length > 0 ? StockState.InStock : unstated.Length > 0 ? StockState.Look : StockState.ToBuy,
            Takes = [.. (enough.Length > 0 ? enough : unstated).Select(one => one.Take)],
            Remarks =
            [
                .. enough.Length == 0 && unstated.Length > 0 ? [Sentence.Of($"Check its length before it is packed.")] : Array.Empty<Sentence>(),
                .. all.Where(one => one.LengthM < longestM).Select(one => Sentence.Of($"Not counted: {one.Take.Title}; it is {new Amount(one.LengthM!.Value, "M")} long and {new Amount(longestM!.Value, "M")} are needed.")),
                .. enough.Length + unstated.Length == 0 ? line.Remarks : [],
            ],
        };
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
