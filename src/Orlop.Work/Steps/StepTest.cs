using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;

namespace Orlop.Work.Steps;

/// <summary>How what was typed in a step stands to what its test accepts.</summary>
public enum TestStanding { Passed, Outside, Unreadable, TooFew, NotTold, NotTyped }

/// <summary>What was read in a step's test, held against what is accepted.</summary>
/// <param name="Standing">How it stands.</param>
/// <param name="Shown">What was read, each reading with its unit; as typed where that cannot be read.</param>
/// <param name="Words">What was read, what is accepted and what it may mean; for a passed test that it is as it should be.</param>
public sealed record StepTest(TestStanding Standing, string Shown, string Words)
{
    private const string AsAsked = "within what is accepted";

    /// <summary>How many of the readings that are asked for are typed, 0 or more.</summary>
    public int ReadCount { get; init; }

    /// <summary>How many readings are asked for, 0 or more: as many as points are named.</summary>
    public int AskedCount { get; init; }

    /// <summary>How each reading that is asked for stands, in their order; one that is not typed as too few. Empty where the note cannot be taken apart.</summary>
    public ImmutableArray<TestStanding> Each { get; init; } = [];

    /// <summary>How one reading stands: all alike where the note cannot be taken apart.</summary>
    /// <param name="at">Which, from 0.</param>
    public TestStanding StandingAt(int at) => at >= 0 && at < Each.Length ? Each[at] : Standing;

    /// <summary>It proves what it is to prove, or nobody could tell what is accepted: work need not stop for it.</summary>
    public bool LetsGoOn => Standing is TestStanding.Passed or TestStanding.NotTold;

    /// <summary>The standing in a few words.</summary>
    public string Said => Standing switch
    {
        TestStanding.Passed => Words,
        TestStanding.Outside => "outside what is accepted",
        TestStanding.Unreadable => "cannot be read",
        TestStanding.NotTyped => "nothing is proved",
        TestStanding.TooFew => string.Create(CultureInfo.InvariantCulture, $"{ReadCount} of {AskedCount} read"),
        _ => "cannot be judged",
    };

    /// <summary>A note held against what a step accepts; null where nothing is typed, or nothing is tested.</summary>
    public static StepTest? Of(WorkStep step, string? note)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (step.WriteDown is not { Accepts: { IsEmpty: false } accepts } || string.IsNullOrWhiteSpace(note))
        {
            return null;
        }

        // A field left blank keeps its place among several; beside a single one it says nothing.
        string[] pieces = [.. TypedReading.Pieces(note).Where(piece => accepts.Length > 1 || piece.Length > 0)];
        if (pieces.Length > accepts.Length && accepts.Select(each => each with { Name = null, At = null }).Distinct().Count() > 1)
        {
            return new StepTest(TestStanding.Unreadable, note.Trim(), string.Create(CultureInfo.InvariantCulture,
                $"{accepts.Length} readings are asked for and {pieces.Length} are typed: nothing tells which is which. Type each at its point."));
        }

