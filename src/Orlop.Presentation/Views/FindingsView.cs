using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views;

/// <summary>The findings of one kind of change, in order.</summary>
/// <param name="Change">The change.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Rows">The findings.</param>
/// <param name="Entries">The same as lines of the list: those that wait for one missing input stand together.</param>
public sealed record FindingsGroup(Change Change, string Title, IReadOnlyList<FindingRow> Rows, IReadOnlyList<FindingsEntry> Entries);

/// <summary>The findings of a review as they are listed: what matters first, what holds last.</summary>
public sealed class FindingsView
{
    private static readonly HashSet<string> StabilityChecks = [.. new StabilityDiscipline().Checks.Select(check => check.Id)];

    private const string General = "These are calculations under the assumptions shown in each working; not a survey. Local rules come first, and a licensed electrician checks anything at 230 V.";

    private readonly ImmutableDictionary<string, CheckDescription> _checks;

    public FindingsView(ReviewResult result, IEnumerable<CheckDescription> checks, DisplayUnits units, CultureInfo culture)
    {
        Result = result;
        Units = units;
        Culture = culture;
        _checks = checks.ToImmutableDictionary(check => check.Id, StringComparer.Ordinal);
        Groups =
        [
            .. result.Findings.GroupBy(pair => pair.Change).OrderBy(group => group.Key).Select(group => GroupOf(group.Key, [.. group.Select(Row)])),
        ];
        Untold = UntoldInput.Of(Groups.SelectMany(group => group.Rows), Describe, thing => result.AsAltered.Find(thing) is not null);
    }

    /// <summary>The review.</summary>
    public ReviewResult Result { get; }

    public DisplayUnits Units { get; }

    public CultureInfo Culture { get; }

    /// <summary>An alteration was reviewed beside the boat as built.</summary>
    public bool IsAltered => Result.AlterationId is not null;

    /// <summary>The groups that are not empty, in the order of the screen.</summary>
    public IReadOnlyList<FindingsGroup> Groups { get; }

    /// <summary>What the unknown findings wait for, each input once, what settles most first.</summary>
    public IReadOnlyList<UntoldInput> Untold { get; }

    /// <summary>One sentence with the counts.</summary>
    public string Summary => Groups.Count == 0
        ? "Nothing could be checked yet."
        : $"{Result.Count(Verdict.Fails)} fail, {Result.Count(Verdict.Tight)} tight, {Result.Count(Verdict.Unknown)} unknown, {Result.Count(Verdict.Holds)} hold.";

    /// <summary>What the list never claims: with findings on stability among them, the survey and the naval architect too.</summary>
    public string Caution => Result.Findings.Any(pair => StabilityChecks.Contains(pair.CheckId)) ? $"{General} {FloatingWords.Caution}" : General;

    /// <summary>The check a finding came from; null for one that is not in the list.</summary>
    public CheckDescription? Check(string id) => _checks.GetValueOrDefault(id);

    /// <summary>The findings about a thing or any element of it, in order.</summary>
    public IEnumerable<FindingRow> About(string thingId) => Groups.SelectMany(group => group.Rows).Where(row => row.IsAbout(thingId));

    private FindingsGroup GroupOf(Change change, IReadOnlyList<FindingRow> rows) => new(
        change,
        IsAltered ? ChangeWords.Title(change) : ChangeWords.TitleAsBuilt(change),
        rows,
        FindingsEntry.Of(rows, Describe));

    private InputRow Describe(FindingRow row, FindingInput input) => FindingWorking.Input(input, BoatOf(row), this);

    /// <summary>The boat a row was found in: as altered, or as built for what is gone.</summary>
    internal BoatModel BoatOf(FindingRow row) => row.Pair.After is null ? Result.AsBuilt : Result.AsAltered;

    private FindingRow Row(PairedFinding pair) =>
        FindingRow.Of(pair, pair.After is null ? Result.AsBuilt : Result.AsAltered, IsAltered, Units, Culture);
}
