using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Electrics.Working;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Review.Electrics;

/// <summary>Lines and findings that many checks write alike.</summary>
internal static class FindingLines
{
    // What a solved network leaves of nothing.
    private const double Nothing = 1e-9;

    public static Amount A(double value) => new(Math.Abs(value) < Nothing ? 0 : value, "A");

    public static Amount V(double value) => new(Math.Abs(value) < Nothing ? 0 : value, "V");

    public static Amount M(double value) => new(value, "M");

    public static Amount Mm2(double value) => new(value, "Mm2");

    public static Amount Fraction(double value) => new(Math.Abs(value) < Nothing ? 0 : value, "Fraction");

    public static Amount Seconds(double value) => new(value, "S");

    /// <summary>A condition in the middle of a sentence: its name with a small first letter.</summary>
    public static string In(Condition condition) => char.ToLowerInvariant(condition.Title[0]) + condition.Title[1..];

    /// <summary>A number for a formula, up to four significant digits.</summary>
    public static string N(double value) => value.ToString("G4", CultureInfo.InvariantCulture);

    /// <summary>The last line of a working: asked over allowed.</summary>
    public static WorkingLine Use(double asked, double allowed) => allowed == 0
        ? Math.Abs(asked) >= Nothing ? new("Use", $"{N(asked)} is asked and nothing is allowed", null, "") : new("Use", "nothing is asked and nothing is allowed", Fraction(0), "")
        : new("Use", Formula.Share(Verdicts.UseOf(asked, allowed) == 0 ? 0 : asked, allowed), Verdicts.UseOf(asked, allowed) is { } use ? Fraction(use) : null, "");

    /// <summary>What a number of the network rests on, as the source of a line of working.</summary>
    public static string Solved(SolvedNetwork solved, string elementId)
    {
        string charge = solved.Case.Charge switch
        {
            ChargeCase.Full => "full battery",
            ChargeCase.Lowest => "lowest charge",
            _ => "normal charge",
        };
        int on = solved.NetworkOf(elementId)?.Loads.Length ?? 0;
        string loads = on == 1 ? "load" : "loads";
        string starting = solved.Case.StartingLoadId is null ? "" : ", one starting";
        string guessed = string.Concat((solved.NetworkOf(elementId)?.Batteries ?? []).Select(battery => solved.Built.Guessed.GetValueOrDefault(battery.Id)?.Words).OfType<string>().Distinct().Select(words => $", {words}"));
        return string.Create(CultureInfo.InvariantCulture, $"circuit solved with {on} {loads} on, {charge}{starting}{guessed}");
    }

    /// <summary>A limit as a line of working.</summary>
    public static WorkingLine Line(Limit limit, string what, string suffix) =>
        new(what, "limit of the practice", new Amount(limit.Value, suffix), limit.Source, limit.IsFromMemory);

    /// <summary>A step of the engine as a line of working.</summary>
    public static WorkingLine Line(WorkingStep step, bool isFromMemory = false) =>
        new(WhatOf(step.Symbol), step.Expression, step.Value is { } value ? new Amount(value, SuffixOf(step.Unit)) : null, step.Source, isFromMemory);

    /// <summary>The verdict is unknown because of what is missing.</summary>
    public static Finding Unknown(CheckDescription check, string subjectId, string? conditionId, Sentence headline, ImmutableArray<FindingInput> missing) => new()
    {
        CheckId = check.Id,
        SubjectId = subjectId,
        ConditionId = conditionId,
        Verdict = Verdict.Unknown,
        Headline = headline,
        Inputs = missing,
        WorkingWhenAsked = () => [.. missing.Select(input => input.IsMissing
            ? new WorkingLine("Missing", $"{input.ThingId}: {InputWords.Of(input.Field)} is not given", null, "")
            : new WorkingLine("In the way", $"{input.ThingId}: {InputWords.Of(input.Field)} as it is typed", null, ""))],
    };

    /// <summary>The verdict is unknown because the practice gives no such limit, or none is chosen.</summary>
    public static Finding NoLimit(CheckDescription check, string subjectId, string? conditionId, string title, string limitId) =>
        Unknown(check, subjectId, conditionId, Sentence.Of($"{title}: the practice gives no limit to hold it against"), [new FindingInput("practice", limitId, IsMissing: true)]);

    /// <summary>The network of the condition has no answer; <see cref="Checks.DeliveryCheck"/> says why.</summary>
    public static Finding NotSolved(CheckDescription check, string subjectId, Condition condition, string title) =>
        Unknown(check, subjectId, condition.Id, Sentence.Of($"{title}: the circuit has no working state {In(condition)}, so this cannot be told"), []) with
        {
            WorkingWhenAsked = () => [new WorkingLine("Circuit", "it has no working state: see whether each load can be fed", null, "circuit solved")],
        };

    private static string WhatOf(string symbol) => symbol switch
    {
        "I_table" => "Current in the table",
        "f_amb" => "Factor for the heat around it",
        "f_bundle" => "Factor for loaded conductors beside it",
        "I" => "May carry where it runs",
        "r" => "Fault over the rating",
        "t_latest" => "It opens at the latest",
        "t_adiabatic" => "Bears it, all heat kept in the copper",
        "t_bears" => "Bears it, losing heat",
        "t/t_earliest" => "Length of the start over the soonest it may open",
        "R_loop" => "Resistance of the loop",
        "I_fault" => "Current of the fault",
        "U_touch" => "Touched metal, over the earth at the source",
        "R_A·I∆n" => "Touched metal before it opens",
        "t_over" => "Opens on overcurrent, at the latest",
        "t_residual" => "Opens on residual current, at the latest",
        "Σ" => "All above the rating together",
        _ => symbol,
    };

    private static string SuffixOf(string unit) => unit switch
    {
        "A" => "A",
        "V" => "V",
        "ohm" => "Ohm",
        "ohm/m" => "OhmPerM",
        "s" => "S",
        "°C" => "C",
        "mm²" => "Mm2",
        "m" => "M",
        _ => "Ratio",
    };
}
