namespace Orlop.Hull.Working;

/// <summary>One line of a calculation's working: the very value that went into the result, with the formula in numbers and where it comes from.</summary>
/// <param name="Symbol">Symbol as the engine's page uses it.</param>
/// <param name="Expression">The formula with its numbers, or the row that was read.</param>
/// <param name="Value">The value found, in <paramref name="Unit"/>; null when the step found none.</param>
/// <param name="Unit">Unit of the value; empty for a plain number.</param>
/// <param name="Source">Document and clause, or "common practice, no source".</param>
public sealed record WorkingStep(string Symbol, string Expression, [property: UnitByKind] double? Value, string Unit, string Source);
