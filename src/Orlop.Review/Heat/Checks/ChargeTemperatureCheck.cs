using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Heat.Checks;

/// <summary>A lithium battery is charged only as cold and as warm as it may be.</summary>
public sealed class ChargeTemperatureCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "charge-temperature",
        "A lithium battery is neither too cold nor too warm to charge",
        "For each lithium battery and each condition in which a charger that reaches it works: the air of its space against the greatest temperature it may be charged at; and the least that its space has while she is in use, against the least. A battery takes its time to follow the air. Where its own guard stops the charge it is tight: nothing is spoilt, and nothing charged.",
        []);

    private const string Caution = "A lithium cell charged in frost is spoilt inside without a sign, and may fail later.";

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from bank in view.Boat.All<BatteryBank>()
        where bank.Chemistry == BatteryChemistry.LithiumIronPhosphate
        let chargers = Enum.GetValues<ChargerDrive>().SelectMany(drive => PlanPower.ChargersReaching(view, bank, drive)).ToArray()
        where chargers.Length > 0
        from finding in view.Conditions.Where(condition => chargers.Any(charger => ChargerOutput.WorksIn(charger, condition))).Select(condition => Warm(view, bank, condition)).Append(Cold(view, bank))
        select finding with { Caution = Caution };

    private Finding Warm(ElectricsView view, BatteryBank bank, Condition condition)
    {
        Space? space = bank.Space is null ? null : view.Boat.Find<Space>(bank.Space);
        Surroundings? around = space is null ? null : view.Air.Of(space, condition);
        FindingInput[] missing =
        [
            .. bank.MostChargeC is null ? [new FindingInput(bank.Id, "mostChargeC", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. around?.Missing ?? [new FindingInput(bank.Id, "space", IsMissing: true)],
        ];
        if (missing.Length > 0 || around!.AmbientC is not { } air)
        {
            return Unknown(Description, bank.Id, condition.Id, Sentence.Of($"{bank.Title}: whether it is cool enough to charge {In(condition)} cannot be told"), [.. missing]);
        }

        double most = bank.MostChargeC!.Value;
        Verdict verdict = air > most ? Stopped(bank) : air <= 0 ? Verdict.Holds : Verdicts.Of(air, most);
        return Said(bank, condition.Id, verdict, air > 0 && most > 0 ? air / most : 0, Sentence.Of($"{bank.Title} is charged in {new Amount(air, "C")} {In(condition)}; it may be up to {new Amount(most, "C")}{Guard(bank, air > most)}"),
        [
            new WorkingLine("Air around it", space!.Title, new Amount(air, "C"), space.IsReckoned == true ? "reckoned, everything on" : "as typed"),
            new WorkingLine("Greatest for charging", "", new Amount(most, "C"), "as typed"),
        ],
        [new FindingInput(bank.Id, "mostChargeC"), new FindingInput(space.Id, "ambientC")]);
    }

    private Finding Cold(ElectricsView view, BatteryBank bank)
    {
        Space? space = bank.Space is null ? null : view.Boat.Find<Space>(bank.Space);
        FindingInput[] missing =
        [
            .. bank.LeastChargeC is null ? [new FindingInput(bank.Id, "leastChargeC", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. space is null ? [new FindingInput(bank.Id, "space", IsMissing: true)] : space.LeastAmbientC is null ? [new FindingInput(space.Id, "leastAmbientC", IsMissing: true)] : Array.Empty<FindingInput>(),
        ];
        if (missing.Length > 0)
        {
            return Unknown(Description, bank.Id, null, Sentence.Of($"{bank.Title}: whether it gets too cold to charge cannot be told"), [.. missing]);
        }

        double least = bank.LeastChargeC!.Value, cold = space!.LeastAmbientC!.Value;
        Verdict verdict = cold < least ? Stopped(bank) : Verdict.Holds;
        return Said(bank, null, verdict, null, Sentence.Of($"{bank.Title} is charged in {new Amount(cold, "C")} at its coldest; it may be from {new Amount(least, "C")}{Guard(bank, cold < least)}"),
        [
            new WorkingLine("Least around it", $"{space.Title}, while she is in use", new Amount(cold, "C"), "as typed"),
            new WorkingLine("Least for charging", "", new Amount(least, "C"), "as typed"),
        ],
        [new FindingInput(bank.Id, "leastChargeC"), new FindingInput(space.Id, "leastAmbientC")]);
    }

    private static Verdict Stopped(BatteryBank bank) => bank.StopsCharge == true ? Verdict.Tight : Verdict.Fails;

    private static string Guard(BatteryBank bank, bool isBeyond) => !isBeyond ? "" : bank.StopsCharge == true ? ", and its guard stops the charge" : ", and nothing is known to stop the charge";

    private Finding Said(BatteryBank bank, string? condition, Verdict verdict, double? use, Sentence headline, System.Collections.Immutable.ImmutableArray<WorkingLine> working, System.Collections.Immutable.ImmutableArray<FindingInput> inputs) => new()
    {
        CheckId = Description.Id,
        SubjectId = bank.Id,
        ConditionId = condition,
        Verdict = verdict,
        UseFraction = use,
        Headline = headline,
        Working = working,
        Inputs = inputs,
    };
}
