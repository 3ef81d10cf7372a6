using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Not too much voltage is lost on the way to each load.</summary>
public sealed class VoltageDropCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "voltage-drop",
        "Voltage lost on the way",
        "Voltage at the source's terminals less voltage at the load, over the load's nominal voltage, against the practice's limit for a critical or a general circuit; the larger of normal and lowest charge.",
        [LimitIds.CriticalDropFraction, LimitIds.GeneralDropFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from load in view.Boat.All<ElectricLoad>()
        from condition in view.Conditions
        where LoadElements.IsOnIn(load, condition.Id)
        select Judge(view, load, condition);

    private Finding Judge(ElectricsView view, ElectricLoad load, Condition condition)
    {
        string limitId = load.Drop == DropClass.Critical ? LimitIds.CriticalDropFraction : LimitIds.GeneralDropFraction;
        if (view.Practice?.Find(limitId) is not { } limit)
        {
            return NoLimit(Description, load.Id, condition.Id, load.Title, limitId);
        }

        ImmutableArray<FindingInput> missing = MissingInputs.OfVoltage(view, condition, load.Id);
        if (missing.Length > 0)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: the voltage lost on the way {In(condition)} cannot be told"), missing);
        }

        Part? source = view.SourceOf(load, condition);
        (SolvedNetwork Solved, double SourceV, double LoadV)?[] both = [.. new[] { ChargeCase.Normal, ChargeCase.Lowest }.Select(charge => Ends(view.Solve(condition, charge), source, load))];
        (SolvedNetwork Solved, double SourceV, double LoadV)? worst = both.MaxBy(ends => ends is { } found ? found.SourceV - found.LoadV : double.PositiveInfinity);
        if (source is null || worst is not { } at)
        {
            return NotSolved(Description, load.Id, condition, load.Title);
        }

        double drop = Math.Max(0, at.SourceV - at.LoadV), nominal = load.NominalV.Value, fraction = drop / nominal;
        // What the shore or an inverter feeds has the same voltage at any charge.
        string charge = both[0]?.SourceV == both[1]?.SourceV ? "" : ReferenceEquals(at.Solved, both[0]?.Solved) ? " at normal charge" : " at the lowest charge";
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = load.Id,
            ConditionId = condition.Id,
            Verdict = Verdicts.Of(fraction, limit.Value),
            UseFraction = Verdicts.UseOf(fraction, limit.Value),
            Headline = Sentence.Of($"{load.Title} gets {V(at.LoadV)} {In(condition)}{charge}: {V(drop)} lost on the way, {Fraction(fraction)} of {V(nominal)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine($"At {source.Title}", "between its terminals", V(at.SourceV), $"{Solved(at.Solved, load.Id)}, conductors as warm as they get"),
                new WorkingLine($"At {load.Title}", "between its terminals", V(at.LoadV), $"{Solved(at.Solved, load.Id)}, conductors as warm as they get"),
                new WorkingLine("Lost on the way", at.LoadV > at.SourceV ? "nothing: another source holds the load higher" : Formula.Of("{0} − {1}", v => v[0] - v[1], at.SourceV, at.LoadV), V(drop), ""),
                .. LossOnWay.Lines(view, at.Solved, view.WayTo(load, condition), source, load),
                new WorkingLine("Share of nominal", Formula.Share(drop, nominal), Fraction(fraction), ""),
                Line(limit, load.Drop == DropClass.Critical ? "Allowed, critical circuit" : "Allowed, general circuit", "Fraction"),
                Use(fraction, limit.Value),
            ],
            Inputs = [new FindingInput(load.Id, "drop"), .. MissingInputs.AssumedOnWay(view, view.Solve(condition, ChargeCase.Normal), condition, load.Id)],
        };
    }

    private static (SolvedNetwork Solved, double SourceV, double LoadV)? Ends(SolvedNetwork solved, Part? source, ElectricLoad load) =>
        source is not null && Poles.Giving(source) is { } giving
            && solved.BetweenV(giving.Plus, giving.Minus) is { } sourceV && solved.LoadV(load.Id) is { } loadV
            ? (solved, sourceV, loadV)
            : null;
}
