using System.Globalization;
using Orlop.Boat.Topology;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>The vital numbers of a review, each with what it was as built.</summary>
public static class VitalsView
{
    private const string VoltageCheck = "voltage-drop";
    private const string UseName = "Greatest use of a limit";
    private const string VoltageName = "Most voltage lost";
    private const string FindingsName = "Findings";
    private const string MassName = "The draft adds";

    /// <summary>The same numbers while they are being worked out, so that what stands below them keeps its place.</summary>
    public static IReadOnlyList<Vital> Pending(bool isAltered) =>
        [.. new[] { FindingsName, UseName, VoltageName }.Concat(isAltered ? [MassName] : []).Select(name => new Vital { Name = name, Value = "…", Of = "being worked out" })];

    /// <summary>The numbers, in the order of the screen.</summary>
    public static IReadOnlyList<Vital> Of(ReviewResult review, DisplayUnits units, CultureInfo culture) =>
    [
        Counted(review, culture),
        GreatestUse(review, culture),
        VoltageLost(review, units, culture),
        .. review.AlterationId is null ? Array.Empty<Vital>() : [Added(review, units, culture)],
    ];

    // What fails and what cannot be told; what is worse than before is in the list.
    private static Vital Counted(ReviewResult review, CultureInfo culture)
    {
        int fail = review.Count(Verdict.Fails), unknown = review.Count(Verdict.Unknown);
        int failed = review.Findings.Count(pair => pair.Before?.Worst.Verdict == Verdict.Fails), untold = review.Findings.Count(pair => pair.Before?.Worst.Verdict == Verdict.Unknown);
        if (review.Findings.IsEmpty)
        {
            return new Vital { Name = FindingsName, Value = QuantityText.Unknown, Of = "nothing to check yet", Verdict = Verdict.Unknown };
        }

        return new Vital
        {
            Name = FindingsName,
            Value = fail == 0 && unknown > 0 ? string.Create(culture, $"{unknown} unknown") : string.Create(culture, $"{fail} {(fail == 1 ? "fails" : "fail")}"),
            Of = fail == 0 || unknown == 0 ? "" : string.Create(culture, $"{unknown} cannot be told"),
            Was = review.AlterationId is null || (fail == failed && unknown == untold) ? null : string.Create(culture, $"{failed} and {untold}"),
            Verdict = fail > 0 ? Verdict.Fails : unknown > 0 ? Verdict.Unknown : null,
        };
    }

    // Of every check that has a use; no mark says that all holds while anything fails without one or cannot be told.
    private static Vital GreatestUse(ReviewResult review, CultureInfo culture)
    {
        Vital fullest = Fullest(UseName, _ => true, finding => FindingRow.Share(finding.UseFraction, culture), review);
        int others = review.Findings.Count(pair => pair.After?.Worst is { Verdict: Verdict.Fails } worst && FindingRow.UseOf(worst) is null);
        int unknown = fullest.Verdict == Verdict.Holds ? review.Count(Verdict.Unknown) : 0;
        string[] beside =
        [
            .. others == 0 ? Array.Empty<string>() : [string.Create(culture, $"{others} more {(others == 1 ? "fails" : "fail")}, without a use")],
            .. unknown == 0 ? Array.Empty<string>() : [string.Create(culture, $"{unknown} cannot be told")],
        ];
        return fullest with
        {
            Limit = beside.Length == 0 ? null : string.Join("; ", beside),
            Verdict = beside.Length > 0 && fullest.Verdict == Verdict.Holds ? null : fullest.Verdict,
        };
    }

    // The share of nominal voltage is the sentence's own; the limit is that share over the use.
    private static Vital VoltageLost(ReviewResult review, DisplayUnits units, CultureInfo culture)
    {
        static double? LostFraction(Finding finding) => finding.Headline.Parts.Select(part => part.Amount).FirstOrDefault(amount => amount?.Suffix == "Fraction")?.Value;
        string Share(double? fraction) => fraction is { } lost ? QuantityText.Shown(lost, "Fraction", units, culture) : QuantityText.Unknown;
        Vital vital = Fullest(VoltageName, check => check == VoltageCheck, finding => Share(LostFraction(finding)), review);
        return Most(review, check => check == VoltageCheck, pair => pair.After).Finding is { UseFraction: > 0 } most && LostFraction(most) is { } fraction
            ? vital with { Limit = $"limit {Share(fraction / most.UseFraction)}" }
            : vital;
    }

    private static Vital Fullest(string name, Func<string, bool> counts, Func<Finding, string> show, ReviewResult review)
    {
        (PairedFinding? pair, Finding? most) = Most(review, counts, pair => pair.After);
        Finding? before = Most(review, counts, pair => pair.Before).Finding;
        string thing = pair is null ? "" : ElementIds.ThingOf(pair.SubjectId);
        string value = most is null ? QuantityText.Unknown : show(most);
        string was = before is null ? "none" : show(before);
        return new Vital
        {
            Name = name,
            Value = value,
            Of = review.AsAltered.Find(thing)?.Title ?? thing,
            ThingId = thing.Length == 0 ? null : thing,
            Was = review.AlterationId is null || was == value ? null : was,
            Verdict = most?.Verdict ?? Verdict.Unknown,
            FillFraction = most?.UseFraction,
            WasFillFraction = review.AlterationId is null ? null : before?.UseFraction,
        };
    }

    private static (PairedFinding? Pair, Finding? Finding) Most(ReviewResult review, Func<string, bool> counts, Func<PairedFinding, FindingGroup?> side) => review.Findings
        .Where(pair => counts(pair.CheckId) && side(pair) is not null)
        .SelectMany(pair => side(pair)!.All, (pair, finding) => ((PairedFinding?)pair, (Finding?)finding))
        .Where(found => FindingRow.UseOf(found.Item2!) is { } use && double.IsFinite(use))
        .OrderByDescending(found => found.Item2!.UseFraction)
        .FirstOrDefault();

    private static Vital Added(ReviewResult review, DisplayUnits units, CultureInfo culture)
    {
        WeighedThings before = WeighedThings.Of(review.AsBuilt), after = WeighedThings.Of(review.AsAltered);
        double kg = after.MassKg - before.MassKg;
        int unknown = after.UnweighedIds.Except(before.UnweighedIds).Count;
        string number = QuantityText.Shown(kg, "Kg", units, culture);
        return new Vital
        {
            Name = MassName,
            Value = kg > 0 ? $"+{number}" : number,
            Of = unknown == 0 ? "" : $"and {unknown} new {(unknown == 1 ? "thing" : "things")} of unknown mass",
            Verdict = unknown > 0 ? Verdict.Unknown : null,
        };
    }
}
