using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>An input that unknown findings wait for.</summary>
/// <param name="Input">The thing and its field.</param>
/// <param name="IsThere">The thing is in the boat, so that the field can be opened.</param>
/// <param name="AloneCount">Findings that wait for nothing else.</param>
/// <param name="WaitingCount">Findings that wait for it, alone or with others.</param>
public sealed record UntoldInput(InputRow Input, bool IsThere, int AloneCount, int WaitingCount)
{
    /// <summary>From how many on they are listed: one alone stands with the findings that wait for it.</summary>
    public const int LeastListed = 2;

    /// <summary>"House bank: type in the internal resistance".</summary>
    public string Text => Input.Ask.Length == 0 ? Input.Title : $"{Input.Title}: {char.ToLowerInvariant(Input.Ask[0])}{Input.Ask[1..]}";

    /// <summary>"3 checks wait for it alone, 9 in all".</summary>
    public string Waiting => AloneCount == WaitingCount ? $"{Checks(AloneCount)} for it alone"
        : AloneCount == 0 ? $"{Checks(WaitingCount)} for it and for more"
        : $"{Checks(AloneCount)} for it alone, {WaitingCount} in all";

    private static string Checks(int count) => count == 1 ? "1 check waits" : $"{count} checks wait";

    /// <summary>What unknown findings of the boat as shown wait for, each once: what settles most by itself first, then what most wait for.</summary>
    internal static IReadOnlyList<UntoldInput> Of(IEnumerable<FindingRow> rows, Func<FindingRow, FindingInput, InputRow> describe, Func<string, bool> isThere)
    {
        Dictionary<(string Thing, string Field, string Label), (InputRow Input, int Alone, int All)> found = [];
        foreach (FindingRow row in rows.Where(row => row.Verdict == Verdict.Unknown && row.Pair.After is not null))
        {
            InputRow[] missing =
            [
                .. row.Pair.After!.All.Where(finding => finding.Verdict == Verdict.Unknown).SelectMany(finding => finding.Inputs).Where(input => input.IsMissing)
                    .Select(input => describe(row, input)).DistinctBy(Key),
            ];
            foreach (InputRow input in missing)
            {
                (InputRow first, int alone, int all) = found.GetValueOrDefault(Key(input), (input, 0, 0));
                found[Key(input)] = (first, alone + (missing.Length == 1 ? 1 : 0), all + 1);
            }
        }

        return
        [
            .. found.Values.Select(one => new UntoldInput(one.Input, isThere(ElementIds.ThingOf(one.Input.ThingId)), one.Alone, one.All))
                .OrderByDescending(one => one.AloneCount).ThenByDescending(one => one.WaitingCount).ThenBy(one => one.Text, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static (string Thing, string Field, string Label) Key(InputRow input) => (input.ThingId, input.Field, input.Label);
}
