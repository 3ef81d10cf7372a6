using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What was read in a step and has no field among the readings: kept with its tick, in the words it was typed in.</summary>
internal static partial class StepNote
{
    private const double MilliFactor = 0.001;

    /// <summary>It is typed at the step itself: masses go into sheets, freeboards into a survey.</summary>
    public static bool IsTakenIn(WorkStep step) => step.WriteDown is { IsSurvey: false } && step.Kind != StepKind.Weigh;

    /// <summary>Why what was typed proves nothing dead: it holds no number, or its largest voltage is more than a dead point may show; null where nothing is typed, or it is low enough.</summary>
    public static string? WhyNotDead(WorkStep step, string? note)
    {
        if (step.WriteDown?.MostV is not { } most || note is null)
        {
            return null;
        }

        if (!Voltage().IsMatch(note))
        {
            return $"“{note.Trim()}” is no voltage, and proves nothing dead. Type what the meter showed at each point, such as 0.0; 0.02.";
        }

        double read = Voltage().Matches(note).Select(match => Volts(match)).DefaultIfEmpty(0).Max();
        return read > most
            ? string.Create(CultureInfo.InvariantCulture, $"{read:0.###} V is more than {most:0.#} V: this is not dead. Stop, touch nothing, find what still feeds it, and prove it again.")
            : null;
    }

    // Commas and points alike divide decimals: a proof is never read in thousands.
    private static double Volts(Match match) =>
        double.Parse(match.Groups["number"].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) * (match.Groups["milli"].Success ? MilliFactor : 1);

    [GeneratedRegex(@"(?<number>\d+(?:[.,]\d+)?)\s*(?<milli>mV)?", RegexOptions.IgnoreCase)]
    private static partial Regex Voltage();
}
