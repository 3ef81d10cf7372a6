using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.App.CommandLine;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;

namespace Orlop.App.Tests.Workings;

/// <summary>A finding as it is printed, judged by what can be read and worked out by hand; knows nothing of checks or engines.</summary>
internal static partial class PrintedFinding
{
    private sealed record Line(string What, string Expression, Amount? Value, string Shown);

    /// <summary>What is wrong with it, in sentences; none when all is well.</summary>
    public static IEnumerable<string> Faults(Finding finding)
    {
        if (finding.Working.IsEmpty)
        {
            yield return "no working";
        }

        string headline = SentenceText.Of(finding.Headline, DisplayUnits.Metric, UnitsOption.Culture);
        if (string.IsNullOrWhiteSpace(headline) || NoNumber().IsMatch(headline))
        {
            yield return $"headline: {headline}";
        }

        Line[] lines = [.. finding.Working.Select(line => new Line(line.What, line.Expression, line.Value, line.Value is { } amount ? Shown(amount) : ""))];
        foreach (Line line in lines)
        {
            if (NoNumber().IsMatch(line.Shown) || NoNumber().IsMatch(line.Expression) || line.Value is { Value: var value } && !double.IsFinite(value))
            {
                yield return $"no number: {line.What}: {line.Expression} = {line.Shown}";
            }
            else if (line.Shown.Length > 0 && PrintedLine.Arithmetic(line.Expression) is { } arithmetic && !PrintedLine.Gives(arithmetic, line.Shown))
            {
                yield return $"not so: {line.What}: {line.Expression} = {line.Shown}";
            }
        }

        if (finding.UseFraction is not { } use)
        {
            yield break;
        }

        if (!(double.IsFinite(use) && use >= 0))
        {
            yield return $"use {use}";
        }
        else if (UseFault(lines, Shown(new Amount(use, "Fraction"))) is { } fault)
        {
            yield return fault;
        }

        foreach (string told in finding.Headline.Parts.Select(part => part.Amount).OfType<Amount>().Select(Shown).Where(told => !IsInWorking(lines, told)))
        {
            yield return $"headline only: {told} of: {headline}";
        }
    }

    private static string Shown(Amount amount) => SentenceText.Of(amount, DisplayUnits.Metric, UnitsOption.Culture);

    // The use is a line of the working, and that line can be worked out from what is printed.
    private static string? UseFault(Line[] working, string shown)
    {
        Line[] lines = [.. working.Where(line => line.Value is { Suffix: "Fraction" or "Ratio" } && Shown(line.Value with { Suffix = "Fraction" }) == shown)];
        return lines.Length == 0 ? $"the use of {shown} is no line of the working"
            : lines.Any(line => IsHadAgain(working, line, shown)) ? null
            : $"the use of {shown} cannot be worked out: {string.Join("; ", lines.Select(line => $"{line.What}: {line.Expression}"))}";
    }

    private static bool IsHadAgain(Line[] working, Line use, string shown) => PrintedLine.Arithmetic(use.Expression) is { } arithmetic ? PrintedLine.Gives(arithmetic, shown) : use.Expression switch
    {
        "at or above nominal" or "nothing is asked and nothing is allowed" => use.Value!.Value == 0,
        _ when use.Expression.EndsWith("added up", StringComparison.Ordinal) => Math.Abs(Shares(working).Sum() - use.Value!.Value) <= 1e-9 * Math.Max(1, use.Value.Value),
        _ => false,
    };

    private static IEnumerable<double> Shares(Line[] working) =>
        working.Where(line => line.What == "Length of the start over the soonest it may open" && line.Value is not null).Select(line => line.Value!.Value);

    private static bool IsInWorking(Line[] working, string told) => working.Any(line => line.Shown == told
        || Spaced(line.Expression).Contains(Spaced(told), StringComparison.Ordinal) || Spaced(line.What).Contains(Spaced(told), StringComparison.Ordinal)
        || Figure().Matches(line.Expression).Any(figure => double.TryParse(figure.Value.Replace('−', '-'), CultureInfo.InvariantCulture, out double number) && PrintedLine.Means(told, number)));

    private static string Spaced(string text) => text.Replace('\u00A0', ' ').Replace(" ", "", StringComparison.Ordinal);

    [GeneratedRegex("NaN|∞|Infinity")]
    private static partial Regex NoNumber();

    [GeneratedRegex(@"\d+(?:\.\d+)?(?:E[+−]?\d+)?")]
    private static partial Regex Figure();
}
