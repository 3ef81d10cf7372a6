using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Diagnosis;
using Orlop.Electrics.Networks;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Orlop.Review.Readings;

namespace Orlop.Work.Readings;

/// <summary>
/// Finds the joint or conductor whose extra resistance explains readings best. A reading's accepted band counts as two standard deviations either way,
/// so that what is not known of the boat is not taken for a fault. Readings that no single fault brings together are not explained but to be taken again.
/// </summary>
public static class FaultFinding
{
    /// <summary>What every estimate rests on; it stands beside each.</summary>
    public const string Condition = "If one joint or conductor is bad, and the rest is as drawn";

    private const string MakeDead = "Make it dead first and prove it dead; then open it and look.";

    private const double LikelyFraction = 0.01;

    // Two digits of the finest range of a meter: a smaller difference cannot be read.
    private const double LeastTellingV = 0.0002;

    /// <summary>A reading further than this many standard deviations from the best fit does not fit: it comes once in four hundred good ones.</summary>
    private const double MostResidualRatio = 3;

    /// <summary>One report for each condition that readings were taken in, in the order of the readings.</summary>
    [SuppressMessage("Design", "CA1068", Justification = "Cancelling is asked for more often than progress.")]
    public static ImmutableArray<FaultReport> Diagnose(BoatModel boat, IEnumerable<Reading> readings, CancellationToken token = default, IProgress<double>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(readings);
        Memo memo = new();
        Wiring wiring = Wiring.Of(boat);
        Practice? practice = Practice.Of(boat.All<PracticeChoice>().FirstOrDefault());
        ImmutableArray<IGrouping<string, Reading>> groups = [.. readings.GroupBy(reading => reading.Condition, StringComparer.Ordinal).Where(group => boat.Find<Condition>(group.Key) is not null)];
        return
        [
            .. groups.Select((group, index) => Diagnose(boat, wiring, ConditionPrediction.Of(boat, wiring, practice, boat.Find<Condition>(group.Key)!, memo, token), [.. group],
                token, progress is null ? null : new PartOfProgress(progress, index, groups.Length))),
        ];
    }

    private static FaultReport Diagnose(BoatModel boat, Wiring wiring, ConditionPrediction prediction, ImmutableArray<Reading> readings, CancellationToken token, IProgress<double>? progress)
    {
        Evidence evidence = new(prediction, readings);
        (string? taker, ImmutableArray<string> candidates) = evidence.Group is null ? (null, []) : Candidates(boat, wiring, prediction, evidence);
        if (evidence.Group is not { } group || candidates.IsEmpty)
        {
            return new FaultReport
            {
                ConditionId = prediction.Condition.Id,
                Status = DiagnosisStatus.NotSolvable,
                Headline = Sentence.Of($"These readings cannot be held against the circuit."),
                LeftOut = evidence.LeftOut,
            };
        }

        DiagnosisResult result = JointDiagnosis.Solve(
            new DiagnosisInput { Network = group.Network, Voltages = evidence.Voltages, Currents = evidence.Currents, CandidateIds = candidates },
            network => NetworkSolver.Solve(network, token), token, progress);
        PartWords words = new(boat);
        ImmutableArray<FaultSuspect> suspects =
        [
            .. result.Suspects.Where(suspect => suspect.WeightFraction >= LikelyFraction)
                .Select(suspect => new FaultSuspect(suspect.ElementId, words.Element(suspect.ElementId), suspect.ExtraOhm, suspect.StandardUncertaintyOhm, suspect.WeightFraction, suspect.ExtraHeatW)),
        ];
        Misfit? misfit = WorstMisfit(result, evidence, words);
        LoopMisfit? loop = LoopMisfit.Worst(prediction, evidence.Used);
        DiagnosisStatus status = misfit is not null || loop is not null ? DiagnosisStatus.NotExplained : result.Status;
        return new FaultReport
        {
            ConditionId = prediction.Condition.Id,
            TakerId = taker,
            Status = status,
            Headline = (misfit, loop) switch
            {
                ({ } one, { } round) => Sentence.Of($"{one.Text} {round.Text}"),
                ({ } one, null) => one.Text,
                (null, { } round) => round.Text,
                _ => Headline(result, suspects),
            },
            Suspects = status is DiagnosisStatus.Found or DiagnosisStatus.NotToldApart ? suspects : [],
            Caution = status is DiagnosisStatus.Found or DiagnosisStatus.NotToldApart ? Caution(suspects) : null,
            Next = status == DiagnosisStatus.NotToldApart && result.Next is { } next && next.SpreadV >= LeastTellingV ? Probe(words, next) : null,
            MeasureAgainId = misfit?.ReadingId ?? loop?.ReadingId,
            LeftOut = evidence.LeftOut,
            Assumptions = [.. result.Assumptions, .. evidence.Assumed()],
        };
    }

    private sealed record Misfit(string ReadingId, Sentence Text);

