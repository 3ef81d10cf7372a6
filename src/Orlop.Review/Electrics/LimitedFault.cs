using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics;

/// <summary>
/// A fault at the far end of a conductor behind a DC converter. Nothing of a converter tells what it gives into a short: up to its limit, less, or nothing. A conductor that carries the limit for ever is hurt
/// by none of these, whether or not its device opens; of any other it cannot be told that the device opens in time.
/// </summary>
internal static class LimitedFault
{
    /// <summary>Holds or unknown; never a failure, for what the converter gives may hurt nothing.</summary>
    public static Finding Judge(CheckDescription check, ElectricsView view, LimitedEnd end, Condition condition)
    {
        string name = $"{end.Cable.Title}, {end.Edge.Core!.Id}", sources = string.Join(" and ", end.Sources.Select(source => source.Title));
        FindingInput[] limits = [.. end.Sources.Select(source => new FindingInput(source.Id, FieldOf(source)))];
        if (!(end.MostA > 0 && double.IsFinite(end.MostA)))
        {
            return Unknown(check, end.Edge.Id, condition.Id, Sentence.Of($"{name}: what {sources} together give into a fault at its far end, and whether its device opens, is not worked out"), [.. limits]);
        }

        AmpacityOfCable where = view.AmpacityOf(end.Cable, condition);
        if (where.Missing.Length > 0 || where.Result is not { IsTooHot: false, CurrentA: { } ampacity } result || !double.IsFinite(ampacity))
        {
            return Unknown(check, end.Edge.Id, condition.Id, Sentence.Of($"{name}: how long it bears a fault cannot be told"), where.Missing is { Length: > 0 } missing ? missing : [new FindingInput(end.Cable.Id, "areaMm2")]);
        }

        Protection device = end.Before[^1];
        ImmutableArray<WorkingLine> working =
        [
            .. end.Sources.Select(source => new WorkingLine($"{source.Title} gives at most", "its limit; a short may draw less", A(ProtectionReach.OwnLimitA(source)), "as typed")),
            .. end.Sources.Length > 1 ? new[] { new WorkingLine("Together at most", "all of it in the fault", A(end.MostA), "the wiring as drawn") } : [],
            .. result.Working.Select(step => Line(step, ConductorAmpacityCheck.IsFromMemory(view.Practice!, step.Symbol))),
        ];
        return end.MostA <= ampacity
            ? new Finding
            {
                CheckId = check.Id,
                SubjectId = end.Edge.Id,
                ConditionId = condition.Id,
                Verdict = Verdict.Holds,
                Headline = Sentence.Of($"{name}: a fault at its far end draws at most {A(end.MostA)} from {sources}, which it carries for ever; {device.Title} need not open on it"),
                WorkingWhenAsked = () => working,
                Inputs = [.. limits, new FindingInput(end.Cable.Id, "areaMm2")],
            }
            : Unknown(check, end.Edge.Id, condition.Id,
                Sentence.Of($"{name}: {sources} may give up to {A(end.MostA)} into a fault at its far end, and it carries {A(ampacity)} for ever; what a short draws is not told, so whether {device.Title} opens in time cannot be told"),
                [.. limits, new FindingInput(end.Cable.Id, "areaMm2")]) with
            { WorkingWhenAsked = () => working };
    }

    private static string FieldOf(Part source) => source switch
    {
        Charger => "limitA",
        DcConverter => "ratedA",
        _ => "id",
    };
}
