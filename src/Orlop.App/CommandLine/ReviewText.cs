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
            foreach (FindingsEntry entry in group.Entries)
            {
                if (entry.Missing is not null)
                {
                    output.WriteLine(Plain($"  {Wording.Of(entry.Rows[0].Verdict),-8}{"",8}  {entry.Title}:"));
                }

                foreach (FindingRow row in entry.Rows)
                {
                    output.WriteLine(Plain(entry.Missing is null ? $"  {Wording.Of(row.Verdict),-8}{row.Use,8}  {Line(row)}" : $"{"",22}{Line(row)}"));
                }
            }

            output.WriteLine();
        }

        if (view.Untold.Count >= UntoldInput.LeastListed)
        {
            output.WriteLine($"What is still to be told: {view.Untold.Count}");
            foreach (UntoldInput one in view.Untold)
            {
                output.WriteLine(Plain($"  {one.Text}: {one.Waiting}"));
            }

            output.WriteLine();
        }

        output.WriteLine(view.Summary);
        output.WriteLine(view.Caution);
    }

    private static string Line(FindingRow row)
    {
        string condition = row.Condition is null ? "" : $" [{row.Condition}]";
        string was = row.Was is null ? "" : $" ({row.Was})";
        return $"{Said(row)}{condition}{was}";
    }

    // Plain spaces, so that a search for "250 A" finds it.
    private static string Plain(string text) => text.Replace('\u00A0', ' ');

    // Most sentences begin with what they are about.
    private static string Said(FindingRow row) =>
        row.Headline.StartsWith(row.SubjectTitle, StringComparison.Ordinal) ? row.Headline : $"{row.SubjectTitle}: {row.Headline}";
}
