using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>How each end of a cable is made off has been said: what is brought, made off and tightened follows from it.</summary>
public sealed class EndsToldCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "ends-told",
        "Ends of a cable are told",
        "Unknown for a cable of which nobody said how an end is made off: without that neither what to bring nor how it is made off and tightened can be told. Nothing is said of a cable whose ends are all told.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        let untold = Untold(cable)
        where untold.Length > 0
        select Unknown(
            Description, cable.Id, null,
            Sentence.Of($"{cable.Title}: kind of end not given at {string.Join(", ", untold.Select(end => view.Boat.Find(end.At.Part)?.Title ?? end.At.Part).Distinct())}; what to bring and how to make it off cannot be told"),
            [new FindingInput(cable.Id, untold[0].Field, IsMissing: true)]);

    // The first is asked for; when it is told, the next.
    private static ImmutableArray<(Terminal At, string Field)> Untold(Cable cable) =>
    [
        .. cable.Cores.SelectMany(core => new[] { (core.FromEnd, core.From, $"cores/{core.Id}/fromEnd"), (core.ToEnd, core.To, $"cores/{core.Id}/toEnd") })
            .Where(end => end.Item1 is null).Select(end => (end.Item2, end.Item3)),
    ];
}
