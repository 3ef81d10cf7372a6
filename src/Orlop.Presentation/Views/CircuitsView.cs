using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>All circuits of a boat, worst first: one for each part that takes power.</summary>
public sealed class CircuitsView
{
    private CircuitsView(BoatModel boat, Wiring wiring, ImmutableArray<Chain> chains, ImmutableArray<CircuitRow> rows, ImmutableArray<SharedRow> shared)
    {
        Boat = boat;
        Wiring = wiring;
        Chains = chains;
        Rows = rows;
        Shared = shared;
    }

    public BoatModel Boat { get; }

    public Wiring Wiring { get; }

    /// <summary>The chains, in the boat's order.</summary>
    public ImmutableArray<Chain> Chains { get; }

    /// <summary>The rows, worst first, then by name.</summary>
    public ImmutableArray<CircuitRow> Rows { get; }

    /// <summary>
    /// What several circuits share or none holds, and that does not hold: worst first, each thing once
    /// with its worst finding. No circuit's row counts it.
    /// </summary>
    public ImmutableArray<SharedRow> Shared { get; }

    /// <summary>The chain of a taker, or null.</summary>
    public Chain? ChainOf(string? takerId) => Chains.FirstOrDefault(chain => chain.Taker.Id == takerId);

    /// <summary>Traces every circuit of the boat as shown and judges each by the review, where there is one.</summary>
    public static CircuitsView Of(BoatModel boat, BoatModel asBuilt, ReviewResult? review, DisplayUnits units, CultureInfo culture)
    {
        Wiring wiring = Wiring.Of(boat);
        ImmutableArray<Chain> chains = [.. boat.All<Part>().Select(part => Chain.Trace(boat, wiring, part)).OfType<Chain>()];
        Dictionary<string, int> users = chains.SelectMany(ThingsOf).GroupBy(id => id, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        ILookup<string, Finding>? findings = review?.Findings.Select(pair => pair.After?.Worst).OfType<Finding>()
            .SelectMany(finding => new[] { ElementIds.ThingOf(finding.SubjectId), finding.OtherSubjectId }.OfType<string>().Select(id => (Id: id, Finding: finding)))
            .ToLookup(found => found.Id, found => found.Finding, StringComparer.Ordinal);
        // A circuit that the review does not know yet is not judged: its findings are being worked out.
        bool IsReviewed(Chain chain) => review?.AsAltered.Find(chain.Taker.Id) is not null;
        return new CircuitsView(boat, wiring, chains,
        [
            .. chains.Select(chain => Row(chain, asBuilt, IsReviewed(chain) ? findings : null, id => users[id] == 1, units, culture))
                .OrderByDescending(row => row.Verdict is { } verdict ? Verdicts.Weight(verdict) : 0)
                .ThenBy(row => row.Title, StringComparer.OrdinalIgnoreCase),
        ],
        findings is null ? [] : SharedOf(boat, findings, id => users.GetValueOrDefault(id) == 1, units, culture));
    }

    // A finding about a pair stands with the circuit that owns one of the two.
    private static ImmutableArray<SharedRow> SharedOf(BoatModel boat, ILookup<string, Finding> findings, Func<string, bool> isOwn, DisplayUnits units, CultureInfo culture) =>
    [
        .. boat.Things.Where(thing => thing is Part or Cable or Link && !isOwn(thing.Id))
            .Select(thing => (Thing: thing, Worst: findings[thing.Id].Where(finding => !IsOwned(finding, isOwn)).OrderByDescending(finding => Verdicts.Weight(finding.Verdict)).ThenByDescending(finding => FindingRow.UseOf(finding) ?? 0).FirstOrDefault()))
            .Where(found => found.Worst is { Verdict: not Verdict.Holds })
            .OrderByDescending(found => Verdicts.Weight(found.Worst!.Verdict)).ThenBy(found => found.Thing.Title, StringComparer.OrdinalIgnoreCase)
            .Select(found => new SharedRow(found.Thing.Id, found.Thing.Title, found.Worst!.Verdict, FindingRow.Share(FindingRow.UseOf(found.Worst), culture), SentenceText.Of(found.Worst.Headline, units, culture))),
    ];

    private static bool IsOwned(Finding finding, Func<string, bool> isOwn) => isOwn(ElementIds.ThingOf(finding.SubjectId)) || (finding.OtherSubjectId is { } other && isOwn(other));

    private static CircuitRow Row(Chain chain, BoatModel asBuilt, ILookup<string, Finding>? findings, Func<string, bool> isOwn, DisplayUnits units, CultureInfo culture)
    {
        List<Finding> own = findings is null ? [] : [.. ThingsOf(chain).Where(isOwn).SelectMany(id => findings[id])];
        Verdict? worst = findings is null ? null : own.Count == 0 ? Verdict.Unknown : own.Select(finding => finding.Verdict).MaxBy(Verdicts.Weight);
        Finding? fullest = own.Where(finding => finding.Verdict == worst && FindingRow.UseOf(finding) is not null).MaxBy(finding => finding.UseFraction);
        return new CircuitRow(
            chain.Taker.Id,
            chain.Taker.Title,
            worst,
            FindingRow.Share(fullest?.UseFraction, culture),
            fullest is null ? "" : SentenceText.Of(fullest.Headline, units, culture),
            asBuilt.Find(chain.Taker.Id) is null);
    }

    private static IEnumerable<string> ThingsOf(Chain chain) =>
        chain.Out.Concat(chain.Back).Select(item => item.Thing.Id).Append(chain.Taker.Id).Distinct(StringComparer.Ordinal);
}
