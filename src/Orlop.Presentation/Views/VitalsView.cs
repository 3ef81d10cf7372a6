using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Topology;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>The vital numbers of a review, each with what it was as built.</summary>
public static class VitalsView
{
    private static readonly ImmutableArray<string> CurrentChecks = ["conductor-ampacity", "device-carries-load", "converter-carries-load"];
    private static readonly ImmutableArray<string> VoltageChecks = ["voltage-drop"];

    /// <summary>The numbers, in the order of the screen.</summary>
    public static IReadOnlyList<Vital> Of(ReviewResult review, DisplayUnits units, CultureInfo culture) =>
    [
        Fullest("Most loaded", CurrentChecks, ShareOfLimit(culture), review),
        VoltageLost(review, units, culture),
        Count("Fail", Verdict.Fails, review, culture),
        Count("Cannot tell", Verdict.Unknown, review, culture),
        Mass(review, units, culture),
    ];

    private static Func<Finding, string> ShareOfLimit(CultureInfo culture) => finding => FindingRow.Share(finding.UseFraction, culture);

    // The share of nominal voltage is the sentence's own; the limit is that share over the use.
    private static Vital VoltageLost(ReviewResult review, DisplayUnits units, CultureInfo culture)
    {
        static double? LostFraction(Finding finding) => finding.Headline.Parts.Select(part => part.Amount).FirstOrDefault(amount => amount?.Suffix == "Fraction")?.Value;
        string Share(double? fraction) => fraction is { } lost ? QuantityText.Shown(lost, "Fraction", units, culture) : QuantityText.Unknown;
        Vital vital = Fullest("Most voltage lost", VoltageChecks, finding => Share(LostFraction(finding)), review);
        return Most(review, VoltageChecks, pair => pair.After).Finding is { UseFraction: > 0 } most && LostFraction(most) is { } fraction
            ? vital with { Limit = $"limit {Share(fraction / most.UseFraction)}" }
            : vital;
    }

    private static Vital Fullest(string name, ImmutableArray<string> checks, Func<Finding, string> show, ReviewResult review)
    {
        (PairedFinding? pair, Finding? most) = Most(review, checks, pair => pair.After);
        Finding? before = Most(review, checks, pair => pair.Before).Finding;
        string thing = pair is null ? "" : ElementIds.ThingOf(pair.SubjectId);
        string value = most is null ? QuantityText.Unknown : show(most);
        string was = before is null ? "none" : show(before);
        return new Vital
        {
            Name = name,
            Value = value,
            Of = review.AsAltered.Find(thing)?.Title ?? thing,
            ThingId = thing.Length == 0 ? null : thing,
            Was = review.AlterationId is null || before?.UseFraction == most?.UseFraction ? null : was,
            Verdict = most?.Verdict ?? Verdict.Unknown,
            FillFraction = most?.UseFraction,
            WasFillFraction = review.AlterationId is null ? null : before?.UseFraction,
        };
    }

    private static (PairedFinding? Pair, Finding? Finding) Most(ReviewResult review, ImmutableArray<string> checks, Func<PairedFinding, FindingGroup?> side) => review.Findings
        .Where(pair => checks.Contains(pair.CheckId) && side(pair)?.Worst.UseFraction is { } use && double.IsFinite(use))
        .Select(pair => ((PairedFinding?)pair, (Finding?)side(pair)!.Worst))
        .OrderByDescending(found => found.Item2!.UseFraction)
        .FirstOrDefault();

    private static Vital Count(string name, Verdict verdict, ReviewResult review, CultureInfo culture)
    {
        int now = review.Count(verdict), before = review.Findings.Count(pair => pair.Before?.Worst.Verdict == verdict);
        return new Vital
        {
            Name = name,
            Value = now.ToString(culture),
            Of = now == 1 ? "finding" : "findings",
            Was = review.AlterationId is null || now == before ? null : before.ToString(culture),
            Verdict = now > 0 ? verdict : null,
        };
    }

    private static Vital Mass(ReviewResult review, DisplayUnits units, CultureInfo culture)
    {
        WeighedThings before = WeighedThings.Of(review.AsBuilt), after = WeighedThings.Of(review.AsAltered);
        bool isAltered = review.AlterationId is not null;
        double kg = isAltered ? after.MassKg - before.MassKg : after.MassKg;
        int unknown = isAltered ? after.UnweighedIds.Except(before.UnweighedIds).Count : after.UnweighedIds.Count;
        string number = QuantityText.Shown(kg, "Kg", units, culture);
        return new Vital
        {
            Name = isAltered ? "The draft adds" : "Weighed on board",
            Value = isAltered && kg > 0 ? $"+{number}" : number,
            Of = unknown == 0 ? "" : $"{unknown} {(unknown == 1 ? "thing" : "things")} without a mass",
            Verdict = unknown > 0 ? Verdict.Unknown : null,
        };
    }
}
