using Orlop.Boat.Format;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Tables;

/// <summary>Tells problems of a boat by the row and column of the table that brought them.</summary>
internal static class TableProblems
{
    /// <summary>The problems of the rows, and those of the boat that are not there without the table.</summary>
    public static TableProblem[] Of(ProblemList problems, RecordSchema schema, List<ThingEntry> rows, IReadOnlyList<Problem> before)
    {
        HashSet<Spot> roots = [.. rows.Select(row => row.Spot)];
        HashSet<Problem> known = [.. before];
        return
        [
            .. problems.WithSpots()
                .Where(entry => IsInTable(entry.Spot, roots) || !known.Contains(entry.Problem))
                .Select(entry => IsInTable(entry.Spot, roots) ? InRow(entry.Spot, entry.Problem, schema) : InBoat(entry.Problem)),
        ];
    }

    private static bool IsInTable(Spot spot, HashSet<Spot> roots) => spot.Root == TableHeader.Spot || roots.Contains(spot.Root);

    private static TableProblem InBoat(Problem problem) => new(null, problem.Path, problem.Found, problem.Allowed, problem.Message);

    private static TableProblem InRow(Spot spot, Problem problem, RecordSchema schema)
    {
        IReadOnlyList<string> steps = spot.Steps;
        FieldSchema? field = steps.Count == 0 ? null : schema.Field(steps[0]);
        FieldSchema? part = steps.Count == 2 && field?.Type is FieldType.Quantity or FieldType.Place or FieldType.Box ? field.Record!.Field(steps[1]) : null;
        string column = field is null ? string.Join('/', steps) : part is null ? field.Column : $"{field.Column}_{part.Column}";
        string inside = field is not null && part is null && steps.Count > 1 ? $"At /{string.Join('/', steps.Skip(1))}: " : "";
        return new TableProblem(spot.Order, column, problem.Found, problem.Allowed, inside + problem.Message);
    }
}
