using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A line of a list of findings: one finding, or all that wait for one missing input.</summary>
/// <param name="Rows">One finding, or those that wait, in the order of the list.</param>
/// <param name="Missing">The input they wait for; null for a finding that stands alone.</param>
public sealed record FindingsEntry(IReadOnlyList<FindingRow> Rows, InputRow? Missing = null)
{
    private const int LeastTogether = 2;

    /// <summary>"Length of “Anchor light cable” is missing: 9 checks wait for it"; empty for a finding that stands alone.</summary>
    public string Title => Missing is null ? "" : $"{Missing.Label} of “{Missing.Title}” is missing: {Rows.Count} checks wait for it";

    /// <summary>The entries of rows: unknown findings that lack the same input stand together at the place of the first, those of the commonest input first.</summary>
    internal static IReadOnlyList<FindingsEntry> Of(IReadOnlyList<FindingRow> rows, Func<FindingRow, FindingInput, InputRow> describe)
    {
        Dictionary<FindingRow, FindingsEntry> together = [];
        while (rows.Where(row => !together.ContainsKey(row)).SelectMany(MissingOf).GroupBy(found => found.Input, found => found.Row)
            .MaxBy(group => group.Count()) is { } commonest && commonest.Count() >= LeastTogether)
        {
            FindingsEntry entry = new([.. commonest], describe(commonest.First(), commonest.Key));
            foreach (FindingRow row in commonest)
            {
                together[row] = entry;
            }
        }

        return [.. rows.Select(row => together.GetValueOrDefault(row) ?? new FindingsEntry([row])).Distinct(ReferenceEqualityComparer.Instance).Cast<FindingsEntry>()];
    }

    private static IEnumerable<(FindingInput Input, FindingRow Row)> MissingOf(FindingRow row) => row.Verdict != Verdict.Unknown ? []
        : row.Pair.Shown.Inputs.Where(input => input.IsMissing).Distinct().Select(input => (input, row));
}
