using System.Globalization;
using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What was read in a step and has no field among the readings: kept with its tick, in the words it was typed in.</summary>
internal static class StepNote
{
    private const string Divided = "; ";

    /// <summary>It is typed at the step itself: masses go into sheets, freeboards into a survey.</summary>
    public static bool IsTakenIn(WorkStep step) => step.WriteDown is { Into: null } && step.Kind != StepKind.Weigh;

    /// <summary>How many fields it is typed in: one for each reading that is asked for.</summary>
    public static int FieldCount(WriteDown write) => Math.Max(1, write.Accepts.Length);

    /// <summary>What stands before a field.</summary>
    /// <param name="write">What is written down.</param>
    /// <param name="at">Which field, from 0.</param>
    public static string Label(WriteDown write, int at) => write.Accepts.Length > 1 ? $"{write.Accepts[at].Name}, {write.Accepts[at].Unit}" : $"{write.What ?? "What it read"}, {write.Unit}";

    /// <summary>Id of a field of the step with this number.</summary>
    public static string FieldId(WriteDown write, int number, int at) => string.Create(CultureInfo.InvariantCulture, $"noted-{number}{(FieldCount(write) == 1 ? "" : $"-{at + 1}")}");

    /// <summary>What a field shows of a note: the readings of several stand in it divided by semicolons, and what is more than there are fields for in the last.</summary>
    public static string? Field(WriteDown write, string? note, int at)
    {
        int count = FieldCount(write);
        string[] pieces = [.. (note ?? "").Split(';').Select((piece, index) => index > 0 && piece.StartsWith(' ') ? piece[1..] : piece)];
        return count == 1 ? note : at == count - 1 && pieces.Length > count ? string.Join(Divided, pieces[at..]) : at < pieces.Length ? pieces[at] : "";
    }

    /// <summary>The note with what is typed in one of its fields.</summary>
    public static string? With(WriteDown write, string? note, int at, string? typed)
    {
        int count = FieldCount(write);
        string[] fields = [.. Enumerable.Range(0, count).Select(one => one == at ? typed ?? "" : Field(write, note, one) ?? "")];
        return count == 1 ? typed : string.Join(Divided, fields[..(Array.FindLastIndex(fields, field => field.Length > 0) + 1)]);
    }

    /// <summary>What is typed in a field speaks against the step: it is outside its limits or cannot be read, or nothing is typed in it though the step is ticked. What stands in another field does not count.</summary>
    /// <param name="test">All that was typed, held against what is accepted; null where nothing was.</param>
    /// <param name="at">Which field, from 0.</param>
    /// <param name="isTicked">The step is ticked.</param>
    public static bool IsAgainst(StepTest? test, int at, bool isTicked) => test?.StandingAt(at) switch
    {
        null or TestStanding.Passed or TestStanding.NotTold => false,
        TestStanding.TooFew => isTicked,
        _ => true,
    };

    /// <summary>The shape of how a test stands.</summary>
    public static Orlop.Review.Findings.Verdict Verdict(StepTest test) => test.Standing switch
    {
        TestStanding.Passed => Orlop.Review.Findings.Verdict.Holds,
        TestStanding.Outside => Orlop.Review.Findings.Verdict.Fails,
        _ => Orlop.Review.Findings.Verdict.Unknown,
    };
}
