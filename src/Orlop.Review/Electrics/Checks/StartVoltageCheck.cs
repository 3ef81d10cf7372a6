using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
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
        "While a load starts with the battery at its lowest: the voltage at that load, at every other load that is on, and at the input of every converter and inverter (its cut-off), against the least each works at. Its starting current is held first; what that shows too low is followed in time, a DC load as a motor whose back-EMF rises: it fails where something is below its least for longer than it bears.",
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

        Part[] sharing = [.. StartReach.Of(view, group, condition, load)];
        Victim[] victims = Victims(view, sharing, part => solved.LoadV(part.Id));
        if (victims.Length == 0)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: the least voltage of nothing on this circuit is known"), [new FindingInput(load.Id, "leastV", IsMissing: true)]);
        }

        FindingInput[] untold =
        [
            .. sharing.Where(part => LeastVoltageCheck.LeastOf(view, part) is null).Select(part => new FindingInput(part.Id, LeastVoltageCheck.FieldOf(part), IsMissing: true)),
            .. sharing.SelectMany(part => MissingInputs.OfVoltage(view, solved, condition, part.Id)),
        ];
        Verdict verdict = victims[0].Verdict;
        if (untold.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: whether something drops out while it starts cannot be told"), [.. untold.Distinct()]);
        }

        // A constant current is more than a motor draws at less than its nominal voltage: what it shows too low is followed in time.
        StartInTime? inTime = verdict == Verdict.Fails && StartInTime.Of(view, load, condition, ChargeCase.Lowest) is { Start.Status: SolveStatus.Converged } found ? found : null;
        bool isHeldInTime = untold.Length == 0 && inTime?.Takers.All(taker => taker.DropsOut == false) == true;
        Victim[] told = isHeldInTime ? Victims(view, sharing, part => inTime!.Takers.First(taker => taker.Part.Id == part.Id).Voltage?.LowestV) : victims;
        Finding finding = Told(view, solved, load, condition, told, isHeldInTime ? Verdict.Tight : verdict, isHeldInTime ? _ => SolvedInTime : part => Solved(solved, part.Id));
        return inTime is null ? finding : finding with { WorkingWhenAsked = () => [.. finding.Working, .. InTime(inTime, isHeldInTime ? victims[0] : null)] };
    }

    private const string SolvedInTime = "start solved in time";

    private sealed record Victim(Part Part, double LeastV, double NominalV, WorkingLine Line, double Volts)
    {
        public (double AskedV, double AllowedV) Below { get; } = LeastVoltageCheck.BelowNominal(Volts, LeastV, NominalV);

        public Verdict Verdict => Verdicts.Of(Below.AskedV, Below.AllowedV);

        public double? Use => Verdicts.UseOf(Below.AskedV, Below.AllowedV);
    }

    // The worst off first.
    private static Victim[] Victims(ElectricsView view, IEnumerable<Part> sharing, Func<Part, double?> volts) =>
    [
        .. sharing.Select(part => LeastVoltageCheck.LeastOf(view, part) is { } least && volts(part) is { } at ? new Victim(part, least.LeastV, least.NominalV, least.Line, at) : null)
            .OfType<Victim>()
            .OrderByDescending(victim => Verdicts.Weight(victim.Verdict))
            .ThenByDescending(victim => victim.Use ?? double.PositiveInfinity)
            .ThenBy(victim => victim.Part.Id, StringComparer.Ordinal),
    ];

    private Finding Told(ElectricsView view, SolvedNetwork solved, ElectricLoad load, Condition condition, Victim[] victims, Verdict verdict, Func<Part, string> source)
    {
        Victim worst = victims[0];
        double? use = verdict != Verdict.Fails && worst.Use > 1 ? null : worst.Use;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = load.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = use,
            Headline = worst.Part.Id == load.Id
                ? Sentence.Of($"{load.Title} gets {V(worst.Volts)} while it starts at the lowest charge; it works down to {V(worst.LeastV)}")
                : Sentence.Of($"{load.Title}: while it starts at the lowest charge, {worst.Part.Title} gets {V(worst.Volts)}; that works down to {V(worst.LeastV)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Starting current", $"{load.Title}, taken as a constant current", A(LoadElements.StartingA(load) ?? 0), ""),
                new WorkingLine($"At {worst.Part.Title}", "between its terminals; the worst off of all that is on", V(worst.Volts), source(worst.Part)),
                worst.Line,
                new WorkingLine("Use", LeastVoltageCheck.UseText(worst.NominalV, worst.Volts, worst.LeastV), use is { } share ? Fraction(share) : null, "how far below nominal, over how far it may be"),
                .. victims.Skip(1).Take(4).Select(at => new WorkingLine($"At {at.Part.Title}", $"works down to {N(at.LeastV)} V", V(at.Volts), source(at.Part))),
            ],
            Inputs = [new FindingInput(load.Id, "startRatio"), new FindingInput(worst.Part.Id, LeastVoltageCheck.FieldOf(worst.Part)), .. MissingInputs.AssumedOnWay(view, solved, condition, load.Id)],
        };
    }

    // What drops out, and for how long; where nothing does, what a constant current would have told.
    private static IEnumerable<WorkingLine> InTime(StartInTime start, Victim? bound)
    {
        yield return new WorkingLine("In time", $"taken as {start.Taken}", null, "");
        if (bound is not null)
        {
            yield return new WorkingLine($"At {bound.Part.Title}", "by a constant current, which is more than it draws at that voltage", V(bound.Volts), "circuit solved");
        }

        foreach (StartTaker taker in start.Takers.Where(taker => taker.Voltage is { BelowS: > 0 }))
        {
            DropOut at = taker.Voltage!;
            string drops = taker.DropsOut switch { true => "drops out", false => "bears that", _ => "may drop out" };
            yield return new WorkingLine($"Lowest at {taker.Part.Title}", $"{N(at.LowestAtS)} s after the beginning", V(at.LowestV), SolvedInTime);
            yield return new WorkingLine($"{taker.Part.Title} {drops}", at.IsBelowAtEnd ? $"below {N(at.LeastV)} V to the end of what was looked at" : $"below {N(at.LeastV)} V", Seconds(at.BelowS), SolvedInTime);
        }
    }

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
