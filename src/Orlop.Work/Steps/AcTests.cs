using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>What a licensed person measures on the AC circuits that the alteration touches, with what each should read: dead before anything is switched on, live after.</summary>
internal static class AcTests
{
    /// <summary>Least insulation at 500 V DC, live and neutral together to earth (IEC 60364-6, table 6A, from memory).</summary>
    private const double LeastInsulationOhm = 1e6;

    /// <summary>What a reading of the protective conductor may lie above the reckoned: contacts and the meter (common practice, no source).</summary>
    private const double OverEarthOhm = 0.1;

    /// <summary>A loop read cold is accepted up to this share of the greatest: the conductors get warmer (IEC 60364-6, annex on the loop, from memory).</summary>
    private const double ColdLoopFraction = 2.0 / 3;

    private static Caution Licensed { get; } = new(CautionKind.Mains,
        "230 V kills. These readings are for a licensed electrician with an installation tester, by the local code; what stands here says what to expect and replaces no certificate. Nobody else on the circuit, no wet hands, one person who can switch off.");

    /// <summary>Continuity of the protective conductor and insulation, with everything dead.</summary>
    public static IEnumerable<WorkStep> Dead(PackScope scope)
    {
        ImmutableArray<AcRow> rows = Touched(scope);
        if (rows.IsEmpty)
        {
            yield break;
        }

        yield return new WorkStep
        {
            Key = "test:ac-dead",
            Kind = StepKind.Test,
            Text = Sentence.Of($"AC side, dead: protective conductor and insulation, before anything is switched on."),
            Details =
            [
                .. rows.Select(EarthOf),
                Sentence.Of($"Insulation at 500 V DC, live and neutral together to earth, electronics and residual-current devices off or out: at least {new Amount(LeastInsulationOhm, "Ohm")} (IEC 60364-6, from memory)."),
            ],
            WriteDown = new WriteDown("Ω")
            {
                Accepts = [.. rows.Where(row => row.HasEarth).Select(IsEarthed), IsInsulated],
            },
            Cautions = [Licensed],
            PeopleCount = 2,
            About = About(rows),
        };
    }

    /// <summary>Polarity, bond of neutral and earth, loop and residual-current device, live.</summary>
    public static IEnumerable<WorkStep> Live(PackScope scope)
    {
        ImmutableArray<AcRow> rows = Touched(scope);
        if (rows.IsEmpty)
        {
            yield break;
        }

        yield return new WorkStep
        {
            Key = "test:ac-live",
            Kind = StepKind.Commission,
            Text = Sentence.Of($"AC side, live, with each source in turn: polarity, neutral and earth, loop, residual-current device."),
            Details =
            [
                .. rows.DistinctBy(row => row.Source.Id).Select(BondOf),
                .. rows.Where(row => row.Source is ShoreInlet).Select(LoopOf),
                .. rows.Where(row => row.Source is not ShoreInlet).DistinctBy(row => row.Source.Id).Select(row => Sentence.Of($"Fed by {row.Source.Title}: a loop tester tells nothing of an inverter, whose electronics limit the current; its residual-current device is what counts.")),
                .. rows.Select(row => row.Residual).OfType<Protection>().DistinctBy(device => device.Id).SelectMany(ResidualOf),
            ],
            WriteDown = new WriteDown("Ω, s")
            {
                Accepts = [.. rows.Where(row => row.Source is ShoreInlet).Select(IsInLoop), .. rows.Select(row => row.Residual).OfType<Protection>().DistinctBy(device => device.Id).SelectMany(Opens)],
            },
            Cautions = [Licensed],
            PeopleCount = 2,
            About = About(rows),
        };
    }

    private static AcceptedReading IsInsulated { get; } = new("Ohm", "MΩ")
    {
        Name = "Insulation",
        Least = LeastInsulationOhm,
        WhenBelow = "live or neutral touches earth somewhere: a load still plugged in, a wet fitting, a crushed cable. Nothing is switched on before it is found.",
    };

    private static AcceptedReading IsEarthed(AcRow row) => new("Ohm", "Ω")
    {
        Name = $"Protective conductor, {row.Taker.Title}",
        Least = row.EarthColdOhm is null ? null : -OverEarthOhm,
        Most = row.EarthColdOhm + OverEarthOhm,
        WhenBelow = "a conductor without voltage reads no less than nothing. Stop: prove it dead again, then look at the meter's leads.",
        WhenAbove = "the protective conductor is open, loose or joined elsewhere: a fault would leave the metal live. Nothing is switched on before it is found.",
    };

    /// <summary>The most that a loop may read cold, in Ω, so that a fault is still ended in time when its conductors are warm; null where none does or it cannot be told.</summary>
    internal static double? MostColdOhm(AcRow row) => row.GreatestLoopOhm * ColdLoopFraction;

