using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Everything that is on can be fed at once.</summary>
public sealed class DeliveryCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "load-can-be-served",
        "The network can deliver what is asked",
        "An operating point exists with everything on that the condition has, at normal and at lowest charge. Where none exists: which load, the most it could get, and what stands in the way. Shorts, source loops and circles of power are named.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
    [
        .. from condition in view.Conditions
           from charge in new[] { ChargeCase.Normal, ChargeCase.Lowest }
           let solved = view.Solve(condition, charge)
           from finding in solved.Groups.SelectMany(part => Judge(view, condition, charge, part)).Concat(solved.Built.Unfed.Select(id => Unfed(view, condition, id)))
           select finding,
        .. from condition in view.Conditions
           from load in view.Boat.All<ElectricLoad>()
           where LoadElements.IsOnIn(load, condition.Id) && LoadElements.RunningA(load) is null
           select UnknownDraw(view, condition, load),
    ];

    private IEnumerable<Finding> Judge(ElectricsView view, Condition condition, ChargeCase charge, SolvedGroup group) => group.Result.Status switch
    {
        SolveStatus.Converged => group.Network.Loads.Select(load => Served(view, condition, charge, load)),
        SolveStatus.FaultyNetwork => group.Result.Faults.Select(fault => Faulty(condition, fault)),
        SolveStatus.NoOperatingPoint when group.Result.Shortfall is { } shortfall => [MissingFor(view, condition, charge, ElementIds.ThingOf(shortfall.LoadId)) ?? NotServed(view, condition, charge, shortfall)],
        _ => group.Network.Loads.Select(load => NotSolved(Description, load.Id, condition, Title(view, load.Id))),
    };

    private Finding Served(ElectricsView view, Condition condition, ChargeCase charge, Load load)
    {
        string id = ElementIds.ThingOf(load.Id);
        return MissingFor(view, condition, charge, id) ?? new Finding
        {
            CheckId = Description.Id,
            SubjectId = id,
            ConditionId = condition.Id,
            Verdict = Verdict.Holds,
            Headline = Sentence.Of($"{Title(view, load.Id)} can be fed {In(condition)}"),
            Working = [new WorkingLine("Operating point", $"found with everything on at once, {(charge == ChargeCase.Lowest ? "at lowest charge" : "at normal charge")}", null, "circuit solved")],
        };
    }

    // What rests on a value that stands in for a missing one is neither fed nor short.
    private Finding? MissingFor(ElectricsView view, Condition condition, ChargeCase charge, string id) =>
        MissingInputs.OfVoltage(view, view.Solve(condition, charge), condition, id) is { Length: > 0 } missing
            ? Unknown(Description, id, condition.Id, Sentence.Of($"{Title(view, id)}: whether it can be fed {In(condition)} cannot be told"), missing)
            : null;

    private Finding NotServed(ElectricsView view, Condition condition, ChargeCase charge, Shortfall shortfall) => new()
    {
        CheckId = Description.Id,
        SubjectId = ElementIds.ThingOf(shortfall.LoadId),
        ConditionId = condition.Id,
        Verdict = Verdict.Fails,
        UseFraction = Verdicts.UseOf(shortfall.AskedW, shortfall.MostW),
        Headline = Sentence.Of($"{Title(view, shortfall.LoadId)} asks {new Amount(shortfall.AskedW, "W")} {In(condition)}; the most it could get is {new Amount(shortfall.MostW, "W")}"),
        WorkingWhenAsked = () =>
        [
            new WorkingLine("Asked", charge == ChargeCase.Lowest ? "at lowest charge" : "at normal charge", new Amount(shortfall.AskedW, "W"), "circuit solved"),
            new WorkingLine("Most it could get", "with every other load as asked", new Amount(shortfall.MostW, "W"), "circuit solved; the most a source gives through a resistance, E² ÷ 4R"),
            Use(shortfall.AskedW, shortfall.MostW),
            new WorkingLine("Voltage there", "", V(shortfall.VoltageAtMostV), "circuit solved"),
            .. shortfall.LimitingElements.Select(element => new WorkingLine("In the way", $"{element.Id}, share of the loss", Fraction(element.LossFraction), "circuit solved")),
        ],
        Inputs = [.. shortfall.LimitingElements.Select(element => new FindingInput(ElementIds.ThingOf(element.Id), "areaMm2"))],
    };

    private Finding Faulty(Condition condition, NetworkFault fault) => new()
    {
        CheckId = Description.Id,
        SubjectId = fault.Ids.Length == 0 ? "network" : ElementIds.ThingOf(fault.Ids[0]),
        ConditionId = condition.Id,
        Verdict = fault.Kind == NetworkFaultKind.BadValue ? Verdict.Unknown : Verdict.Fails,
        Headline = Sentence.Of($"{fault.Message}"),
        Working = [new WorkingLine("Found before solving", string.Join(", ", fault.Ids), null, "network check")],
    };

    private Finding Unfed(ElectricsView view, Condition condition, string id) => new()
    {
        CheckId = Description.Id,
        SubjectId = ElementIds.ThingOf(id),
        ConditionId = condition.Id,
        Verdict = Verdict.Fails,
        Headline = Sentence.Of($"{Title(view, id)} is on {In(condition)}, but no closed path joins it to a source"),
        Working = [new WorkingLine("Closed path", "none, on one or both of its terminals, with the switches as the condition has them", null, "network check")],
        Inputs = [new FindingInput(ElementIds.ThingOf(id), "uses")],
    };

    private Finding UnknownDraw(ElectricsView view, Condition condition, ElectricLoad load) => Unknown(
        Description, load.Id, condition.Id, Sentence.Of($"{load.Title}: what it draws is not known, so whether it can be fed {In(condition)} cannot be told"),
        view.Solve(condition, ChargeCase.Normal).Built.Gaps[load.Id]);

    private static string Title(ElectricsView view, string elementId)
    {
        string id = ElementIds.ThingOf(elementId);
        return view.Boat.Find(id)?.Title ?? id;
    }
}
