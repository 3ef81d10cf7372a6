using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Topology;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A finding as a line of a list.</summary>
public sealed record FindingRow
{
    /// <summary>The finding, to open its working.</summary>
    public required PairedFinding Pair { get; init; }

    /// <summary>Stable key: check and subject.</summary>
    public string Key => $"{Pair.CheckId}/{Pair.SubjectId}";

    /// <summary>The thing it is about, or that its element belongs to.</summary>
    public string ThingId => ElementIds.ThingOf(Pair.SubjectId);

    /// <summary>It is about this thing, an element of it, or a pair that the thing belongs to.</summary>
    public bool IsAbout(string thingId) => Pair.IsAbout(thingId);

    /// <summary>What people call that thing.</summary>
    public required string SubjectTitle { get; init; }

    /// <summary>Verdict as altered.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The sentence, in the reader's units.</summary>
    public required string Headline { get; init; }

    /// <summary>The condition it is worst in; null where it is the same in all.</summary>
    public string? Condition { get; init; }

    /// <summary>Use as a percentage; empty when there is none.</summary>
    public required string Use { get; init; }

    /// <summary>What it was as built: "was 61 %", "new"; null without an alteration or where nothing changed.</summary>
    public string? Was { get; init; }

    /// <summary>The line for a paired finding.</summary>
    /// <param name="boat">The boat the finding was shown for: as altered, or as built for what is gone.</param>
    public static FindingRow Of(PairedFinding pair, BoatModel boat, bool isAltered, DisplayUnits units, CultureInfo culture)
    {
        Finding shown = pair.Shown;
        bool isSameInAll = SameInAll.Is((pair.After ?? pair.Before)!, boat, units, culture);
        string thing = ElementIds.ThingOf(pair.SubjectId);
        return new FindingRow
        {
            Pair = pair,
            SubjectTitle = boat.Find(thing)?.Title ?? thing,
            Verdict = shown.Verdict,
            Headline = isSameInAll ? SameInAll.Headline(shown, boat, units, culture) : SentenceText.Of(shown.Headline, units, culture),
            Condition = shown.ConditionId is { } id && !isSameInAll ? boat.Find(id)?.Title ?? id : null,
            Use = Share(UseOf(shown), culture),
            Was = isAltered ? WasText(pair, culture) : null,
        };
    }

    /// <summary>The use that a verdict was judged by; null where it was judged otherwise, as a rated voltage is, which may stand at its limit.</summary>
    public static double? UseOf(Finding finding) =>
        finding.Verdict == Verdict.Unknown || Verdicts.OfUse(finding.UseFraction) == finding.Verdict ? finding.UseFraction : null;

    /// <summary>A use as a percentage, just over the limit with as many digits as it takes to read so; empty when there is none, capped in words beyond tenfold.</summary>
    public static string Share(double? fraction, CultureInfo culture) => fraction switch
    {
        null => "",
        { } use when !double.IsFinite(use) => "",
        > 10 => "over 10\u00A0×",
        { } use => $"{(use * 100).ToString($"F{NearWhole.Decimals(use * 100, 0)}", culture)}\u00A0%",
    };

    private static string? WasText(PairedFinding pair, CultureInfo culture)
    {
        if (pair.Before is null)
        {
            return "new";
        }

        if (pair.After is null || pair.Before.Worst == pair.After.Worst)
        {
            return null;
        }

        string share = Share(UseOf(pair.Before.Worst), culture);
        string verdict = Wording.Of(pair.Before.Worst.Verdict);
        string now = Share(UseOf(pair.After.Worst), culture);
        return share == now && pair.Before.Worst.Verdict == pair.After.Worst.Verdict ? null : share.Length == 0 ? $"was {verdict}" : $"was {share}";
    }
}
