using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Review.Networks;
using Orlop.Review.Readings;
using Orlop.Work.Loading;
using Orlop.Work.Readings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The readings of one condition, taken under load: how long, how it is loaded, and what to read while a load starts.</summary>
internal static class CommissionSteps
{
    /// <summary>How long anything runs for its readings, and when it is touched (common practice, no source). It stands at the step and at the readings.</summary>
    public const string RunLimit = "Run each load only as long as its readings take, ten minutes at most, and let it rest as its maker says. Switch off before touching; then feel the new joints for heat.";

    /// <summary>It stands wherever something is hung from a hook.</summary>
    public static Caution ProofLoad { get; } = new(CautionKind.Lifting,
        "Load it within what winch, hook, rope and every part that holds them are marked or reckoned for; what nobody has reckoned is not loaded. First a proof load raised a hand's breadth, with nobody under it, held while all look at welds, bolts and lashings, and set down again; only then the readings (common practice, no source; local rules for lifting gear go first). Stand clear of the line and of where it would fly. She heels as it lifts.");

    /// <summary>Strings are joined only when they are of one voltage. It stands where a battery's leads go on and where its readings are.</summary>
    public static Caution JoinAlike { get; } = new(CautionKind.Battery, Orlop.Review.Electrics.Cautions.Strings);

    /// <summary>What hangs from a hook in a condition.</summary>
    public static ImmutableArray<Deadweight> Hung(PackScope scope, string conditionId) =>
        [.. scope.AsAltered.All<Deadweight>().Where(weight => weight.Use == DeadweightUse.Hung && weight.Aboard.Any(count => count.Condition == conditionId && count.PieceCount > 0))];

    public static WorkStep Of(PackScope scope, string conditionId, ImmutableArray<PredictedReading> readings, CancellationToken token)
    {
        Condition condition = scope.AsAltered.Find<Condition>(conditionId)!;
        ImmutableArray<ElectricLoad> on = [.. scope.AsAltered.All<ElectricLoad>().Where(load => LoadElements.IsOnIn(load, conditionId))];
        ImmutableArray<ElectricLoad> counting = LoadsThatCount.Of(scope, condition, on, readings);
        ImmutableArray<Deadweight> hung = Hung(scope, conditionId);
        LiftingStanding? standing = hung.IsEmpty ? null : LiftingStanding.Of(scope.AsAltered, condition, token);
        ImmutableArray<ElectricLoad> starting = [.. on.Where(load => LoadElements.HasStart(load) && readings.Any(reading => reading.About.Contains(load.Id)))];
        ImmutableArray<Band?> lowest = [.. starting.Select(load => Lowest(scope, condition, load, readings))];
        return new WorkStep
        {
            Key = $"commission:{conditionId}",
            Kind = StepKind.Commission,
            Text = Sentence.Of($"{(standing is { Waits: true } ? "Not yet, as what stands below fails: leave them until it is settled. Then take" : "Take")} the {readings.Length} readings of “{condition.Title}”. Look, listen and smell meanwhile."),
            Details =
            [
                Sentence.Of($"{Wording.Of(condition)}"),
                Sentence.Of($"Switched on: {string.Join("; ", counting.Select(load => load.Title))}."),
                .. counting.Length == on.Length ? [] : new[] { Sentence.Of($"Need not be on, as all of it together moves no reading by more than a tenth of its range: {string.Join("; ", on.Except(counting).Select(load => load.Title))}.") },
                .. hung.Select(Hook),
                .. standing?.Words() ?? [],
                .. starting.Select((load, index) => Start(load, lowest[index])),
                Sentence.Of($"{RunLimit}"),
            ],
            WriteDown = starting.IsEmpty ? null : new WriteDown("V", $"Lowest at {starting[0].Title} while it starts") { Accepts = [Holds(scope, starting[0], lowest[0])] },
            Cautions = [.. readings.Any(CommissioningReadings.IsBeforeJoining) ? new[] { JoinAlike } : [], .. hung.IsEmpty ? [] : new[] { ProofLoad }, .. RunningCautions.Of(condition, counting)],
            PeopleCount = hung.IsEmpty ? RunningCautions.PeopleFor(counting) : 2,
            About = [.. readings.SelectMany(reading => reading.About).Distinct(StringComparer.Ordinal)],
            Readings = [.. readings.Select(reading => reading.Key)],
        };
    }

    private static Sentence Hook(Deadweight weight) => weight.MassKg is { } mass
        ? Sentence.Of($"On the hook in this condition: {weight.Title}, {new Amount(mass.Value, "Kg")}. The currents expected are those at the load's rated pull: with less on the hook they read lower, and so do the drops.")
        : Sentence.Of($"On the hook in this condition: {weight.Title}, its mass not given: weigh it before it is lifted.");

    // As the condition says, with everything else that is on; nothing is told where the running voltage cannot be.
    private static Band? Lowest(PackScope scope, Condition condition, ElectricLoad load, ImmutableArray<PredictedReading> readings)
    {
        bool isKnown = readings.Any(reading => reading.Key == CommissioningReadings.KeyAt(condition.Id, load.Id) && reading.Expected is not null);
        return isKnown ? ConditionPrediction.Of(scope.AsAltered, scope.AlteredWiring, scope.Practice, condition, new Memo(), CancellationToken.None).Starting(load).Band : null;
    }

    // The lowest reads no less than what is worked out and what the load is made for, and no more than the load has while nothing starts.
    private static AcceptedReading Holds(PackScope scope, ElectricLoad load, Band? lowest)
    {
        double? least = lowest is null ? load.LeastV?.Value : Math.Max(lowest.Least.Value, load.LeastV?.Value ?? 0);
        return least is null ? new AcceptedReading("V", "V") : LiveVoltage.Of(load.NominalV.Value, load.IsAc, Poles.Taking(load) is { } poles ? LiveVoltage.MostOf(load.NominalV.Value, PointVoltage.At(scope.AsAltered, scope.AlteredWiring, poles.Plus).Sources) : null) with
        {
            Least = least,
            WhenBelow = "more is lost on the way than was reckoned, the battery is lower, or the load may drop out: look at every joint on its way before it starts again.",
        };
    }

    private static Sentence Start(ElectricLoad load, Band? lowest)
    {
        string least = load.LeastV is { } leastV ? FormattableString.Invariant($" It is made for {leastV.Value:0.#} V and more.") : "";
        return lowest is { } band
            ? Sentence.Of($"While {load.Title} starts, set the meter to hold the lowest and read the voltage at it: about {band.Nominal} at its first instant, {band.Least} to {band.Most} with all that is not known (a meter that needs a tenth of a second to hold reads higher), is worked out.{least}")
            : Sentence.Of($"While {load.Title} starts, set the meter to hold the lowest and read the voltage at it: what to expect cannot be worked out.{least}");
    }
}