        // Several readings to one limit are each held against it, and the worst is told.
        StepTest[] each = [.. pieces.Select((piece, index) => piece.Length == 0 ? Blank : Of(piece, accepts.Length == 1 ? accepts[0] with { Name = null } : accepts[Math.Min(index, accepts.Length - 1)]))];
        int readCount = each.Count(one => one != Blank);
        string[] missing = [.. accepts.Select((accepted, index) => (accepted, index)).Where(one => one.index >= pieces.Length || pieces[one.index].Length == 0).Select(one => one.accepted.Name ?? string.Create(CultureInfo.InvariantCulture, $"reading {one.index + 1}"))];
        StepTest[] all = missing.Length == 0 ? each : [.. each.Where(one => one != Blank), new StepTest(TestStanding.TooFew, "", string.Create(CultureInfo.InvariantCulture,
            $"{missing.Length} of {accepts.Length} readings {(missing.Length == 1 ? "is" : "are")} not typed: {string.Join("; ", missing)}. What one point reads says nothing of another: nothing is proved before each is read."))];
        return readCount == 0 ? null : all.OrderBy(one => Rank(one.Standing)).First() with
        {
            Shown = string.Join("; ", each.Select(one => one.Shown)),
            ReadCount = Math.Min(readCount, accepts.Length),
            AskedCount = accepts.Length,
            Each = [.. accepts.Select((_, at) => each.Where((_, index) => Math.Min(index, accepts.Length - 1) == at).Select(one => one.Standing).DefaultIfEmpty(TestStanding.TooFew).MinBy(Rank))],
        };
    }

    /// <summary>What a step proves that is ticked with no reading typed: nothing.</summary>
    /// <param name="askedCount">How many readings it asks for, 1 or more.</param>
    public static StepTest Untyped(int askedCount) => new(TestStanding.NotTyped, "no reading typed", string.Create(CultureInfo.InvariantCulture,
        $"No reading is typed, and {(askedCount == 1 ? "one is" : $"{askedCount} are")} asked for: nothing is proved, whatever is ticked. Type what the meter showed{(askedCount == 1 ? "" : " at each point")}."))
    {
        AskedCount = askedCount,
    };

    /// <summary>What a step says of things to weigh that is ticked while nobody has typed what they weigh.</summary>
    /// <param name="count">How many have no mass that was weighed or is a sheet's, 1 or more.</param>
    public static StepTest Unweighed(int count) => new(TestStanding.NotTyped, "no mass typed in", string.Create(CultureInfo.InvariantCulture,
        $"{(count == 1 ? "One thing has" : $"{count} things have")} no mass in the boat's file that was weighed or is a sheet's, whatever is ticked: trim, heel and stability rest on a guess. Type each into its own sheet, with how it is known."));

    // Stands where a field between others is left blank.
    private static StepTest Blank { get; } = new(TestStanding.TooFew, "–", "");

    /// <summary>The berth test that a step asks for: passed by one that is typed in and was made after the work, whatever it says; what it says is judged by the review.</summary>
    /// <param name="kind">What is asked for.</param>
    /// <param name="kept">The test that was made after the work and lists it; null where none is typed in.</param>
    /// <param name="unlisted">One that was made after the work and lists some of it otherwise than it is; null where none is.</param>
    public static StepTest Of(BerthTestKind kind, BerthTest? kept, (BerthTest Test, ImmutableArray<string> Things)? unlisted) => kept is null && unlisted is var (test, things)
        ? new StepTest(TestStanding.Outside, Named(test),
            $"“{test.Title}” lists what was aboard without the work in her: {string.Join("; ", things)} as before it, or not at all. That weight is taken for the boat's own, and counted once more when the work is recorded. If it was aboard when this was read: record it as built first, then type the {kind.Name()} in again with the same readings, and take this one out.")
        : kept is null ? new StepTest(TestStanding.NotTyped, $"no {kind.Name()} typed in", $"No {kind.Name()} is typed in that was made on the day of the work or later and lists all that it put aboard: nothing has been found out, whatever is ticked. Type it under Weights, Berth tests, with its day.")
        : new StepTest(TestStanding.Passed, Named(kept), "typed in");

    private static string Named(BerthTest test) => string.Create(CultureInfo.InvariantCulture, $"“{test.Title}”{(test.On is { } on ? $", {on:yyyy-MM-dd}" : "")}");

    private static int Rank(TestStanding standing) => standing switch { TestStanding.Outside => 0, TestStanding.Unreadable => 1, TestStanding.TooFew => 2, TestStanding.NotTold => 3, _ => 4 };

    private static StepTest Of(string piece, AcceptedReading accepted)
    {
        if (accepted.MayBeCovered && piece.Contains("covered", StringComparison.OrdinalIgnoreCase) && !piece.Any(char.IsAsciiDigit))
        {
            return new StepTest(TestStanding.Passed, piece, AsAsked);
        }

        string of = accepted.Name is { } name ? $"{name}: " : "";
        if (TypedReading.Of(piece, accepted) is not { } read)
        {
            return new StepTest(TestStanding.Unreadable, piece, $"{of}“{piece}” is no reading in {accepted.Unit}, and proves nothing. Type what the meter showed, such as {Example(accepted)}; several are divided by semicolons.");
        }

        (double least, double most) = accepted.IsEitherSign ? Magnitude(read) : (read.Least, read.Most);
        StepTest Outside(string words) => new(TestStanding.Outside, read.Text, $"{of}{words}");
        return !accepted.HasLimit ? new StepTest(TestStanding.NotTold, read.Text, $"{of}{read.Text} cannot be judged: what is accepted cannot be worked out from the boat's file.")
            : accepted.NothingUpTo is { } nothing && Math.Max(Math.Abs(read.Least), Math.Abs(read.Most)) <= nothing ? new StepTest(TestStanding.Passed, read.Text, AsAsked)
            : accepted.WhenReversed is { } reversed && most < 0 ? Outside($"{read.Text} has the wrong sign, {Range(accepted)} is accepted: {reversed}")
            : !(least >= (accepted.Least ?? double.NegativeInfinity)) ? Outside($"{read.Text} is {(most >= accepted.Least ? "not surely as much as" : "less than")} {Limit(accepted, accepted.Least!.Value)}: {accepted.WhenBelow}")
            : !(most <= (accepted.Most ?? double.PositiveInfinity)) ? Outside($"{read.Text} is {(least <= accepted.Most ? "not surely as little as" : "more than")} {Limit(accepted, accepted.Most!.Value)}: {accepted.WhenAbove}")
            : accepted.WhyNoMost is { } untold ? new StepTest(TestStanding.NotTold, read.Text, $"{of}{read.Text} cannot be judged: {untold}.")
            : new StepTest(TestStanding.Passed, read.Text, AsAsked);
    }

    private static (double Least, double Most) Magnitude(TypedReading read) =>
        read.Least <= 0 && read.Most >= 0 ? (0, Math.Max(-read.Least, read.Most)) : (Math.Min(Math.Abs(read.Least), Math.Abs(read.Most)), Math.Max(Math.Abs(read.Least), Math.Abs(read.Most)));

    /// <summary>What is accepted: "at least 100 kΩ", "10.2 V to 15.6 V".</summary>
    public static string Range(AcceptedReading accepted)
    {
        ArgumentNullException.ThrowIfNull(accepted);
        return accepted switch
        {
            { Least: { } least, Most: { } most } when !accepted.IsEitherSign || least > 0 => $"{Limit(accepted, least)} to {Limit(accepted, most)}",
            { Most: { } most } => $"at most {Limit(accepted, most)}",
            { Least: { } least } => $"at least {Limit(accepted, least)}",
            _ => "unknown",
        };
    }

    private static string Limit(AcceptedReading accepted, double value) => string.Create(CultureInfo.InvariantCulture, $"{InUnit(accepted, value):0.###} {accepted.Unit}");

    // To the tenth, as a meter shows it; a hundredth where there is less than one.
    private static string Example(AcceptedReading accepted) =>
        InUnit(accepted, accepted.Example) is var value && Math.Abs(value) < 1 ? string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {accepted.Unit}") : string.Create(CultureInfo.InvariantCulture, $"{value:0.#} {accepted.Unit}");

    private static double InUnit(AcceptedReading accepted, double value) => value / TypedReading.Value("1", accepted.Unit, accepted.Suffix)!.Value;
}
