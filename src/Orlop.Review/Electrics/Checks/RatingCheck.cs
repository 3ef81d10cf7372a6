using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Switches, plugs, bars and batteries carry no more than they may.</summary>
public sealed class RatingCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "part-carries-current",
        "Switch, plug, bar or battery carries its current",
        "The running current through a switch, change-over, plug contact or bar, or out of a battery, against its rating.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from part in view.Boat.All<Part>()
        where part is IsolatorSwitch or Changeover or PlugAndSocket or Busbar or BatteryBank
        from condition in view.Conditions
        let finding = Judge(view, part, condition)
        where finding is not null
        select finding;

    private Finding? Judge(ElectricsView view, Part part, Condition condition)
    {
        string[] elements = [.. ElementsOf(view, part, condition).Where(id => view.Solve(condition, ChargeCase.Normal).GroupOf(id) is not null)];
        if (elements.Length == 0)
        {
            return null;
        }

        if (Greatest(view, part, condition) is not (var solved, var current))
        {
            return NotSolved(Description, part.Id, condition, part.Title);
        }

        (Quantity? rated, string field) = part switch
        {
            IsolatorSwitch device => (device.RatedA, "ratedA"),
            Changeover device => (device.RatedA, "ratedA"),
            PlugAndSocket device => (device.RatedA, "ratedA"),
            Busbar bar => (bar.RatedA, "ratedA"),
            _ => (((BatteryBank)part).MostDischargeA, "mostDischargeA"),
        };
        if (rated is null)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title} carries {A(current)} {In(condition)}; what it may carry is not known"), [new FindingInput(part.Id, field, IsMissing: true)]);
        }

        Verdict verdict = Verdicts.Of(current, rated.Value);
        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, elements);
        if (missing.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title} carries at least {A(current)} {In(condition)}; what else runs through it is not known"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = part.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(current, rated.Value),
            Headline = Sentence.Of($"{part.Title} carries {A(current)} of {A(rated.Value)} {In(condition)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Greatest running current", part is Busbar ? "half the sum of all currents at the bar" : "the larger of normal and lowest charge", A(current), Solved(solved, elements[0])),
                new WorkingLine("Rating", "", A(rated.Value), rated.Method ?? "as typed"),
                Use(current, rated.Value),
            ],
            Inputs = [new FindingInput(part.Id, field, IsGuess: rated.Known is Knowledge.Guessed or Knowledge.Estimated)],
        };
    }

    private static IEnumerable<string> ElementsOf(ElectricsView view, Part part, Condition condition) => part switch
    {
        BatteryBank => [part.Id],
        Busbar => view.Wiring.At(part.At(TerminalNames.Bar).ToString()).Where(edge => edge.IsClosedIn(condition.Id)).Select(edge => edge.Id),
        _ => Wiring.EdgesOf(part).Where(edge => edge.IsClosedIn(condition.Id)).Select(edge => edge.Id),
    };

    private static (SolvedNetwork Solved, double CurrentA)? Greatest(ElectricsView view, Part part, Condition condition)
    {
        var both = new[] { ChargeCase.Normal, ChargeCase.Lowest }.Select(charge => view.Solve(condition, charge))
            .Select(solved => (Solved: solved, CurrentA: ThroughA(view, solved, part)))
            .ToArray();
        return both.All(each => each.CurrentA is not null) ? both.Select(each => (each.Solved, each.CurrentA!.Value)).MaxBy(each => each.Value) : null;
    }

    private static double? ThroughA(ElectricsView view, SolvedNetwork solved, Part part)
    {
        if (part is BatteryBank)
        {
            return solved.SourceA(part.Id) is { } current ? Math.Max(0, current) : null;
        }

        if (part is Busbar bar)
        {
            string node = bar.At(TerminalNames.Bar).ToString();
            double?[] currents = [.. view.Wiring.At(node).Where(edge => edge.IsClosedIn(solved.Case.ConditionId)).Select(edge => solved.BranchA(edge.Id))];
            return currents.Length > 0 && currents.All(current => current is not null) ? currents.Sum(current => Math.Abs(current!.Value)) / 2 : null;
        }

        return Wiring.EdgesOf(part).Select(edge => solved.BranchA(edge.Id)).Where(current => current is not null).Select(current => (double?)Math.Abs(current!.Value)).Max();
    }
}
