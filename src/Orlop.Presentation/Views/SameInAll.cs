using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>Whether a finding is the same in every condition of the boat, and its sentence without the name of the one it happened to be written for.</summary>
internal static class SameInAll
{
    /// <summary>Judged in all of several conditions, with one verdict, one use and one sentence.</summary>
    public static bool Is(FindingGroup group, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        HashSet<string> judged = [.. group.All.Select(finding => finding.ConditionId).OfType<string>()];
        return judged.Count > 1 && judged.SetEquals(boat.All<Condition>().Select(condition => condition.Id))
            && group.All.Select(finding => (finding.Verdict, finding.UseFraction, Headline(finding, boat, units, culture))).Distinct().Count() == 1;
    }

    /// <summary>The sentence without its condition.</summary>
    public static string Headline(Finding finding, BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        string headline = SentenceText.Of(finding.Headline, units, culture);
        return finding.ConditionId is { } id && boat.Find<Condition>(id) is { } condition
            ? headline.Replace($" {char.ToLowerInvariant(condition.Title[0])}{condition.Title[1..]}", "", StringComparison.Ordinal)
            : headline;
    }
}
