using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Work.Bring;
using Orlop.Work.Loading;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Steps;

/// <summary>
/// The trial lift of lifting gear that the work fits, moves or exchanges: a davit, hook, eye or what else its name says lifts (common practice, no source; its maker, a surveyor and local rules for lifting gear
/// go first). It tries what the gear is to lift and a stated multiple of it, and says what is looked at.
/// </summary>
internal static class TrialLifts
{
    private static readonly string[] Words = ["davit", "davits", "crane", "gallows", "derrick", "hoist", "gantry", "a-frame", "lifting"];
    private static readonly string[] Hooks = ["hook", "eye", "eyebolt", "padeye"];

    // Hooks and eyes that nothing is lifted by.
    private static readonly string[] Others = ["lashing", "mooring", "boathook", "boat", "strap", "coat"];

    /// <summary>The gear and loads of the work that lift, by a word of their names.</summary>
    public static IEnumerable<WorkChange> Of(PackScope scope) => scope.Of(ChangeKind.Fit, ChangeKind.Move, ChangeKind.Exchange).Where(change => IsLifting(change.Thing));

    /// <summary>Gear or a load that lifts, by a word of its name.</summary>
    public static bool IsLifting(Thing thing) => thing is Gear or ElectricLoad && IsLifting(thing.Title);

    /// <summary>One step for each, before anything else is hung from it.</summary>
    public static IEnumerable<WorkStep> Steps(PackScope scope, CancellationToken token) => Of(scope).Select(change => Step(scope, change, token));

    /// <summary>The mass of the heaviest trial that can be told, in kilograms, for the bring list; null where none can.</summary>
    public static double? MostKg(PackScope scope) => Of(scope).Where(change => !change.IsBuilt).Select(change => Load(scope, change.Thing)?.MassKg?.Value * Allowances.TrialLoadFactor).Max();

    private static bool IsLifting(string title) => StockWords.Says(title, Words) || (StockWords.Says(title, Hooks) && !StockWords.Says(title, Others));

