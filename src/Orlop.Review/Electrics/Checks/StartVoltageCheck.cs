using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Nothing drops out while a load starts at the lowest charge.</summary>
public sealed class StartVoltageCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "voltage-while-starting",
        "Nothing drops out while a load starts",
        "While a load starts with the battery at its lowest: the voltage at that load, at every other load that is on, and at the input of every converter and inverter (its cut-off), against the least each works at.",
        [Practices.LimitIds.LeastVoltageFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from load in view.Boat.All<ElectricLoad>()
        where Starts.HasOne(load)
        from condition in view.Conditions
        where LoadElements.IsOnIn(load, condition.Id)
        select Judge(view, load, condition);

    private Finding Judge(ElectricsView view, ElectricLoad load, Condition condition)
    {
        if (Starts.IsRatioMissing(load))
        {
            return Starts.RatioUnknown(Description, load.Id, condition.Id, load);
        }

        SolvedNetwork solved = view.Solve(new NetworkCase(condition.Id, ChargeCase.Lowest, load.Id));
        ImmutableArray<FindingInput> missing = MissingInputs.OfVoltage(view, solved, condition, load.Id);
        if (missing.Length > 0)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: voltages while it starts cannot be told"), missing);
        }

        if (solved.GroupOf(load.Id) is not { } group)
        {
            return NotSolved(Description, load.Id, condition, load.Title);
        }

        if (group.Result.Shortfall is { } shortfall)
        {
            return CannotStart(load, condition, shortfall);
        }

        if (group.Result.Point is null)
        {
            return NotSolved(Description, load.Id, condition, load.Title);
        }

        Part[] sharing = [.. Sharing(view, group, condition, load)];
        var victims = sharing
            .Select(part => (Part: part, Least: LeastVoltageCheck.LeastOf(view, part), Volts: solved.LoadV(part.Id)))
            .Where(at => at.Least is not null && at.Volts is not null)
            .Select(at => (at.Part, Least: at.Least!.Value, Volts: at.Volts!.Value, Below: LeastVoltageCheck.BelowNominal(at.Volts!.Value, at.Least!.Value.LeastV, at.Least!.Value.NominalV)))
            .OrderByDescending(at => Verdicts.Weight(Verdicts.Of(at.Below.AskedV, at.Below.AllowedV)))
            .ThenByDescending(at => Verdicts.UseOf(at.Below.AskedV, at.Below.AllowedV) ?? double.PositiveInfinity)
            .ThenBy(at => at.Part.Id, StringComparer.Ordinal)
            .ToList();
        if (victims.Count == 0)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: the least voltage of nothing on this circuit is known"), [new FindingInput(load.Id, "leastV", IsMissing: true)]);
        }

        var worst = victims[0];
        Verdict verdict = Verdicts.Of(worst.Below.AskedV, worst.Below.AllowedV);
        double? use = Verdicts.UseOf(worst.Below.AskedV, worst.Below.AllowedV);
        FindingInput[] untold =
        [
            .. sharing.Where(part => LeastVoltageCheck.LeastOf(view, part) is null).Select(part => new FindingInput(part.Id, LeastVoltageCheck.FieldOf(part), IsMissing: true)),
            .. sharing.SelectMany(part => MissingInputs.OfVoltage(view, solved, condition, part.Id)),
        ];
        if (untold.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: whether something drops out while it starts cannot be told"), [.. untold.Distinct()]);
        }

        bool isItself = worst.Part.Id == load.Id;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = load.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = use,
            Headline = isItself
                ? Sentence.Of($"{load.Title} gets {V(worst.Volts)} while it starts at the lowest charge; it works down to {V(worst.Least.LeastV)}")
                : Sentence.Of($"{load.Title}: while it starts at the lowest charge, {worst.Part.Title} gets {V(worst.Volts)}; that works down to {V(worst.Least.LeastV)}"),
            Working =
            [
                new WorkingLine("Starting current", $"{load.Title}, taken as a constant current", A(LoadElements.StartingA(load) ?? 0), ""),
                new WorkingLine($"At {worst.Part.Title}", "between its terminals; the worst off of all that is on", V(worst.Volts), Solved(solved, worst.Part.Id)),
                worst.Least.Line,
                new WorkingLine("Use", LeastVoltageCheck.UseText(worst.Least.NominalV, worst.Volts, worst.Least.LeastV), use is { } share ? Fraction(share) : null, "how far below nominal, over how far it may be"),
                .. victims.Skip(1).Take(4).Select(at => new WorkingLine($"At {at.Part.Title}", $"works down to {N(at.Least.LeastV)} V", V(at.Volts), Solved(solved, at.Part.Id))),
            ],
            Inputs = [new FindingInput(load.Id, "startRatio"), new FindingInput(worst.Part.Id, LeastVoltageCheck.FieldOf(worst.Part)), .. MissingInputs.AssumedOnWay(view, solved, condition, load.Id)],
        };
    }

    // What the start can pull down: all that shares a stretch of its way or a source with it.
    private static IEnumerable<Part> Sharing(ElectricsView view, SolvedGroup group, Condition condition, ElectricLoad load)
    {
        SupplyPaths paths = view.PathsIn(condition);
        HashSet<string> way = Reached(paths, load.Id);
        return TakersIn(view, group).Where(part => part is ElectricLoad or DcConverter or Inverter && (part.Id == load.Id || paths.ElementsTo(part.Id).Overlaps(way)));
    }

    // The way to a load, on through the converters that feed it.
    private static HashSet<string> Reached(SupplyPaths paths, string takerId)
    {
        HashSet<string> way = [];
        Queue<string> queue = new([takerId]);
        while (queue.TryDequeue(out string? id))
        {
            foreach (string element in paths.ElementsTo(id).Where(way.Add))
            {
                queue.Enqueue(element);
            }
        }

        return way;
    }

    private static IEnumerable<Part> TakersIn(ElectricsView view, SolvedGroup group) => group.Network.Loads.Select(item => item.Id)
        .Concat(group.Network.Converters.Select(item => item.Id))
        .Select(id => view.Boat.Find<Part>(ElementIds.ThingOf(id)))
        .OfType<Part>();

    private Finding CannotStart(ElectricLoad load, Condition condition, Shortfall shortfall) => new()
    {
        CheckId = Description.Id,
        SubjectId = load.Id,
        ConditionId = condition.Id,
        Verdict = Verdict.Fails,
        Headline = Sentence.Of($"{load.Title} cannot start at the lowest charge: the circuit cannot deliver what is asked then"),
        Working = [.. shortfall.LimitingElements.Select(element => new WorkingLine("In the way", $"{element.Id}, share of the loss", Fraction(element.LossFraction), "circuit solved"))],
        Inputs = [new FindingInput(load.Id, "startRatio")],
    };
}
