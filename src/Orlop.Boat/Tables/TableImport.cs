using Orlop.Boat.Things;

namespace Orlop.Boat.Tables;

/// <summary>What a table would change, or everything that is wrong with it.</summary>
/// <param name="Edits">Things added and replaced, in the order of the rows; empty as soon as there is a problem. A thing that is not in the table stays.</param>
/// <param name="MadeIds">Ids that were made from names, for rows that gave none, in the order of the rows.</param>
/// <param name="Problems">All problems, in the order of the rows.</param>
public sealed record TableImport(IReadOnlyList<Edit> Edits, IReadOnlyList<string> MadeIds, IReadOnlyList<TableProblem> Problems);