    private static WorkStep Step(PackScope scope, WorkChange change, CancellationToken token)
    {
        Deadweight? load = Load(scope, change.Thing);
        double? massKg = load?.MassKg?.Value;
        Condition? hanging = load is null ? null : scope.AsAltered.All<Condition>().FirstOrDefault(condition => load.PiecesIn(condition.Id) > 0);
        LiftingStanding? standing = hanging is null ? null : LiftingStanding.Of(scope.AsAltered, hanging, token);
        bool waits = standing is { Waits: true };
        return new WorkStep
        {
            Key = $"trial-lift:{change.Id}",
            Kind = StepKind.Commission,
            Text = massKg is { } kg
                ? Sentence.Of($"{(waits ? "Not yet, as what stands below fails. Once it is settled: trial lift" : "Trial lift")} with {scope.Words.Located(change.Id)}, before it is used: a quarter of what it is to lift, {Kg(kg / 4)}; half, {Kg(kg / 2)}; all, {Kg(kg)}; last {FormattableString.Invariant($"{Allowances.TrialLoadFactor:0.##}")} times as much, {Kg(kg * Allowances.TrialLoadFactor)}.")
                : Sentence.Of($"Trial lift with {scope.Words.Located(change.Id)}, before it is used. How much it is to lift is not told: nothing is lifted until it is."),
            Details =
            [
                load is null ? Sentence.Of($"What it lifts is to be in the boat's file as a hung weight within {new Amount(Allowances.HookReachM, "M")} of it, one alone, with its mass: weighed, not guessed.")
                    : massKg is null ? Sentence.Of($"Taken as what it is to lift: {load.Title}. Its mass is not given: weigh it.")
                    : Sentence.Of($"Taken as what it is to lift: {load.Title}, {Kg(massKg.Value)}."),
                Sentence.Of($"No more than its maker, or whoever reckoned it, allows for it and for all that holds it: feet, deck, frames, rope, hook, shackles. Where they, a surveyor or local rules for lifting gear ask for another load, or for a witness, theirs goes first. What nobody has marked or reckoned lifts nothing (common practice, no source)."),
                Sentence.Of($"Weights that are weighed and cannot slip out. Each time a hand's breadth off the deck, over the deck first and then where it is to lift; hold it for five minutes, swing it gently, set it down (common practice, no source)."),
                Sentence.Of($"Look each time, and once more when all is set down: welds for cracks; paint that flakes; feet, backing plates and the deck round them for dents and movement; marks on nuts; the mouth of the hook; pins, rope, splices and lashings. What bent comes back all the way, or it is not used: set down, take it out of use and ask whoever reckoned it, or a surveyor."),
                .. load is null ? [] : Standing(scope, load, hanging, standing, token),
            ],
            Cautions = [CommissionSteps.ProofLoad],
            WriteDown = new WriteDown("kg", "The most that it held")
            {
                Accepts =
                [
                    massKg is not { } asked ? new AcceptedReading("Kg", "kg") : new AcceptedReading("Kg", "kg")
                    {
                        Least = asked,
                        Most = asked * Allowances.TrialLoadFactor,
                        WhenBelow = "it has not held what it is to lift: it is not used for that. Where its maker or a surveyor allows no more, say so in the boat's file, with a lighter load.",
                        WhenAbove = "it was loaded beyond the trial: look at all that holds it as after an accident, and have it looked at by a surveyor before it is used.",
                    },
                ],
            },
            PeopleCount = 2,
            About = [change.Id],
        };
    }

    private static IEnumerable<Sentence> Standing(PackScope scope, Deadweight load, Condition? hanging, LiftingStanding? standing, CancellationToken token) => hanging is null || standing is null
        ? [Sentence.Of($"No condition has it on the hook: how she heels with it, and whether she may, cannot be told. Say so in a condition before anything is lifted.")]
        : [Sentence.Of($"As in “{hanging.Title}”, with all of it on the hook:"), .. standing.Words(), .. WithLastLoad(scope, load, hanging, standing, token)];

    // The last load is more than she is to lift: how she lies with it is found for it, not taken in proportion.
    private static IEnumerable<Sentence> WithLastLoad(PackScope scope, Deadweight load, Condition hanging, LiftingStanding standing, CancellationToken token)
    {
        if (load.MassKg is not { } mass)
        {
            yield break;
        }

        double lastKg = mass.Value * Allowances.TrialLoadFactor;
        LiftingStanding last = LiftingStanding.Of(scope.AsAltered.WithThings(scope.AsAltered.Things.Select(thing => thing.Id == load.Id ? load with { MassKg = mass with { Value = lastKg } } : thing)), hanging, token);
        yield return last switch
        {
            { HeelDeg: { } heel } => Sentence.Of($"With the last load, {Kg(lastKg)}, she is expected to heel {new Amount(Math.Round(Math.Abs(heel), 1), "Deg")} to {(heel < 0 ? "port" : "starboard")}."),
            { IsLost: true } => Sentence.Of($"With the last load, {Kg(lastKg)}, no position was found in which she lies afloat and steady: it is not lifted."),
            _ => Sentence.Of($"How far she heels with the last load, {Kg(lastKg)}, cannot be told."),
        };
        HashSet<(string, string)> known = [.. standing.Fails.Select(finding => (finding.CheckId, finding.SubjectId))];
        foreach (Finding finding in last.Fails.Where(finding => !known.Contains((finding.CheckId, finding.SubjectId))))
        {
            yield return Sentence.Of($"With the last load this fails besides: {finding.Headline}. That load is then tried over a quay or a hard standing, or not at all.");
        }
    }

    // One weight alone hangs there; of several nobody can tell which it is for.
    private static Deadweight? Load(PackScope scope, Thing gear)
    {
        Deadweight[] hung = [.. scope.AsAltered.All<Deadweight>().Where(weight => weight.Use == DeadweightUse.Hung && IsNear(weight.Place, PlaceOf(gear)))];
        return hung.Length == 1 ? hung[0] : null;
    }

    private static bool IsNear(Place? one, Place? other) => one is not null && other is not null && Math.Sqrt(((one.XM - other.XM) * (one.XM - other.XM)) + ((one.YM - other.YM) * (one.YM - other.YM))) <= Allowances.HookReachM;

    private static Place? PlaceOf(Thing thing) => thing switch { Gear gear => gear.Place, Part part => part.Place, _ => null };

    // To the tenth of a kilogram: weights are put together by hand.
    private static Amount Kg(double massKg) => new(Math.Round(massKg, 1), "Kg");
}
