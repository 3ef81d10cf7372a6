using System.Globalization;
using Orlop.Boat.Things;

namespace Orlop.Work.Steps;

/// <summary>How what was typed in a step stands to what its test accepts.</summary>
public enum TestStanding { Passed, Outside, Unreadable, NotTold, NotTyped }

/// <summary>What was read in a step's test, held against what is accepted.</summary>
/// <param name="Standing">How it stands.</param>
/// <param name="Shown">What was read, each reading with its unit; as typed where that cannot be read.</param>
/// <param name="Words">What was read, what is accepted and what it may mean; for a passed test that it is as it should be.</param>
public sealed record StepTest(TestStanding Standing, string Shown, string Words)
{
    private const string AsAsked = "within what is accepted";

    /// <summary>It proves what it is to prove, or nobody could tell what is accepted: work need not stop for it.</summary>
    public bool LetsGoOn => Standing is TestStanding.Passed or TestStanding.NotTold;

    /// <summary>The standing in a few words.</summary>
    public string Said => Standing switch
    {
        TestStanding.Passed => Words,
        TestStanding.Outside => "outside what is accepted",
        TestStanding.Unreadable => "cannot be read",
        TestStanding.NotTyped => "nothing is proved",
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

        string[] pieces = TypedReading.Pieces(note);
        if (accepts.Length > 1 && pieces.Length != accepts.Length)
        {
            return new StepTest(TestStanding.Unreadable, note.Trim(), string.Create(CultureInfo.InvariantCulture,
                $"{accepts.Length} readings are asked for and {pieces.Length} {(pieces.Length == 1 ? "is" : "are")} typed: nothing tells which is which. Type all of them in the order that the step names, divided by semicolons."));
        }

        // Several readings to one limit are each held against it, and the worst is told.
        StepTest[] each = [.. pieces.Select((piece, index) => Of(piece, accepts[accepts.Length > 1 ? index : 0]))];
        return each.Length == 0 ? null : each.OrderBy(one => Rank(one.Standing)).First() with { Shown = string.Join("; ", each.Select(one => one.Shown)) };
    }

    /// <summary>The berth test that a step asks for: passed by one that is typed in and was made after the work, whatever it says; what it says is judged by the review.</summary>
    /// <param name="kind">What is asked for.</param>
    /// <param name="kept">The test that was made after the work; null where none is typed in.</param>
    public static StepTest Of(BerthTestKind kind, BerthTest? kept) => kept is null
        ? new StepTest(TestStanding.NotTyped, $"no {kind.Name()} typed in", $"No {kind.Name()} is typed in that was made on the day of the work or later: nothing has been found out, whatever is ticked. Type it under Weights, Berth tests, with its day.")
        : new StepTest(TestStanding.Passed, string.Create(CultureInfo.InvariantCulture, $"“{kept.Title}”{(kept.On is { } on ? $", {on:yyyy-MM-dd}" : "")}"), "typed in");

    private static int Rank(TestStanding standing) => standing switch { TestStanding.Outside => 0, TestStanding.Unreadable => 1, TestStanding.NotTold => 2, _ => 3 };

    private static StepTest Of(string piece, AcceptedReading accepted)
    {
        if (accepted.MayBeCovered && piece.Contains("covered", StringComparison.OrdinalIgnoreCase) && !piece.Any(char.IsAsciiDigit))
        {
            return new StepTest(TestStanding.Passed, piece, AsAsked);
        }

        string of = accepted.Name is { } name ? $"{name}: " : "";
        if (TypedReading.Of(piece, accepted) is not { } read)
        {
            return new StepTest(TestStanding.Unreadable, piece, $"{of}“{piece}” is no reading in {accepted.Unit}, and proves nothing. Type what the meter showed, such as {Limit(accepted, accepted.Most ?? accepted.Least ?? 1)}; several are divided by semicolons.");
        }

        (double least, double most) = accepted.IsEitherSign ? Magnitude(read) : (read.Least, read.Most);
        StepTest Outside(string words) => new(TestStanding.Outside, read.Text, $"{of}{words}");
        return !accepted.HasLimit ? new StepTest(TestStanding.NotTold, read.Text, $"{of}{read.Text} cannot be judged: what is accepted cannot be worked out from the boat's file.")
            : accepted.NothingUpTo is { } nothing && Math.Max(Math.Abs(read.Least), Math.Abs(read.Most)) <= nothing ? new StepTest(TestStanding.Passed, read.Text, AsAsked)
            : accepted.WhenReversed is { } reversed && most < 0 ? Outside($"{read.Text} has the wrong sign, {Range(accepted)} is accepted: {reversed}")
            : !(least >= (accepted.Least ?? double.NegativeInfinity)) ? Outside($"{read.Text} is {(most >= accepted.Least ? "not surely as much as" : "less than")} {Limit(accepted, accepted.Least!.Value)}: {accepted.WhenBelow}")
            : !(most <= (accepted.Most ?? double.PositiveInfinity)) ? Outside($"{read.Text} is {(least <= accepted.Most ? "not surely as little as" : "more than")} {Limit(accepted, accepted.Most!.Value)}: {accepted.WhenAbove}")
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

    private static string Limit(AcceptedReading accepted, double value) =>
        string.Create(CultureInfo.InvariantCulture, $"{value / TypedReading.Value("1", accepted.Unit, accepted.Suffix)!.Value:0.###} {accepted.Unit}");
}
