using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Work.Bring;
using Orlop.Work.Steps;

namespace Orlop.Work.Troubles;

/// <summary>
/// What the review holds against an alteration: all that fails, and what can no longer be told, of the boat as altered, where the alteration brings it, makes it worse, or adds or changes
/// the thing that it is about.
/// </summary>
public sealed class PackTroubles
{
    private readonly ReviewEngine _engine;
    private readonly ReviewResult _result;
    private readonly Alteration _alteration;

    private PackTroubles(ReviewEngine engine, ReviewResult result, Alteration alteration) => (_engine, _result, _alteration) = (engine, result, alteration);

    /// <summary>Reviews the boat as built and as altered; what the engine solved before is not solved again.</summary>
    public static PackTroubles Of(WorkPack pack, ReviewEngine engine, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(engine);
        ReviewResult result = engine.Review(pack.AsBuilt, pack.Alteration, token);
        return new PackTroubles(engine, result with { Findings = [.. result.Findings.Where(pair => IsTrouble(pair, pack.Alteration))] }, pack.Alteration);
    }

    /// <summary>The findings, in the order of the review.</summary>
    public ImmutableArray<PairedFinding> Findings => _result.Findings;

    /// <summary>How many fail.</summary>
    public int FailCount => Failing.Count();

    /// <summary>How many cannot be told.</summary>
    public int UnknownCount => Findings.Length - FailCount;

    /// <summary>How far the alteration has come and what the review holds against it: "Draft, not accepted: nothing here is to be built yet. 3 findings fail and 36 cannot be told."</summary>
    public string Status => _alteration.Status switch
    {
        AlterationStatus.Draft => $"Draft, not accepted: nothing here is to be built yet. {Counts}",
        AlterationStatus.Dropped => $"Dropped: nothing here is to be built. {Counts}",
        AlterationStatus.Accepted => $"Accepted{AcceptedOn}. {Counts}",
        AlterationStatus.UnderWay => $"Accepted{AcceptedOn} and under way. {Counts}",
        _ => $"Built{(AcceptedOn.Length == 0 ? "" : $"; accepted{AcceptedOn}")}. {Counts}",
    };

    /// <summary>What is printed is not accepted, and nothing of it may be built.</summary>
    public bool IsNotToBuild => _alteration.Status is AlterationStatus.Draft or AlterationStatus.Dropped;

    /// <summary>What fails about the thing that a step fits, runs, makes off, connects or confirms: at the first of these steps, and at the one by which it is built.</summary>
    public IEnumerable<PairedFinding> FailingAt(WorkStep step, WorkPack pack)
    {
        string[] begun = [.. step.About.Where(thing => IsWork(step) && pack.Steps.First(other => IsWork(other) && other.About.Contains(thing)) == step), .. step.Builds];
        return FailingAbout(begun);
    }

    /// <summary>What fails about the thing that an item is for; what only joins or fixes it is not told of.</summary>
    public IEnumerable<PairedFinding> FailingFor(BringItem item) =>
        item.Kind is BringKind.Cable or BringKind.Fuse or BringKind.Plug or BringKind.Device or BringKind.Gear ? FailingAbout(item.For) : [];

    /// <summary>The findings as they are listed under the review.</summary>
    public FindingsView View(DisplayUnits units, CultureInfo culture) => new(_result, _engine.Checks, units, culture);

    private string AcceptedOn => _alteration.AcceptedOn is { } day ? string.Create(CultureInfo.InvariantCulture, $" on {day:yyyy-MM-dd}") : "";

    private IEnumerable<PairedFinding> Failing => Findings.Where(pair => pair.Shown.Verdict == Verdict.Fails);

    private string Counts => (FailCount, UnknownCount) switch
    {
        (0, 0) => "The review has no finding that fails or cannot be told about what it touches.",
        (var fails, 0) => $"{Count(fails)} {Fail(fails)}.",
        (0, var unknown) => $"{Count(unknown)} cannot be told.",
        var (fails, unknown) => string.Create(CultureInfo.InvariantCulture, $"{Count(fails)} {Fail(fails)} and {unknown} cannot be told."),
    };

    private IEnumerable<PairedFinding> FailingAbout(IReadOnlyCollection<string> things) => Failing.Where(pair => things.Any(pair.IsAbout));

    private static bool IsWork(WorkStep step) => step.Kind is StepKind.Fit or StepKind.Run or StepKind.MakeOff or StepKind.Connect or StepKind.Confirm;

    // Once an edit is built, what it brought stands as before.
    private static bool IsTrouble(PairedFinding pair, Alteration alteration) => pair.After?.Worst.Verdict switch
    {
        Verdict.Fails => pair.Change is Change.NewTrouble or Change.Worse || alteration.Edits.Any(edit => pair.IsAbout(edit.Id)),
        Verdict.Unknown => pair.Change == Change.Unknown || alteration.Edits.Any(edit => edit.BuiltOn is not null && pair.IsAbout(edit.Id)),
        _ => false,
    };

    private static string Count(int count) => count == 1 ? "1 finding" : string.Create(CultureInfo.InvariantCulture, $"{count} findings");

    private static string Fail(int count) => count == 1 ? "fails" : "fail";
}
