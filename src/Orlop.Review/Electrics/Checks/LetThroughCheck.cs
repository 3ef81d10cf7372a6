using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;
using static Orlop.Review.Electrics.LetThroughLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>What a device lets through on the hardest fault spares the conductors behind it.</summary>
public sealed class LetThroughCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "let-through",
        "A hard fault spares the conductor",
        "The energy that a device lets through (operating I²t) on the greatest fault at the near end of the conductors behind it, against what the thinnest of them bears (k² S²). From its sheet where that was typed; of a fuse otherwise no more than three times that of its last gate, of a breaker the greatest fault for as long as it may take. Unknown where it holds only while a battery's resistance is no less than put down, as in the check of breaking capacity.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from condition in view.Conditions
        from ends in view.FarEndsIn(condition).All.Where(end => !end.Before.IsEmpty && !CrankingWay.IsOnlyThat(view, end.Edge.Id, condition)).GroupBy(end => end.Before[^1])
        select Judge(view, ends.Key, [.. ends], condition);

    private Finding Judge(ElectricsView view, Protection device, FarEnd[] ends, Condition condition)
    {
        (FarEnd End, double BearsA2S)[] bears = [.. ends.Select(end => (end, FaultedConductor.Of(view, end.Cable, condition, 1) is { } found ? Bears(found.Conductor) : double.NaN))];
        if (bears.FirstOrDefault(pair => double.IsNaN(pair.BearsA2S)).End is { } unknown)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: what {unknown.Cable.Title} behind it bears cannot be told"), view.AmpacityOf(unknown.Cable, condition).Missing is { Length: > 0 } missing
                ? missing
                : [new FindingInput(unknown.Cable.Id, "insulationC", IsMissing: unknown.Cable.InsulationC is null)]);
        }

        (FarEnd end, double bearsA2S) = bears.MinBy(pair => pair.BearsA2S);
        if (Greatest(view, end, condition, network => network) is not { } greatestA)
        {
            return WithoutFault.Of(view, Description, device.Id, condition, device.Title);
        }

        if (Through(view, device, greatestA) is not { } through)
        {
            if (device.OwnTimes.Count == 0 && DeviceGates.OtherKindOf(device) is not null)
            {
                return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{GatesGap.Words(device)}, so what it lets through on a hard fault cannot be told"), [GatesGap.Input(device)]);
            }

            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: what it lets through on a hard fault is not known"),
                [new FindingInput(device.Id, device.Gates is null && device.OwnTimes.Count == 0 ? "gates" : "clearingA2S", IsMissing: true)]);
        }

        if (through.A2S <= bearsA2S && Greatest(view, end, condition, network => BatteryDoubt.Feeding(view, network, end.NearNode).IsEmpty ? null : BatteryDoubt.WithLeast(view, network)) is { } most && Through(view, device, most)?.A2S > bearsA2S)
        {
            return Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: {A(greatestA)} just behind it spares {end.Cable.Title}; whether {A(most)} would, if the battery's resistance is the least it may be, cannot be told"),
                [.. BatteryDoubt.Inputs(BatteryDoubt.Feeding(view, view.Solve(condition, ChargeCase.Full).NetworkOf(end.Edge.Id)!, end.NearNode))]);
        }

        return through.A2S > bearsA2S && device.ClearingA2S is null
            ? Unknown(Description, device.Id, condition.Id, Sentence.Of($"{device.Title}: whether {A(greatestA)} just behind it spares {end.Cable.Title} cannot be told from its times alone"), [new FindingInput(device.Id, "clearingA2S", IsMissing: true)])
            : Told(device, end, condition, greatestA, through, bearsA2S);
    }

    private Finding Told(Protection device, FarEnd end, Condition condition, double greatestA, (double A2S, WorkingLine Line) through, double bearsA2S) => new()
    {
        CheckId = Description.Id,
        SubjectId = device.Id,
        ConditionId = condition.Id,
        Verdict = Verdicts.Of(through.A2S, bearsA2S),
        UseFraction = Verdicts.UseOf(through.A2S, bearsA2S),
        Headline = Sentence.Of($"{device.Title}: on {A(greatestA)} just behind it at most {EnergyOf(through.A2S)} go through; {end.Cable.Title} bears {EnergyOf(bearsA2S)}"),
        WorkingWhenAsked = () =>
        [
            new WorkingLine("Greatest fault at the near end", "full battery, every source, cold conductors", A(greatestA), "as in the check of breaking capacity"),
            through.Line,
            new WorkingLine("The conductor bears", $"k² S² from its rated temperature to {FaultedConductor.FinalC} °C, {end.Cable.Title}", EnergyOf(bearsA2S), $"{AdiabaticWithstand.Source}; {FaultedConductor.FinalSource}", IsFromMemory: true),
            Use(through.A2S, bearsA2S),
        ],
        Inputs = [new FindingInput(device.Id, "clearingA2S"), new FindingInput(device.Id, "gates"), new FindingInput(end.Cable.Id, "areaMm2"), new FindingInput(end.Cable.Id, "insulationC")],
    };

    private static double Bears(HeatedWithstandInput conductor) =>
        AdiabaticWithstand.LetThroughA2S(conductor.AreaMm2, AdiabaticWithstand.KFactor(conductor.InitialC, conductor.FinalC));

    private static (double A2S, WorkingLine Line)? Through(ElectricsView view, Protection device, double greatestA)
    {
        if (device.ClearingA2S is { } typed)
        {
            return (typed.Value, LetThroughLines.Of(new LetThroughEnergy(greatestA, typed.Value, null, LetThroughBasis.Sheet, 0), typed.Method ?? "its sheet, as typed", false));
        }

        LetThroughDevice asked = new() { Subject = device.Title, RatingA = device.RatedA.Value, Gates = view.GatesOnDc(device), IsFuse = device.Means == ProtectionMeans.Fuse };
        return asked.Gates is { } gates && LetThrough.ByGates(asked, greatestA) is { } bound ? (bound.A2S, LetThroughLines.Of(bound, gates.Source, gates.IsFromMemory)) : null;
    }

    private static double? Greatest(ElectricsView view, FarEnd end, Condition condition, Func<Network, Network?> taken)
    {
        SolvedNetwork full = view.Solve(condition, ChargeCase.Full);
        if (full.NetworkOf(end.Edge.Id) is not { } network || network.Batteries.IsEmpty || network.Batteries.Any(battery => full.Built.Gaps.ContainsKey(battery.Id)) || taken(network) is not { } faulted)
        {
            return null;
        }

        ImmutableArray<FaultCurrentResult?> faults = view.Faults.GreatestBetween(faulted, [.. network.Batteries.Select(battery => (end.NearNode, battery.Minus))]);
        return faults.OfType<FaultCurrentResult>().Select(fault => Math.Abs(fault.CurrentA)).DefaultIfEmpty(0).Max() is var most and > 0 ? most : null;
    }
}
