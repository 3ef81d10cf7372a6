using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Steps that make the work dead and prove it.</summary>
internal static class IsolationSteps
{
    /// <summary>A point is taken as dead up to this voltage (common practice, no source).</summary>
    public const double DeadV = 0.5;

    private static AcceptedReading Dead { get; } = new("V", "V")
    {
        Most = DeadV,
        IsEitherSign = true,
        WhenAbove = "this is not dead. Stop, touch nothing, find what still feeds it, and prove it again.",
    };

    public static IEnumerable<WorkStep> Of(PackScope scope, WorkIsolation isolation)
    {
        if (isolation.Nodes.IsEmpty)
        {
            yield break;
        }

        if (isolation.Result is not { } plan)
        {
            yield return new WorkStep
            {
                Key = "isolate:unknown",
                Kind = StepKind.Isolate,
                Text = Sentence.Of($"Find out what feeds this work and cut it off: the boat's file names no source that reaches it."),
                Cautions = [new Caution(CautionKind.NotDead, "Nothing here may be taken as dead until it is proved with a meter.")],
            };
            yield break;
        }

        if (!plan.Openings.IsEmpty || !isolation.MinusFirst.IsEmpty)
        {
            yield return new WorkStep
            {
                Key = "isolate:loads-off",
                Kind = StepKind.Isolate,
                Text = Sentence.Of($"{IsolationWords.LoadsOff}"),
                Details =
                [
                    .. scope.Whole.All<ShoreInlet>().Any(inlet => plan.Openings.All(opening => opening.Id != inlet.Id))
                        ? new[] { Sentence.Of($"A shore lead that is in comes out, ashore first, and stays out until the work is done: nothing else here waits for it.") }
                        : [],
                    .. VitalOff(scope, plan),
                ],
            };
        }

        if (SolarSteps.Cover(scope, isolation) is { } cover)
        {
            yield return cover;
        }

        ImmutableArray<PartProofs> parts = PartProofs.Of(scope, isolation, plan);
        if (ReadBefore.Of(scope, isolation, plan, parts) is { } before)
        {
            yield return before;
        }

        int place = MinusLeads.PlaceBefore(plan.Openings);
        for (int i = 0; i <= plan.Openings.Length; i++)
        {
            foreach (BatteryBank bank in i == place ? isolation.MinusFirst : [])
            {
                yield return MinusSteps.First(scope, bank);
            }

            if (i < plan.Openings.Length)
            {
                yield return Open(scope, isolation, plan.Openings[i]);
            }
        }

        foreach (BatteryBank bank in LiveNearby.Of(scope, isolation))
        {
            yield return LiveNearby.Step(scope, bank);
        }

        if (!plan.KeepOpen.IsEmpty)
        {
            yield return new WorkStep
            {
                Key = "isolate:keep-open",
                Kind = StepKind.Isolate,
                Text = Sentence.Of($"Leave open, with a tag: {string.Join("; ", plan.KeepOpen.Select(scope.Words.Located))}."),
                About = plan.KeepOpen,
            };
        }

        bool isFirst = true;
        ImmutableArray<Caution> elsewhere = [.. IsolationWords.StaysLive(scope.Words, StillFed.Each(isolation.Boat, plan)).Select(text => new Caution(CautionKind.StaysLive, text))];
        foreach (PartProofs part in parts)
        {
            if (part.StaysLive)
            {
                WorkStep step = Live(scope, isolation, plan, part);
                yield return step with { Cautions = [.. step.Cautions, .. elsewhere] };
                elsewhere = [];
                continue;
            }

            yield return Prove(scope, isolation, plan, part, isFirst) with
            {
                Cautions = [.. NotDead(scope, plan, part.Nodes), .. elsewhere, .. Cautions.AtNodes(scope, isolation, part.Nodes)],
            };
            (isFirst, elsewhere) = (false, []);
        }
    }

    /// <summary>Key of the step that opens or stops something.</summary>
    public static string KeyOf(Opening opening) => $"isolate:{opening.Id}";

    // Loads she may need at any time that nothing feeds once all is opened.
    private static IEnumerable<Sentence> VitalOff(PackScope scope, IsolationResult plan)
    {
        HashSet<string> live = [.. plan.StaysLive.SelectMany(source => source.Nodes)];
        string[] off = [.. scope.Before.All<ElectricLoad>().Where(load => load.IsVital && !live.Contains(Poles.Taking(load)!.Plus)).Select(load => load.Title)];
        if (off.Length > 0)
        {
            yield return Sentence.Of($"Dead while you work, though she may need it: {string.Join("; ", off)}. Moored and afloat by herself, bilges dry; look into them every hour, a bucket or hand pump ready. It goes back on at the end of each day (common practice, no source).");
        }
    }

