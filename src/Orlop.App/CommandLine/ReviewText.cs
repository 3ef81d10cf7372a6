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
                output.WriteLine(Plain($"  {Wording.Of(row.Verdict),-8}{row.Use,8}  {Said(row)}{condition}{was}"));
            }

            output.WriteLine();
        }

        output.WriteLine(view.Summary);
        output.WriteLine(FindingsView.Caution);
    }

    // Plain spaces, so that a search for "250 A" finds it.
    private static string Plain(string text) => text.Replace('\u00A0', ' ');

    // Most sentences begin with what they are about.
    private static string Said(FindingRow row) =>
        row.Headline.StartsWith(row.SubjectTitle, StringComparison.Ordinal) ? row.Headline : $"{row.SubjectTitle}: {row.Headline}";
}
