using System.Globalization;
using System.Text;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Practices;
using Orlop.Review.Readings;
using Orlop.Review.Stability;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>docs/checks.md is written from the code: set ORLOP_WRITE_DOCS=1 and run this test to write it anew.</summary>
public sealed class CheckListTests
{
    [Fact]
    public void ChecksPage_IsWhatTheCodeSays()
    {
        string path = Path.Combine(ExampleBoats.Root(), "docs", "checks.md"), page = Page();
        if (Environment.GetEnvironmentVariable("ORLOP_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, page);
        }

        Assert.Equal(page, File.ReadAllText(path));
    }

    private static string Page()
    {
        StringBuilder page = new("# Checks and limits\n\nWritten from the code by `CheckListTests`; do not edit by hand. What a verdict is: [engines/review.md](engines/review.md).\n\n");
        page.Append("| check | title | what it compares | limits |\n|---|---|---|---|\n");
        foreach (CheckDescription check in new ReviewEngine([new ElectricsDiscipline(), new ReadingsDiscipline(), new StabilityDiscipline(), new EnergyDiscipline(), new WaysDiscipline()]).Checks)
        {
            page.Append(CultureInfo.InvariantCulture, $"| `{check.Id}` | {check.Title} | {check.About} | {string.Join(", ", check.LimitIds.Select(id => $"`{id}`"))} |\n");
        }

        page.Append("\n## Limits that only an owner sets\n\nNo practice gives them; where the owner sets none, nothing is held against it.\n\n");
        foreach (string id in LimitIds.OwnersOnly)
        {
            page.Append(CultureInfo.InvariantCulture, $"- `{id}`\n");
        }

        foreach (Practice practice in PracticeFiles.ById.Values.OrderBy(practice => practice.Id, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {practice.Title} (`{practice.Id}`)\n\n{practice.About}\n\n| limit | value | source | from memory |\n|---|---|---|---|\n");
            foreach (string id in LimitIds.All)
            {
                Limit limit = practice.Limits[id];
                page.Append(CultureInfo.InvariantCulture, $"| `{id}` | {limit.Value} | {limit.Source} | {Mark(limit.IsFromMemory)} |\n");
            }

            page.Append(CultureInfo.InvariantCulture, $"| ampacity table | {practice.Ampacities.Rows.Length} rows | {practice.Ampacities.Source} | {Mark(practice.IsAmpacityFromMemory)} |\n");
            page.Append(CultureInfo.InvariantCulture, $"| grouping table | {practice.Groupings.Rows.Length} rows | {practice.Groupings.Source} | {Mark(practice.IsGroupingFromMemory)} |\n");
        }

        return page.ToString();
    }

    private static string Mark(bool isFromMemory) => isFromMemory ? "yes" : "";
}
