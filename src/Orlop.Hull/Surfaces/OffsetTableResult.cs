using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>A hull read from a table of offsets, or all that is wrong with the table; never both.</summary>
public sealed record OffsetTableResult(HullForm? Form, ImmutableArray<OffsetProblem> Problems);

/// <summary>One cell of a table of offsets that cannot be read.</summary>
/// <param name="LineNumber">Line of the text, counted from 1.</param>
/// <param name="Column">Name of the column; empty for the line as a whole.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What may.</param>
public sealed record OffsetProblem(int LineNumber, string Column, string Found, string Allowed)
{
    public override string ToString() => $"line {LineNumber}{(Column.Length > 0 ? $", {Column}" : "")}: found {(Found.Length > 0 ? $"\"{Found}\"" : "nothing")}; allowed {Allowed}";
}
