using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Strings;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Strings side by side share their current as their capacities go, and what flows between them with nothing on is no more than they may be charged with.</summary>
public sealed class StringShareCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "strings-share",
        "Strings share the current",
        "The share of each string in the current of strings side by side, by the solved network with its leads and joints, against its share of their capacity; what flows between them with nothing on against the charge they may take; a bank of strings that are not drawn is unknown.",
        [LimitIds.StringOverShareFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
    [
        .. from condition in view.Conditions
           from stringGroup in view.Strings.In(condition).Groups
           where stringGroup.Strings.Length > 1
           from finding in Judge(view, condition, stringGroup)
           select finding,
        .. from bank in view.Boat.All<BatteryBank>()
           where bank.ParallelCount > 1
           select Unknown(Description, bank.Id, null, Sentence.Of($"{bank.Title} holds {bank.ParallelCount!.Value} strings side by side that are not drawn with their leads: what each carries is not known"), [new FindingInput(bank.Id, "parallelCount")]),
    ];

    private IEnumerable<Finding> Judge(ElectricsView view, Condition condition, StringGroup group)
    {
        SolvedNetwork solved = view.Solve(condition, ChargeCase.Normal);
        double?[] capacities = [.. group.Strings.Select(each => StringWords.CapacityAh(view.Boat, each))];
        ImmutableArray<StringShare>? shares = view.Strings.SharesOf(group, solved);
        for (int k = 0; k < group.Strings.Length; k++)
        {
            BatteryString each = group.Strings[k];
            string subject = each.Members[0].Id, title = StringWords.Title(view.Boat, each);
            if (shares is not { } all)
            {
                yield return NotSolved(Description, subject, condition, title);
            }
            else if (all[k].ShareFraction is not { } share)
            {
                yield return Unknown(Description, subject, condition.Id, Sentence.Of($"{title}: nothing is asked of the strings {In(condition)}, so how they share cannot be told"), []) with
                {
                    Working = [new WorkingLine("Asked of all strings", "nothing, with what is on", null, Solved(solved, subject))],
                };
            }
            else if (view.Practice?.Find(LimitIds.StringOverShareFraction) is not { } limit)
            {
                yield return NoLimit(Description, subject, condition.Id, title, LimitIds.StringOverShareFraction);
            }
            else
            {
                ImmutableArray<FindingInput> missing =
                [
                    .. group.Strings.SelectMany(other => StringWords.Batteries(view.Boat, other)).Where(battery => battery.CapacityAh is null).Select(battery => new FindingInput(battery.Id, "capacityAh", IsMissing: true)),
                    .. MissingInputs.OfCurrent(view, solved, condition, subject),
                ];
                yield return missing.Length > 0
                    ? Unknown(Description, subject, condition.Id, Sentence.Of($"{title}: its share of the current cannot be told"), missing)
                    : Told(view, solved, condition, group, k, all[k], share, capacities[k]!.Value / capacities.Sum()!.Value, limit);
            }
        }
    }

    private Finding Told(ElectricsView view, SolvedNetwork solved, Condition condition, StringGroup group, int k, StringShare told, double share, double fair, Limit limit)
    {
        BatteryString each = group.Strings[k];
        string title = StringWords.Title(view.Boat, each);
        double over = Math.Max(0, (share / fair) - 1), into = Math.Max(0, -told.CirculatingA);
        double? mostChargeA = StringWords.Batteries(view.Boat, each).Select(battery => battery.MostChargeA?.Value).Min();
        bool isFlooded = into > mostChargeA;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = each.Members[0].Id,
            ConditionId = condition.Id,
            Verdict = isFlooded ? Verdict.Fails : Verdicts.Of(over, limit.Value),
            UseFraction = isFlooded ? Verdicts.UseOf(into, mostChargeA!.Value) : Verdicts.UseOf(over, limit.Value),
            Headline = isFlooded
                ? Sentence.Of($"{title}: {A(into)} flow into it from the strings beside it with nothing on; it may be charged with {A(mostChargeA!.Value)}")
                : Sentence.Of($"{title} {(told.CurrentA < 0 ? "takes" : "gives")} {A(Math.Abs(told.CurrentA))} {In(condition)}, {Fraction(share)} of what is asked of {group.Strings.Length} strings; its fair share is {Fraction(fair)}{Remedy(over > limit.Value)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Current", told.CurrentA < 0 ? "into it" : "out of it", A(Math.Abs(told.CurrentA)), Solved(solved, each.Members[0].Id)),
                new WorkingLine("With nothing on and no charger", told.CirculatingA < 0 ? "flows into it" : "flows out of it", A(Math.Abs(told.CirculatingA)), "the same circuit, what flows between strings of different voltage"),
                new WorkingLine("Share", "its current less that, over the sum of all strings", Fraction(share), ""),
                new WorkingLine("Fair share", "its capacity over the sum of all strings", Fraction(fair), "the nameplates, less what is told as lost"),
                new WorkingLine("Over its fair share", Formula.Of("{0} ÷ {1} − 1", v => Math.Max(0, (v[0] / v[1]) - 1), share, fair), Fraction(over), ""),
                .. isFlooded
                    ? new[] { new WorkingLine("May be charged with", "as typed, the least of its batteries", A(mostChargeA!.Value), ""), Use(into, mostChargeA.Value) }
                    : [Line(limit, "May be over by", "Fraction"), Use(over, limit.Value)],
            ],
            Inputs =
            [
                .. group.Strings.SelectMany(other => other.Members).SelectMany(member => new[] { new FindingInput(member.Id, "internalResistanceOhm", IsGuess: IsGuessed(view, member.Id)), new FindingInput(member.Id, "capacityAh") }),
            ],
            Caution = Cautions.Strings,
        };
    }

    private static string Remedy(bool isOver) => isOver ? ". Leads of one length and size from every string to one bar, or plus and minus taken off at opposite ends, make it even" : "";

    private static bool IsGuessed(ElectricsView view, string id) =>
        view.Boat.Find<BatteryBank>(id)?.InternalResistanceOhm?.Known is Boat.Values.Knowledge.Guessed or Boat.Values.Knowledge.Estimated;
}
