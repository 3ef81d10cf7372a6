using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>The finding where the greatest fault behind a device cannot be told.</summary>
internal static class WithoutFault
{
    /// <summary>Unknown for what the batteries leave out; where they leave out nothing, because the circuit has no working state.</summary>
    public static Finding Of(ElectricsView view, CheckDescription check, string subjectId, Condition condition, string title)
    {
        SolvedNetwork full = view.Solve(condition, ChargeCase.Full);
        ImmutableArray<FindingInput> missing = [.. view.Boat.All<BatteryBank>().SelectMany(battery => full.Built.Gaps.GetValueOrDefault(battery.Id, [])).Distinct()];
        return missing.IsEmpty
            ? FindingLines.NotSolved(check, subjectId, condition, title)
            : FindingLines.Unknown(check, subjectId, condition.Id, Sentence.Of($"{title}: the greatest fault behind it cannot be told"), missing);
    }
}
