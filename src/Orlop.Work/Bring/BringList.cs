using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Loading;
using Orlop.Work.Scope;
using Orlop.Work.Steps;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>What to bring for what is not built yet, each line held against the stock.</summary>
internal static class BringList
{
    public static ImmutableArray<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends, ImmutableArray<WorkLabel> labels, WorkIsolation isolation, WeighingPlan weights)
    {
        ImmutableArray<CableEnd> open = [.. ends.Where(end => end is { BuiltOn: null, IsKept: false })];
        List<StockItem> stock = [.. scope.AsBuilt.All<StockItem>()];
        return
        [
            .. CableLines.Of(scope, cuts),
            .. Terminations(open).Select(need => need.Match(stock)),
            .. Parts(scope).Select(need => need.Match(stock)),
            .. DeviceMounts.Of(scope).Select(need => need.Match(stock)),
            .. OtherThings(scope),
            .. Consumables.Of(labels, cuts, open, stock),
            .. DeviceMounts.Places(scope),
            .. Fixings.Of(scope, cuts, stock),
            .. ToolLines.Of(scope, cuts, open),
            .. SafetyLines.Of(scope, open, isolation),
            .. MeasuringLines.Of(scope, cuts, open, weights),
        ];
    }

    private static IEnumerable<PieceNeed> Terminations(ImmutableArray<CableEnd> ends)
    {
        foreach (var kind in ends.Where(end => end.Means is not TerminationMeans.Screw).GroupBy(end => (end.Means, end.AreaMm2, end.StudMm))
            .OrderBy(kind => kind.Key.AreaMm2).ThenBy(kind => kind.Key.Means).ThenBy(kind => kind.Key.StudMm))
        {
            (TerminationMeans? means, double areaMm2, double? studMm) = kind.Key;
            string key = string.Create(CultureInfo.InvariantCulture, $"termination:{Word(means)}:{areaMm2}:{studMm}");
            ImmutableArray<string> cables = [.. kind.Select(end => end.CableId).Distinct(StringComparer.Ordinal)];
            bool isTested = kind.Any(end => end.Pull is not null);
            int count = kind.Count() + Allowances.SpareTerminationCount + (isTested ? 1 : 0);
            Amount size = new(areaMm2, "Mm2");
            yield return (means, studMm) switch
            {
                (null, _) => new PieceNeed(key, BringKind.Termination, Sentence.Of($"Ends of {size}: kind of end not given"), kind.Count(), cables, _ => false)
                {
                    IsKindKnown = false,
                    Remarks = [Sentence.Of($"Say it before the visit, on the cable's sheet: what to bring or buy for these ends cannot be told.")],
                },
                (TerminationMeans.Ring or TerminationMeans.Fork, null) => new PieceNeed(key, BringKind.Termination, Sentence.Of($"{Word(means)} {size}, thread of the stud not known"), count, cables, _ => false)
                {
                    IsKindKnown = false,
                    Remarks = [Sentence.Of($"Look on board before anything is bought, and say it at the stud or on the cable's sheet: {string.Join("; ", kind.Select(end => end.Where).Distinct(StringComparer.Ordinal))}."), Spare(isTested)],
                },
                (_, { } stud) => new PieceNeed(key, BringKind.Termination, Sentence.Of($"{Word(means)} {size}, M{Stud(stud)}"), count, cables, item => IsTermination(item, means, areaMm2) && item.StudMm == stud)
                {
                    Remarks = [Spare(isTested)],
                },
                _ => new PieceNeed(key, BringKind.Termination, Sentence.Of($"{Word(means)} {size}"), count, cables, item => IsTermination(item, means, areaMm2)) { Remarks = [Spare(isTested)] },
            };
        }
    }

    private static Sentence Spare(bool isTested) => Sentence.Of($"With {Allowances.SpareTerminationCount} to spare{(isTested ? " and 1 for the test crimp" : "")}.");

    private static bool IsTermination(StockItem item, TerminationMeans? means, double areaMm2) =>
        item.Use == StockUse.Termination && item.Means == means && item.AreaMm2 is { } area && WantedCable.IsSameSize(areaMm2, area.Value);

    /// <summary>A stud's thread without trailing zeros: 8, 4.5.</summary>
    internal static string Stud(double studMm) => studMm.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>What stands where nobody said how an end is made off.</summary>
    internal const string NotGiven = "Kind of end not given: say it before the visit";

    /// <summary>How an end is made off, in a word: "Ring".</summary>
    internal static string Word(TerminationMeans? means) => means?.ToString() ?? NotGiven;

    private static IEnumerable<PieceNeed> Parts(PackScope scope)
    {
        StockItem[] stock = [.. scope.AsBuilt.All<StockItem>()];
        IEnumerable<Part> parts = scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Where(change => !change.IsBuilt).Select(change => change.Thing).OfType<Part>();
        foreach (var same in parts.GroupBy(part => (Use: UseOf(part), Kind: Wording.KindOf(part), RatedA: RatingOf(part)?.Value, Spec: PartSpec.Of(scope, part))).Where(same => same.Key.Use is not null))
        {
            (StockUse? use, string kind, double? ratedA, Sentence? spec) = same.Key;
            bool isFuse = use == StockUse.Fuse;
            string? keying = (same.First() as PlugAndSocket)?.Keying;
            string name = char.ToUpperInvariant(kind[0]) + kind[1..];
            Sentence rated = ratedA is null ? Sentence.Of($"{name}, rating not given") : Sentence.Of($"{name} {new Amount(ratedA.Value, "A")}");
            bool HasRating(StockItem item) => ratedA is not null && item.Use == use && item.RatedA?.Value == ratedA;
            yield return new PieceNeed(
                string.Create(CultureInfo.InvariantCulture, $"part:{kind.Replace(' ', '-')}:{ratedA}{KeyOf(spec)}"),
                use == StockUse.Fuse ? BringKind.Fuse : use == StockUse.Plug ? BringKind.Plug : BringKind.Device,
                spec is null ? rated : Sentence.Of($"{rated}: {spec}"),
                same.Count() + (isFuse ? Allowances.SpareFuseCount : 0),
                [.. same.Select(part => part.Id)],
                item => HasRating(item) && (keying is null || KeyingWords.AreSame(item.Keying, keying)))
            {
                Remarks =
                [
                    keying is not null ? Sentence.Of($"Matched by rating and key.") : Sentence.Of($"Matched by rating alone: hold each piece against what stands here before it is packed."),
                    .. stock.Where(item => item.PieceCount > 0 && HasRating(item) && keying is not null && !KeyingWords.AreSame(item.Keying, keying))
                        .Select(item => Sentence.Of($"Not counted: {item.Title}; {(item.Keying is null ? "its key is not given" : "it has another key")}.")),
                    .. isFuse ? new[] { Sentence.Of($"With {Allowances.SpareFuseCount} to spare.") } : [],
                ],
            };
        }
    }

    private static string KeyOf(Sentence? spec) => spec is null ? "" : $":{string.Concat(spec.ToString().Where(sign => char.IsLetterOrDigit(sign)).Select(char.ToLowerInvariant))}";

    private static StockUse? UseOf(Part part) => part switch
    {
        Protection { Means: ProtectionMeans.Fuse } => StockUse.Fuse,
        PlugAndSocket => StockUse.Plug,
        Protection or IsolatorSwitch or Changeover => StockUse.Device,
        _ => null,
    };

    private static Quantity? RatingOf(Part part) => part switch
    {
        Protection device => device.RatedA,
        PlugAndSocket plug => plug.RatedA,
        IsolatorSwitch device => device.RatedA,
        Changeover device => device.RatedA,
        _ => null,
    };

    private static IEnumerable<BringItem> OtherThings(PackScope scope) => scope.Of(ChangeKind.Fit, ChangeKind.Exchange, ChangeKind.Link).Where(change => !change.IsBuilt).Select(change => change.Thing)
        .Where(thing => thing is Gear or Link or Way || (thing is Part part && UseOf(part) is null))
        .Select(thing => new BringItem
        {
            Key = $"gear:{thing.Id}",
            Kind = BringKind.Gear,
            What = MassOf(thing) is { } mass ? Sentence.Of($"{thing.Title}, {new Amount(mass.Value, "Kg")}") : Sentence.Of($"{thing.Title}"),
            Needed = PieceNeed.Pieces(1),
            State = StockState.Look,
            Remarks = [Sentence.Of($"The stock list has no such things: see that it is there.")],
            For = [thing.Id],
        });

    private static Quantity? MassOf(Thing thing) => thing switch
    {
        Part part => part.MassKg,
        Gear gear => gear.MassKg,
        _ => null,
    };
}
