using Orlop.Presentation.Views;
using Orlop.Presentation.Words;

namespace Orlop.App.CommandLine;

/// <summary>The findings of a review as a plain table.</summary>
internal static class ReviewText
{
    public static void Write(TextWriter output, FindingsView view)
    {
        foreach (FindingsGroup group in view.Groups)
        {
            output.WriteLine($"{group.Title}: {group.Rows.Count}");
            foreach (FindingRow row in group.Rows)
            {
                string condition = row.Condition is null ? "" : $" [{row.Condition}]";
                string was = row.Was is null ? "" : $" ({row.Was})";
                output.WriteLine($"  {Wording.Of(row.Verdict),-8}{row.Use,8}  {Said(row)}{condition}{was}");
            }

            output.WriteLine();
        }

        output.WriteLine(view.Summary);
        output.WriteLine(FindingsView.Caution);
    }

    // Most sentences begin with what they are about.
    private static string Said(FindingRow row) =>
        row.Headline.StartsWith(row.SubjectTitle, StringComparison.Ordinal) ? row.Headline : $"{row.SubjectTitle}: {row.Headline}";
}
