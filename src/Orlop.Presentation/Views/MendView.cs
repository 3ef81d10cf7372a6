using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;

namespace Orlop.Presentation.Views;

/// <summary>One change of a proposal, as it is read.</summary>
/// <param name="ThingId">The thing it is of.</param>
/// <param name="What">What becomes of it.</param>
/// <param name="From">Where it comes from: "to buy", "from stock: Fuse-link gG 125 A (workshop at home)"; empty where nothing is needed.</param>
/// <param name="Price">What is paid for it.</param>
/// <param name="Mass">What it adds.</param>
public sealed record MendRow(string ThingId, string What, string From, string Price, string Mass);

/// <summary>A set of changes, as it is read.</summary>
/// <param name="Set">The set.</param>
/// <param name="Rows">Its changes.</param>
/// <param name="Price">What is paid for all.</param>
/// <param name="Mass">What all add.</param>
/// <param name="Verdicts">What the review of the electrics says before and after.</param>
public sealed record MendSetView(MendSet Set, IReadOnlyList<MendRow> Rows, string Price, string Mass, string Verdicts)
{
    /// <summary>What stands above <see cref="NewlyTight"/>.</summary>
    public const string TightWords = "Tight with it, and not before:";

    /// <summary>The findings that are tight with it and were not.</summary>
    public IReadOnlyList<string> NewlyTight { get; init; } = [];

    /// <summary>What is to be known of it besides.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The set in the reader's units.</summary>
    public static MendSetView Of(MendSet set, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        string currency = boat.Particulars?.Currency is { Length: > 0 } named ? named : "units";
        string Price(double money) => SentenceText.Unbroken($"{money.ToString("0.00", culture)} {currency}");
        string Mass(double kg) => QuantityText.Result(kg, "Kg", units, culture);
        return new MendSetView(
            set,
            [.. set.Changes.Select(change => new MendRow(change.ThingId, SentenceText.Of(change.What, units, culture), FromOf(change, boat), Price(change.Cost.PriceMoney), Mass(change.Cost.AddedKg)))],
            Price(set.Cost.PriceMoney),
            Mass(set.Cost.AddedKg),
            $"Electrics now: {Counts(set.Before)}. With it: {Counts(set.After)}.")
        {
            NewlyTight = [.. set.NewlyTight.Select(finding => SentenceText.Of(finding.Headline, units, culture))],
            Remarks = [.. set.Remarks.Select(remark => SentenceText.Of(remark, units, culture))],
        };
    }

    private static string FromOf(MendChange change, BoatModel boat) => change switch
    {
        { CatalogueId: null } => "",
        { StockIds.IsEmpty: true } => "to buy",
        _ => $"from stock: {string.Join(" or ", change.StockIds.Select(boat.Find<StockItem>).OfType<StockItem>().Select(item => item.Where is null ? item.Title : $"{item.Title} ({item.Where})"))}",
    };

    private static string Counts(IReadOnlyDictionary<Verdict, int> counts) => string.Join(", ", new[] { Verdict.Fails, Verdict.Unknown, Verdict.Tight, Verdict.Holds }
        .Select(verdict => $"{counts.GetValueOrDefault(verdict)} {Wording.Of(verdict)}"));
}

/// <summary>What mending came to, as it is read.</summary>
/// <param name="Result">What it came to.</param>
/// <param name="Headline">In a sentence.</param>
/// <param name="Set">The set; null where none was found.</param>
/// <param name="Proof">Whether there may be a lesser one; empty where there is no set.</param>
/// <param name="Beyond">Findings that no choice clears, and why where it is known.</param>
/// <param name="Working">How it was sought.</param>
public sealed record MendView(MendResult Result, string Headline, MendSetView? Set, string Proof, IReadOnlyList<string> Beyond, string Working)
{
    /// <summary>What stands beside every proposal.</summary>
    public const string Caution = "A proposal, reviewed by the same checks as any draft and no better than the figures that were typed. Generic parts have typical figures from memory: read the sheet of the part that is bought. Work on batteries can burn and blind; make it dead and prove it dead first.";

    /// <summary>What is not in the price.</summary>
    public const string EndsNotCounted = "Ends of cables (rings, lugs, contacts, ferrules), clips and labels are neither in these prices nor held against stock, and no cheaper set is sought by them: the bring list of the draft counts them, with what is to be bought.";

    /// <summary>How thick a cable may become, and where that is said.</summary>
    public static string Sizes { get; } = $"No cable becomes thicker than the terminals at its ends take: as the device says under “{TerminalLabel}”, else what is common at its rating ({TerminalSizes.Words}; common practice, no source), but for rings on studs. Type the device's own figure where its sheet says otherwise.";

    private const string TerminalLabel = "Terminals take up to";

    /// <summary>Loads whose class of voltage drop makes a finding, which is the owner's to choose: the load, and what to say of it.</summary>
    public static IReadOnlyList<(string ThingId, string Text)> Classes(IEnumerable<(string CheckId, string SubjectId)> findings, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(boat);
        return [.. findings.Where(finding => finding.CheckId == "voltage-drop").Select(finding => boat.Find<ElectricLoad>(finding.SubjectId)).OfType<ElectricLoad>().Where(load => load.Drop == DropClass.Critical)
            .DistinctBy(load => load.Id).Select(load => (load.Id, $"{load.Title} is judged as a critical circuit, which may lose less voltage than a general one. That class is your choice; it is not changed here."))];
    }

