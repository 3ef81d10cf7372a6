using System.Collections.Immutable;
using Orlop.Hull.Working;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Lines and findings that many checks of stability write alike.</summary>
internal static class StabilityLines
{
    /// <summary>Stands with every finding on stability.</summary>
    public const string Caution =
        "Stability at sea is a matter of life: these numbers rest on the form and weights as typed, for still water. They replace no survey, no inclining test and no licensed naval architect; local rules come first.";

    public static Amount M(double value) => new(value, "M");

    public static Amount Deg(double value) => new(value, "Deg");

    public static Amount Kg(double value) => new(value, "Kg");

    /// <summary>A step of the engine as a line of working.</summary>
    public static WorkingLine Line(WorkingStep step) =>
        new(step.Symbol, step.Expression, step.Value is { } value ? new Amount(value, SuffixOf(step.Unit)) : null, step.Source, step.Source.Contains("from memory", StringComparison.Ordinal));

    /// <summary>How sure the weight is, as lines of working.</summary>
    public static IEnumerable<WorkingLine> WeightLines(LoadedBoat loaded)
    {
        if (loaded.Total is { } total)
        {
            yield return new WorkingLine("Weight without tank liquids", FormattableString.Invariant($"± {total.MassDeviationKg:0} kg, one standard deviation"), Kg(total.MassKg), "list and berth tests together");
            yield return new WorkingLine("KG", FormattableString.Invariant($"± {total.KgDeviationM:0.000} m"), M(total.Centre.ZM), "list and berth tests together");
            yield return new WorkingLine("LCG", FormattableString.Invariant($"± {total.LcgDeviationM:0.000} m"), M(total.Centre.XM), "list and berth tests together");
            yield return new WorkingLine("TCG, to port", FormattableString.Invariant($"± {total.TcgDeviationM:0.000} m"), M(total.Centre.YM), "list and berth tests together");
        }
    }

    /// <summary>The verdict is unknown because of what is missing; the check says what it is about.</summary>
    public static Finding Unknown(CheckDescription check, string subjectId, string? conditionId, Sentence headline, ImmutableArray<FindingInput> missing) => new()
    {
        CheckId = check.Id,
        SubjectId = subjectId,
        ConditionId = conditionId,
        Verdict = Verdict.Unknown,
        Headline = headline,
        Inputs = missing,
        Caution = Caution,
        Working = [.. missing.Select(input => new WorkingLine("Missing", $"{input.ThingId}: {input.Field} is not given", null, ""))],
    };

    private static string SuffixOf(string unit) => unit switch
    {
        "m" => "M",
        "°" => "Deg",
        "kg" => "Kg",
        "s" => "S",
        "m rad" => "MRad",
        _ => "Ratio",
    };
}
