using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>What a criterion says.</summary>
public enum CriterionVerdict
{
    /// <summary>Its value could not be found; it never counts as met.</summary>
    Unknown,

    /// <summary>The value keeps the limit.</summary>
    Meets,

    /// <summary>The value does not keep the limit.</summary>
    Fails,
}

/// <summary>One criterion held against a curve.</summary>
/// <param name="Id">Short name in the trade's words.</param>
/// <param name="Subject">What is asked, in words.</param>
/// <param name="Value">What was found, in <paramref name="Unit"/>; null when it could not be, or when there is no such thing to find.</param>
/// <param name="Least">The least that is asked.</param>
/// <param name="Unit">Unit of value and limit.</param>
/// <param name="Verdict">Never met while the value is null.</param>
/// <param name="Source">Document and clause.</param>
/// <param name="Remarks">Validity warnings and departures.</param>
/// <param name="Working">The steps.</param>
public sealed record CriterionResult(
    string Id, string Subject, [property: UnitByKind] double? Value, double Least, string Unit, CriterionVerdict Verdict, string Source, ImmutableArray<string> Remarks, ImmutableArray<WorkingStep> Working)
{
    internal static CriterionResult AtLeast(string id, string subject, double? value, double least, string unit, string source, ImmutableArray<string> remarks, string expression) =>
        new(id, subject, value, least, unit, value is not { } found || !double.IsFinite(found) ? CriterionVerdict.Unknown : found >= least ? CriterionVerdict.Meets : CriterionVerdict.Fails,
            source, remarks, [new WorkingStep(id, expression, value, unit, source)]);

    /// <summary>Failed for a reason that leaves no number.</summary>
    internal static CriterionResult FailedWithout(string id, string subject, double least, string unit, string source, ImmutableArray<string> remarks, string reason) =>
        new(id, subject, null, least, unit, CriterionVerdict.Fails, source, [.. remarks, reason], [new WorkingStep(id, reason, null, unit, source)]);
}