    // Needs two readings: one alone cannot contradict.
    private static Misfit? WorstMisfit(DiagnosisResult result, Evidence evidence, PartWords words)
    {
        if (evidence.Used.Length < 2 || result.ResidualRatios.IsEmpty)
        {
            return null;
        }

        int worst = Enumerable.Range(0, result.ResidualRatios.Length).MaxBy(i => Math.Abs(result.ResidualRatios[i]));
        if (result.Status != DiagnosisStatus.NotExplained && Math.Abs(result.ResidualRatios[worst]) <= MostResidualRatio)
        {
            return null;
        }

        Reading reading = evidence.Used[worst];
        (Amount read, Amount fitted) = evidence.ReadAndFitted(worst, result.ResidualRatios[worst]);
        string where = reading is { Plus: { } plus, Minus: { } minus } ? $"{words.Node(plus.ToString())} to {words.Node(minus.ToString())}" : words.Element(reading.Through ?? reading.Id);
        return new Misfit(reading.Id, Sentence.Of(
            $"These readings do not fit together; measure again, first {where}: it read {read}, and with the others it should be about {fitted}. If it reads the same again, more than one thing is wrong, or the drawing is."));
    }

    private static Sentence Caution(ImmutableArray<FaultSuspect> suspects)
    {
        double heatW = suspects.Max(suspect => suspect.ExtraHeatW);
        return heatW >= HotJoint.FromW
            ? Sentence.Of($"Live and hot: with that resistance about {new Amount(heatW, "W")} turns to heat there. {HotJoint.LetCool}")
            : Sentence.Of($"{HotJoint.MayBeHot}");
    }

    private static NextProbe Probe(PartWords words, NextReading next) => new(next.PlusNode, next.MinusNode,
        Sentence.Of($"Measure across {words.Element(next.ElementId)}, under the same load. Switch the load off, let it cool, and put the meter's clips on while it is off: from {words.Node(next.PlusNode)} to {words.Node(next.MinusNode)}. Switch the load on, read at once, switch it off again: {new Amount(next.PredictedV[next.ElementId], "V")} if it is the bad one. The suspects differ there by {new Amount(next.SpreadV, "V")}."));

    private static Sentence Headline(DiagnosisResult result, ImmutableArray<FaultSuspect> suspects) => result.Status switch
    {
        DiagnosisStatus.NothingWrongSeen => Sentence.Of($"The readings agree with the circuit as drawn."),
        DiagnosisStatus.Found => suspects[0].PlusMinusOhm is { } plusMinus
            ? Sentence.Of($"{Condition}, it is most likely {suspects[0].Where}: {new Amount(suspects[0].ExtraOhm, "Ohm")} too much, give or take {new Amount(plusMinus, "Ohm")}. {MakeDead}")
            : Sentence.Of($"{Condition}, it is most likely {suspects[0].Where}: {new Amount(suspects[0].ExtraOhm, "Ohm")} too much. {MakeDead}"),
        DiagnosisStatus.NotToldApart when result.Next is not { SpreadV: >= LeastTellingV } => Sentence.Of(
            $"{Condition}, about {new Amount(suspects[0].ExtraOhm, "Ohm")} too much would explain the readings at {suspects.Length} places, first {suspects[0].Where}. No voltage tells them apart; look at them one by one. {MakeDead}"),
        DiagnosisStatus.NotToldApart => Sentence.Of(
            $"{Condition}, about {new Amount(suspects[0].ExtraOhm, "Ohm")} too much would explain the readings at {suspects.Length} places, first {suspects[0].Where}. The readings taken do not tell them apart; the next one would."),
        DiagnosisStatus.NotExplained => Sentence.Of($"No single bad joint explains the readings: more than one thing is wrong, or a reading or the drawing is."),
        _ => Sentence.Of($"The circuit as drawn cannot be solved, so nothing can be compared."),
    };

    // What carries power to the part that most of the probes sit around, and lies within its group.
    private static (string? Taker, ImmutableArray<string> Ids) Candidates(BoatModel boat, Wiring wiring, ConditionPrediction prediction, Evidence evidence)
    {
        SupplyPaths paths = SupplyPaths.Of([.. boat.All<Part>()], wiring, prediction.Condition.Id);
        HashSet<string> near = [.. evidence.Nodes.SelectMany(node => wiring.At(node)).Select(edge => edge.Id), .. evidence.Currents.Select(current => current.ElementId)];
        string? taker = near.SelectMany(element => paths.TakersBehind(element)).Distinct(StringComparer.Ordinal)
            .Where(id => prediction.Nominal.LoadA(id) is not null)
            .OrderByDescending(id => paths.ElementsTo(id).Count(near.Contains)).ThenBy(id => paths.ElementsTo(id).Count).ThenBy(id => id, StringComparer.Ordinal).FirstOrDefault();
        HashSet<string> elements = [.. evidence.Group!.Network.Conductors.Select(item => item.Id), .. evidence.Group.Network.Contacts.Select(item => item.Id)];
        return (taker, taker is null ? [] : [.. paths.ElementsTo(taker).Where(elements.Contains).Order(StringComparer.Ordinal)]);
    }
}