    private static WorkStep Open(PackScope scope, WorkIsolation isolation, Opening opening)
    {
        WiringEdge? edge = opening.EdgeIds.IsEmpty ? null : scope.WholeWiring.Find(opening.EdgeIds[0]);
        return new WorkStep
        {
            Key = KeyOf(opening),
            Kind = StepKind.Isolate,
            Text = Sentence.Of($"{IsolationWords.Open(scope.Words, opening)}"),
            Details = opening.Means switch
            {
                OpeningMeans.PullFuse => [Sentence.Of($"Never under load: a DC arc burns and does not go out by itself. If in doubt, see with a clamp that no current flows.")],
                OpeningMeans.LiftBatteryLead => [Sentence.Of($"Loads off and panels covered; the minus of this battery is off already.")],
                _ => [],
            },
            Cautions = opening.Means == OpeningMeans.LiftBatteryLead
                ? [Cautions.Battery]
                : edge is null ? [] : [.. Cautions.AtNodes(scope, isolation, [edge.A, edge.B]).Where(caution => caution.Kind == CautionKind.Mains)],
            About = [ElementIds.ThingOf(opening.Id)],
        };
    }

    private static WorkStep Prove(PackScope scope, WorkIsolation isolation, IsolationResult plan, PartProofs part, bool isFirst)
    {
        ImmutableArray<Sentence>.Builder details = ImmutableArray.CreateBuilder<Sentence>();
        if (isFirst)
        {
            details.AddRange(ProvingWords.TryMeter(isolation.Boat, scope.Words, plan, part.Points).Select(text => Sentence.Of($"{text}")));
        }

        foreach (ProvingPoint proof in part.Points)
        {
            string before = ReadBefore.Told(scope, isolation, plan, proof) is { Length: > 0 } told ? $" ({told})" : "";
            details.Add(Sentence.Of($"{PartProofs.Between(scope, isolation, proof)}, on {ProvingWords.Setting(proof.IsAc)}: 0 V, at most {new Amount(DeadV, "V")}{before}.{PartProofs.Reach(scope, isolation, proof)}{ProvingWords.StandsFor(scope.Words, proof)}"));
        }

        return new WorkStep
        {
            Key = $"prove-dead:{part.PartId}",
            Kind = StepKind.ProveDead,
            Text = Sentence.Of($"Prove dead: {scope.Words.Located(part.PartId)}."),
            Details = details.ToImmutable(),
            WriteDown = new WriteDown("V") { Accepts = part.Points.IsEmpty ? [Dead] : [.. part.Points.Select(proof => Dead with { Name = PartProofs.Between(scope, isolation, proof), At = PartProofs.At(isolation, proof) })] },
            About = [part.PartId],
        };
    }

    private static WorkStep Live(PackScope scope, WorkIsolation isolation, IsolationResult plan, PartProofs part) => new()
    {
        Key = $"stays-live:{part.PartId}",
        Kind = StepKind.ProveDead,
        Text = scope.Whole.Find(part.PartId) is BatteryBank
            ? Sentence.Of($"The posts of {scope.Words.Located(part.PartId)} stay live: no switch or fuse makes them dead. Do not look for 0 V there.")
            : Sentence.Of($"{scope.Words.Located(part.PartId)} stays live: it cannot be proved dead. Measure it and write down what it reads."),
        Cautions = [.. NotDead(scope, plan, part.Nodes), .. Cautions.AtNodes(scope, isolation, part.Nodes)],
        WriteDown = scope.Whole.Find(part.PartId) is BatteryBank ? null : new WriteDown("V", "It reads"),
        About = [part.PartId],
    };

    private static IEnumerable<Caution> NotDead(PackScope scope, IsolationResult plan, ImmutableArray<string> nodes) => plan.CannotBeMadeDead
        .Where(node => nodes.Contains(node.Node))
        .Select(node => new Caution(CautionKind.NotDead, $"{scope.Words.Node(node.Node)} cannot be made dead: {scope.Words.Title(node.SourceId)}, {node.Because}. Work on it as live, one conductor at a time, covered but for that one."));
}