    /// <summary>What is said where nothing is changed by it.</summary>
    public const string NothingAdded = "Nothing is put into any draft until you say so.";

    /// <summary>The result in the reader's units.</summary>
    /// <param name="boat">The draft it was sought for.</param>
    public static MendView Of(MendResult result, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        MendSetView? set = result.Set is { } found ? MendSetView.Of(found, boat, units, culture) : null;
        return new MendView(
            result, result is { IsStopped: true, Set: not null } ? $"Stopped; the best found so far. {HeadlineOf(result)}" : HeadlineOf(result), set, set is null ? "" : ProofOf(result, set, boat, units, culture),
            [.. result.Beyond.Select(finding => $"{SentenceText.Of(finding.Headline, units, culture)}{(WhyBeyond(finding, result, boat, units, culture) is { } why ? $". {why}" : "")}")],
            string.Create(culture, $"{Many(result.SlotCount, "thing")} could be changed, in {Sets(result.SetCount, culture)} sets; {result.ReviewedCount} of these were reviewed, the others follow by the rules of direction."));
    }

    /// <summary>How near the end a search is: the best so far, and what no set is below; null where neither is known.</summary>
    public static string? Near(MendProgress at, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(at);
        string Main(double value) => at.Aim == MendAim.Cost ? $"{value.ToString("0.00", culture)} to pay" : QuantityText.Result(value, "Kg", DisplayUnits.Metric, culture);
        return (at.Most, at.Least) switch
        {
            ({ } best, { } least) => $"one that clears it is found ({Main(best)}){(least > 0 ? $"; none is below {Main(least)}" : "")}",
            (null, > 0 and var least) when !at.HasFound => $"none found yet; none is below {Main(least)}",
            (null, _) when !at.HasFound => "none found yet",
            _ => at.HasFound ? "one that clears it is found" : null,
        };
    }

    /// <summary>Why no choice clears a finding, in words; null where that is not known.</summary>
    public static string? WhyBeyond(Finding finding, MendResult result, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(result);
        string? against = result.Conflicts.FirstOrDefault(conflict => conflict.Finding == finding) switch
        {
            null => null,
            { Against: null } => result.Targets.Length > 1 ? "No set of the choices clears it together with the rest: ask for it by itself" : null,
            { Against: { } other } => $"What clears it brings: {SentenceText.Of(other.Headline, units, culture)}",
        };
        return (MendReasons.Of(finding.CheckId, finding.SubjectId, boat, finding.ConditionId), against) switch
        {
            (null, _) => against,
            ({ } reason, null) => SentenceText.Of(reason, units, culture),
            ({ } reason, _) => $"{SentenceText.Of(reason, units, culture).TrimEnd('.')}. {against}",
        };
    }

    private static string HeadlineOf(MendResult result) => result.Outcome switch
    {
        MendOutcome.NothingFails => $"No electrical finding {WhatOf(result, 1)}: there is nothing to mend.",
        MendOutcome.Cleared when result.Beyond.IsEmpty => $"{Many(result.Set!.Changes.Length, "change")} clear{(result.Set.Changes.Length == 1 ? "s" : "")} {(result.Targets.Length == 1 ? $"the finding that {WhatOf(result, 1)}" : $"all {result.Targets.Length} electrical findings that {WhatOf(result, 2)}")}.",
        MendOutcome.Cleared => $"{Many(result.Set!.Changes.Length, "change")} clear {result.Targets.Length - result.Beyond.Length} of {result.Targets.Length} electrical findings that {WhatOf(result, 2)}; {(result.Conflicts.IsEmpty ? "no choice clears the rest" : "no set clears the rest with them")}{(result.IsTightToo ? ", some of which may be tight now" : "")}.",
        MendOutcome.NotCleared => "No set of stock and catalogue clears it.",
        _ when result.IsStopped => "Stopped before any set was found.",
        _ when result.IsTightToo => "No set was found before the search ended. Mend what fails alone, then what is tight one by one.",
        _ => "No set was found before the search ended.",
    };

    private static string WhatOf(MendResult result, int count) => (count == 1, result.IsTightToo) switch
    {
        (true, false) => "fails",
        (true, true) => "fails or is tight",
        (false, false) => "fail",
        _ => "fail or are tight",
    };

    private static string ProofOf(MendResult result, MendSetView set, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        string least = result.Aim == MendAim.Cost ? "cheaper" : "lighter";
        if (result.IsProved)
        {
            return $"No {least} set of these choices clears it: that is proved.";
        }

        string? bound = result switch
        {
            { LeastMoney: { } money } => $"{money.ToString("0.00", culture)} {(boat.Particulars?.Currency is { Length: > 0 } named ? named : "units")}",
            { LeastKg: { } kg } => QuantityText.Result(kg, "Kg", units, culture),
            _ => null,
        };
        return bound is null
            ? $"Whether there is a {least} one is not proved."
            : $"It is not proved to be the least: none is below {bound}, this one is at {(result.Aim == MendAim.Cost ? set.Price : set.Mass)}.";
    }

    private static string Many(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private static string Sets(double count, CultureInfo culture) => count < 1e6 ? count.ToString("N0", culture) : "more than a million";
}