    private static AcceptedReading IsInLoop(AcRow row) => new("Ohm", "Ω")
    {
        Name = $"Loop, {row.Taker.Title}",
        Least = row.GreatestLoopOhm is null ? null : 0,
        Most = MostColdOhm(row),
        WhenBelow = "no loop reads less than nothing. Look at the tester and its leads.",
        WhenAbove = "no device is sure to end a fault in time: a loose joint, or a supply that is weaker than was told. Switch off.",
    };

    private static IEnumerable<AcceptedReading> Opens(Protection device)
    {
        double residualA = device.ResidualA!.Value;
        foreach ((int times, string name) in new[] { (1, "at its residual current"), (5, "at five times that") })
        {
            yield return new AcceptedReading("S", "s")
            {
                Name = $"{device.Title}, {name}",
                Least = 0,
                Most = ResidualOpening.LatestS(times * residualA, residualA, device.ResidualOpensS?.Value),
                WhenBelow = "no time is less than nothing. Look at the tester.",
                WhenAbove = "it opens too late or not at all: it protects nobody. Switch off and exchange it.",
            };
        }
    }

    private static Sentence EarthOf(AcRow row) => row switch
    {
        { HasEarth: false } => Sentence.Of($"{row.Taker.Title}: no earth is drawn back to {row.Source.Title}; see its findings before going on."),
        { EarthColdOhm: { } ohm } => Sentence.Of($"Protective conductor from the metal of {row.Taker.Title} to the earth of {row.Source.Title}: about {new Amount(ohm, "Ohm")}, at most {new Amount(ohm + OverEarthOhm, "Ohm")} with the leads subtracted."),
        _ => Sentence.Of($"Protective conductor from the metal of {row.Taker.Title} to the earth of {row.Source.Title}: what to expect cannot be worked out; its findings name what is missing."),
    };

    private static Sentence BondOf(AcRow row) => row.BondPlaces is { } places
        ? Sentence.Of($"Fed by {row.Source.Title}: live and neutral as labelled at every outlet; neutral joined to earth {(places.IsEmpty ? "nowhere" : string.Join("; ", places))}, so {(places.IsEmpty ? "neither pole is near 0 V to earth" : "neutral reads near 0 V to earth")}.")
        : Sentence.Of($"Fed by {row.Source.Title}: live and neutral as labelled at every outlet; find out where its neutral is joined to earth, and put it on its sheet.");

    private static Sentence LoopOf(AcRow row) => row switch
    {
        { ColdLoopOhm: { } ohm } when MostColdOhm(row) is { } most => Sentence.Of($"Loop at {row.Taker.Title}, fed by {row.Source.Title}: about {new Amount(ohm, "Ohm")}, at most {new Amount(most, "Ohm")}."),
        { ColdLoopOhm: { } ohm } => Sentence.Of($"Loop at {row.Taker.Title}, fed by {row.Source.Title}: about {new Amount(ohm, "Ohm")}; with no loop is a device sure to open in time: see its findings."),
        _ => Sentence.Of($"Loop at {row.Taker.Title}, fed by {row.Source.Title}: what to expect cannot be worked out; its findings name what is missing."),
    };

    private static IEnumerable<Sentence> ResidualOf(Protection device)
    {
        double residualA = device.ResidualA!.Value;
        double? own = device.ResidualOpensS?.Value;
        yield return Sentence.Of($"{device.Title}: at half its residual current, {new Amount(residualA / 2, "A")}, it stays closed; at {new Amount(residualA, "A")} it opens within {new Amount(ResidualOpening.LatestS(residualA, residualA, own)!.Value, "S")}, at five times that within {new Amount(ResidualOpening.LatestS(5 * residualA, residualA, own)!.Value, "S")}.");
        yield return Sentence.Of($"{device.Title}: its test button opens it at once, with each source feeding.");
    }

    private static ImmutableArray<string> About(ImmutableArray<AcRow> rows) => [.. rows.Select(row => row.Taker.Id).Distinct(StringComparer.Ordinal)];

    private static ImmutableArray<AcRow> Touched(PackScope scope)
    {
        HashSet<string> changed = [.. scope.Changes.Where(change => change.Kind != ChangeKind.Record && change.Edit.Becomes is not null).Select(change => change.Id)];
        return [.. AcTable.Of(new ElectricsView(scope.AsAltered, scope.Practice, new Memo(), CancellationToken.None))
            .Where(row => changed.Contains(row.Taker.Id) || changed.Contains(row.Source.Id) || row.ThingIds.Any(changed.Contains))];
    }
}
