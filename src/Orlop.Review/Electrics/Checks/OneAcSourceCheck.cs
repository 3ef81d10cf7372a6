using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Two AC sources can never feed together.</summary>
public sealed class OneAcSourceCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "one-ac-source",
        "One AC source at a time",
        "No way joins the live terminals of two AC sources, whatever is switched on, except through a change-over that is interlocked so that it cannot join its two sides.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        List<Part> sources = [.. view.Boat.All<Part>().Where(part => Poles.Giving(part) is { IsAc: true })];
        foreach (Part source in sources)
        {
            List<Changeover> passed = [];
            Part? other = Joined(view, source, sources, passed);
            yield return other is not null ? Parallel(source, other) : Apart(source, passed);
        }
    }

    // Everything closed, and each change-over that nothing says can join its sides in one position throughout: a way may not use both of its sides.
    private static Part? Joined(ElectricsView view, Part source, List<Part> sources, List<Changeover> passed)
    {
        string start = source.At(TerminalNames.Live).ToString();
        Queue<(string Node, ImmutableSortedDictionary<string, ChangeoverPosition> Stands)> queue = new([(start, ImmutableSortedDictionary<string, ChangeoverPosition>.Empty)]);
        HashSet<string> seen = [start];
        while (queue.TryDequeue(out (string Node, ImmutableSortedDictionary<string, ChangeoverPosition> Stands) at))
        {
            if (at.Node != start && sources.FirstOrDefault(part => part.At(TerminalNames.Live).ToString() == at.Node) is { } other)
            {
                return other;
            }

            foreach (WiringEdge edge in view.Wiring.At(at.Node))
            {
                ImmutableSortedDictionary<string, ChangeoverPosition> stands = at.Stands;
                if (edge.Owner is Changeover changeover)
                {
                    if (!passed.Contains(changeover))
                    {
                        passed.Add(changeover);
                    }

                    if (changeover.IsInterlocked != false && stands.TryGetValue(changeover.Id, out ChangeoverPosition position) && position != edge.Position)
                    {
                        continue;
                    }

                    stands = changeover.IsInterlocked == false ? stands : stands.SetItem(changeover.Id, edge.Position);
                }

                string next = edge.Other(at.Node);
                if (seen.Add(stands.IsEmpty ? next : $"{next} {string.Join(' ', stands.Select(one => $"{one.Key}={one.Value}"))}"))
                {
                    queue.Enqueue((next, stands));
                }
            }
        }

        return null;
    }

    private Finding Parallel(Part source, Part other) => new()
    {
        CheckId = Description.Id,
        SubjectId = source.Id,
        Verdict = Verdict.Fails,
        Headline = Sentence.Of($"{source.Title} and {other.Title} can feed together: nothing keeps them apart"),
        Working = [new WorkingLine("A way between them", "found with everything closed and every change-over as it allows", null, "the wiring as drawn")],
        Inputs = [new FindingInput(source.Id, "id"), new FindingInput(other.Id, "id")],
        Caution = Cautions.MainsVoltage,
    };

    private Finding Apart(Part source, List<Changeover> passed)
    {
        if (passed.FirstOrDefault(changeover => changeover.IsInterlocked is null) is { } doubtful)
        {
            return Unknown(Description, source.Id, null, Sentence.Of($"{source.Title}: whether {doubtful.Title} can join its two sides is not known"), [new FindingInput(doubtful.Id, "isInterlocked", IsMissing: true)]) with { Caution = Cautions.MainsVoltage };
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = source.Id,
            Verdict = Verdict.Holds,
            Headline = passed.Count == 0
                ? Sentence.Of($"{source.Title} meets no other AC source")
                : Sentence.Of($"{source.Title} meets other AC sources only at {string.Join(", ", passed.Select(changeover => changeover.Title))}, which cannot join them"),
            Working = [new WorkingLine("A way to another AC source", "none, with everything closed and every change-over as it allows", null, "the wiring as drawn")],
            Inputs = [.. passed.Select(changeover => new FindingInput(changeover.Id, "isInterlocked"))],
            Caution = Cautions.MainsVoltage,
        };
    }
}
