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

    public static Amount S(double value) => new(value, "S");

    /// <summary>A value of the engine in a sentence.</summary>
    public static Sentence Measure(double value, string unit) =>
        SuffixOf(unit) is { } suffix ? Sentence.Of($"{new Amount(value, suffix)}") : Sentence.Of($"{Plain(value, unit)}");

    /// <summary>A step of the engine as a line of working.</summary>
    public static WorkingLine Line(WorkingStep step) => new(
        step.Symbol,
        SuffixOf(step.Unit) is null && step.Value is { } plain ? $"{step.Expression} = {Plain(plain, step.Unit)}" : step.Expression,
        SuffixOf(step.Unit) is { } suffix && step.Value is { } value ? new Amount(value, suffix) : null,
        step.Source,
        step.Source.Contains("from memory", StringComparison.Ordinal));

    /// <summary>A finding on a loaded boat. What is not given keeps it from holding; a use belongs only to what can be told.</summary>
    public static Finding Judged(
        CheckDescription check, string subjectId, LoadedBoat loaded, Verdict verdict, UseOf? use, Sentence headline, IEnumerable<WorkingLine> working, params ImmutableArray<FindingInput> alsoMissing)
    {
        ImmutableArray<FindingInput> missing = [.. loaded.Missing, .. alsoMissing];
        Verdict told = !missing.IsEmpty && verdict is (Verdict.Holds or Verdict.Tight) ? Verdict.Unknown : verdict;
        return new Finding
        {
            CheckId = check.Id,
            SubjectId = subjectId,
            ConditionId = loaded.Condition.Id,
            Verdict = told,
            UseFraction = told == Verdict.Unknown ? null : use?.Fraction,
            GravityRatio = told == Verdict.Unknown ? use?.Fraction : null,
            Headline = told == verdict ? headline : Sentence.Of($"{headline}; but {MissingName.Of(missing[0])} is not given{More(missing.Length - 1)}, so this cannot be told"),
            Working =
            [
                .. working, .. WeightLines(loaded), .. missing.Select(MissingLine),
                .. told != Verdict.Unknown && use is { } used ? new[] { Electrics.FindingLines.Use(used.Asked, used.Allowed) } : [],
            ],
            Inputs = missing,
            Caution = Caution,
        };
    }

    /// <summary>How sure the weight is, and whether the hull was measured, as lines of working.</summary>
    public static IEnumerable<WorkingLine> WeightLines(LoadedBoat loaded)
    {
        if (loaded.Total is { } total)
        {
            yield return new WorkingLine("Weight without tank liquids", FormattableString.Invariant($"± {2 * total.MassDeviationKg:0} kg, two standard deviations"), Kg(total.MassKg), "list and berth tests together");
            yield return new WorkingLine("KG", FormattableString.Invariant($"± {2 * total.KgDeviationM:0.000} m, two standard deviations"), M(total.Centre.ZM), "list and berth tests together");
            yield return new WorkingLine("LCG", FormattableString.Invariant($"± {2 * total.LcgDeviationM:0.000} m, two standard deviations"), M(total.Centre.XM), "list and berth tests together");
            yield return new WorkingLine("TCG, to port", FormattableString.Invariant($"± {2 * total.TcgDeviationM:0.000} m, two standard deviations"), M(total.Centre.YM), "list and berth tests together");
            if (loaded.HullNotMeasured is { } said)
            {
                yield return new WorkingLine("Hull", said, null, "stations as typed");
            }

            foreach (WeakTest weak in loaded.Weak)
            {
                yield return weak.Line;
            }
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
        Working = [.. missing.Select(MissingLine)],
    };

    /// <summary>Why a band says nothing, and what would settle it: "but her weight is so unsure that it may be 0.1 m more or less; an inclining test that knows …".</summary>
    public static Sentence Unsure(StabilityView view, LoadedBoat loaded, Banded banded, string unit, double limit) => double.IsFinite(banded.Half)
        ? Sentence.Of($"but her weight {(banded.Beside is { } beside ? $"and her {beside.Name} are" : "is")} so unsure that it may be {Measure(banded.Half, unit)} more or less{(banded.Slopes is { } slopes ? $"; {SettlingTest.Of(view, loaded, slopes, banded.Beside, banded.Value - limit)}" : "")}")
        : Sentence.Of($"but a boat a little heavier or lighter gives no such number, and how sure it is cannot be told");

    /// <summary>The band of a result as a line of working.</summary>
    public static WorkingLine BandLine(Banded banded, string unit) =>
        Line(new WorkingStep("Band", $"± two standard deviations, from those of displacement, LCG, TCG and KG{(banded.Beside is { } beside ? $", and of her {beside.Name}" : "")}", double.IsFinite(banded.Half) ? banded.Half : null, unit, "linear propagation"));

    /// <summary>Words at the beginning of a sentence.</summary>
    public static string Begun(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static WorkingLine MissingLine(FindingInput input) =>
        new(input.IsMissing ? "Missing" : "In the way", $"{MissingName.Of(input)} {(input.IsMissing ? "is not given" : "as it is typed")}", null, "");

    private static string More(int count) => count == 0 ? "" : FormattableString.Invariant($" (and {count} more)");

    // An area under a curve of levers has no unit that people read in two ways.
    private static string Plain(double value, string unit) => FormattableString.Invariant($"{value:0.0000} {unit}");

    private static string? SuffixOf(string unit) => unit switch
    {
        "m" => "M",
        "°" => "Deg",
        "kg" => "Kg",
        "s" => "S",
        "m/s²" => "MPerS2",
        "" => "Ratio",
        _ => null,
    };
}
